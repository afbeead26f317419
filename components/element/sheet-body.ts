import { html, noChange, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { parseQuantity } from '../../core/quantity/parse.js';
import type { Problem } from '../../core/quantity/problem.js';
import { LinkTools } from '../controls/link-tools.js';
import { renderUnitTools } from '../controls/unit-tools.js';
import { renderReadingsUsed } from '../publish/readings-used.js';
import { type RestsOn, restsOnOf } from '../publish/rests-on.js';
import type { SavablePicture } from '../publish/savable.js';
import { TakeAlongSlot } from '../publish/take-along-slot.js';
import { donePainting, inOwnTask } from './after-paint.js';
import { AuthorLine } from './author-line.js';
import { SHEET } from './element.labels.js';
import { growLater } from './grow-later.js';
import { onUndoKeys, redo, undo, undoLabel } from './history.js';
import { focusSentence } from './keep-focus.js';
import { notesOf } from './notes.js';
import { isPrinting } from './on-print.js';
import { renderPutInArticle } from './put-in-article.js';
import type { LateBody } from './sheet-frame.js';
import type { SheetView } from './sheet-view.js';
import { SHOWN, type Shown, shownOf } from './shown.js';

/** What of a body can stand alone under the sentence, by the word an author asks for it with; what an element does not have is left out. */
export type ShownParts = Partial<Record<Exclude<Shown, 'sentence'>, () => TemplateResult | typeof nothing>>;

const SHOWN_PARTS = SHOWN.filter((name) => name !== 'sentence');

/** What an answer rests on, its figures, and what they mean: everything folded but what is a tool. */
const PRINTS =
  ':is(.prints, .inputs, .why, .numbers, .travel, .gaps, .wheels, .paths, .even, .each, .changes, .limits, .how, .left-over, .more-pictures):not([open])';

/** What lies under the sentence, as far as every element has it. */
export abstract class SheetBody<View extends SheetView> implements LateBody {
  protected readonly view: View;
  readonly #link: LinkTools;
  readonly #takeAlong: TakeAlongSlot;

  constructor(view: View) {
    this.view = view;
    this.#link = new LinkTools(view);
    this.#takeAlong = new TakeAlongSlot(view, this);
    new AuthorLine(view);
    view.drafts.parser = { parse: parseQuantity, live };
    onUndoKeys(view);
    // `toggle` does not bubble.
    view.host.renderRoot.addEventListener('toggle', () => view.host.requestUpdate(), true);
  }

  #isLate = false;
  #lists = new Promise<void>((resolve) => {
    inOwnTask(() => {
      this.hurry();
      this.view.host.requestUpdate();
      resolve();
    });
  });

  /** Pictures that can be taken along. */
  get pictures(): readonly SavablePicture[] {
    return [];
  }

  /** What the answer was made from. */
  get restsOn(): RestsOn {
    return restsOnOf(this.view.answeredCar);
  }

  /**
   * The folded lists come in a task of their own, after the first rendering: with it they would hold a slow phone's thread. At their end
   * stands what can be taken along; on paper, which nobody can open, the readings that the answer rests on.
   */
  protected late(lists: () => unknown): TemplateResult | typeof nothing {
    return this.#isLate
      ? html`${lists()} ${isPrinting() ? renderReadingsUsed(this.restsOn.sets, this.view.display) : nothing} ${this.#takeAlong.render()}`
      : nothing;
  }

  enter(inside: HTMLElement): void {
    // Its lists at once: nothing of it grows another time.
    if (growLater(this.view.host, inside)) this.hurry();
  }

  hurry(): void {
    this.#isLate = true;
  }

  /** Unfolds, for as long as it is printed, what paper is to have. */
  print(): void {
    const { host } = this.view;
    const folded = [...host.renderRoot.querySelectorAll<HTMLDetailsElement>(PRINTS)];
    for (const details of folded) details.open = true;
    const fold = () => {
      for (const details of folded) details.open = false;
      // What is open all the same is rendered for the screen again.
      host.requestUpdate();
    };
    addEventListener('afterprint', fold, { once: true });
  }

  /** Resolves when everything that comes late, but for the chart, has come. */
  get settled(): Promise<unknown> {
    return Promise.all([this.#lists, this.#takeAlong.settled]);
  }

  get painted(): Promise<void> {
    return donePainting(this.view.host);
  }

  /** Fetches again what did not come. */
  retry(): void {
    this.#takeAlong.retry();
  }

  /** Folded parts, each by its class: what nobody has open is not rendered again. */
  protected folds(...parts: (readonly [name: string, content: () => TemplateResult])[]): TemplateResult {
    return html`${parts.map(([name, content]) => this.folded(`.${name}`, content))}`;
  }

  abstract readonly styles: LateBody['styles'];
  /** Everything under the sentence. */
  protected abstract renderWhole(): TemplateResult;
  /** What is wrong, and what else needs the reader's word. */
  protected abstract renderProblems(): TemplateResult;
  /** What an author can have shown alone. */
  protected abstract readonly parts: ShownParts;

  render(): TemplateResult {
    const shown = shownOf(this.view.host.show);
    return shown ? this.#renderShown(shown) : this.renderWhole();
  }

  /** What the author asked for, in one order on every page, and the way to the whole. */
  #renderShown(shown: ReadonlySet<Shown>): TemplateResult {
    const { view } = this;
    const has = view.answer !== undefined;
    const one = (name: keyof ShownParts, content: TemplateResult | typeof nothing | undefined) =>
      content && content !== nothing ? html`<div class=${`shown-${name}`}>${content}</div>` : nothing;
    return html`${this.renderProblems()}
      <div class="compact">
        ${SHOWN_PARTS.map((name) => (has && shown.has(name) ? one(name, this.parts[name]?.()) : nothing))}
      </div>
      <div class="actions compact-actions" part="actions">
        ${this.#renderSteps()}
        <button type="button" class="text-button whole" @click=${() => void this.#showWhole()}>${SHEET.whole}</button>
      </div>`;
  }

  async #showWhole(): Promise<void> {
    const { host } = this.view;
    host.show = undefined;
    await focusSentence(host);
  }

  /** Another unit may make sense of a text that the one before did not. */
  protected abstract readAgain(): void;

  get notes(): Problem[] {
    return notesOf(this.view);
  }

  renderTools(): TemplateResult {
    return renderUnitTools(this.view.host, () => this.readAgain());
  }

  /** The way back and on again. */
  #renderSteps(): TemplateResult {
    const { view } = this;
    const label = undoLabel(view);
    return html`${
      label
        ? html`<button type="button" class="text-button undo" @click=${() => undo(view)}>${SHEET.undo}: ${label}</button>`
        : nothing
    }
    ${
      view.model.redoLabel
        ? html`<button type="button" class="text-button redo" @click=${() => redo(view)}>${SHEET.redo}</button>`
        : nothing
    }`;
  }

  /** The same, the link, and the way into an article. */
  protected renderHistory(): TemplateResult {
    return html`${this.#renderSteps()} ${this.#link.render()} ${renderPutInArticle(this.view)}`;
  }

  /** The step of undo that a slider makes, by the name that its changes have. */
  protected stepOf(name: string): { end(): void; cancel(): void } {
    const { model } = this.view;
    return { end: () => model.endStep(), cancel: () => model.cancelStep(name) };
  }

  /** A folded part is left as it is: nobody sees it, and it would cost a drag most of its time. Unfolding renders it. */
  protected folded(selector: string, content: () => TemplateResult): TemplateResult | typeof noChange {
    const details = this.view.host.renderRoot.querySelector<HTMLDetailsElement>(selector);
    return details && !details.open ? noChange : content();
  }
}
