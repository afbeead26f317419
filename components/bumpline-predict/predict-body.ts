import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { tellsToe } from '../../core/answers/car-request.js';
import { isUsers } from '../../core/document/provenance.js';
import { readSetsOf } from '../../core/document/read-sets.js';
import { startedOver } from '../../core/document/start-over.js';
import { fromShown } from '../../core/quantity/units.js';
import { renderLinkInputs } from '../bumpline-geometry/own-points.js';
import { renderSets } from '../bumpline-geometry/set-list.js';
import { ChartController } from '../chart/chart.js';
import { CursorLine } from '../chart/cursor-line.js';
import type { ChartModel } from '../chart/model.js';
import { renderSlider } from '../controls/slider.js';
import { renderNumbers } from '../controls/table.js';
import { renderWhy } from '../element/doubt-lists.js';
import { focusSentence } from '../element/keep-focus.js';
import { LastMade } from '../element/last-made.js';
import { RESTS } from '../element/rests.labels.js';
import { isOld } from '../element/says.js';
import { SheetBody, type ShownParts } from '../element/sheet-body.js';
import { InputSheet } from '../inputs/input-sheet.js';
import type { PasteSlot } from '../paste/paste-slot.js';
import { onLinks } from '../publish/rests-on.js';
import { renderOwnActions } from './actions.js';
import { Agreement } from './agreed.js';
import { NAMES } from './bumpline-predict.labels.js';
import { FIRST } from './bumpline-predict.words.js';
import { atCursor, chartModel, type Lines, linesOf, numbers } from './chart.js';
import { renderFigures } from './figures.js';
import { renderFound, renderLimits } from './found.js';
import { renderLinksChoice } from './links-choice.js';
import { Meanwhile } from './meanwhile.js';
import type { More } from './more.js';
import { renderNeeds } from './needs.js';
import { renderNext } from './next.js';
import { asStock, type IntoParts } from './pasted-sets.js';
import { pasteFitted, pasteStock } from './pastes.js';
import { bodyStyles } from './predict-body.styles.js';
import { ASKED_SHEETS, predictKit } from './predict-kit.js';
import type { PredictOnSheet, PredictView } from './predict-view.js';
import { renderProblems } from './problems.js';
import { renderRecord } from './record-panel.js';

export { More } from './more.js';

/** Ends of the slider, mm. */
const SLIDER_MM = [-20, 60] as const;

/** Everything under the sentence: problems, chart, what the change is made of, what the readings say, lists, and the sheet that a number opens. */
export class PredictBody extends SheetBody<PredictView> {
  readonly styles = bodyStyles;
  readonly #sheet: InputSheet;
  readonly #stock: PasteSlot;
  readonly #fitted: PasteSlot;
  /** Pasted readings that went to a set of parts, until it is said that they should not have. */
  #into: IntoParts | undefined;
  readonly #agreement: Agreement;
  readonly #more: More;
  readonly #meanwhile: Meanwhile;
  readonly #chart: ChartController;
  readonly #line: CursorLine;
  readonly #lines = new LastMade<Lines>();
  readonly #charted = new LastMade<ChartModel>();

  constructor(view: PredictView, more: More) {
    super(view);
    this.#more = more;
    const { host, cursor } = view;
    this.#sheet = new InputSheet(view, predictKit(view));
    this.#stock = pasteStock(view, (into) => {
      this.#into = into;
    });
    this.#fitted = pasteFitted(view);
    this.#agreement = new Agreement(view);
    this.#meanwhile = new Meanwhile(view);
    const model = () => this.#chartModel();
    this.#chart = new ChartController(host, { cursor, model, rest: () => view.answer?.drop ?? 0 });
    this.#line = new CursorLine(host, cursor, (travel) => this.#atCursor(travel));
  }

  override get pictures() {
    return [{ kind: 'chart', of: this.#chart }] as const;
  }

  override get restsOn() {
    const { learnt, answer } = this.view;
    const { stock, fitted } = readSetsOf(learnt.car);
    // What was read with the parts that are asked about is compared with the answer, and not in it.
    return onLinks(learnt.car, [...stock, ...fitted.filter((one) => one !== answer?.set?.setup)]);
  }

  override get settled(): Promise<unknown> {
    return Promise.all([this.#more.settle(), this.#agreement.settle(), this.#meanwhile.settle(), super.settled]);
  }

  override retry(): void {
    super.retry();
    this.#agreement.retry();
    this.#more.retry();
  }

  /** Where the car is put now: the chart follows a drag before the answer does. */
  get #drop(): number {
    const { problems, car, answer } = this.view;
    return problems.length > 0 ? answer!.drop : car.drop;
  }

  #linesOf(answer: PredictOnSheet): Lines {
    const { moved } = this.view;
    const drop = this.#drop;
    const { stock } = this.#more;
    return this.#lines.of([answer, moved, drop, stock], () => linesOf(answer, { moved, drop, stock }));
  }

  #chartModel(): ChartModel | undefined {
    const { answer, display } = this.view;
    if (!answer) return undefined;
    const lines = this.#linesOf(answer);
    const agreed = this.#agreement.found;
    const drop = this.#drop;
    return this.#charted.of([answer, lines, agreed, JSON.stringify(display)], () =>
      chartModel(answer, lines, { drop, display, agreed, stock: this.#more.stock }),
    );
  }

  #atCursor(travel: number): string | undefined {
    const { answer, display } = this.view;
    return answer && travel !== answer.drop ? atCursor(travel, this.#linesOf(answer), display) : undefined;
  }

  protected renderProblems(): TemplateResult {
    const onShow = (key: string) => void this.#sheet.show(key);
    return html`${renderProblems(this.view, onShow)} ${this.#stock.render()} ${this.#fitted.render()} ${this.#renderInto()}`;
  }

  protected readonly parts: ShownParts = {
    chart: () => {
      this.#ask();
      return html`${this.#chart.renderPlace(this.#line.render())} <p class="note legend">${this.#legend(this.view.answer!)}</p>`;
    },
    table: () => {
      this.#ask();
      return renderFigures(this.view.answer!, this.#more.found, this.view.display);
    },
  };

  #ask(): void {
    this.#more.ask();
    this.#agreement.ask();
    this.#meanwhile.ask();
  }

  protected renderWhole(): TemplateResult {
    const { view } = this;
    const { answer } = view;
    this.#ask();
    const onShow = (key: string) => void this.#sheet.show(key);
    // What readings say of themselves is of those that are there, and of no others.
    const isBefore = isOld(view);
    return html`${this.renderProblems()}
      ${
        answer
          ? html`<div class="body">
              <div class="column">
                ${this.#chart.renderPlace(this.#line.render())}
                <p class="note legend">${this.#legend(answer)}</p>
                ${this.#renderSlider()} ${this.#renderQuantity()} ${renderSets(view, undefined, undefined, NAMES.isAsked)}
                ${this.#renderActions()}
              </div>
              <div class="rest">
                ${renderFigures(answer, this.#more.found, view.display)}
                ${isBefore ? nothing : renderNext(this.#more.found?.next, answer, view.display)}
                ${renderRecord(view, answer, this.#agreement, () => void this.#fitted.open())}
                ${isBefore ? nothing : renderFound(view, answer)} ${renderLinksChoice(view)}
                <div class="more">
                  ${this.late(() => this.folds(['limits', () => renderLimits(view)], ['inputs', () => renderLinkInputs(RESTS.inputs, ASKED_SHEETS, view, onShow)], ['why', () => renderWhy(answer.contributions, view.display.language, RESTS, html`<p class="note">${NAMES.doubtNote} ${NAMES.rigid} ${NAMES.aligned}</p>`)], ['numbers', () => this.#renderNumbers(answer)]))}
                </div>
              </div>
            </div>`
          : this.#renderUnknown()
      }`;
  }

  /** Where pasted readings went, and the way back. */
  #renderInto(): TemplateResult | typeof nothing {
    const into = this.#into;
    const { view } = this;
    if (!into || !view.car.setups?.some(({ name, readings }) => name === into.set && readings.length > 0))
      return nothing;
    const back = () => {
      this.#into = undefined;
      view.change('setups', NAMES.into.step, (car) => asStock(car, into));
      view.endStep();
    };
    return html`<div class="into" role="status">
      <p>${NAMES.into.told(into.read.name, into.set)}</p>
      <button type="button" class="button as-stock" @click=${back}>${NAMES.into.back}</button>
    </div>`;
  }

  #legend({ measured, measuredAt, drop, over }: PredictOnSheet): string {
    const [low, high] = measured.map((end) => end + measuredAt) as [number, number];
    const isBeyond = Math.max(drop, drop + over) > high || Math.min(drop, drop + over) < low;
    return [
      this.view.learnt.isExample ? NAMES.legendExample : NAMES.legend,
      ...(this.#agreement.found ? [NAMES.legendFitted] : []),
      ...(isBeyond ? [NAMES.legendBeyond] : []),
    ].join(' ');
  }

  #renderSlider(): TemplateResult {
    const { view } = this;
    const { car, display } = view;
    const { drop } = car;
    return renderSlider({
      id: 'drop-slider',
      label: NAMES.slider,
      quantity: 'drop',
      display,
      value: drop,
      min: Math.min(SLIDER_MM[0], Math.floor(drop)),
      max: Math.max(SLIDER_MM[1], Math.ceil(drop)),
      ticks: [{ at: 0, label: NAMES.heights.stock, kind: 'plain' }],
      onInput: (mm) => view.changeDrop(Math.round(mm * 10) / 10),
      onChange: () => view.endDrag(),
      step: this.stepOf('drop'),
    });
  }

  /** Camber or toe, where both can be told. */
  #renderQuantity(): TemplateResult | typeof nothing {
    const { view } = this;
    const { answer, quantity } = view;
    if (!answer) return nothing;
    if (!tellsToe(answer.source)) return html`<p class="note no-toe">${NAMES.of.unknown}</p>`;
    const choose = ({ target }: Event) => {
      const of = (target as HTMLSelectElement).value as 'camber' | 'toe';
      view.set(FIRST.ofStep, { of: of === 'camber' ? undefined : of });
      view.endStep();
    };
    return html`<label class="fitted-choice">${NAMES.of.legend}
      <select class="quiet of" @change=${choose}>
        ${(['camber', 'toe'] as const).map((of) => html`<option value=${of} .selected=${live(of === quantity)}>${NAMES.of[of]}</option>`)}
      </select></label
    >`;
  }

  /** What is missing, or why nothing can be told now, and the ways in. */
  #renderUnknown(): TemplateResult {
    const { view } = this;
    const isMissing = view.state === 'incomplete';
    return html`<div class="column">
      ${isMissing ? html`${this.#meanwhile.render()} ${renderNeeds(view)}` : nothing}
      ${view.isUnread ? html`<div class="actions">${this.renderHistory()}</div>` : this.#renderActions()}
    </div>`;
  }

  /** The ways in to one's own numbers, and the way back. */
  #renderActions(): TemplateResult {
    return html`<div class="actions">
      ${renderOwnActions(
        this.view,
        () => void this.#stock.open(),
        (key) => void this.#sheet.show(key),
      )}
      ${this.renderHistory()} ${this.#renderStartOver()}
    </div>`;
  }

  /** Back to the page's car, or the example, in one step that can be taken back. */
  #renderStartOver(): TemplateResult | typeof nothing {
    const { view } = this;
    if (view.learnt.isExample || !(isUsers(view.car, 'corner') || isUsers(view.car, 'setups'))) return nothing;
    const begin = () => {
      this.#into = undefined;
      view.change('given', NAMES.startOver.step, startedOver);
      view.endStep();
      void focusSentence(view.host, true);
    };
    return html`<button type="button" class="text-button start-over" @click=${begin}>${NAMES.startOver.name}</button>`;
  }

  renderSheet(): TemplateResult {
    return this.#sheet.render();
  }

  #renderNumbers(answer: PredictOnSheet): TemplateResult {
    const { display, car, cursor, announcer } = this.view;
    return renderNumbers({
      id: 'numbers',
      caption: NAMES.numbersOf(car.cornerName),
      ...numbers(answer, this.#linesOf(answer), display),
      cursor,
      travelOf: ([travel]) => fromShown(Number(travel), 'length', display.units),
      onStatus: (text) => announcer.announce(text),
    });
  }

  protected readAgain(): void {
    this.view.sentence.drop.readAgain();
    this.view.sentence.over.readAgain();
  }
}
