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
import { SHEET } from './element.labels.js';
import { growLater } from './grow-later.js';
import { onUndoKeys, redo, undo, undoLabel } from './history.js';
import { notesOf } from './notes.js';
import { isPrinting } from './on-print.js';
import type { LateBody } from './sheet-frame.js';
import type { SheetView } from './sheet-view.js';

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
  abstract render(): TemplateResult;
  /** Another unit may make sense of a text that the one before did not. */
  protected abstract readAgain(): void;

  get notes(): Problem[] {
    return notesOf(this.view);
  }

  renderTools(): TemplateResult {
    return renderUnitTools(this.view.host, () => this.readAgain());
  }

  /** The way back and on again, and the link. */
  protected renderHistory(): TemplateResult {
    const { view } = this;
    const { model } = view;
    const label = undoLabel(view);
    return html`${
      label
        ? html`<button type="button" class="text-button undo" @click=${() => undo(view)}>${SHEET.undo}: ${label}</button>`
        : nothing
    }
    ${
      model.redoLabel
        ? html`<button type="button" class="text-button redo" @click=${() => redo(view)}>${SHEET.redo}</button>`
        : nothing
    }
    ${this.#link.render()}`;
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
