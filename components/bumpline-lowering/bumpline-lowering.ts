import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { ref } from 'lit/directives/ref.js';
import type { LoweringAnswer } from '../../core/answers/lowering.js';
import { type Curve, curveFrom } from '../../core/curve/curve.js';
import type { CurveData } from '../../core/curve/curve-data.js';
import { type CarDocument, cornerOf, EMPTY_CAR, givenPointCount } from '../../core/document/car.js';
import { HARD_POINT_KEYS, type HardPointKey } from '../../core/linkage/corner.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import { fromShown, toShown, type UnitSystem } from '../../core/quantity/units.js';
import { VERSION } from '../../core/version.js';
import { Announcer } from '../shared/announce.js';
import { AnswerController } from '../shared/answer-controller.js';
import { CarModel } from '../shared/car-model.js';
import { renderCautions } from '../shared/cautions.js';
import { ChartController } from '../shared/chart/chart.js';
import type { ChartModel } from '../shared/chart/model.js';
import { Cursor } from '../shared/cursor.js';
import { Drafts } from '../shared/drafts.js';
import type { BalloonState } from '../shared/drawing/items.js';
import { BumplineAnswerEvent, BumplineChangeEvent } from '../shared/events.js';
import { languageOf } from '../shared/language.js';
import { type LightDom, LightDomReader } from '../shared/light-dom.js';
import { renderSlider } from '../shared/slider.js';
import { renderNumbers } from '../shared/table.js';
import { sheetOfPath } from './bumpline-lowering.fields.js';
import { styles } from './bumpline-lowering.styles.js';
import {
  atCursor,
  dropText,
  type ElementState,
  hint,
  NAMES,
  ownership,
  problemText,
  type Reading,
  sentence,
  spoken,
  verb,
} from './bumpline-lowering.words.js';
import { FrontView } from './front-view.js';
import { InputSheet } from './input-sheet.js';
import { renderInputs, renderReasons } from './lists.js';
import { carOf, heightsOf, sourceOf } from './page-source.js';
import { chartModel, numbers, sliderTicks } from './views.js';

/** The slider's end, mm: lower than that, and a strut car has no bump travel left. A larger drop can be typed. */
const SLIDER_MM = 80;

/**
 * What does lowering do to camber, and what is left in bump?
 *
 * Data: the `corner` or `curve` property, `coefficients` and `domain`, a JSON script or a table of hard points inside; else an
 * invented example. What a user changes replaces it value by value.
 *
 * @element bumpline-lowering
 * @slot - A table of hard points or a JSON script: the data, and what readers without scripts see.
 * @fires bumpline-change - what a user changed
 * @fires bumpline-answer - a new answer stands on the sheet
 */
export class BumplineLowering extends LitElement {
  static readonly version = VERSION;
  static override styles = styles;
  static override properties = {
    drop: {},
    dropPlusMinus: { attribute: 'drop-plus-minus' },
    bumpTravel: { attribute: 'bump-travel' },
    coefficients: {},
    domain: {},
    units: {},
    angles: {},
    theme: { reflect: true },
    corner: { attribute: false },
    curve: { attribute: false },
    car: { attribute: false },
  };

  /** By how much hub centre to arch lip has shrunk; mm, or with a unit: `30`, `1.25 in`. */
  declare drop: string | undefined;
  /** Half-width of the drop's 95 % interval. */
  declare dropPlusMinus: string | undefined;
  /** Usable bump travel at reference height, at the wheel. Without it nothing is said of what is left. */
  declare bumpTravel: string | undefined;
  /** Of camber over travel, degrees and mm, constant term first: `-0.5 -0.0136 0.00011`. */
  declare coefficients: string | undefined;
  /** Travels between which the coefficients hold, mm: `-60 80`. */
  declare domain: string | undefined;
  /** Lengths in `mm` (default) or `in`. */
  declare units: UnitSystem['length'];
  /** Angles in `degrees` (default) or `arcminutes`. */
  declare angles: UnitSystem['angle'];
  /** `light` or `dark`; default: the reader's preference. */
  declare theme: 'light' | 'dark' | undefined;
  /** Hard points, as JSON of a corner. */
  declare corner: unknown;
  /** A fitted camber curve with its doubt. */
  declare curve: CurveData | undefined;
  /** State shared with other elements. */
  declare car: CarModel | undefined;

  readonly cursor = new Cursor();
  #private = new CarModel(EMPTY_CAR);
  #model = this.#private;
  #light: LightDom = { problems: [] };
  #pageProblems: { source: Problem[]; heights: Problem[] } = { source: [], heights: [] };
  #drafts = new Drafts();
  #answers = new AnswerController(this, 'lowering', () => this.#answered());
  #announcer = new Announcer(this);
  #sheet = new InputSheet(this, this.#drafts);
  #chartShown?: { answer: LoweringAnswer; reading: string; model: ChartModel };
  #curveOf?: { data: CurveData; curve: Curve };
  #speak = false;
  #chart = new ChartController(this, {
    cursor: this.cursor,
    model: () => this.#chartModel(),
    rest: () => this.#answers.answer?.drop ?? 0,
  });
  #drawing = new FrontView(this, {
    cursor: this.cursor,
    answer: () => this.#answers.answer,
    reading: () => this.reading,
    balloonState: (key) => this.#balloonState(key),
    onSelect: (key) => void this.#sheet.show(key),
  });

  constructor() {
    super();
    this.units = 'mm';
    this.angles = 'degrees';
    new LightDomReader(this, (light) => {
      this.#light = light;
      this.#loadSource();
    });
  }

  get model(): CarModel {
    return this.#model;
  }

  get reading(): Reading {
    return {
      units: { length: this.units === 'in' ? 'in' : 'mm', angle: this.angles === 'arcminutes' ? 'arcminutes' : 'degrees' },
      language: languageOf(this),
    };
  }

  /** The newest good answer. */
  get answer(): LoweringAnswer | undefined {
    return this.#answers.answer;
  }

  /** Everything that is wrong now, of the page's data and of what was typed. */
  get problems(): Problem[] {
    const { source, heights } = this.#pageProblems;
    const own = this.#model === this.#private ? [...source, ...heights] : [];
    // A field that cannot be read yet explains more than what the solver says of the value before it.
    return [...own, ...this.#drafts.problems, ...this.#answers.problems];
  }

  get state(): ElementState {
    const { answer, fault } = this.#answers;
    if (fault) return 'fault';
    if (this.problems.length > 0) return answer ? 'stale' : 'problem';
    if (!answer) return 'waiting';
    const { car } = this.#model;
    if (car.curve || car.whole !== undefined) return 'ready';
    const count = givenPointCount(car);
    return count === 0 ? 'example' : count < HARD_POINT_KEYS.length ? 'incomplete' : 'ready';
  }

  /** Resolves when everything given so far is answered and rendered. */
  get settled(): Promise<void> {
    return (async () => {
      do {
        await this.updateComplete;
        await this.#answers.settle();
      } while (!(await this.updateComplete));
    })();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#model.addEventListener('change', this.#modelChanged);
    // Back in the document after a move: what was dropped on the way out is asked again.
    if (this.hasUpdated) this.#ask();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#model.removeEventListener('change', this.#modelChanged);
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('car')) this.#useModel(this.car ?? this.#private);
    if (['corner', 'curve', 'coefficients', 'domain'].some((name) => changed.has(name))) this.#loadSource();
    if (['drop', 'dropPlusMinus', 'bumpTravel'].some((name) => changed.has(name))) this.#loadHeights();
    if (!this.hasUpdated) this.#ask();
  }

  #useModel(model: CarModel): void {
    if (model === this.#model) return;
    this.#model.removeEventListener('change', this.#modelChanged);
    this.#model = model;
    model.addEventListener('change', this.#modelChanged);
    this.#ask();
  }

  #loadSource(): void {
    const source = sourceOf({ ...this.#page(), light: this.#light });
    this.#pageProblems = { ...this.#pageProblems, source: source.problems };
    this.#private.replace((car) => carOf(source, { car: this.#heightsIn(car), problems: [] }));
    this.requestUpdate();
  }

  #loadHeights(): void {
    const heights = heightsOf(this);
    this.#pageProblems = { ...this.#pageProblems, heights: heights.problems };
    this.#private.replace(({ drop: _d, dropPlusMinus: _p, bumpTravel: _b, ...car }) => ({ ...car, ...heights.car }));
  }

  #page() {
    const { corner, curve, coefficients, domain } = this;
    return { corner, curve, coefficients, domain };
  }

  #heightsIn({ drop, dropPlusMinus, bumpTravel }: CarDocument) {
    return { drop, ...(dropPlusMinus !== undefined && { dropPlusMinus }), ...(bumpTravel !== undefined && { bumpTravel }) };
  }

  readonly #modelChanged = (): void => {
    this.#ask();
    this.requestUpdate();
  };

  #ask(): void {
    if (!this.isConnected) return;
    const { car } = this.#model;
    const { drop, dropPlusMinus, bumpTravel } = car;
    this.#answers.ask({
      source: car.curve ?? { kind: 'corner', corner: cornerOf(car) },
      drop,
      ...(dropPlusMinus !== undefined && { dropPlusMinus }),
      ...(bumpTravel !== undefined && { bumpTravel }),
    });
  }

  #answered(): void {
    const answer = this.#answers.answer!;
    this.cursor.set(answer.drop, 'drop');
    if (this.#speak) this.#announcer.announce(spoken(answer, this.reading));
    this.dispatchEvent(new BumplineAnswerEvent(answer));
  }

  /** A user did something: tells the page, and has the next answer spoken. */
  changed(path: string, value: unknown): void {
    this.#speak = true;
    this.dispatchEvent(new BumplineChangeEvent(path, value));
  }

  #setDrop(drop: number): void {
    this.#drafts.drop('drop');
    this.#model.update('drop', (car) => ({ ...car, drop }), 'drop');
    this.changed('drop', drop);
  }

  #balloonState(key: string): BalloonState {
    if (this.problems.some((problem) => [problem.path, problem.other].some((path) => path && sheetOfPath(path)?.sheet.key === key))) {
      return 'problem';
    }
    const { car } = this.#model;
    if (car.whole !== undefined || car.given.points[key as HardPointKey]) {
      return this.#answers.answer?.contributions[0]?.id === key && givenPointCount(car) > 0 ? 'next' : 'yours';
    }
    return 'example';
  }

  #chartModel(): ChartModel | undefined {
    const { answer } = this.#answers;
    if (!answer) return undefined;
    const reading = JSON.stringify(this.reading);
    if (this.#chartShown?.answer !== answer || this.#chartShown.reading !== reading) {
      this.#chartShown = { answer, reading, model: chartModel(answer, this.reading) };
    }
    return this.#chartShown.model;
  }

  protected override render(): TemplateResult {
    const { state, reading } = this;
    const { answer } = this.#answers;
    const { car } = this.#model;
    return html`<article class="sheet" data-state=${state} aria-label="What lowering does to camber">
        ${this.#renderHead(car)} ${this.#renderSentence(state)} ${this.#renderProblems(state)}
        <div class="body ${car.curve ? 'no-drawing' : ''}">
          ${car.curve ? nothing : html`<div class="drawing-place" ${ref(this.#drawing.placed)}></div>`}
          <div class="column">
            ${this.#renderSlider(car)}
            ${answer ? html`<p class="hint" ?hidden=${!hint(answer, car, reading)}>${hint(answer, car, reading)}</p>` : nothing}
            <div class="chart-place">${this.#chart.render()}<p class="at-cursor" ${ref(this.#cursorPlaced)}></p></div>
            <div class="more">
              ${car.curve ? nothing : renderInputs(car, reading, (key) => void this.#sheet.show(key))}
              ${answer ? renderReasons(answer, reading) : nothing} ${answer ? this.#renderNumbers(answer) : nothing}
            </div>
          </div>
          ${renderCautions(['afterHeight', 'predicted', 'rules'])}
        </div>
        ${state === 'problem' || state === 'fault' || state === 'waiting' ? html`<slot></slot>` : nothing}
      </article>
      ${this.#sheet.render()} ${this.#announcer.render()}`;
  }

  #renderHead(car: CarDocument): TemplateResult {
    const { undoLabel } = this.#model;
    const isInch = this.units === 'in';
    const isMinutes = this.angles === 'arcminutes';
    return html`<header class="head">
      <p><b>${car.cornerName}</b> · <span class="owner">${ownership(car)}</span></p>
      ${undoLabel ? html`<button class="quiet" @click=${() => this.#model.undo()}>${NAMES.undo}<span class="visually-hidden">: ${undoLabel}</span></button>` : nothing}
      <button
        class="quiet"
        aria-label="Lengths in ${isInch ? 'inches' : 'millimetres'}: change to ${isInch ? 'millimetres' : 'inches'}"
        @click=${() => {
          this.units = isInch ? 'mm' : 'in';
        }}
      >
        ${isInch ? 'in' : 'mm'}
      </button>
      <button
        class="quiet"
        aria-label="Angles in ${isMinutes ? 'degrees and minutes' : 'degrees'}: change to ${isMinutes ? 'degrees' : 'degrees and minutes'}"
        @click=${() => {
          this.angles = isMinutes ? 'degrees' : 'arcminutes';
        }}
      >
        ${isMinutes ? '° ′' : '0.0°'}
      </button>
    </header>`;
  }

  #renderSentence(state: ElementState): TemplateResult {
    const { answer } = this.#answers;
    const { reading } = this;
    const { drop } = this.#model.car;
    const typed = this.#drafts.text('drop');
    const text = typed ?? (drop < 0 && !answer ? '−' : '') + dropText(drop, reading);
    const isBad = this.problems.some(({ path }) => path === 'drop');
    return html`<p class="sentence">
      ${verb(drop)}
      <input
        class="drop"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        enterkeyhint="done"
        aria-label=${NAMES.drop}
        aria-invalid=${isBad ? 'true' : 'false'}
        aria-describedby=${isBad ? 'problems' : nothing}
        size=${Math.max(4, text.length)}
        .value=${live(text)}
        @focus=${(event: FocusEvent) => (event.target as HTMLInputElement).select()}
        @input=${(event: InputEvent) => this.#dropTyped((event.target as HTMLInputElement).value)}
        @change=${() => this.#dropLeft()}
        @keydown=${(event: KeyboardEvent) => event.key === 'Enter' && (event.target as HTMLElement).blur()}
      /><span class="says ${state === 'stale' || state === 'fault' ? 'dimmed' : ''}"
        >${
          answer
            ? sentence(answer, reading).map(({ text, role }) => (role ? html`<b class=${role}>${text}</b>` : text))
            : state === 'waiting'
              ? html` … <small>${NAMES.waiting}</small>`
              : nothing
        }</span
      >
    </p>`;
  }

  #dropTyped(text: string): void {
    const { car } = this.#model;
    const drop = this.#drafts.type('drop', text, 'drop', this.reading.units);
    // While the car is raised the field shows a bare amount: a bare amount typed there is one too.
    if (drop !== undefined && drop !== car.drop) {
      this.#model.update('drop', (before) => ({ ...before, drop }), 'drop');
      this.changed('drop', drop);
    }
    this.requestUpdate();
  }

  #dropLeft(): void {
    this.#drafts.leave('drop', 'drop', this.reading.units);
    this.#model.endStep();
    this.requestUpdate();
  }

  #renderProblems(state: ElementState): TemplateResult | typeof nothing {
    if (state === 'fault') {
      return html`<div class="problems" id="problems" role="alert">
        <p>${NAMES.fault}</p>
        <p class="fault-text">${this.#answers.fault}</p>
        <button class="button" @click=${() => this.#ask()}>${NAMES.retry}</button>
      </div>`;
    }
    const { problems, reading } = this;
    if (problems.length === 0) return nothing;
    return html`<div class="problems" id="problems" role="alert">
      <ul>
        ${problems.map((problem) => {
          const sheet = sheetOfPath(problem.path)?.sheet;
          return html`<li>
            ${problemText(problem, reading)}
            ${sheet && !this.#sheet.open ? html`<button class="button" @click=${() => void this.#sheet.show(sheet.key)}>${sheet.title}</button>` : nothing}
          </li>`;
        })}
      </ul>
      ${state === 'stale' ? html`<p>${NAMES.stale}</p>` : nothing}
    </div>`;
  }

  #renderSlider(car: CarDocument): TemplateResult {
    const { reading } = this;
    const { units } = reading;
    const shown = (mm: number) => toShown(mm, 'length', units);
    const { answer } = this.#answers;
    const domainEnd = answer ? answer.curve.domain[1] : SLIDER_MM;
    const end = Math.max(Math.min(SLIDER_MM, Math.floor(domainEnd)), Math.ceil(car.drop));
    return renderSlider({
      id: 'drop-slider',
      label: NAMES.slider,
      value: shown(car.drop),
      min: shown(Math.min(0, Math.floor(car.drop))),
      max: shown(end),
      step: units.length === 'in' ? 0.05 : 1,
      valueText: (value) => formatQuantity(fromShown(value, 'length', units), 'drop', units, { language: reading.language }).text,
      ticks: sliderTicks(answer, reading),
      onInput: (value) => this.#setDrop(fromShown(value, 'length', units)),
      onChange: () => this.#model.endStep(),
    });
  }

  #renderNumbers(answer: LoweringAnswer): TemplateResult {
    const { units } = this.reading;
    return renderNumbers({
      id: 'numbers',
      caption: `Camber over wheel travel, ${this.#model.car.cornerName.toLowerCase()}`,
      ...numbers(answer, this.reading),
      cursor: this.cursor,
      travelOf: ([travel]) => fromShown(Number(travel), 'length', units),
      open: this.#chart.state === 'absent',
      onStatus: (text) => this.#announcer.announce(text),
    });
  }

  #stopCursor: (() => void) | undefined;
  /** The line under the chart follows the cursor without a render of the element. */
  readonly #cursorPlaced = (place?: Element): void => {
    this.#stopCursor?.();
    this.#stopCursor = place && this.cursor.subscribe(() => this.#showCursor(place));
  };

  #showCursor(place: Element): void {
    const { answer } = this.#answers;
    const { travel } = this.cursor;
    if (!answer || travel === answer.drop) {
      place.textContent = '';
      return;
    }
    if (this.#curveOf?.data !== answer.curve) this.#curveOf = { data: answer.curve, curve: curveFrom(answer.curve) };
    const { curve } = this.#curveOf;
    place.textContent = atCursor(travel, curve.value(travel), curve.change(travel, 0), this.reading);
  }
}
