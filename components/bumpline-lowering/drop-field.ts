import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { dropText, FIRST } from './bumpline-lowering.words.js';
import type { LoweringApp } from './lowering-app.js';

/** An arrow key's step: a millimetre, or a twentieth of an inch. */
const STEP_MM = { mm: 1, in: 1.27 };

/** The drop as it stands in the sentence, edited in place. */
export class DropField {
  #app: LoweringApp;

  constructor(app: LoweringApp) {
    this.#app = app;
  }

  /** @param isReadOnly until what reads typed text has come */
  render(isBad: boolean, isReadOnly: boolean): TemplateResult {
    const { drafts, car, reading } = this.#app;
    const text = drafts.text('drop') ?? dropText(car.drop, reading);
    return html`<input
      class="drop"
      type="text"
      inputmode=${reading.units.length === 'in' ? 'text' : 'decimal'}
      autocomplete="off"
      enterkeyhint="done"
      ?readonly=${isReadOnly}
      aria-label=${FIRST.drop}
      aria-invalid=${isBad ? 'true' : 'false'}
      aria-describedby=${isBad ? 'problems' : nothing}
      size=${Math.max(4, text.length)}
      .value=${live(text)}
      @focus=${(event: FocusEvent) => (event.target as HTMLInputElement).select()}
      @input=${(event: InputEvent) => this.#typed((event.target as HTMLInputElement).value)}
      @change=${() => this.#left()}
      @blur=${() => this.#left()}
      @keydown=${(event: KeyboardEvent) => this.#pressed(event)}
    />`;
  }

  #typed(text: string): void {
    const { drafts, model, reading, host } = this.#app;
    // What came by slider or arrow keys before is a step of its own.
    if (drafts.text('drop') === undefined) model.endStep();
    this.#app.beginEdit();
    const drop = drafts.type('drop', text, 'drop', reading.units);
    if (drop !== undefined) this.#app.changeDrop(drop);
    // Half of what is being typed was a number as well; it was not meant.
    else model.cancelStep('drop');
    host.requestUpdate();
  }

  /** Another unit may make sense of a text that the one before did not. */
  readAgain(): void {
    const { drafts, reading } = this.#app;
    const text = drafts.text('drop');
    if (text === undefined) return;
    const drop = drafts.type('drop', text, 'drop', reading.units);
    drafts.leave('drop', 'drop', reading.units);
    if (drop !== undefined) this.#app.changeDrop(drop);
    this.#app.endStep();
  }

  /** The browser tells of no change where the same text was typed again: leaving the field counts as well. */
  #left(): void {
    if (this.#app.drafts.text('drop') === undefined) return;
    this.#app.drafts.leave('drop', 'drop', this.#app.reading.units);
    this.#app.endStep();
  }

  #pressed(event: KeyboardEvent): void {
    const { drafts, model, reading, car } = this.#app;
    if (event.key === 'Enter') {
      this.#left();
      // A phone's keyboard goes away with the focus; with a real one the focus stays.
      const field = event.target as HTMLInputElement;
      if (matchMedia('(pointer: coarse)').matches) field.blur();
      else field.select();
    }
    if (event.key === 'Escape' && drafts.text('drop') !== undefined) {
      drafts.drop('drop');
      model.cancelStep('drop');
      this.#app.endStep();
    }
    const sense = { ArrowUp: 1, ArrowDown: -1 }[event.key];
    if (!sense) return;
    event.preventDefault();
    this.#app.setDrop(car.drop + sense * STEP_MM[reading.units.length]);
  }
}
