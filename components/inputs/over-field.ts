import type { LitElement, TemplateResult } from 'lit';
import { lengthText } from '../element/drop-words.js';
import type { SheetView } from '../element/sheet-view.js';
import { PressedField } from './pressed-field.js';
import { SentenceField } from './sentence-field.js';

/** What the travel of a sentence knows of the sheet that it stands on. */
type OverView = Pick<SheetView, 'drafts' | 'display' | 'model' | 'beginEdit' | 'endStep'> & {
  readonly host: LitElement;
  /** mm. */
  readonly over: number;
  /** What a page gives as that, where it is no length. */
  readonly unreadOver: string | undefined;
  set(label: string, settings: { over: number }, step: string): void;
};

interface OverWords {
  over: string;
  overEdit: string;
  overStep: string;
}

/** The travel over which a sentence is told: text that opens a field once it is pressed. */
export class OverField {
  readonly field: SentenceField;
  readonly #app: OverView;
  readonly #pressed: PressedField;

  /** @param path of the value in the car */
  constructor(app: OverView, path: string, words: OverWords) {
    const { host, drafts } = app;
    this.#app = app;
    this.field = new SentenceField({
      host,
      drafts,
      path,
      label: words.over,
      quantity: 'travel',
      display: () => app.display,
      value: () => app.over,
      text: () => this.#text,
      change: (over) => app.set(words.overStep, { over }, path),
      cancel: () => app.model.cancelStep(path),
      begin: () => {
        app.model.endStep();
        app.beginEdit();
      },
      end: () => app.endStep(),
    });
    this.#pressed = new PressedField({ host, drafts, path, field: this.field, edit: words.overEdit });
  }

  render(isBad: boolean): TemplateResult {
    return this.#pressed.render(this.#text, isBad);
  }

  get #text(): string {
    const { unreadOver, over, display } = this.#app;
    return unreadOver ?? lengthText(over, display);
  }
}
