import { html, type LitElement, type TemplateResult } from 'lit';
import type { Drafts } from './drafts.js';
import type { SentenceField } from './sentence-field.js';

export interface PressedFieldOptions {
  host: LitElement;
  drafts: Drafts;
  /** Of the value in the drafts. */
  path: string;
  field: SentenceField;
  /** What a screen reader says after the value: that it can be changed. */
  edit: string;
}

/** A second value of a sentence: it stands there as text, and opens a field once it is pressed. On a phone one field stands open. */
export class PressedField {
  readonly #options: PressedFieldOptions;
  #isOpen = false;

  constructor(options: PressedFieldOptions) {
    this.#options = options;
  }

  render(text: string, isBad: boolean): TemplateResult {
    const { drafts, path, field, edit } = this.#options;
    if (this.#isOpen || isBad || drafts.text(path) !== undefined) {
      return html`<span class="over" data-path=${path} @focusout=${() => this.#open(false)}>${field.render(isBad)}</span>`;
    }
    // What reads typed texts has still to come.
    if (!drafts.parser) return html`<b class="to-ask">${text}</b>`;
    return html`<button type="button" class="asked" aria-label="${text}. ${edit}" @click=${() => this.#open(true)}>${text}</button>`;
  }

  /** Has the field stand open, ready to be typed in. */
  open(): void {
    this.#open(true);
  }

  #open(isOpen: boolean): void {
    const { host, path } = this.#options;
    this.#isOpen = isOpen;
    host.requestUpdate();
    if (!isOpen) return;
    void host.updateComplete.then(() =>
      host.renderRoot.querySelector<HTMLInputElement>(`.over[data-path="${path}"] input`)?.focus(),
    );
  }
}
