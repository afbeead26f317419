import { html, noChange, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { ref } from 'lit/directives/ref.js';
import type { LoweringAnswer } from '../../core/answers/lowering.js';
import { type Curve, curveFrom } from '../../core/curve/curve.js';
import { isWishbone } from '../../core/document/car.js';
import { fullBumpOf } from '../../core/document/full-bump.js';
import { isUsers } from '../../core/document/provenance.js';
import { answeredCorner, wayOf } from '../../core/document/setup-in-use.js';
import type { AssumableKey } from '../../core/driveway/driveway.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { parseQuantity } from '../../core/quantity/parse.js';
import type { Problem } from '../../core/quantity/problem.js';
import { fromShown, toShown } from '../../core/quantity/units.js';
import { damperPathOf } from '../../core/travel/damper-path.js';
import { byHand } from '../shared/by-hand.js';
import { type Caution, renderCautions } from '../shared/cautions.js';
import { ChartController } from '../shared/chart/chart.js';
import type { ChartModel } from '../shared/chart/model.js';
import { renderCopyLink } from '../shared/copy-link.js';
import type { BalloonState } from '../shared/drawing/items.js';
import { notesOf } from '../shared/notes.js';
import { carKit } from '../shared/sheet/car-kit.js';
import { firstMissing, sheetOf, sheetOfPath } from '../shared/sheet/car-sheets.js';
import { InputSheet } from '../shared/sheet/input-sheet.js';
import type { SheetSpec } from '../shared/sheet/sheet-spec.js';
import { renderSlider } from '../shared/slider.js';
import { renderNumbers } from '../shared/table.js';
import { renderTravelList } from '../shared/travel-list.js';
import { renderUnitTools } from '../shared/unit-tools.js';
import { atCursor, hint, NAMES, undoText, wayIn } from './bumpline-lowering.labels.js';
import { ChangeField } from './change-field.js';
import { FrontView } from './front-view.js';
import { renderInputs, renderLimits, renderReasons } from './lists.js';
import type { LoweringApp } from './lowering-app.js';
import { renderParts } from './parts-choice.js';
import { PrintUnfolder, renderPrinted } from './printed.js';
import { queriesOf, renderProblems } from './problems.js';
import { renderSides } from './sides.js';
import { chartModel, numbers, sliderTicks } from './views.js';

export { bodyStyles } from './lowering-body.styles.js';

/** The slider's end, mm: lower than that, and a strut car has no bump travel left. A larger drop can be typed. */
const SLIDER_MM = 80;

/** Everything under the sentence: problems, drawing, slider, chart, lists, cautions, and the sheet that a number opens. */
export class LoweringBody {
  #app: LoweringApp;
  #sheet: InputSheet;
  #chart: ChartController;
  #drawing: FrontView;
  #charted?: { answer: LoweringAnswer; reading: string; model: ChartModel };
  #curve?: Curve;
  #stopCursor: (() => void) | undefined;

  constructor(app: LoweringApp) {
    this.#app = app;
    const { host, cursor } = app;
    app.drafts.reading = { parse: parseQuantity, live };
    app.sentence.change = new ChangeField(app);
    this.#sheet = new InputSheet(
      app,
      carKit(app, () => app.answer?.driveway?.taken),
    );
    const unfolder = new PrintUnfolder(host);
    host.addController({ hostConnected: () => unfolder.connect(), hostDisconnected: () => unfolder.disconnect() });
    // `toggle` does not bubble.
    host.renderRoot.addEventListener('toggle', () => host.requestUpdate(), true);
    this.#chart = new ChartController(host, {
      cursor,
      model: () => this.#chartModel(),
      rest: () => app.answer?.drop ?? 0,
    });
    this.#drawing = new FrontView(host, {
      cursor,
      answer: () => app.answer,
      reading: () => app.reading,
      car: () => app.car,
      balloonState: (key) => this.#balloonState(key),
      onSelect: (key) => void this.#sheet.show(key),
    });
  }

  /** Resolves when everything that comes late, but for the chart, has come. */
  get settled(): Promise<void> {
    return this.#drawing.first.then(() => this.#lists);
  }

  /** The folded lists come in a task of their own, after the first rendering: with it they would hold a slow phone's thread. */
  #isLate = false;
  #lists: Promise<void> = new Promise((resolve) => {
    setTimeout(() => {
      this.#isLate = true;
      this.#app.host.requestUpdate();
      resolve();
    });
  });

  #balloonState(key: string): BalloonState {
    const { problems, car, answer } = this.#app;
    const isOfKey = (path: string | undefined) => path !== undefined && sheetOfPath(path)?.sheet.key === key;
    const asked = queriesOf(this.#app);
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
    const { answer, car } = this.#app;
    const taken = answer?.driveway?.taken;
    const widest = answer?.contributions.find(
      ({ id }) => taken?.[id as AssumableKey]?.measured === false && sheetOf(id),
    );
    return widest?.id ?? firstMissing(car)?.key;
  }

  #chartModel(): ChartModel | undefined {
    const { answer } = this.#app;
    if (!answer) return undefined;
    const reading = JSON.stringify(this.#app.reading);
    if (this.#charted?.answer !== answer || this.#charted.reading !== reading) {
      this.#charted = { answer, reading, model: chartModel(answer, this.#app.reading) };
    }
    return this.#charted.model;
  }

  get notes(): Problem[] {
    return notesOf(this.#app);
  }

  render(): TemplateResult {
    const { answer, answeredCar, car, reading } = this.#app;
    const next = answer && hint(answer, car, reading);
    const isStrut = answer?.motion?.kind === 'strut';
    const isEdited = wayOf(car) === 'readings' || (!car.curve && !isWishbone(car));
    return html`${renderProblems(this.#app, (key) => void this.#sheet.show(key))}
      ${
        answer
          ? html`<div class="body ${isStrut ? '' : 'no-drawing'}">
              ${isStrut ? html`<div class="drawing-place" ${ref(this.#drawing.placed)}></div>` : nothing}
              <div class="column">
                ${renderParts(this.#app)} ${this.#renderSlider()} ${isEdited ? this.#renderActions() : nothing}
                ${renderSides(answer, answeredCar, reading)}
                ${next ? html`<p class="hint">${next}</p>` : nothing} ${renderLimits(answer, answeredCar, reading)}
                <div class="chart-place">
                  ${this.#chart.render()}
                  <p class="at-cursor" ${ref(this.#cursorPlaced)}></p>
                </div>
                <div class="more">
                  ${this.#isLate ? this.#renderLists(answer, isEdited) : nothing}
                </div>
              </div>
              ${renderPrinted(this.#app)} ${renderCautions(this.#cautions(answer))}
            </div>`
          : isEdited
            ? html`<div class="more">${this.#renderInputs()}</div>`
            : nothing
      }`;
  }

  #renderLists(answer: LoweringAnswer, isEdited: boolean): TemplateResult {
    const { reading } = this.#app;
    return html`${isEdited ? this.#folded('.inputs', () => this.#renderInputs()) : nothing}
    ${this.#folded('.travel', () =>
      renderTravelList({
        budget: answer.budget,
        path: answer.motion && damperPathOf(answer.motion),
        car: this.#app.car,
        reader: reading,
        standsIn: false,
        onSelect: (key) => void this.#sheet.show(key),
      }),
    )}
    ${this.#folded('.why', () => renderReasons(answer, this.#app.answeredCar, reading))}
    ${this.#folded('.numbers', () => this.#renderNumbers(answer))}`;
  }

  #renderInputs(): TemplateResult {
    const { car, reading, answer, state } = this.#app;
    return renderInputs(
      car,
      answer?.driveway?.taken,
      reading,
      (sheet) => this.#isBegun(sheet),
      (key) => void this.#sheet.show(key),
      state !== 'problem' || isUsers(car, 'corner'),
    );
  }

  /** Whether some of a point's numbers were typed and it does not count yet. */
  #isBegun({ fields, read }: SheetSpec): boolean {
    return !read(this.#app.car) && fields.some(({ path }) => this.#app.drafts.text(path) !== undefined);
  }

  #cautions({ drop, budget }: LoweringAnswer): Caution[] {
    const { answeredCar: car, reading } = this.#app;
    return [
      byHand(fullBumpOf(car, budget?.bump.solid, drop), drop, reading),
      ...(car.lowered === 'dampers' ? (['otherLimits'] as const) : []),
      ...(budget ? (['stop'] as const) : []),
      'afterHeight',
      'rules',
    ];
  }

  /** The way in to one's own numbers, and the way back. */
  #renderActions(): TemplateResult {
    const { car, undoLabel, model, announcer } = this.#app;
    const next = firstMissing(car);
    const open = () => void this.#sheet.show(!isUsers(car, 'corner') || !next ? 'way' : next.key);
    return html`<div class="actions">
      <button type="button" class="button own ${next ? 'main' : ''}" @click=${open}>${wayIn(car, next)}</button>
      ${
        undoLabel
          ? html`<button type="button" class="text-button undo" @click=${() => this.#app.undo()}>
              ${undoText(undoLabel)}
            </button>`
          : nothing
      }
      ${renderCopyLink(model, announcer)}
      ${
        isUsers(car, 'corner') && car.given.camber !== undefined && !car.other
          ? html`<button type="button" class="text-button" @click=${() => void this.#sheet.show('other')}>${NAMES.addOther}</button>`
          : nothing
      }
      ${
        model.redoLabel
          ? html`<button type="button" class="text-button redo" @click=${() => this.#app.redo()}>${NAMES.redo}</button>`
          : nothing
      }
    </div>`;
  }

  /** A folded part is left as it is: nobody sees it, and it would cost a drag most of its time. Unfolding renders it. */
  #folded(selector: string, content: () => TemplateResult): TemplateResult | typeof noChange {
    const details = this.#app.host.renderRoot.querySelector<HTMLDetailsElement>(selector);
    return details && !details.open ? noChange : content();
  }

  renderSheet(): TemplateResult {
    return this.#sheet.render();
  }

  renderTools(): TemplateResult {
    return renderUnitTools(this.#app.host, () => this.#app.sentence.drop.readAgain());
  }

  #renderSlider(): TemplateResult {
    const { reading, car, answer } = this.#app;
    const { units, language } = reading;
    const shown = (mm: number) => toShown(mm, 'length', units);
    const domainEnd = answer ? answer.curve.domain[1] : SLIDER_MM;
    const end = Math.max(Math.min(SLIDER_MM, Math.floor(domainEnd)), Math.ceil(car.drop));
    return renderSlider({
      id: 'drop-slider',
      label: NAMES.slider,
      value: shown(car.drop),
      min: shown(Math.min(0, Math.floor(car.drop))),
      max: shown(end),
      step: units.length === 'in' ? 0.05 : 1,
      valueText: (value) => formatQuantity(fromShown(value, 'length', units), 'drop', units, { language }).text,
      ticks: sliderTicks(answer, reading),
      onInput: (value) => this.#app.setDrop(fromShown(value, 'length', units)),
      onChange: () => this.#app.endStep(),
    });
  }

  #renderNumbers(answer: LoweringAnswer): TemplateResult {
    const { reading, car, cursor, announcer } = this.#app;
    return renderNumbers({
      id: 'numbers',
      caption: `Camber over wheel travel, ${answeredCorner(car).toLowerCase()}`,
      ...numbers(answer, reading),
      cursor,
      travelOf: ([travel]) => fromShown(Number(travel), 'length', reading.units),
      onStatus: (text) => announcer.announce(text),
    });
  }

  /** The line under the chart follows the cursor without a render of the element. */
  readonly #cursorPlaced = (place?: Element): void => {
    this.#stopCursor?.();
    this.#stopCursor = place && this.#app.cursor.subscribe((travel) => this.#showCursor(place, travel));
  };

  #showCursor(place: Element, travel: number): void {
    const { answer, reading } = this.#app;
    if (!answer || travel === answer.drop) {
      place.textContent = '';
      return;
    }
    if (this.#curve?.data !== answer.curve) this.#curve = curveFrom(answer.curve);
    place.textContent = atCursor(travel, this.#curve.value(travel), this.#curve.change(travel, 0), reading);
  }
}
