import { html, nothing, type TemplateResult } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import type { Setup } from '../../core/document/setup.js';
import type { SheetView } from '../element/sheet-view.js';
import { withWords } from '../words/fetch-words.js';
import type { PasteSheet } from './paste-sheet.js';
import type { ReadingsHost, ZeroQuestion } from './readings-host.js';
import { zeroName } from './zero.words.js';

export interface PasteSlotOptions {
  /** What stands for the set that is shown: nothing read yet. */
  setup(): Setup;
  /** Either angle is taken. */
  takesEither?: true;
  /** What the step is called where it is taken back. */
  label: string;
  /** Where the sheet could not be fetched. */
  missing: string;
  /** From where heights are counted unless somebody says otherwise, mm below stock height. */
  usualZero(car: CarDocument): number;
  /** What becomes of the car with the readings in it. @param zeroAt from where their heights are counted */
  taken(after: CarDocument, before: CarDocument, zeroAt: number): CarDocument;
}

/** The way in for pasted or dropped readings of an element that is about links; what takes them comes only then. */
export class PasteSlot {
  readonly #view: SheetView;
  readonly #options: PasteSlotOptions;
  #sheet: PasteSheet | undefined;
  #isLost = false;
  /** What was said of where heights are counted from, for the sheet that is open. */
  #zeroAt: number | undefined;

  constructor(view: SheetView, options: PasteSlotOptions) {
    this.#view = view;
    this.#options = options;
  }

  async open(): Promise<void> {
    const view = this.#view;
    this.#zeroAt = undefined;
    try {
      if (!this.#sheet) {
        const { PasteSheet, pasteStyles } = await withWords(import('./paste-sheet.js'), 'dialogs');
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

  /** Nothing to ask of a car that stands, and was measured, at stock height. */
  get #zero(): ZeroQuestion | undefined {
    const { car, display, host } = this.#view;
    const usual = this.#options.usualZero(car);
    const heights = [...new Set([0, car.drop, car.measuredAt ?? 0, usual])];
    if (heights.length < 2) return undefined;
    return {
      choices: heights.map((at) => ({ at, name: zeroName(at, car, display) })),
      chosen: this.#zeroAt ?? usual,
      isAnswered: this.#zeroAt !== undefined,
      choose: (at) => {
        this.#zeroAt = at;
        host.requestUpdate();
      },
    };
  }

  /** The sheet takes readings for sets that stand beside those that are there. */
  #readingsHost(): ReadingsHost {
    const view = this.#view;
    const { setup, label, taken, takesEither } = this.#options;
    const zero = () => this.#zero;
    const zeroAt = () => this.#zeroAt ?? this.#options.usualZero(view.car);
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
      get zero() {
        return zero();
      },
      edit: () => {},
      changeSets: (_label, recipe) => {
        const at = zeroAt();
        view.change('setups', label, (car) => taken(recipe(car), car, at));
        // Readings may need less room than the page kept.
        view.host.style.minHeight = '0';
      },
      endStep: () => view.endStep(),
    };
  }

  render(): TemplateResult | typeof nothing {
    if (this.#isLost) return html`<p class="problems" role="alert">${this.#options.missing}</p>`;
    return this.#sheet?.render() ?? nothing;
  }
}
