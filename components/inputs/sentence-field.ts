import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { Display } from '../element/sentence.js';
import type { Drafts } from './drafts.js';

/** An arrow key's step: a millimetre, or a twentieth of an inch; of an angle, see `step`. */
const STEP_MM = { mm: 1, in: 1.27 };

export interface SentenceFieldOptions {
  host: LitElement;
  drafts: Drafts;
  /** Of the value in the drafts. */
  path: string;
  label: string;
  quantity: Quantity;
  /** Of an arrow key, in the unit of the API; without it a millimetre, or a twentieth of an inch. */
  step?: number;
  display(): Display;
  /** mm, or degrees. */
  value(): number;
  /** The value as it stands in the sentence. */
  text(): string;
  /** A number was typed, or stepped to. */
  change(value: number): void;
  /** What is typed is no number after all: back to the value before. */
  cancel(): void;
  /** Typing begins, or it is over. */
  begin(): void;
  end(): void;
}

/** A length or an angle inside a sentence, edited in place. Nothing typed is rewritten under the fingers. */
export class SentenceField {
  readonly #options: SentenceFieldOptions;

  constructor(options: SentenceFieldOptions) {
    this.#options = options;
  }

  get quantity(): Quantity {
    return this.#options.quantity;
  }

  /** One of the readings of a text that has several. */
  take(value: number): void {
    const { drafts, path, change, end } = this.#options;
    drafts.drop(path);
    change(value);
    end();
  }

  /** Read-only until what reads typed text has come. */
  render(isBad: boolean): TemplateResult {
    const { drafts, path, label, display } = this.#options;
    const text = drafts.text(path) ?? this.#options.text();
    return html`<input
      class="drop"
      type="text"
      inputmode=${display().units.length === 'in' ? 'text' : 'decimal'}
      autocomplete="off"
      enterkeyhint="done"
      ?readonly=${!drafts.parser}
      aria-label=${label}
      aria-invalid=${isBad ? 'true' : 'false'}
      aria-describedby=${isBad ? 'problems' : nothing}
      size=${Math.max(4, text.length)}
      .value=${drafts.parser?.live(text) ?? text}
      @focus=${(event: FocusEvent) => (event.target as HTMLInputElement).select()}
      @input=${(event: InputEvent) => this.#typed((event.target as HTMLInputElement).value)}
      @change=${() => this.#left()}
      @blur=${() => this.#left()}
      @keydown=${(event: KeyboardEvent) => this.#pressed(event)}
    />`;
  }

  #typed(text: string): void {
    const { host, drafts, path, quantity, display, change, cancel, begin } = this.#options;
    if (drafts.text(path) === undefined) begin();
    const value = drafts.type(path, text, quantity, display().units);
    if (value !== undefined) change(value);
    // Half of what is being typed was a number as well; it was not meant.
    else cancel();
    host.requestUpdate();
  }

  /** Another unit may make sense of a text that the one before did not. */
  readAgain(): void {
    const { drafts, path, quantity, display, change, end } = this.#options;
    const text = drafts.text(path);
    if (text === undefined) return;
    const value = drafts.type(path, text, quantity, display().units);
    drafts.leave(path, quantity, display().units);
    if (value !== undefined) change(value);
    end();
  }

  /** The browser tells of no change where the same text was typed again: leaving the field counts as well. */
  #left(): void {
    const { drafts, path, quantity, display, end } = this.#options;
    if (drafts.text(path) === undefined) return;
    drafts.leave(path, quantity, display().units);
    end();
  }

  #pressed(event: KeyboardEvent): void {
    const { drafts, path, display, value, step, change, cancel, end } = this.#options;
    if (event.key === 'Enter') {
      this.#left();
      // A phone's keyboard goes away with the focus; with a real one the focus stays.
      const field = event.target as HTMLInputElement;
      if (matchMedia('(pointer: coarse)').matches) field.blur();
      else field.select();
    }
    if (event.key === 'Escape' && drafts.text(path) !== undefined) {
      drafts.drop(path);
      cancel();
      end();
    }
    const sense = { ArrowUp: 1, ArrowDown: -1 }[event.key];
    if (!sense) return;
    event.preventDefault();
    drafts.drop(path);
    change(value() + sense * (step ?? STEP_MM[display().units.length]));
  }
}
