import { html, nothing, type TemplateResult } from 'lit';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import { enumeratedProblems } from './enumerated.js';
import { PARTS } from './parts.labels.js';

interface Noted {
  readonly host: Element;
  readonly unknownCar: string | undefined;
}

/** What an author wrote in an attribute and nobody understands, where the answer does not rest on it. */
export function notesOf({ host, unknownCar }: Noted): Problem[] {
  const notes = enumeratedProblems(host);
  if (unknownCar !== undefined) notes.push({ code: 'unknown-name', path: 'car-id', value: unknownCar, names: [] });
  return notes;
}

/** Told quietly, beside the answer. */
export function renderNotes(app: Noted): TemplateResult | typeof nothing {
  const notes = notesOf(app);
  if (notes.length === 0) return nothing;
  return html`<ul class="queries attributes" aria-label=${PARTS.author}>
    ${notes.map((problem) => html`<li>${explainProblem(problem)}</li>`)}
  </ul>`;
}
