import { html, nothing, type TemplateResult } from 'lit';
import type { CarModel } from '../car/car-model.js';
import type { CautionId } from '../element/cautions.js';
import type { SheetView } from '../element/sheet-view.js';
import { withWords } from '../words/fetch-words.js';
import type { AlignedLinks } from './aligned-links.js';
import { OPEN } from './alignment-open.words.js';
import type { AlignmentSheet } from './alignment-sheet.js';

/** The button of the alignment sheet, and the sheet once it is open: it comes only then, or where a car brings its alignment along. */
export class AlignmentPart {
  readonly #view: SheetView;
  readonly #links: () => AlignedLinks | undefined;
  readonly #hazards: readonly CautionId[];
  #sheet: AlignmentSheet | undefined;
  #isOpen: boolean | undefined;
  #model: CarModel | undefined;
  #isLost = false;
  #coming: Promise<void> | undefined;

  /**
   * @param links of the answer that stands on the element; undefined where there is none
   * @param hazards that the element does not tell already
   */
  constructor(view: SheetView, links: () => AlignedLinks | undefined, hazards: readonly CautionId[] = []) {
    this.#hazards = hazards;
    this.#view = view;
    this.#links = links;
  }

  /** Resolves when what is open of it has come and is answered. */
  get settled(): Promise<unknown> {
    return Promise.resolve(this.#coming).then(() => this.#sheet?.settled);
  }

  /** Button and, below it, the sheet. */
  render(): TemplateResult {
    this.#look();
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

  /** A car that comes with an alignment, or a link that carries one, shows it; not one that is typed in another element. */
  #look(): void {
    const { car, model } = this.#view;
    const isAnother = this.#model !== model;
    this.#model = model;
    if (isAnother) this.#isOpen = undefined;
    if (car.alignment && (isAnother || model.address?.isLinked)) this.#isOpen ??= true;
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
      const { AlignmentSheet, alignmentStyles } = await withWords(import('./alignment-sheet.js'), 'dialogs');
      addStyles(alignmentStyles);
      this.#sheet = new AlignmentSheet(this.#view, this.#links, this.#hazards);
    } catch (error) {
      console.warn('Bumpline: a part could not be fetched.', error);
      this.#isLost = true;
      this.#isOpen = false;
    }
    host.requestUpdate();
    await host.updateComplete;
  }
}
