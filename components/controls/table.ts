import { css, html, nothing, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import type { Cursor } from '../chart/cursor.js';
import { isPrinting } from '../element/on-print.js';
import { edgeFade } from '../theme/edge-fade.styles.js';
import { copyText } from './clipboard.js';
import { CONTROLS } from './controls.labels.js';
import { type Cell, toCsv } from './csv.js';

export interface NumbersColumn {
  label: string;
  /** In the header of the table and of the CSV. */
  unit?: string;
  /** How a number is shown. The CSV takes the number itself. */
  format?: (value: number) => string;
}

export interface NumbersOptions {
  /** Unique in its shadow root. */
  id: string;
  caption: string;
  columns: readonly NumbersColumn[];
  /** Row by row. The first column names its row; where a cursor is given it holds travel, mm or what `travelOf` makes of it. */
  rows: readonly (readonly Cell[])[];
  cursor?: Cursor;
  /** Travel of a row in mm, where the first column is in another unit. */
  travelOf?: (row: readonly Cell[]) => number;
  /** Open from the start, e.g. because the chart could not come. */
  open?: boolean;
  /** Tells what became of copying. */
  onStatus: (text: string) => void;
}

/** Marks the row nearest to the cursor's travel. Only the attribute moves; nothing is rendered. */
function markRow(table: Element, travels: readonly number[], travel: number): void {
  let nearest = -1;
  for (let i = 0; i < travels.length; i++)
    if (nearest < 0 || Math.abs(travels[i]! - travel) < Math.abs(travels[nearest]! - travel)) nearest = i;
  const rows = table.querySelectorAll('tbody > tr');
  const marked = table.querySelector('[aria-current]');
  const row = rows[nearest];
  if (marked === row) return;
  marked?.removeAttribute('aria-current');
  row?.setAttribute('aria-current', 'true');
}

/** Follows the cursor for as long as this table is in the document. */
function follow(cursor: Cursor, travels: readonly number[]): (table?: Element) => void {
  let stop: (() => void) | undefined;
  return (table) => {
    stop?.();
    stop = undefined;
    if (!table) return;
    const mark = () => markRow(table, travels, cursor.travel);
    stop = cursor.subscribe(mark);
    // The rows are rendered after the table itself.
    queueMicrotask(mark);
  };
}

/** As many columns as paper has room for; of more, each further table begins with the first column again. */
const ON_PAPER = 8;

function inTables<T>(columns: readonly T[]): T[][] {
  const [first, ...rest] = columns;
  const most = isPrinting() ? ON_PAPER - 1 : rest.length;
  const count = Math.max(1, Math.ceil(rest.length / most));
  // Of one width, as far as it goes.
  const each = Math.ceil(rest.length / count);
  return Array.from({ length: count }, (_, i) => [first!, ...rest.slice(i * each, (i + 1) * each)]);
}

/** Rows of figures under a caption, in a place that can be scrolled. */
export function renderTable(
  { id, caption, columns, rows }: Pick<NumbersOptions, 'id' | 'caption' | 'columns' | 'rows'>,
  follows?: (table?: Element) => void,
): TemplateResult {
  const show = (cell: Cell, { format }: NumbersColumn) =>
    typeof cell === 'number' ? (Number.isFinite(cell) ? (format?.(cell) ?? String(cell)) : '–') : (cell ?? '–');
  const tables = inTables([...columns.entries()]);
  return html`<div class="numbers-scroll" role="region" aria-labelledby="${id}-caption" tabindex="0">
    ${tables.map(
      (some, i) => html`<table ${ref(i === 0 ? follows : undefined)}>
        ${i === 0 ? html`<caption id="${id}-caption">${caption}</caption>` : nothing}
        <thead>
          <tr>
            ${some.map(([, { label, unit }]) => html`<th scope="col">${label}${unit ? html`, <span class="unit">${unit}</span>` : ''}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            (row) =>
              html`<tr>
                ${some.map(([index, column]) =>
                  index === 0
                    ? html`<th scope="row">${show(row[0] ?? null, column)}</th>`
                    : html`<td>${show(row[index] ?? null, column)}</td>`,
                )}
              </tr>`,
          )}
        </tbody>
      </table>`,
    )}
  </div>`;
}

/** The numbers behind a chart: a real table, folded away, with a button that copies it as CSV. */
export function renderNumbers(options: NumbersOptions): TemplateResult {
  const {
    id,
    caption,
    columns,
    rows,
    cursor,
    travelOf = ([travel]) => Number(travel),
    open = false,
    onStatus,
  } = options;
  const onCopy = async (event: Event) => {
    const fallback = (event.currentTarget as Element).parentElement!.querySelector('textarea')!;
    onStatus(await copyText(toCsv(columns, rows), fallback));
  };
  return html`<details class="numbers" part="table" ?open=${open}>
    <summary>${isPrinting() ? CONTROLS.numbersOnPaper : CONTROLS.numbers}</summary>
    ${renderTable({ id, caption, columns, rows }, cursor && follow(cursor, rows.map(travelOf)))}
    <div>
      <button type="button" class="numbers-copy" @click=${onCopy}>${CONTROLS.copyNumbers}</button>
      <textarea hidden readonly aria-label=${CONTROLS.csv} rows="6"></textarea>
    </div>
  </details>`;
}

const own = css`
  .numbers-scroll {
    max-block-size: 20em;
    overflow: auto;
    overscroll-behavior-x: contain;
    border-block: 1px solid var(--_hair);
    /* A shadow at the edge as long as there is more beyond it. */
    background:
      linear-gradient(to left, var(--_paper) 50%, transparent) right / 40px 100% local no-repeat,
      linear-gradient(to left, color-mix(in srgb, var(--_ink) 26%, transparent), transparent) right / 14px 100% scroll
        no-repeat;
  }
  :is(.numbers, .readings-used) table {
    inline-size: 100%;
    border-collapse: collapse;
    font-size: 0.875em;
    line-height: 1.4286em;
  }
  :is(.numbers, .readings-used) caption {
    padding: 8px 6px;
    text-align: start;
    color: var(--_soft);
  }
  :is(.numbers, .readings-used) th,
  :is(.numbers, .readings-used) td {
    padding: 5px 8px;
    text-align: end;
    font-weight: 400;
    white-space: nowrap;
  }
  :is(.numbers, .readings-used) thead th {
    position: sticky;
    inset-block-start: 0;
    background: var(--_paper);
    box-shadow: inset 0 -1px var(--_hair);
    white-space: normal;
    vertical-align: bottom;
    font-weight: 600;
  }
  :is(.numbers, .readings-used) .unit {
    font-weight: 400;
    color: var(--_soft);
  }
  :is(.numbers, .readings-used) th:first-child {
    text-align: start;
  }
  :is(.numbers, .readings-used) tbody tr + tr > * {
    border-block-start: 1px solid color-mix(in srgb, var(--_hair) 45%, transparent);
  }
  .numbers tr[aria-current] > * {
    background: var(--_now-wash);
    color: var(--_now);
    font-weight: 600;
  }
  .numbers tr[aria-current] > th {
    box-shadow: inset 3px 0 var(--_now);
  }
  .numbers-copy {
    min-block-size: 44px;
    margin-block: 8px;
    padding-inline: 16px;
    border: 1px solid var(--_hair);
    border-radius: 4px;
    background: var(--_sheet);
    color: var(--_ink);
    font: inherit;
    cursor: pointer;
  }
  .numbers textarea {
    display: block;
    inline-size: 100%;
    border: 1px solid var(--_hair);
    border-radius: 4px;
    background: var(--_sheet);
    color: var(--_ink);
    font: 0.8125em / 1.4 ui-monospace, monospace;
  }
  .numbers textarea[hidden] {
    display: none;
  }
  @media print {
    .numbers-scroll {
      max-block-size: none;
      overflow: visible;
      border: 0;
      background: none;
    }
    :is(.numbers, .readings-used) table {
      margin-block-end: 8px;
      font-size: 0.75em;
      break-inside: auto;
    }
    :is(.numbers, .readings-used) :is(th, td) {
      padding: 2px 6px;
      white-space: normal;
    }
    :is(.numbers, .readings-used) thead th {
      position: static;
    }
    .numbers tr[aria-current] > * {
      color: inherit;
      box-shadow: none;
    }
    .numbers-copy {
      display: none;
    }
  }
  @media (forced-colors: active) {
    .numbers tr[aria-current] > * {
      forced-color-adjust: none;
      background: Highlight;
      color: HighlightText;
    }
  }
`;

export const numbersStyles = [edgeFade, own];
