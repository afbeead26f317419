import { html, nothing, type TemplateResult } from 'lit';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';

/** What an author wrote in an attribute and nobody understands: told quietly, for the answer does not rest on it. */
export function renderNotes(notes: readonly Problem[]): TemplateResult | typeof nothing {
  if (notes.length === 0) return nothing;
  return html`<ul class="queries attributes" aria-label="For the author of this page">
    ${notes.map((problem) => html`<li>${explainProblem(problem)}</li>`)}
  </ul>`;
}
