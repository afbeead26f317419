import { html, nothing, type TemplateResult } from 'lit';
import { isWishbone } from '../../core/document/car.js';
import { AlignmentPart } from '../alignment/alignment-part.js';
import { renderLinkInputs, renderOwnPoints } from '../bumpline-geometry/own-points.js';
import { renderSets } from '../bumpline-geometry/set-list.js';
import { renderSlider } from '../controls/slider.js';
import { renderNumbers } from '../controls/table.js';
import { RESTS } from '../element/rests.labels.js';
import { SheetBody, type ShownParts } from '../element/sheet-body.js';
import { InputSheet } from '../inputs/input-sheet.js';
import { withProblems } from '../inputs/with-problems.js';
import { LeastCostSlot } from '../least-cost/least-cost-slot.js';
import { onLinks } from '../publish/rests-on.js';
import { isOfPanel } from './aside.js';
import { NAMES } from './bumpline-static-camber.labels.js';
import { type InTurn, turnOf } from './in-turn.js';
import { numbers } from './numbers.js';
import { renderProblems } from './problems.js';
import { picturesToSave, renderPictures } from './small-multiples.js';
import { bodyStyles } from './static-camber-body.styles.js';
import { ASKED_SHEETS, staticCamberKit } from './static-camber-kit.js';
import type { StaticCamberView, WaysOnSheet } from './static-camber-view.js';
import { renderTurnNote } from './turn-note.js';
import { renderSortBy, renderWaysTable } from './ways-table.js';

export { InTurn } from './in-turn.js';

/** Ends of the slider, degrees. */
const SLIDER_DEG = [-3, 2] as const;

/** Everything under the sentence: problems, the ways as table and pictures, lists, and the sheet that a number opens. */
export class StaticCamberBody extends SheetBody<StaticCamberView> {
  readonly styles = bodyStyles;
  readonly #sheet: InputSheet;
  readonly #turn: InTurn;
  readonly #least: LeastCostSlot;
  readonly #alignment: AlignmentPart;

  constructor(view: StaticCamberView, turn: InTurn) {
    super(view);
    this.#turn = turn;
    this.#least = new LeastCostSlot(
      view,
      (car) => {
        const { found } = turn;
        const { roll = found === 'coming' ? undefined : found?.roll, ...asked } = turnOf(car);
        return { roll, ...asked };
      },
      isOfPanel,
    );
    this.#alignment = new AlignmentPart(view, () => view.answer, ['steering']);
    this.#sheet = new InputSheet(
      withProblems(view, () => this.#least.valueProblems),
      staticCamberKit(view, (key) => this.#least.sheetOf(key)),
    );
  }

  override get pictures() {
    const { answer } = this.view;
    const bars = (choice: string) => answer && picturesToSave(this.view, answer, this.#turn.found, choice === 'all');
    const choices = (['first', 'all'] as const).map((id) => ({ id, name: NAMES.whichPictures[id] }));
    return [{ kind: 'bars', of: { isThere: answer !== undefined, choices, choice: 'first', bars } }] as const;
  }

  override get restsOn() {
    return onLinks(this.view.answeredCar);
  }

  override get settled(): Promise<unknown> {
    return Promise.all([this.#turn.settle(), this.#least.settled, this.#alignment.settled, super.settled]);
  }

  override retry(): void {
    super.retry();
    this.#turn.retry();
    this.#least.retry();
  }

  protected renderProblems(): TemplateResult {
    return renderProblems(this.view, (key) => void this.#sheet.show(key));
  }

  protected readonly parts: ShownParts = { table: () => this.#renderTable(this.view.answer!) };

  #renderTable(answer: WaysOnSheet): TemplateResult {
    this.#turn.ask();
    return html`<div class="stacked" part="table">${renderWaysTable(this.view, answer, this.#turn.found)}</div>`;
  }

  protected renderWhole(): TemplateResult {
    const { answer } = this.view;
    this.#turn.ask();
    const onShow = (key: string) => void this.#sheet.show(key);
    return html`${this.renderProblems()}
      ${
        answer
          ? html`<div class="body column">
              ${this.#renderSlider()} ${renderSortBy(this.view, answer)}
              ${this.#renderTable(answer)} ${this.#renderActions()}
              ${renderTurnNote(this.view, this.#turn, (key) => void this.#sheet.show(key))}
              ${answer.asItIs.bumpSteer === undefined ? html`<p class="note no-toe">${NAMES.noToe}</p>` : nothing}
              ${renderSets(this.view, undefined, NAMES.noParts)} ${this.#alignment.render()}
              <div class="more">
                ${this.late(() => this.#renderLists(answer, onShow))}
              </div>
            </div>`
          : this.#renderUnknown()
      }`;
  }

  #renderSlider(): TemplateResult {
    const { view } = this;
    const { by, display } = view;
    return renderSlider({
      id: 'by-slider',
      label: NAMES.slider,
      quantity: 'partAngle',
      display,
      value: by,
      min: Math.min(SLIDER_DEG[0], Math.floor(by)),
      max: Math.max(SLIDER_DEG[1], Math.ceil(by)),
      ticks: [{ at: 0, label: NAMES.asItIs, kind: 'plain' }],
      onInput: (degrees) => view.set(NAMES.problems.by, { by: Math.round(degrees * 1e6) / 1e6 + 0 }, 'by'),
      onChange: () => view.endDrag(),
      step: this.stepOf('by'),
    });
  }

  /** What holds of all of them, and what is not in the numbers. Tables of numbers cannot say it. */
  #renderNotes({ ways }: WaysOnSheet): TemplateResult {
    const isStrut = ways.some(({ way }) => way === 'topMount');
    return html`<details class="notes prints">
      <summary>${NAMES.before}</summary>
      <ul>
        <li>${NAMES.aligned}</li>
        <li>${NAMES.competition}</li>
        <li>${NAMES.bolts}</li>
        <li>${NAMES.links}</li>
      </ul>
      <p class="note">${NAMES.steerNote}</p>
      <p class="note">${NAMES.roomNote} ${NAMES.archNote}</p>
      <p class="note">${NAMES.limits} ${isStrut ? NAMES.boltNote : NAMES.wishbone}</p>
      <p class="note">${RESTS.noDoubt}</p>
    </details>`;
  }

  /** Where the links are not known, or nothing can be told now: the ways back. */
  #renderUnknown(): TemplateResult {
    const { isUnread, car } = this.view;
    return html`<div class="column">
      ${isUnread || isWishbone(car) ? html`<div class="actions">${this.renderHistory()}</div>` : this.#renderActions()}
    </div>`;
  }

  /** The way in to one's own numbers, and the way back. */
  #renderActions(): TemplateResult {
    const show = (key: string) => void this.#sheet.show(key);
    return html`<div class="actions">
      ${renderOwnPoints(this.view.car, NAMES, show, true)}
      ${this.renderHistory()}
    </div>`;
  }

  #renderLists(answer: WaysOnSheet, onShow: (key: string) => void): TemplateResult {
    return html`${this.folds(
      ['pictures', () => renderPictures(this.view, answer, this.#turn.found)],
      ['notes', () => this.#renderNotes(answer)],
    )}
    ${this.#least.render(onShow)}
    ${this.folded('.inputs', () => renderLinkInputs(RESTS.inputs, ASKED_SHEETS, this.view, (key) => void this.#sheet.show(key)))}
    ${this.folded('.numbers', () => this.#renderNumbers(answer))}`;
  }

  #renderNumbers(answer: WaysOnSheet): TemplateResult {
    const { announcer, car } = this.view;
    return renderNumbers({
      id: 'numbers',
      caption: NAMES.numbers(car.cornerName),
      ...numbers(this.view, answer, this.#turn.found),
      onStatus: (text) => announcer.announce(text),
    });
  }

  renderSheet(): TemplateResult {
    return this.#sheet.render();
  }

  protected readAgain(): void {
    this.view.sentence.by.readAgain();
    this.view.sentence.drop.readAgain();
    this.#alignment.readAgain();
  }
}
