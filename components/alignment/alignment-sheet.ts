import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { ROD_THREADS, type RodThread } from '../../core/alignment/rod-threads.js';
import { withAlignment } from '../../core/document/alignment-settings.js';
import { withToe } from '../../core/document/toe-settings.js';
import { RACK_SIDES, type RackSide } from '../../core/linkage/toe-adjustment.js';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import { worded } from '../../core/quantity/words.js';
import { type CautionId, renderCautions } from '../element/cautions.js';
import { show } from '../element/sentence.js';
import type { SheetView } from '../element/sheet-view.js';
import { knownArm, pointsArm } from '../inputs/known-arm.js';
import { AFTER_FIELDS, renderAfterDriving } from './after-driving.js';
import type { AlignedLinks } from './aligned-links.js';
import { ALIGNMENT } from './alignment.labels.js';
import { alignmentStyles } from './alignment.styles.js';
import { AlignmentAnswers } from './alignment-answers.js';
import { type AlignmentField, AlignmentFields, settingField } from './alignment-fields.js';
import { renderOrder } from './alignment-order.js';
import { paperStyles, renderPaper } from './alignment-paper.js';
import { restsOn, totalText, turnLines } from './alignment-words.js';
import { printAlone } from './print-alone.js';
import { GAUGE, isExamples, WHEEL_SIDES, type WheelPlan } from './wheel-plan.js';

export { alignmentStyles };

const { fields: LABELS } = ALIGNMENT;

const FIRST = worded(() => [
  settingField('toeLeft', LABELS.toeLeft, 'toe'),
  settingField('toeRight', LABELS.toeRight, 'toe'),
  settingField('toeWanted', LABELS.toeWanted, 'toe'),
  settingField('pitch', LABELS.pitch, 'threadPitch'),
]);
const MORE = worded(() => [
  settingField('heightLeft', LABELS.heightLeft, 'cornerHeight'),
  settingField('heightRight', LABELS.heightRight, 'cornerHeight'),
  settingField('heightWanted', LABELS.heightWanted, 'cornerHeight'),
  settingField('camberLeft', LABELS.camberLeft, 'camber'),
  settingField('camberRight', LABELS.camberRight, 'camber'),
  settingField('camberWanted', LABELS.camberWanted, 'camber'),
  settingField('camberTolerance', LABELS.camberTolerance, 'plusMinusToe', GAUGE.camber),
  settingField('toeTolerance', LABELS.toeTolerance, 'plusMinusToe', GAUGE.toe),
]);
const AFTERWARDS = worded(() => [
  settingField('heightAfterLeft', LABELS.heightAfterLeft, 'cornerHeight'),
  settingField('heightAfterRight', LABELS.heightAfterRight, 'cornerHeight'),
]);

/** The alignment of an axle: what is read, what is wanted, what to turn and in which order; on paper one page; and the tread afterwards. */
export class AlignmentSheet {
  readonly #view: SheetView;
  readonly #fields: AlignmentFields;
  readonly #answers: AlignmentAnswers;
  readonly #hazards: readonly CautionId[];

  /** @param hazards that the element does not tell already */
  constructor(view: SheetView, links: () => AlignedLinks | undefined, hazards: readonly CautionId[]) {
    this.#view = view;
    this.#hazards = hazards;
    this.#fields = new AlignmentFields(view);
    this.#answers = new AlignmentAnswers(view, links);
  }

  get settled(): Promise<void> {
    return this.#answers.settle();
  }

  readAgain(): void {
    this.#fields.readAgain([...FIRST, this.#leverField, ...MORE, ...AFTERWARDS, ...AFTER_FIELDS]);
  }

  render(): TemplateResult {
    this.#answers.ask();
    const { left, right } = this.#answers.plans;
    const plans = [left, right];
    return html`<section class="alignment" aria-labelledby="alignment-title">
        <h3 id="alignment-title">${ALIGNMENT.title}</h3>
        <p class="note">${ALIGNMENT.intro}</p>
        ${this.#row(FIRST, plans)}
        <p class="note">${ALIGNMENT.pitchNote}</p>
        ${this.#renderThread()} ${this.#renderArm(plans)} ${this.#renderTurns(plans)}
        <details class="alignment-more">
          <summary>${ALIGNMENT.more}</summary>
          <p class="note">${ALIGNMENT.moreNote}</p>
          ${this.#row(MORE, plans)} <h4>${ALIGNMENT.order}</h4>
          <p class="note">${ALIGNMENT.orderNote}</p>
          ${renderOrder(this.#view, plans, { isByArm: this.#answers.isByWishbone })}
          <h4>${ALIGNMENT.afterwards}</h4>
          ${this.#row(AFTERWARDS, plans)}
        </details>
        ${renderAfterDriving(this.#view, this.#fields)}
        <button type="button" class="button print-sheet" @click=${() => this.#print()}>${ALIGNMENT.print}</button>
        ${this.#hazards.length > 0 ? renderCautions(this.#hazards, ALIGNMENT.cautions) : nothing}
      </section>
      ${renderPaper(this.#view, this.#answers)}`;
  }

  #print(): void {
    printAlone(renderPaper(this.#view, this.#answers), paperStyles, ALIGNMENT.title);
  }

  #row(fields: readonly AlignmentField[], plans: readonly WheelPlan[]): TemplateResult {
    const problems = this.#problems(plans);
    return html`<div class="fields">
      ${fields.map((field) =>
        this.#fields.render(
          field,
          problems.find(({ path }) => path === `alignment.${field.key}`),
        ),
      )}
    </div>`;
  }

  /** What is wrong with a value, by the field where it stands: each wheel has its own reading. */
  #problems(plans: readonly WheelPlan[]): Problem[] {
    return WHEEL_SIDES.flatMap((side, i) => {
      const Side = ALIGNMENT.sides[side];
      const all = [...this.#answers.problemsOf(side), ...plans[i]!.problems];
      return all.map((problem) => {
        const { path } = problem;
        if (/^alignment\.(?:camber|toe)$/.test(path)) return { ...problem, path: `${path}${Side}` };
        // What is typed is a height; how much lower that is, is worked out.
        const { heightWanted: value } = this.#view.car.alignment ?? {};
        if (path !== 'alignment.lower' || value === undefined) return problem;
        const limit = value + (problem.value as number) - (problem.limit ?? Number.NaN);
        return { ...problem, path: 'alignment.heightWanted', value, limit };
      });
    });
  }

  #renderThread(): TemplateResult {
    const { alignment } = this.#view.car;
    const choose = ({ target }: Event) => {
      const thread = (target as HTMLSelectElement).value as RodThread;
      this.#view.change('alignment', ALIGNMENT.threadStep, (car) => withAlignment(car, { thread }));
      this.#view.endStep();
    };
    const now = alignment?.thread ?? 'one';
    return html`<label class="pick"
      >${ALIGNMENT.thread}
      <select class="thread" @change=${choose}>
        ${ROD_THREADS.map((one) => html`<option value=${one} .selected=${live(one === now)}>${ALIGNMENT.threads[one]}</option>`)}
      </select></label
    >`;
  }

  get #leverField(): AlignmentField {
    const { car } = this.#view;
    const known = pointsArm(car)?.lever;
    return {
      key: 'toe.lever',
      label: LABELS.lever,
      quantity: 'lever',
      ...(known !== undefined && { standIn: Math.round(known) }),
      read: ({ toe }) => toe?.lever,
      write: (before, lever) => withToe(before, { lever }),
    };
  }

  /** Of a car whose links do not tell what its rod does. */
  #renderArm(plans: readonly WheelPlan[]): TemplateResult | typeof nothing {
    const isWaiting = WHEEL_SIDES.some((side) => this.#answers.isWaiting(side));
    const isFailed = WHEEL_SIDES.some((side) => this.#answers.problemsOf(side).length > 0);
    const { car } = this.#view;
    const isOfExample = this.#answers.hasLinks && isExamples(car);
    const isAsked = plans.some(({ isByRule }) => isByRule) || isOfExample;
    if (isWaiting || isFailed || !isAsked) return nothing;
    const { lever, rack } = knownArm(car);
    const choose = ({ target }: Event) => {
      const { value } = target as HTMLSelectElement;
      this.#view.change('toe', ALIGNMENT.rackStep, (before) =>
        withToe(before, { rackSide: value === '' ? undefined : (value as RackSide) }),
      );
      this.#view.endStep();
    };
    return html`${lever === undefined || rack === undefined ? html`<p class="note">${isOfExample ? ALIGNMENT.ofExample : ALIGNMENT.needsArm}</p>` : nothing}
      <div class="fields">${this.#fields.render(this.#leverField)}</div>
      <p class="note">${ALIGNMENT.leverNote}</p>
      <label class="pick"
        >${ALIGNMENT.rack}
        <select class="rack" @change=${choose}>
          <option value="" .selected=${live(rack === undefined)}>${ALIGNMENT.choose}</option>
          ${RACK_SIDES.map((one) => html`<option value=${one} .selected=${live(one === rack)}>${ALIGNMENT.racks[one]}</option>`)}
        </select></label
      >`;
  }

  /** The answer of the sheet: what to turn. */
  #renderTurns(plans: readonly WheelPlan[]): TemplateResult {
    const { car, display } = this.#view;
    const { toeWanted, pitch } = car.alignment ?? {};
    const lines = plans.map((plan) => turnLines(plan, car, display)).filter((some) => some.length > 0);
    const fields = [...FIRST, ...MORE].map(({ key }) => `alignment.${key}`);
    const elsewhere = this.#problems(plans).filter(({ path }) => !fields.includes(path));
    const total = totalText(car, display);
    const isRead = plans.some(({ toe }) => toe !== undefined) && toeWanted !== undefined;
    const isWaiting = WHEEL_SIDES.some((side) => this.#answers.isWaiting(side));
    const { how, warning } = restsOn(plans, car);
    return html`<div class="turns" role="status">
      <p>${ALIGNMENT.result}</p>
      ${lines.map(([first, ...others]) => html`<p><b>${first}</b> ${others.join(' ')}</p>`)}
      ${
        isWaiting
          ? html`<p>${ALIGNMENT.waiting}</p>`
          : !isRead
            ? html`<p>${ALIGNMENT.needsToe}</p>`
            : lines.length > 0 && pitch === undefined
              ? html`<p>${ALIGNMENT.needsPitch}</p>`
              : nothing
      }
      ${total ? html`<p>${total}</p>` : nothing}
      ${
        lines.length > 0
          ? html`<p>${ALIGNMENT.both}</p>
              <p class="note">${how} ${ALIGNMENT.gauge(show(GAUGE.toe, 'plusMinusToe', display))} ${ALIGNMENT.doubt}</p>`
          : nothing
      }
      ${warning ? html`<p class="problem">${warning}</p>` : nothing}
      ${elsewhere.map((problem) => html`<p class="problem">${explainProblem(problem, { language: display.language, unitSystem: display.units })}</p>`)}
      ${this.#answers.fault ? html`<p class="problem">${this.#answers.fault}</p>` : nothing}
    </div>`;
  }
}
