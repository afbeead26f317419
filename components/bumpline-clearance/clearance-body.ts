import { html, noChange, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { ref } from 'lit/directives/ref.js';
import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import { isLockAssumed } from '../../core/document/fit-in-use.js';
import { fullBumpOf } from '../../core/document/full-bump.js';
import { isUsers } from '../../core/document/provenance.js';
import { answeredCorner } from '../../core/document/setup-in-use.js';
import { ownFit } from '../../core/document/wheels-in-use.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { parseQuantity } from '../../core/quantity/parse.js';
import type { Problem } from '../../core/quantity/problem.js';
import { fromShown, toShown } from '../../core/quantity/units.js';
import { byHand } from '../shared/by-hand.js';
import { type Caution, renderCautions } from '../shared/cautions.js';
import { ChartController } from '../shared/chart/chart.js';
import type { ChartModel } from '../shared/chart/model.js';
import { renderCopyLink } from '../shared/copy-link.js';
import type { Drawing } from '../shared/drawing/items.js';
import { notesOf } from '../shared/notes.js';
import { show } from '../shared/sentence.js';
import { carKit } from '../shared/sheet/car-kit.js';
import { InputSheet } from '../shared/sheet/input-sheet.js';
import { renderSlider } from '../shared/slider.js';
import type { SliderTick } from '../shared/slider-ticks.js';
import { renderNumbers } from '../shared/table.js';
import { renderTravelList } from '../shared/travel-list.js';
import { renderUnitTools } from '../shared/unit-tools.js';
import { NAMES } from './bumpline-clearance.labels.js';
import { placeName, verdictText } from './bumpline-clearance.words.js';
import type { ClearanceApp } from './clearance-app.js';
import { renderWhatNext, renderWheels } from './clearance-lists.js';
import { renderProblems } from './clearance-problems.js';
import { DrawingPlace } from './drawing-place.js';
import { type DrawnWheels, drawnWheels, gapIn, tightPoses } from './drawn-wheels.js';
import { firstMissingFit, fitKit, renderFitInputs } from './fit-kit.js';
import { sectionView } from './section-view.js';
import { sideView } from './side-view.js';
import { chartModel, placesTable } from './views.js';

export { bodyStyles } from './clearance-body.styles.js';

/** The slider's ends, mm from the wheel that was on. */
const FURTHEST_IN_MM = -20;
const FURTHEST_OUT_MM = 50;

/** Everything under the sentence. */
export class ClearanceBody {
  readonly #app: ClearanceApp;
  readonly #sheet: InputSheet;
  readonly #chart: ChartController;
  readonly #section: DrawingPlace;
  readonly #side: DrawingPlace;
  #drawn: DrawnWheels | undefined;
  #changed: DrawnClearance | undefined;
  #numbered: DrawnClearance | undefined;
  #number = 0;
  #charted?: { key: string; answer: DrawnClearance; model: ChartModel };
  #stopCursor: (() => void) | undefined;
  #cursorPlace: Element | undefined;

  constructor(app: ClearanceApp) {
    this.#app = app;
    const { host, cursor } = app;
    // `toggle` does not bubble.
    host.renderRoot.addEventListener('toggle', () => host.requestUpdate(), true);
    app.drafts.reading = { parse: parseQuantity, live };
    this.#sheet = new InputSheet(
      app,
      fitKit(
        app,
        carKit(app, () => undefined),
      ),
    );
    this.#chart = new ChartController(host, {
      cursor,
      model: () => this.#chartModel(),
      rest: () => {
        const { answer, selected } = app;
        return answer && selected !== undefined ? answer.places[selected]!.decisive.travel : 0;
      },
    });
    // A new answer may leave the cursor where it is.
    host.addController({ hostUpdated: () => this.#showCursor() });
    const key = (travel: number) => this.#drawingKey(travel);
    this.#section = new DrawingPlace(host, cursor, (travel) => this.#drawSection(travel), key);
    this.#side = new DrawingPlace(
      host,
      cursor,
      (travel) => this.#drawSide(travel),
      key,
      (key) => app.select(Number(key)),
    );
  }

  /** Resolves when everything that comes late, but for the chart, has come. */
  readonly settled: Promise<void> = Promise.resolve();

  get #wheels(): DrawnWheels | undefined {
    const { answer, asked } = this.#app;
    if (!answer || !asked) return undefined;
    if (this.#drawn?.answer !== answer) this.#drawn = drawnWheels(answer, asked);
    return this.#drawn;
  }

  /** Which answer is the how-manieth, at which travel, of which place, in which units. */
  #drawingKey(travel: number): string {
    const { answer, selected, reading } = this.#app;
    if (answer !== this.#numbered) {
      this.#numbered = answer;
      this.#number++;
    }
    return [this.#number, travel, selected, JSON.stringify(reading)].join();
  }

  #drawSection(travel: number): Drawing | undefined {
    const drawn = this.#wheels;
    const { selected } = this.#app;
    return drawn && selected !== undefined ? sectionView(drawn, selected, travel, this.#app.reading) : undefined;
  }

  #drawSide(travel: number): Drawing | undefined {
    const drawn = this.#wheels;
    return drawn && sideView(drawn, travel, this.#app.selected, this.#app.reading);
  }

  #chartModel(): ChartModel | undefined {
    const { answer, asked, selected, reading } = this.#app;
    if (!answer || !asked || selected === undefined) return undefined;
    const key = JSON.stringify([reading, selected]);
    if (this.#charted?.answer !== answer || this.#charted.key !== key) {
      const model = chartModel({ answer, places: asked.places, isLeft: asked.isLeft, selected }, reading);
      this.#charted = { key, answer, model };
    }
    return this.#charted.model;
  }

  get notes(): Problem[] {
    return notesOf(this.#app);
  }

  render(): TemplateResult {
    const app = this.#app;
    const { answer, asked, reading, selected } = app;
    const onShow = (key: string) => void this.#sheet.show(key);
    return html`${renderProblems(app, onShow)}
      ${
        answer && asked
          ? html`<div class="body ${selected === undefined ? 'no-drawing' : ''}">
              ${selected === undefined ? nothing : this.#renderViews(selected)}
              <div class="column">
                ${this.#renderSlider()} ${this.#renderActions()} ${this.#renderChanges(answer)}
                ${
                  selected === undefined
                    ? nothing
                    : html`<div class="chart-place">
                        ${this.#chart.render()}
                        <p class="at-cursor" ${ref(this.#cursorPlaced)}></p>
                      </div>`
                }
                <div class="more">
                  ${this.#folded('.inputs', () => renderFitInputs(app, onShow))}
                  ${this.#folded('.wheels', () => renderWheels(answer, reading))}
                  ${this.#folded('.travel', () =>
                    renderTravelList({
                      budget: answer.budget,
                      path: answer.motion.damper,
                      car: app.car,
                      reader: reading,
                      standsIn: true,
                      onSelect: onShow,
                    }),
                  )}
                  ${this.#folded('.numbers', () => this.#renderNumbers(answer))}
                </div>
              </div>
              ${renderCautions(this.#cautions(answer), NAMES.cautions)}
            </div>`
          : html`<div class="more">${renderFitInputs(app, onShow, !app.isUnread)}</div>`
      }`;
  }

  #cautions({ budget, drop }: DrawnClearance): Caution[] {
    const { car, reading } = this.#app;
    const full = fullBumpOf(car, budget.bump.solid, drop);
    return [byHand(full, drop, reading), 'stop', 'wheelParts', 'camber', 'wheelRules'];
  }

  /** What would just clear is worked out with the steering: while something is dragged the last of it keeps its place. */
  #renderChanges(answer: DrawnClearance): TemplateResult {
    const { isComplete, reading, asked, answeredCar } = this.#app;
    if (isComplete || !this.#changed) this.#changed = answer;
    return renderWhatNext(this.#changed, isComplete, asked?.places ?? [], answeredCar, reading);
  }

  /** A folded part is left as it is: nobody sees it, and it would cost a drag most of its time. Unfolding renders it. */
  #folded(selector: string, content: () => TemplateResult): TemplateResult | typeof noChange {
    const details = this.#app.host.renderRoot.querySelector<HTMLDetailsElement>(selector);
    return details && !details.open ? noChange : content();
  }

  #renderViews(selected: number): TemplateResult {
    const { answer, asked, isComplete } = this.#app;
    const found = answer!.places[selected]!;
    const name = placeName(asked!.places[selected]!, asked!.isLeft);
    const { isAhead, toe } = found.decisive;
    const steering = [
      !isComplete ? NAMES.steering : '',
      isComplete && !answer!.isSteered ? NAMES.aheadOnly : '',
      isComplete && answer!.isSteered
        ? isAhead
          ? NAMES.tightAhead
          : `${NAMES.tightAt} ${Math.round(Math.abs(toe))}°.`
        : '',
      answer!.isSteered && isLockAssumed(this.#app.answeredCar) ? `${NAMES.assumedLock} ${asked!.lock}°.` : '',
    ];
    return html`<div class="views">
      <div class="section-view">
        <p class="view-name"><b>${name.slice(0, 1).toUpperCase()}${name.slice(1)}</b>: ${verdictText(found)}. ${steering.join(' ')}</p>
        <div class="drawing-place" ${ref(this.#section.placed)}></div>
      </div>
      <div class="side-view drawing-place" ${ref(this.#side.placed)}></div>
    </div>`;
  }

  #renderSlider(): TemplateResult {
    const { reading, plane, answer, isComplete } = this.#app;
    const { units, language } = reading;
    // While the wheels are moved, where they just clear stays where it is.
    const whole = isComplete ? answer : this.#changed;
    const shown = (mm: number) => toShown(mm, 'length', units);
    const ticks: SliderTick[] = [{ at: 0, label: NAMES.asBefore, kind: 'plain' }];
    for (const { by = 0 } of whole?.justClear?.find(({ id }) => id === 'plane')?.ends ?? []) {
      // Rounded to the side that still clears.
      const isBelow = by > 0 === (whole!.verdict === 'clears');
      const at = (isBelow ? Math.floor : Math.ceil)(whole!.wheels.plane + by);
      ticks.push({
        at: shown(at),
        label: `${NAMES.justClears} ${show(at, 'offset', reading)}`,
        kind: 'limit',
      });
    }
    return renderSlider({
      id: 'plane-slider',
      label: NAMES.slider,
      value: shown(plane),
      min: shown(Math.min(FURTHEST_IN_MM, Math.floor(plane))),
      max: shown(Math.max(FURTHEST_OUT_MM, Math.ceil(plane))),
      step: units.length === 'in' ? 0.05 : 1,
      valueText: (value) => formatQuantity(fromShown(value, 'length', units), 'offset', units, { language }).text,
      ticks,
      onInput: (value) => this.#app.dragPlane(fromShown(value, 'length', units)),
      onChange: () => this.#app.endStep(),
    });
  }

  /** The way in to one's own numbers, and the way back. */
  #renderActions(): TemplateResult {
    const { car, model, announcer, undoLabel } = this.#app;
    const next = firstMissingFit(this.#app);
    const isBegun = isUsers(car, 'fit');
    return html`<div class="actions">
      <button type="button" class="button own ${next ? 'main' : ''}" @click=${() => void this.#sheet.show(next?.key ?? 'before')}>
        ${next && isBegun ? `Next: ${next.key === 'way' ? NAMES.motion : next.title}` : NAMES.own}
      </button>
      <button type="button" class="button" @click=${() => void this.#sheet.show(`places.${ownFit(car).places?.length ?? 0}`)}>
        ${NAMES.addPlace}
      </button>
      ${
        undoLabel
          ? html`<button type="button" class="text-button undo" @click=${() => this.#app.undo()}>${NAMES.undo}: ${undoLabel}</button>`
          : nothing
      }
      ${model.redoLabel ? html`<button type="button" class="text-button redo" @click=${() => model.redo()}>${NAMES.redo}</button>` : nothing}
      ${renderCopyLink(model, announcer)}
    </div>`;
  }

  #renderNumbers(answer: DrawnClearance): TemplateResult {
    const { reading, asked, announcer, car } = this.#app;
    const { places, isLeft } = asked!;
    return renderNumbers({
      id: 'numbers',
      caption: `Gaps between tyre and arch, ${answeredCorner(car).toLowerCase()}. ${NAMES.doubt}`,
      ...placesTable({ answer, places, isLeft }, reading),
      onStatus: (text) => announcer.announce(text),
    });
  }

  renderSheet(): TemplateResult {
    return this.#sheet.render();
  }

  renderTools(): TemplateResult {
    return renderUnitTools(this.#app.host, () => this.#app.readAgain());
  }

  /** The line under the chart follows the cursor without a render of the element. */
  readonly #cursorPlaced = (place?: Element): void => {
    this.#stopCursor?.();
    this.#cursorPlace = place;
    this.#stopCursor = place && this.#app.cursor.subscribe(() => this.#showCursor());
  };

  #showCursor(): void {
    const { selected, reading, answer, cursor } = this.#app;
    const drawn = this.#wheels;
    const place = this.#cursorPlace;
    if (!drawn || selected === undefined || !answer || !place) return;
    const { travel } = cursor;
    const sign = (mm: number) =>
      formatQuantity(mm, 'travel', reading.units, { language: reading.language, sign: 'always' }).text;
    const gap = (which: 'after' | 'before') =>
      show(gapIn(drawn, drawn.poses, selected, travel, which), 'travel', reading);
    const tight = answer.places[selected]!.decisive.isAhead
      ? ''
      : `, tightest steering ${show(gapIn(drawn, tightPoses(drawn, selected), selected, travel), 'travel', reading)}`;
    place.textContent = `At ${sign(travel)} of travel, straight ahead: ${gap('after')}${tight}; before ${gap('before')}`;
  }
}
