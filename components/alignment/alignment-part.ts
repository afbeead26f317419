import { html, nothing, type TemplateResult } from 'lit';
import type { SheetView } from '../element/sheet-view.js';
import type { AlignedLinks } from './aligned-links.js';
import { OPEN } from './alignment-open.words.js';
import type { AlignmentSheet } from './alignment-sheet.js';

/** The button of the alignment sheet, and the sheet once it is open: it comes only then, or where a car brings its alignment along. */
export class AlignmentPart {
  readonly #view: SheetView;
  readonly #links: () => AlignedLinks | undefined;
  #sheet: AlignmentSheet | undefined;
  #isOpen: boolean | undefined;
  #isLost = false;
  #coming: Promise<void> | undefined;

  /** @param links of the answer that stands on the element; undefined where there is none */
  constructor(view: SheetView, links: () => AlignedLinks | undefined) {
    this.#view = view;
    this.#links = links;
  }

  /** Resolves when what is open of it has come and is answered. */
  get settled(): Promise<unknown> {
    return Promise.resolve(this.#coming).then(() => this.#sheet?.settled);
  }

  /** Button and, below it, the sheet. */
  render(): TemplateResult {
    const { car } = this.#view;
    // A link that carries one shows it.
    this.#isOpen ??= car.alignment !== undefined ? true : undefined;
    const isOpen = this.#isOpen === true;
    if (isOpen && !this.#sheet && !this.#isLost) void this.#fetch();
    return html`<section class="alignment-part">
      <button type="button" class="button alignment-open" aria-expanded=${isOpen ? 'true' : 'false'} @click=${() => this.#toggle()}>
        ${isOpen ? OPEN.close : OPEN.open}
      </button>
      ${this.#isLost ? html`<p class="problems" role="alert">${OPEN.missing}</p>` : nothing}
      ${isOpen ? (this.#sheet?.render() ?? nothing) : nothing}
    </section>`;
  }

  readAgain(): void {
    this.#sheet?.readAgain();
  }

  #toggle(): void {
    this.#isOpen = !this.#isOpen;
    this.#isLost = false;
    this.#view.host.requestUpdate();
  }

  #fetch(): Promise<void> {
    this.#coming ??= this.#get().finally(() => {
      this.#coming = undefined;
    });
    return this.#coming;
  }

  async #get(): Promise<void> {
    const { host, addStyles } = this.#view;
    try {
      const { AlignmentSheet, alignmentStyles } = await import('./alignment-sheet.js');
      addStyles(alignmentStyles);
      this.#sheet = new AlignmentSheet(this.#view, this.#links);
    } catch (error) {
      console.warn('Bumpline: a part could not be fetched.', error);
      this.#isLost = true;
      this.#isOpen = false;
    }
    host.requestUpdate();
    await host.updateComplete;
  }
}
