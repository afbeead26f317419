import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { ref } from 'lit/directives/ref.js';
import { isWishbone } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { toeSetupOf } from '../../core/document/setup-in-use.js';
import { fromShown } from '../../core/quantity/units.js';
import { firstMissingPoint, linkList } from '../bumpline-geometry/geometry-kit.js';
import { ChartController } from '../chart/chart.js';
import { CursorLine } from '../chart/cursor-line.js';
import type { ChartModel } from '../chart/model.js';
import { renderNumbers } from '../controls/table.js';
import { DrawingSlot } from '../drawing/drawing-slot.js';
import { renderCautions } from '../element/cautions.js';
import { renderNotIn, renderShares } from '../element/doubt-lists.js';
import { notInDoubt } from '../element/doubts.words.js';
import { LastMade } from '../element/last-made.js';
import { SheetBody } from '../element/sheet-body.js';
import { renderInputRow } from '../inputs/input-row.js';
import { InputSheet } from '../inputs/input-sheet.js';
import { LINKS } from '../inputs/links.labels.js';
import { NAMES } from './bumpline-toe.labels.js';
import type { Cure } from './cure.js';
import { movedText } from './cure.words.js';
import { renderCure, renderMoved, renderSteered } from './cure-panel.js';
import { PasteToe } from './paste-toe.js';
import { renderProblems } from './problems.js';
import { renderShim } from './shim-panel.js';
import { bodyStyles } from './toe-body.styles.js';
import { toeDrawing } from './toe-drawing.js';
import { TOLD_SHEETS, toeKit } from './toe-kit.js';
import type { ToeOnSheet, ToeView } from './toe-view.js';
import { atCursor, type Changed, changedBy, chartModel, numbers } from './views.js';

export { Cure } from './cure.js';

/** Everything under the sentence: problems, drawing, what flattens toe, chart, lists, cautions, and the sheet that a number opens. */
export class ToeBody extends SheetBody<ToeView> {
  readonly styles = bodyStyles;
  readonly #sheet: InputSheet;
  readonly #paste: PasteToe;
  readonly #cure: Cure;
  readonly #chart: ChartController;
  readonly #line: CursorLine;
  readonly #drawing: DrawingSlot;
  readonly #charted = new LastMade<ChartModel>();
  readonly #changed = new LastMade<{ now?: Changed | undefined; other?: Changed | undefined }>();

  constructor(view: ToeView, cure: Cure) {
    super(view);
    const { host, cursor } = view;
    this.#sheet = new InputSheet(view, toeKit(view));
    this.#paste = new PasteToe(view);
    this.#cure = cure;
    this.#drawing = new DrawingSlot(host, { cursor, ...toeDrawing(view, () => this.#cure.found) });
    this.#line = new CursorLine(host, cursor, (travel) => this.#atCursor(travel));
    const rest = () => view.answer?.drop ?? 0;
    this.#chart = new ChartController(host, { cursor, rest, model: () => this.#chartModel() });
  }

  override get settled(): Promise<unknown> {
    return Promise.all([this.#cure.settle(), this.#drawing.first]).then(() => super.settled);
  }

  override retry(): void {
    this.#cure.retry();
  }

  /** Toe with what is moved, and of the other wheel where the steering is turned. */
  get #lines(): { now?: Changed | undefined; other?: Changed | undefined } {
    const { answer, answeredCar: car, display } = this.view;
    const { found } = this.#cure;
    if (!answer || !found) return {};
    const { amount = 0 } = car.toe ?? {};
    return this.#changed.of([answer, found, amount, JSON.stringify(display)], () => ({
      now:
        amount === 0 && found.rack === 0
          ? undefined
          : changedBy(found, answer, amount, amount === 0 ? NAMES.steered.this : movedText(amount, display)),
      other: found.rack === 0 ? undefined : changedBy(found, answer, amount, NAMES.steered.other, 'other'),
    }));
  }

  #chartModel(): ChartModel | undefined {
    const { answer, display } = this.view;
    const lines = this.#lines;
    return (
      answer &&
      this.#charted.of([answer, lines, JSON.stringify(display)], () =>
        chartModel(answer, display, lines.now, lines.other),
      )
    );
  }

  #atCursor(travel: number): string | undefined {
    const { answer, display } = this.view;
    return answer && travel !== answer.drop ? atCursor(travel, answer, display) : undefined;
  }

  render(): TemplateResult {
    const { answer, isRead } = this.view;
    this.#cure.ask();
    return html`${renderProblems(this.view, (key) => void this.#sheet.show(key))} ${this.#paste.render()}
      ${
        answer
          ? html`<div class="body ${isRead ? 'no-drawing' : ''}">
              ${isRead ? nothing : html`<div class="drawing-place" ${ref(this.#drawing.placed)}></div>`}
              <div class="column">
                ${isRead ? nothing : renderMoved(this.view, this.#cure, this.stepOf('toe.amount'))}
                <div class="chart-place">${this.#chart.render()} ${this.#line.render()}</div>
                ${this.#renderSets()} ${isRead ? nothing : renderSteered(this.view, this.#cure, this.stepOf('toe.rack'))} ${this.#renderActions()}
              </div>
              <div class="rest">
                ${isRead ? renderShim(this.view, (key) => void this.#sheet.show(key)) : renderCure(this.view, this.#cure)}
                <p class="note">${NAMES.links}</p>
                <div class="more">${this.late(() => this.#renderLists(answer))}</div>
              </div>
              ${renderCautions(['steering', ...(isRead ? (['springOut', 'carried'] as const) : []), 'stands', 'rules'])}
            </div>`
          : html`${this.#renderUnknown()}
              <div class="actions">${this.renderHistory()}</div>`
      }`;
  }

  /** Where nothing tells toe yet, how it becomes known. */
  #renderUnknown(): TemplateResult | typeof nothing {
    const { state, car } = this.view;
    if (state !== 'incomplete') return nothing;
    const { title, driveway, curve } = NAMES.unknown;
    return html`<div class="column">
      <p><b>${title}</b></p>
      <p>${car.curve ? curve : driveway}</p>
      ${this.#renderActions()} ${renderCautions(['springOut', 'carried', 'stands', 'rules'])}
    </div>`;
  }

  /** Which parts are on the links. */
  #renderSets(): TemplateResult | typeof nothing {
    const { sets, shown, isRead } = this.view;
    if (isRead) return nothing;
    const choose = ({ target }: Event) => this.view.choose(Number((target as HTMLSelectElement).value));
    return html`<label class="fitted-choice"
      >${NAMES.parts}
      <select class="quiet" @change=${choose}>
        <option value="-1" .selected=${live(shown < 0)}>${NAMES.noParts}</option>
        ${sets.map(({ setup }, i) => html`<option value=${i} .selected=${live(i === shown)}>${setup.name}</option>`)}
      </select></label
    >`;
  }

  /** The ways in to one's own numbers, and the way back. */
  #renderActions(): TemplateResult {
    const { car, isRead } = this.view;
    const next = firstMissingPoint(car);
    const isBegun = isUsers(car, 'corner') && car.by === 'points';
    const label = isBegun ? (next ? NAMES.next(next.title) : NAMES.edit) : NAMES.points;
    const open = () => void this.#sheet.show(next?.key ?? 'lowerArm.front');
    return html`<div class="actions">
      <button type="button" class="button paste ${isBegun ? '' : 'main'}" @click=${() => void this.#paste.open()}>${NAMES.paste}</button>
      ${
        isRead || isWishbone(car)
          ? nothing
          : html`<button type="button" class="button own ${isBegun && next ? 'main' : ''}" @click=${open}>${label}</button>`
      }
      ${this.renderHistory()}
    </div>`;
  }

  #renderLists(answer: ToeOnSheet): TemplateResult {
    return html`${this.folded('.inputs', () => this.#renderInputs())}
    ${this.folded('.why', () => this.#renderWhy(answer))}
    ${this.folded('.numbers', () => this.#renderNumbers(answer))}`;
  }

  #renderInputs(): TemplateResult {
    const { car, display, isRead } = this.view;
    const sheets = isRead || isWishbone(car) ? TOLD_SHEETS : [...TOLD_SHEETS, ...linkList(car)];
    return html`<details class="inputs">
      <summary>${NAMES.inputs}</summary>
      ${isRead ? nothing : html`<p class="note">${LINKS.axes}</p>`}
      <ul>
        ${sheets.map((sheet) =>
          renderInputRow(sheet, {
            car,
            display,
            standIn: sheet.standIn?.(car),
            onSelect: (key) => void this.#sheet.show(key),
          }),
        )}
      </ul>
    </details>`;
  }

  #renderWhy({ contributions, curve }: ToeOnSheet): TemplateResult {
    const { answeredCar: car, display, isRead } = this.view;
    return html`<details class="why">
      <summary>${NAMES.why}</summary>
      ${
        contributions.length > 0
          ? html`${renderShares(contributions, display.language)}
              <p class="note">${NAMES.doubtNote} ${NAMES.band}</p>
              ${isRead ? renderNotIn(notInDoubt(curve.data, toeSetupOf(car), display)) : nothing}`
          : html`<p class="note">${NAMES.noDoubt}</p>`
      }
    </details>`;
  }

  #renderNumbers(answer: ToeOnSheet): TemplateResult {
    const { display, car, cursor, announcer } = this.view;
    return renderNumbers({
      id: 'numbers',
      caption: NAMES.table(toeSetupOf(car)?.cornerName ?? car.cornerName),
      ...numbers(answer, display, this.#lines.now),
      cursor,
      travelOf: ([travel]) => fromShown(Number(travel), 'length', display.units),
      onStatus: (text) => announcer.announce(text),
    });
  }

  renderSheet(): TemplateResult {
    return this.#sheet.render();
  }

  protected readAgain(): void {
    this.view.sentence.drop.readAgain();
    this.view.sentence.over.readAgain();
  }
}
