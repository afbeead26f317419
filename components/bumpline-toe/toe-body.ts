import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { givenPointCount, isWishbone } from '../../core/document/car.js';
import { toeSetupOf, useSetup } from '../../core/document/setup-in-use.js';
import { withToe } from '../../core/document/toe-settings.js';
import { fromShown } from '../../core/quantity/units.js';
import type { AlignedLinks } from '../alignment/aligned-links.js';
import { AlignmentPart } from '../alignment/alignment-part.js';
import { linkList } from '../bumpline-geometry/geometry-kit.js';
import { hasBegun, renderOwnPoints, renderRestsOn } from '../bumpline-geometry/own-points.js';
import { renderSets } from '../bumpline-geometry/set-list.js';
import { CarSources } from '../car/car-sources.js';
import { shownName } from '../car/shown-names.words.js';
import { ChartController } from '../chart/chart.js';
import { CursorLine } from '../chart/cursor-line.js';
import type { ChartModel } from '../chart/model.js';
import { renderNumbers } from '../controls/table.js';
import { DrawingSlot } from '../drawing/drawing-slot.js';
import { renderNotIn, renderWhy } from '../element/doubt-lists.js';
import { notInDoubt } from '../element/doubts.words.js';
import { LastMade } from '../element/last-made.js';
import { RESTS } from '../element/rests.labels.js';
import { SheetBody, type ShownParts } from '../element/sheet-body.js';
import { InputSheet } from '../inputs/input-sheet.js';
import { LINKS } from '../inputs/links.labels.js';
import type { PasteSlot } from '../paste/paste-slot.js';
import { onLinks } from '../publish/rests-on.js';
import { NAMES } from './bumpline-toe.labels.js';
import type { Cure } from './cure.js';
import { movedText } from './cure.words.js';
import { renderCure, renderMoved, renderOptima, renderSteered } from './cure-panel.js';
import { pasteToe } from './paste-toe.js';
import { renderProblems } from './problems.js';
import { renderShim } from './shim-panel.js';
import { bodyStyles } from './toe-body.styles.js';
import { toeDrawing } from './toe-drawing.js';
import { TOLD_SHEETS, toeKit, zeroSheets } from './toe-kit.js';
import type { ToeOnSheet, ToeView } from './toe-view.js';
import { atCursor, type Changed, changedBy, chartModel, numbers } from './views.js';

export { Cure } from './cure.js';

/** Everything under the sentence: problems, drawing, what flattens toe, chart, lists, and the sheet that a number opens. */
export class ToeBody extends SheetBody<ToeView> {
  readonly styles = bodyStyles;
  readonly #sheet: InputSheet;
  readonly #paste: PasteSlot;
  readonly #cure: Cure;
  readonly #alignment: AlignmentPart;
  readonly #chart: ChartController;
  readonly #line: CursorLine;
  readonly #drawing: DrawingSlot;
  readonly #charted = new LastMade<ChartModel>();
  readonly #changed = new LastMade<{ now?: Changed | undefined; other?: Changed | undefined }>();

  constructor(view: ToeView, cure: Cure) {
    super(view);
    const { host, cursor } = view;
    this.#sheet = new InputSheet(view, toeKit(view));
    this.#paste = pasteToe(view);
    this.#cure = cure;
    this.#alignment = new AlignmentPart(view, () => view.answer ?? drivewayOf(view));
    this.#drawing = new DrawingSlot(host, { cursor, ...toeDrawing(view, () => this.#cure.found) });
    this.#line = new CursorLine(host, cursor, (travel) => this.#atCursor(travel));
    const rest = () => view.answer?.drop ?? 0;
    this.#chart = new ChartController(host, { cursor, rest, model: () => this.#chartModel() });
  }

  override get pictures() {
    return [
      { kind: 'drawing', of: this.#drawing },
      { kind: 'chart', of: this.#chart },
    ] as const;
  }

  override get restsOn() {
    const { isRead, answeredCar } = this.view;
    // An older answer may be of a car without readings.
    const read = isRead ? toeSetupOf(answeredCar) : undefined;
    return read ? { sets: [read] } : onLinks(answeredCar);
  }

  override get settled(): Promise<unknown> {
    return Promise.all([this.#cure.settle(), this.#alignment.settled, this.#drawing.first]).then(() => super.settled);
  }

  override retry(): void {
    super.retry();
    this.#cure.retry();
  }

  /** Toe with what is moved, turned where the steering is, and of the other wheel then. */
  get #lines(): { now?: Changed | undefined; other?: Changed | undefined } {
    const { answer, answeredCar: car, display } = this.view;
    const { found, turned } = this.#cure;
    if (!answer || !found) return {};
    const { amount = 0 } = car.toe ?? {};
    return this.#changed.of([answer, found, turned, amount, JSON.stringify(display)], () => {
      if (amount === 0 && !turned) return {};
      const moved = amount === 0 ? [] : [movedText(amount, display)];
      const names = {
        label: moved[0] ?? NAMES.steered.this,
        heading: [...moved, ...(turned ? [NAMES.steered.this] : [])].join(', '),
      };
      const other = { label: NAMES.steered.other, heading: '' };
      return {
        now: changedBy(turned ?? found, answer, amount, names),
        other: turned && changedBy(turned, answer, amount, other, 'other'),
      };
    });
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

  protected renderProblems(): TemplateResult {
    return html`${renderProblems(this.view, (key) => void this.#sheet.show(key))} ${this.#paste.render()}`;
  }

  protected readonly parts: ShownParts = {
    drawing: () => {
      this.#cure.ask();
      return this.view.isRead ? nothing : this.#drawing.renderPlace();
    },
    chart: () => {
      this.#cure.ask();
      return this.#chart.renderPlace(this.#line.render());
    },
    table: () => this.#renderNumbers(this.view.answer!, true),
  };

  protected renderWhole(): TemplateResult {
    const { answer, isRead } = this.view;
    this.#cure.ask();
    return html`${this.renderProblems()}
      ${
        answer
          ? html`<div class="body ${isRead ? 'no-drawing' : ''}">
              ${isRead ? nothing : this.#drawing.renderPlace()}
              <div class="column">
                ${isRead ? nothing : renderMoved(this.view, this.#cure, this.stepOf('toe.amount'))}
                ${this.#chart.renderPlace(this.#line.render())}
                ${this.#renderFrom()} ${isRead ? nothing : renderSets(this.view, this.#cure.found?.corner, NAMES.noParts)} ${this.#renderActions()}
              </div>
              <div class="rest">
                ${isRead ? renderShim(this.view, (key) => void this.#sheet.show(key)) : renderCure(this.view, this.#cure)}
                ${this.#alignment.render()}
                ${this.view.car.toe?.wheels === 'both' ? html`<p class="note">${NAMES.ofOne}</p>` : nothing}
                <div class="more">
                  ${isRead ? nothing : renderSteered(this.view, this.#cure, this.stepOf('toe.rack'))}
                  ${this.late(() => this.#renderLists(answer))}
                </div>
              </div>
            </div>`
          : this.#renderUnknown()
      }`;
  }

  /** Where nothing tells toe, or nothing can be told now: how it becomes known. */
  #renderUnknown(): TemplateResult {
    const { state, car, isUnread } = this.view;
    const { title, driveway, curve } = NAMES.unknown;
    const isUnknown = state === 'incomplete';
    return html`<div class="column">
      ${isUnknown ? html`<p><b>${title}</b></p><p>${car.curve ? curve : driveway}</p>` : nothing}
      ${isUnread ? html`<div class="actions">${this.renderHistory()}</div>` : html`${this.#renderFrom()} ${this.#renderActions()}`}
      ${isUnknown ? this.#alignment.render() : nothing}
    </div>`;
  }

  /** Which readings toe is from, or that it is from the links, where there is more than one of these. */
  #renderFrom(): TemplateResult | typeof nothing {
    const { car, isRead } = this.view;
    const read = (car.setups ?? []).flatMap((setup, index) =>
      setup.quantity === 'toe' && setup.readings.length > 0 ? [{ setup, index }] : [],
    );
    const hasLinks = givenPointCount(car) > 0 || car.whole !== undefined;
    if (read.length + (hasLinks ? 1 : 0) < 2) return nothing;
    const now = toeSetupOf(car);
    const choose = ({ target }: Event) => {
      const index = Number((target as HTMLSelectElement).value);
      this.view.change('toe', NAMES.fromStep, (before) =>
        index < 0 ? withToe(before, { from: 'links' }) : useSetup(withToe(before, { from: undefined }), index),
      );
    };
    return html`<label class="fitted-choice"
      >${NAMES.from}
      <select class="quiet from" @change=${choose}>
        ${read.map(({ setup, index }) => html`<option value=${index} .selected=${live(setup === now)}>${shownName(setup.name)}</option>`)}
        ${hasLinks ? html`<option value="-1" .selected=${live(!isRead)}>${NAMES.fromLinks}</option>` : nothing}
      </select></label
    >`;
  }

  /** The ways in to one's own numbers, and the way back. */
  #renderActions(): TemplateResult {
    const { car, isRead } = this.view;
    const show = (key: string) => void this.#sheet.show(key);
    return html`<div class="actions">
      <button type="button" class="button paste ${hasBegun(car) ? '' : 'main'}" @click=${() => void this.#paste.open()}>${NAMES.paste}</button>
      ${isRead ? nothing : renderOwnPoints(car, NAMES, show, false)}
      ${this.renderHistory()}
    </div>`;
  }

  #renderLists(answer: ToeOnSheet): TemplateResult {
    return this.folds(
      ...(this.view.isRead ? [] : [['optima-fold', () => renderOptima(this.view, this.#cure)] as const]),
      ['inputs', () => this.#renderInputs()],
      ['why', () => this.#renderWhy(answer)],
      ['numbers', () => this.#renderNumbers(answer)],
    );
  }

  #renderInputs(): TemplateResult {
    const { car, display, isRead } = this.view;
    const sheets = [...TOLD_SHEETS, ...(isRead ? zeroSheets(car) : isWishbone(car) ? [] : linkList(car))];
    const onShow = (key: string) => void this.#sheet.show(key);
    return renderRestsOn(RESTS.inputs, isRead ? undefined : LINKS.axes, sheets, { car, display, onShow });
  }

  #renderWhy({ contributions, curve }: ToeOnSheet): TemplateResult {
    const { answeredCar: car, display, isRead } = this.view;
    const more = html`<p class="note">${NAMES.doubtNote} ${NAMES.band} ${NAMES.links}</p>
      ${isRead ? renderNotIn(notInDoubt(curve.data, toeSetupOf(car), display)) : nothing}`;
    return renderWhy(contributions, display.language, RESTS, more);
  }

  #renderNumbers(answer: ToeOnSheet, open = false): TemplateResult {
    const { display, car, cursor, announcer } = this.view;
    return renderNumbers({
      id: 'numbers',
      caption: NAMES.table(toeSetupOf(car)?.cornerName ?? car.cornerName),
      ...numbers(answer, display, this.#lines.now),
      cursor,
      open,
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
    this.#alignment.readAgain();
  }
}

/** A car that was measured in the driveway tells camber, and what height does to it, where it tells no toe. */
const drivewayOf = ({ model, car, state }: ToeView): AlignedLinks | undefined =>
  state === 'incomplete' && !car.curve
    ? { source: CarSources.of(model).ofCorner(car), measuredAt: car.measuredAt ?? 0 }
    : undefined;
