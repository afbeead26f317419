import { html, noChange, nothing, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import type { LoweringAnswer } from '../../core/answers/lowering.js';
import { type Curve, curveFrom } from '../../core/curve/curve.js';
import { isWishbone } from '../../core/document/car.js';
import type { StrutPointKey } from '../../core/linkage/corner.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { parseQuantity } from '../../core/quantity/parse.js';
import { fromShown, toShown } from '../../core/quantity/units.js';
import { renderCautions } from '../shared/cautions.js';
import { ChartController } from '../shared/chart/chart.js';
import type { ChartModel } from '../shared/chart/model.js';
import type { BalloonState } from '../shared/drawing/items.js';
import { renderSlider } from '../shared/slider.js';
import { renderNumbers } from '../shared/table.js';
import { sheetOfPath } from './bumpline-lowering.fields.js';
import { atCursor, hint, NAMES, problemText } from './bumpline-lowering.labels.js';
import { FrontView } from './front-view.js';
import { InputSheet } from './input-sheet.js';
import { renderInputs, renderReasons } from './lists.js';
import type { LoweringApp } from './lowering-app.js';
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
    app.drafts.parse = parseQuantity;
    this.#sheet = new InputSheet(app);
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
      balloonState: (key) => this.#balloonState(key),
      onSelect: (key) => void this.#sheet.show(key),
    });
  }

  /** Resolves when everything that comes late, but for the chart, has come. */
  get settled(): Promise<void> {
    return this.#drawing.first;
  }

  #balloonState(key: string): BalloonState {
    const { problems, car, answer } = this.#app;
    const isOfKey = (path: string | undefined) => path !== undefined && sheetOfPath(path)?.sheet.key === key;
    if (problems.some(({ path, other }) => isOfKey(path) || isOfKey(other))) return 'problem';
    const isGiven = car.whole !== undefined || car.given.points[key as StrutPointKey] !== undefined;
    if (!isGiven) return 'example';
    return answer?.contributions[0]?.id === key ? 'next' : 'yours';
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

  render(): TemplateResult {
    const { answer, car, reading } = this.#app;
    const next = answer && hint(answer, car, reading);
    const isStrut = answer?.motion?.kind === 'strut';
    const isEdited = !car.curve && !isWishbone(car);
    return html`${this.#renderProblems()}
      ${
        answer
          ? html`<div class="body ${isStrut ? '' : 'no-drawing'}">
              ${isStrut ? html`<div class="drawing-place" ${ref(this.#drawing.placed)}></div>` : nothing}
              <div class="column">
                ${this.#renderSlider()} ${next ? html`<p class="hint">${next}</p>` : nothing}
                <div class="chart-place">
                  ${this.#chart.render()}
                  <p class="at-cursor" ${ref(this.#cursorPlaced)}></p>
                </div>
                <div class="more">
                  ${isEdited ? this.#folded('.inputs', () => this.#renderInputs()) : nothing}
                  ${this.#folded('.why', () => renderReasons(answer, reading))}
                  ${this.#folded('.numbers', () => this.#renderNumbers(answer))}
                </div>
              </div>
              ${renderCautions(['afterHeight', 'predicted', 'rules'])}
            </div>`
          : isEdited
            ? html`<div class="more">${this.#renderInputs()}</div>`
            : nothing
      }`;
  }

  #renderInputs(): TemplateResult {
    const { car, reading } = this.#app;
    return renderInputs(car, reading, (key) => void this.#sheet.show(key));
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
    const { model, host } = this.#app;
    const { undoLabel } = model;
    const isInch = host.units === 'in';
    const isMinutes = host.angles === 'arcminutes';
    return html`${
      undoLabel
        ? html`<button type="button" class="quiet" @click=${() => model.undo()}>
            ${NAMES.undo}<span class="visually-hidden">: ${undoLabel}</span>
          </button>`
        : nothing
    }
      <button
        type="button"
        class="quiet"
        @click=${() => {
          host.units = isInch ? 'mm' : 'in';
        }}
      >
        ${isInch ? 'in' : 'mm'}<span class="visually-hidden">${isInch ? NAMES.toMillimetres : NAMES.toInches}</span>
      </button>
      <button
        type="button"
        class="quiet"
        @click=${() => {
          host.angles = isMinutes ? 'degrees' : 'arcminutes';
        }}
      >
        ${isMinutes ? '0°00′' : '0.00°'}<span class="visually-hidden">${isMinutes ? NAMES.toDegrees : NAMES.toMinutes}</span>
      </button>`;
  }

  #renderProblems(): TemplateResult | typeof nothing {
    const { state, fault, problems, reading } = this.#app;
    if (state === 'fault') {
      return html`<div class="problems" id="problems" role="alert">
        <p>${NAMES.fault}</p>
        <p class="fault-text">${fault}</p>
        <button type="button" class="button" @click=${() => this.#app.ask()}>${NAMES.retry}</button>
      </div>`;
    }
    if (problems.length === 0) return nothing;
    return html`<div class="problems" id="problems" role="alert">
      <ul>
        ${problems.map((problem) => {
          const sheet = isWishbone(this.#app.car) ? undefined : sheetOfPath(problem.path)?.sheet;
          return html`<li>
            ${problemText(problem, reading)}
            ${
              sheet
                ? html`<button type="button" class="button" @click=${() => void this.#sheet.show(sheet.key)}>
                    ${NAMES.correct}
                  </button>`
                : nothing
            }
          </li>`;
        })}
      </ul>
      ${state === 'stale' ? html`<p>${NAMES.stale}</p>` : nothing}
    </div>`;
  }

  #renderSlider(): TemplateResult {
    const { reading, car, answer, model } = this.#app;
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
      onChange: () => model.endStep(),
    });
  }

  #renderNumbers(answer: LoweringAnswer): TemplateResult {
    const { reading, car, cursor, announcer } = this.#app;
    return renderNumbers({
      id: 'numbers',
      caption: `Camber over wheel travel, ${car.cornerName.toLowerCase()}`,
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
