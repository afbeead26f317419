import { html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { curveOf } from '../../core/curve/curve.js';
import { travelForChange } from '../../core/curve/inverse.js';
import type { CarDocument } from '../../core/document/car.js';
import type { Problem } from '../../core/quantity/problem.js';
import { keypadOf } from '../inputs/keypad.js';
import { FIRST } from './bumpline-lowering.words.js';
import type { FarField, LoweringView } from './lowering-view.js';

type View = Pick<LoweringView, 'answer' | 'car' | 'drafts' | 'endStep' | 'host' | 'display' | 'setDrop'>;

/** The sentence from its other end: a camber change is typed over the one that stands there, and the drop that gives it is found. */
export class ChangeField implements FarField {
  readonly quantity = 'camberChange';
  readonly #app: View;
  #isOpen = false;
  #beyond: Problem | undefined;
  #asked: CarDocument | undefined;

  constructor(app: View) {
    this.#app = app;
  }

  /** Of the car that was asked about: once that is another, the question is an old one. */
  get problems(): Problem[] {
    return this.#beyond && this.#asked === this.#app.car ? [this.#beyond] : [];
  }

  /** @param text the change as it stands in the sentence */
  render(text: string): TemplateResult {
    const { drafts } = this.#app;
    if (!this.#isOpen) {
      return html`<button type="button" class="asked" aria-label="${text}. ${FIRST.change}" @click=${() => this.#open()}>${text}</button>`;
    }
    const typed = drafts.text('change') ?? text;
    return html`<input
      class="drop change"
      type="text"
      inputmode=${keypadOf('camberChange', this.#app.display.units)}
      autocomplete="off"
      enterkeyhint="done"
      aria-label=${FIRST.change}
      size=${Math.max(4, typed.length)}
      .value=${live(typed)}
      @input=${(event: InputEvent) => {
        drafts.type('change', (event.target as HTMLInputElement).value, 'camberChange', this.#app.display.units);
        this.#app.host.requestUpdate();
      }}
      @blur=${() => this.#left()}
      @keydown=${(event: KeyboardEvent) => {
        if (event.key === 'Escape') drafts.drop('change');
        if (event.key !== 'Enter' && event.key !== 'Escape') return;
        // The focus goes to the button, which the same stroke would press.
        event.preventDefault();
        this.#left(true);
      }}
    />`;
  }

  #open(): void {
    this.#isOpen = true;
    this.#beyond = undefined;
    this.#focus('.change');
  }

  #focus(selector: string): void {
    const { host } = this.#app;
    host.requestUpdate();
    void host.updateComplete.then(() => {
      const found = host.renderRoot.querySelector<HTMLElement>(selector);
      found?.focus();
      if (found instanceof HTMLInputElement) found.select();
    });
  }

  #left(keepsFocus = false): void {
    if (!this.#isOpen) return;
    const { drafts, display } = this.#app;
    const text = drafts.text('change');
    const wanted = text === undefined ? undefined : drafts.type('change', text, 'camberChange', display.units);
    drafts.leave('change', 'camberChange', display.units);
    // What cannot be read stays where it is, to be mended there.
    this.#isOpen = drafts.problem('change') !== undefined;
    if (wanted !== undefined) this.take(wanted);
    if (keepsFocus && !this.#isOpen) this.#focus('.asked');
    else this.#app.host.requestUpdate();
  }

  /** @param wanted degrees of negative camber to add; the amount is meant, whichever sign is typed */
  take(wanted: number): void {
    const { answer, drafts } = this.#app;
    drafts.drop('change');
    this.#isOpen = false;
    if (answer) {
      const curve = curveOf(answer.curve);
      const end = answer.reversal?.travel.value ?? curve.domain[1];
      const drop = travelForChange(curve, -Math.abs(wanted), end);
      if (drop === undefined) {
        const limit = Math.abs(curve.change(end, 0));
        this.#asked = this.#app.car;
        this.#beyond = { code: 'outside-domain', path: 'change', value: Math.abs(wanted), limit };
      } else {
        this.#app.setDrop(Math.round(drop * 10) / 10);
        this.#app.endStep();
      }
    }
    this.#app.host.requestUpdate();
  }
}
