import { html, nothing, type TemplateResult } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import type { Setup } from '../../core/document/setup.js';
import type { SheetView } from '../element/sheet-view.js';
import type { PasteSheet } from './paste-sheet.js';
import type { ReadingsHost } from './readings-host.js';

export interface PasteSlotOptions {
  /** What stands for the set that is shown: nothing read yet. */
  setup(): Setup;
  /** Either angle is taken. */
  takesEither?: true;
  /** What the step is called where it is taken back. */
  label: string;
  /** Where the sheet could not be fetched. */
  missing: string;
  /** What becomes of the car with the readings in it. */
  taken(after: CarDocument, before: CarDocument): CarDocument;
}

/** The way in for pasted or dropped readings of an element that is about links; what takes them comes only then. */
export class PasteSlot {
  readonly #view: SheetView;
  readonly #options: PasteSlotOptions;
  #sheet: PasteSheet | undefined;
  #isLost = false;

  constructor(view: SheetView, options: PasteSlotOptions) {
    this.#view = view;
    this.#options = options;
  }

  async open(): Promise<void> {
    const view = this.#view;
    try {
      if (!this.#sheet) {
        const { PasteSheet, pasteStyles } = await import('./paste-sheet.js');
        view.addStyles(pasteStyles);
        this.#sheet = new PasteSheet(this.#readingsHost());
      }
      this.#isLost = false;
    } catch (error) {
      console.warn('Bumpline: a part could not be fetched.', error);
      this.#isLost = true;
    }
    view.host.requestUpdate();
    await view.host.updateComplete;
    this.#sheet?.open();
  }

  /** The sheet takes readings for sets that stand beside those that are there. */
  #readingsHost(): ReadingsHost {
    const view = this.#view;
    const { setup, label, taken, takesEither } = this.#options;
    return {
      host: view.host,
      announcer: view.announcer,
      isOwn: true,
      keepsAll: true,
      ...(takesEither && { takesEither }),
      get display() {
        return view.display;
      },
      get car() {
        return view.car;
      },
      get setup() {
        return setup();
      },
      edit: () => {},
      changeSets: (_label, recipe) => {
        view.change('setups', label, (car) => taken(recipe(car), car));
        // The answer stands above what was pasted, and readings may need less room than the page kept.
        view.host.style.minHeight = '0';
        void view.host.updateComplete.then(() => view.host.scrollIntoView({ block: 'start' }));
      },
      endStep: () => view.endStep(),
    };
  }

  render(): TemplateResult | typeof nothing {
    if (this.#isLost) return html`<p class="problems" role="alert">${this.#options.missing}</p>`;
    return this.#sheet?.render() ?? nothing;
  }
}
