import { html, nothing, type TemplateResult } from 'lit';
import type { Understanding } from '../../core/readings/table/understanding.js';
import type { Display } from '../element/sentence.js';
import { cellName, NAMES, quantityOf } from './paste.labels.js';
import { cellProblem } from './paste.words.js';
import { renderButton } from './paste-take.js';

/** Told in words above the sheet; the rest are marked in it. */
const MOST_TOLD = 4;

/** Each cell that cannot be read, named, with what to do. */
export function renderUnread(
  { cells, columns, quantity }: Understanding,
  display: Display,
  onCell: (row: number, column: number) => void,
): TemplateResult | typeof nothing {
  const found = cells.flatMap((row, r) => row.flatMap(({ problem }, c) => (problem ? [{ problem, r, c }] : [])));
  if (found.length === 0) return nothing;
  return html`<ul class="unread" aria-label=${NAMES.notRead}>
    ${found.slice(0, MOST_TOLD).map(({ problem, r, c }) => {
      const name = cellName(r, c);
      return html`<li>
        <span>${cellProblem(name, problem, quantityOf(columns[c]!, { quantity }), display)}</span>
        ${renderButton(`${NAMES.correct} ${name}`, () => onCell(r, c))}
      </li>`;
    })}
    ${found.length > MOST_TOLD ? html`<li>${NAMES.problems.more(found.length - MOST_TOLD)}</li>` : nothing}
  </ul>`;
}
