import { css, html, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import type { Cursor } from '../chart/cursor.js';
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

const nothing = (): void => {};

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
  const show = (cell: Cell, { format }: NumbersColumn) =>
    typeof cell === 'number' ? (Number.isFinite(cell) ? (format?.(cell) ?? String(cell)) : '–') : (cell ?? '–');
  const onCopy = async (event: Event) => {
    const fallback = (event.currentTarget as Element).parentElement!.querySelector('textarea')!;
    onStatus(await copyText(toCsv(columns, rows), fallback));
  };
  return html`<details class="numbers" part="table" ?open=${open}>
    <summary>${CONTROLS.numbers}</summary>
    <div class="numbers-scroll" role="region" aria-labelledby="${id}-caption" tabindex="0">
      <table ${ref(cursor ? follow(cursor, rows.map(travelOf)) : nothing)}>
        <caption id="${id}-caption">${caption}</caption>
        <thead>
          <tr>
            ${columns.map(({ label, unit }) => html`<th scope="col">${label}${unit ? html`, <span class="unit">${unit}</span>` : ''}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            (row) =>
              html`<tr>
                ${columns.map((column, index) =>
                  index === 0
                    ? html`<th scope="row">${show(row[0] ?? null, column)}</th>`
                    : html`<td>${show(row[index] ?? null, column)}</td>`,
                )}
              </tr>`,
          )}
        </tbody>
      </table>
    </div>
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
  .numbers table {
    inline-size: 100%;
    border-collapse: collapse;
    font-size: 0.875em;
    line-height: 1.4286em;
  }
  .numbers caption {
    padding: 8px 6px;
    text-align: start;
    color: var(--_soft);
  }
  .numbers th,
  .numbers td {
    padding: 5px 8px;
    text-align: end;
    font-weight: 400;
    white-space: nowrap;
  }
  .numbers thead th {
    position: sticky;
    inset-block-start: 0;
    background: var(--_paper);
    box-shadow: inset 0 -1px var(--_hair);
    white-space: normal;
    vertical-align: bottom;
    font-weight: 600;
  }
  .numbers .unit {
    font-weight: 400;
    color: var(--_soft);
  }
  .numbers th:first-child {
    text-align: start;
  }
  .numbers tbody tr + tr > * {
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
