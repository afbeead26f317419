import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Display } from '../element/sentence.js';
import type { Drafts } from './drafts.js';
import { NAMES } from './inputs.labels.js';
import { keypadOf } from './keypad.js';
import { HOW_SURE } from './sheet-spec.js';

export interface HowSureOptions {
  /** Of the ± in problems and drafts. */
  path: string;
  scale: keyof typeof HOW_SURE;
  /** What is stated now, mm or degrees; 0 for nothing. */
  stated: number;
  display: Display;
  drafts: Drafts;
  /** A problem in words. */
  describeProblem: (problem: Problem) => string;
  onSet: (plusMinus: number) => void;
  /** A text was typed or left that says nothing yet. */
  onText: () => void;
}

const QUANTITY = { length: 'plusMinusLength', angle: 'plusMinusAngle', toe: 'plusMinusToe' } as const;

/** "careful / tape / guess", or a figure. */
export function renderHowSure({
  path,
  scale,
  stated,
  display,
  drafts,
  describeProblem,
  onSet,
  onText,
}: HowSureOptions): TemplateResult {
  const quantity = QUANTITY[scale];
  const short = (plusMinus: number) =>
    formatQuantity(plusMinus, quantity, display.units, { language: display.language }).text;
  const isListed = HOW_SURE[scale].some(({ plusMinus }) => plusMinus === stated);
  const problem = drafts.problem(path);
  return html`<fieldset>
    <legend>${NAMES.howSure}</legend>
    <div class="sure">
      ${HOW_SURE[scale].map(
        ({ id, plusMinus }) =>
          html`<label class="choice"
            ><input
              type="radio"
              name="sure"
              value=${id}
              .checked=${live(plusMinus === stated)}
              @change=${() => {
                drafts.drop(path);
                onSet(plusMinus);
              }}
            /><span>${NAMES.sure[id]} <span class="amount">±\u202f${short(plusMinus)}</span></span></label
          >`,
      )}
      <label class="figure"
        >${NAMES.orFigure}
        <input
          class="text"
          type="text"
          inputmode=${keypadOf(quantity, display.units)}
          autocomplete="off"
          .value=${live(drafts.text(path) ?? (isListed || stated === 0 ? '' : short(stated)))}
          aria-invalid=${problem ? 'true' : 'false'}
          @input=${(event: InputEvent) => {
            const text = (event.target as HTMLInputElement).value;
            const plusMinus = drafts.type(path, text, quantity, display.units);
            if (plusMinus !== undefined) onSet(plusMinus);
            onText();
          }}
          @change=${() => {
            if (drafts.text(path) === '') drafts.drop(path);
            else drafts.leave(path, quantity, display.units);
            onText();
          }}
      /></label>
    </div>
    ${problem ? html`<div class="problem">${describeProblem(problem)}</div>` : nothing}
  </fieldset>`;
}
