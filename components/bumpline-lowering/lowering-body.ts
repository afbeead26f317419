import { html, nothing, type TemplateResult } from 'lit';
import type { LoweringAnswer } from '../../core/answers/lowering.js';
import { type Curve, curveOf } from '../../core/curve/curve.js';
import { isWishbone } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { answeredCorner, sourceKindOf } from '../../core/document/setup-in-use.js';
import type { AssumableKey } from '../../core/driveway/driveway.js';
import { fromShown } from '../../core/quantity/units.js';
import { damperPathOf } from '../../core/travel/damper-path.js';
import { ChartController } from '../chart/chart.js';
import { CursorLine } from '../chart/cursor-line.js';
import type { ChartModel } from '../chart/model.js';
import { renderSlider } from '../controls/slider.js';
import { renderNumbers } from '../controls/table.js';
import { DrawingSlot } from '../drawing/drawing-slot.js';
import type { BalloonState } from '../drawing/items.js';
import { LastMade } from '../element/last-made.js';
import { isPrinting } from '../element/on-print.js';
import { SheetBody, type ShownParts } from '../element/sheet-body.js';
import { renderTravelList } from '../element/travel-list.js';
import { carKit } from '../inputs/car-kit.js';
import { firstMissing, sheetOf, sheetOfPath } from '../inputs/car-sheets.js';
import { InputSheet } from '../inputs/input-sheet.js';
import { queriesOf } from '../inputs/queries.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { wayIn } from '../inputs/way-in.js';
import { renderFitted } from '../parts/fitted-choice.js';
import { atCursor, hint, NAMES } from './bumpline-lowering.labels.js';
import { ChangeField } from './change-field.js';
import { frontView } from './front-view.js';
import { renderInputs, renderLimits, renderReasons } from './lists.js';
import { bodyStyles } from './lowering-body.styles.js';
import type { LoweringView } from './lowering-view.js';
import { renderParts } from './parts-choice.js';
import { renderPrinted } from './printed.js';
import { renderProblems } from './problems.js';
import { renderSides } from './sides.js';
import { chartModel, numbers, sliderTicks } from './views.js';

/** The slider's end, mm: lower than that, and a strut car has no bump travel left. A larger drop can be typed. */
const SLIDER_MM = 80;

/** Everything under the sentence: problems, drawing, slider, chart, lists, and the sheet that a number opens. */
export class LoweringBody extends SheetBody<LoweringView> {
  readonly styles = bodyStyles;
  readonly #sheet: InputSheet;
  readonly #chart: ChartController;
  readonly #drawing: DrawingSlot;
  readonly #line: CursorLine;
  readonly #charted = new LastMade<ChartModel>();
  #curve?: Curve;

  constructor(view: LoweringView) {
    super(view);
    const { host, cursor } = view;
    view.sentence.change = new ChangeField(view);
    this.#sheet = new InputSheet(
      view,
      carKit(view, () => view.answer?.driveway?.taken),
    );
    this.#chart = new ChartController(host, {
      cursor,
      model: () => this.#chartModel(),
      rest: () => view.answer?.drop ?? 0,
    });
    this.#line = new CursorLine(host, cursor, (travel) => this.#atCursor(travel));
    this.#drawing = new DrawingSlot(host, {
      cursor,
      ...frontView(view, (key) => this.#balloonState(key)),
      onSelect: (key) => void this.#sheet.show(key),
    });
  }

  override get pictures() {
    return [
      { kind: 'drawing', of: this.#drawing },
      { kind: 'chart', of: this.#chart },
    ] as const;
  }

  override get settled(): Promise<unknown> {
    return this.#drawing.first.then(() => super.settled);
  }

  #balloonState(key: string): BalloonState {
    const { problems, car, answer } = this.view;
    const isOfKey = (path: string | undefined) => path !== undefined && sheetOfPath(path)?.sheet.key === key;
    const asked = queriesOf(this.view);
    // Where a point looks wrong, the end of a link that does not fit is not the one to look at.
    if (
      asked.length > 0
        ? asked.some(({ path }) => path === key)
        : problems.some(({ path, other }) => isOfKey(path) || isOfKey(other))
    ) {
      return 'problem';
    }
    const isGiven = car.whole !== undefined || sheetOf(key)?.read(car) !== undefined;
    if (!isGiven) return isUsers(car, 'corner') && this.#wanted() === key ? 'wanted' : 'example';
    return answer?.contributions[0]?.id === key ? 'next' : 'yours';
  }

  /** The next to measure: in the driveway what narrows the ± most, else the next in the run. */
  #wanted(): string | undefined {
    const { answer, car } = this.view;
    const taken = answer?.driveway?.taken;
    const widest = answer?.contributions.find(
      ({ id }) => taken?.[id as AssumableKey]?.measured === false && sheetOf(id),
    );
    return widest?.id ?? firstMissing(car)?.key;
  }

  #chartModel(): ChartModel | undefined {
    const { answer, display } = this.view;
    return answer && this.#charted.of([answer, JSON.stringify(display)], () => chartModel(answer, display));
  }

  protected renderProblems(): TemplateResult {
    return renderProblems(this.view, (key) => void this.#sheet.show(key));
  }

  protected readonly parts: ShownParts = {
    drawing: () => (this.#isStrut ? this.#drawing.renderPlace() : nothing),
    chart: () => this.#chart.renderPlace(this.#line.render()),
    table: () => this.#renderNumbers(this.view.answer!, true),
  };

  get #isStrut(): boolean {
    return this.view.answer?.motion?.kind === 'strut';
  }

  protected renderWhole(): TemplateResult {
    const { answer, answeredCar, car, display } = this.view;
    const next = answer && hint(answer, car, display);
    const isStrut = this.#isStrut;
    const isEdited = sourceKindOf(car) === 'readings' || (!car.curve && !isWishbone(car));
    return html`${this.renderProblems()}
      ${
        answer
          ? html`<div class="body ${isStrut ? '' : 'no-drawing'}">
              ${isStrut ? this.#drawing.renderPlace() : nothing}
              <div class="column">
                ${renderParts(this.view)} ${this.view.host.setup ? nothing : renderFitted(this.view)} ${this.#renderSlider()} ${isEdited ? this.#renderActions() : html`<div class="actions">${this.renderHistory()}</div>`}
                ${renderSides(answer, answeredCar, display)}
                ${next ? html`<p class="hint">${next}</p>` : nothing} ${renderLimits(answer, answeredCar, display)}
                ${this.#chart.renderPlace(this.#line.render())}
                <div class="more">
                  ${this.late(() => this.#renderLists(answer, isEdited))}
                </div>
              </div>
              ${isPrinting() ? renderPrinted(this.view) : nothing}
            </div>`
          : html`${isEdited ? html`<div class="more">${this.#renderInputs()}</div>` : nothing}
              <div class="actions">${this.renderHistory()}</div>`
      }`;
  }

  #renderLists(answer: LoweringAnswer, isEdited: boolean): TemplateResult {
    const { display } = this.view;
    return html`${isEdited ? this.folded('.inputs', () => this.#renderInputs()) : nothing}
    ${this.folded('.travel', () =>
      renderTravelList({
        budget: answer.budget,
        path: answer.motion && damperPathOf(answer.motion),
        car: this.view.car,
        display,
        standsIn: false,
        onSelect: (key) => void this.#sheet.show(key),
      }),
    )}
    ${this.folded('.why', () => renderReasons(answer, this.view.answeredCar, display))}
    ${this.folded('.numbers', () => this.#renderNumbers(answer))}`;
  }

  #renderInputs(): TemplateResult {
    const { car, display, answer, isUnread } = this.view;
    return renderInputs(
      car,
      answer?.driveway?.taken,
      display,
      (sheet) => this.#isBegun(sheet),
      (key) => void this.#sheet.show(key),
      !isUnread,
    );
  }

  /** Whether some of a point's numbers were typed and it does not count yet. */
  #isBegun({ fields, read }: SheetSpec): boolean {
    return !read(this.view.car) && fields.some(({ path }) => this.view.drafts.text(path) !== undefined);
  }

  /** The way in to one's own numbers, and the way back. */
  #renderActions(): TemplateResult {
    const { car } = this.view;
    const next = firstMissing(car);
    const open = () => void this.#sheet.show(!isUsers(car, 'corner') || !next ? 'way' : next.key);
    return html`<div class="actions">
      <button type="button" class="button own ${next ? 'main' : ''}" @click=${open}>${wayIn(car, next)}</button>
      ${this.renderHistory()}
      ${
        isUsers(car, 'corner') && car.given.camber !== undefined && !car.other
          ? html`<button type="button" class="text-button" @click=${() => void this.#sheet.show('other')}>${NAMES.addOther}</button>`
          : nothing
      }
    </div>`;
  }

  renderSheet(): TemplateResult {
    return this.#sheet.render();
  }

  protected readAgain(): void {
    this.view.sentence.drop.readAgain();
  }

  #renderSlider(): TemplateResult {
    const { display, car, answer } = this.view;
    const domainEnd = answer ? answer.curve.domain[1] : SLIDER_MM;
    const end = Math.max(Math.min(SLIDER_MM, Math.floor(domainEnd)), Math.ceil(car.drop));
    return renderSlider({
      id: 'drop-slider',
      label: NAMES.slider,
      quantity: 'drop',
      display,
      value: car.drop,
      min: Math.min(0, Math.floor(car.drop)),
      max: end,
      ticks: sliderTicks(answer, display),
      onInput: (drop) => this.view.setDrop(drop),
      onChange: () => this.view.endDrag(),
      step: this.stepOf('drop'),
    });
  }

  #renderNumbers(answer: LoweringAnswer, open = false): TemplateResult {
    const { display, car, cursor, announcer } = this.view;
    return renderNumbers({
      id: 'numbers',
      caption: NAMES.table(answeredCorner(car)),
      ...numbers(answer, display),
      cursor,
      open,
      travelOf: ([travel]) => fromShown(Number(travel), 'length', display.units),
      onStatus: (text) => announcer.announce(text),
    });
  }

  #atCursor(travel: number): string | undefined {
    const { answer, display } = this.view;
    if (!answer || travel === answer.drop) return undefined;
    if (this.#curve?.data !== answer.curve) this.#curve = curveOf(answer.curve);
    return atCursor(travel, this.#curve.value(travel), this.#curve.change(travel, 0), display);
  }
}
