import { html, nothing, type TemplateResult } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import { linkProblemText } from '../../core/document/link-problem.js';
import { usersFields } from '../../core/document/own-car.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { choicesOf } from '../controls/choices.js';
import { SHEET } from './element.labels.js';
import { renderNotes } from './notes.js';
import type { SheetView } from './sheet-view.js';

/** A field that stands in the sentence: what it holds, and what it takes. */
interface Asked {
  readonly quantity: Quantity;
  take(value: number): void;
}

/** What an element knows of its problems. */
export interface ProblemWords {
  text(problem: Problem): unknown;
  /** Of a part of the element that tells its own problems. */
  isToldElsewhere?(problem: Problem): boolean;
  /** Of a text that can be read in two ways: the field it stands in, where that is asked here. */
  fieldOf?(path: string): Asked | undefined;
  /** The key of the sheet on which it is corrected; undefined of what a reader cannot mend. */
  sheetOf?(problem: Problem): string | undefined;
  onShow?(key: string): void;
  /** What of a car the element uses. */
  uses: readonly (keyof CarDocument)[];
}

type View = Pick<SheetView, 'host' | 'model' | 'state' | 'fault' | 'problems' | 'display' | 'unknownCar' | 'ask'>;

/** A fault; else what became of a link, what an author wrote that nobody understands, and what is wrong, each with its remedy. */
export function renderProblems(view: View, words: ProblemWords): TemplateResult {
  const { state, fault, model } = view;
  const problems = view.problems.filter((problem) => !words.isToldElsewhere?.(problem));
  if (state === 'fault') {
    return html`<div class="problems" id="problems" role="alert">
      <p>${SHEET.fault}</p>
      <p class="fault-text">${fault}</p>
      <button type="button" class="button" @click=${() => view.ask()}>${SHEET.retry}</button>
    </div>`;
  }
  const link = model.address?.problem;
  return html`${link ? html`<p class="queries" role="alert">${linkProblemText(link)}</p>` : renderUnused(model, words)} ${renderNotes(view)}
  ${
    problems.length > 0
      ? html`<div class="problems" id="problems" role="alert">
          <ul>
            ${problems.map((problem) => {
              const key = words.sheetOf?.(problem);
              return html`<li>
                ${words.text(problem)} ${renderChoices(view, problem, words)}
                ${key === undefined ? nothing : html`<button type="button" class="button" @click=${() => words.onShow?.(key)}>${SHEET.correct}</button>`}
              </li>`;
            })}
          </ul>
        </div>`
      : nothing
  }`;
}

/** A link may carry nothing that this element shows: it is kept for those that do. */
function renderUnused({ address, car }: View['model'], { uses }: ProblemWords): TemplateResult | typeof nothing {
  if (!address?.isLinked) return nothing;
  // A drop alone is a question about any car.
  const fields = usersFields(car).filter((field) => field !== 'drop' || uses.includes(field));
  if (fields.length === 0 || fields.some((field) => uses.includes(field))) return nothing;
  const names = [
    ...new Set(fields.map((field) => SHEET.carried[field as keyof typeof SHEET.carried] ?? SHEET.settings)),
  ];
  return html`<p class="queries unused" role="status">${SHEET.unused(names.join(', '))}</p>`;
}

/** What can be read in two ways is asked about where it is told. */
function renderChoices(
  { display }: View,
  problem: Problem,
  { fieldOf }: ProblemWords,
): TemplateResult | typeof nothing {
  const field = problem.choices && fieldOf?.(problem.path);
  if (!field) return nothing;
  return html`<div class="choices">
    ${choicesOf(problem, field.quantity, display).map(
      ({ value, text }) =>
        html`<button type="button" class="button" @click=${() => field.take(value)}>${text}</button>`,
    )}
  </div>`;
}
