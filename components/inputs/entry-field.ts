import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import { choicesOf } from '../controls/choices.js';
import type { Display } from '../element/sentence.js';
import { NAMES } from './inputs.labels.js';
import { keypadOf, unitOf } from './keypad.js';
import type { SheetField } from './sheet-spec.js';

export interface EntryFieldOptions {
  id: string;
  /** What was given, and what stands in for it, in the unit of the API. */
  value: number | undefined;
  standIn: number | undefined;
  /** It takes more than a number: a tyre's whole size. */
  takesText: boolean;
  /** Whose it is, in words. */
  whose: string | undefined;
  /** What is typed and not yet understood. */
  text: string | undefined;
  problem: Problem | undefined;
  display: Display;
  /** A problem in words. */
  describeProblem: (problem: Problem) => string;
  onType: (text: string) => void;
  onLeave: () => void;
  onTurnSign: () => void;
  onChoose: (choice: number) => void;
}

/** One number of a sheet: label, a key for its sign where it can have one, field, unit, and what is wrong with it. */
export function renderEntryField(field: SheetField, options: EntryFieldOptions): TemplateResult {
  const { id, value, standIn, whose, text, problem, display, onType, onLeave, onTurnSign } = options;
  const { units, language } = display;
  const write = (figure: number) => formatQuantity(figure, field.quantity, units, { language, unit: false }).text;
  return html`<div class="field">
    <label for=${id}>${field.label}${whose ? html` <em class=${value === undefined ? 'stands-in' : ''}>${whose}</em>` : nothing}</label>
    <div class="entry-box">
      ${
        field.signed
          ? html`<button type="button" class="sign" @click=${onTurnSign}>
              +/−<span class="visually-hidden">: ${NAMES.turnSign}</span>
            </button>`
          : nothing
      }
      <input
        class="text"
        id=${id}
        type="text"
        inputmode=${options.takesText ? 'text' : keypadOf(field.quantity, units)}
        autocomplete="off"
        enterkeyhint="next"
        placeholder=${standIn === undefined ? '' : write(standIn)}
        .value=${live(text ?? (value === undefined ? '' : write(value)))}
        aria-invalid=${problem ? 'true' : 'false'}
        aria-describedby="${id}-unit ${problem ? `${id}-problem` : ''}"
        @focus=${(event: FocusEvent) => (event.target as HTMLInputElement).select()}
        @input=${(event: InputEvent) => onType((event.target as HTMLInputElement).value)}
        @change=${onLeave}
        @blur=${onLeave}
      /><span class="unit" id="${id}-unit">${unitOf(field.quantity, units)}</span>
    </div>
    ${
      problem
        ? html`<div class="problem" id="${id}-problem">
            ${options.describeProblem(problem)} ${renderChoices(problem, field, options)}
          </div>`
        : nothing
    }
  </div>`;
}

function renderChoices(problem: Problem, field: SheetField, { display, onChoose }: EntryFieldOptions): unknown {
  const choices = choicesOf(problem, field.quantity, display);
  if (choices.length === 0) return nothing;
  return html`<div class="choices">
    ${choices.map(
      ({ value, text }) => html`<button type="button" class="button" @click=${() => onChoose(value)}>${text}</button>`,
    )}
  </div>`;
}
