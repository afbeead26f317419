import { html, nothing, type TemplateResult } from 'lit';
import { formatNumber, formatQuantity } from '../../core/quantity/format.js';
import { toShown } from '../../core/quantity/units.js';
import type { Reading } from '../../core/readings/reading.js';
import type { SheetCell, SheetColumn, Understanding } from '../../core/readings/table/understanding.js';
import { shownName } from '../car/shown-names.words.js';
import { columnName } from '../element/left-out.js';
import type { Display } from '../element/sentence.js';
import {
  cellName,
  columnNote,
  goingText,
  isTaken,
  isWaiting,
  moreRows,
  NAMES,
  quantityOf,
  roleName,
  SPACE,
} from './paste.labels.js';

/** So many rows are drawn at first, and so many more at each asking. */
export const FIRST_ROWS = 40;
export const MORE_ROWS = 400;

export interface PreviewOptions {
  understanding: Understanding;
  display: Display;
  /** Rows that are drawn at most. */
  most: number;
  /** The column whose panel is open. */
  open: number | undefined;
  mended: ReadonlyMap<string, { was: string }>;
  onColumn: (column: number) => void;
  onCell: (row: number, column: number) => void;
  onMore: () => void;
}

/** The sheet as it was pasted, cell by cell with what it becomes; the heads say, and change, what a column holds. */
export function renderPreview(options: PreviewOptions): TemplateResult {
  const { understanding, most, onMore } = options;
  const { cells, columns } = understanding;
  const rows = cells.slice(0, most);
  const rest = cells.length - rows.length;
  return html`<div class="preview" role="region" aria-label=${NAMES.asPasted} tabindex="0">
      <table>
        <thead>
          <tr>
            <td class="row"><span class="visually-hidden">${NAMES.row}</span></td>
            ${columns.map((column, index) => renderHead(column, index, options))}
          </tr>
        </thead>
        <tbody>
          ${rows.map((row, r) => renderRow(row, r, options))}
        </tbody>
      </table>
    </div>
    ${
      rest > 0
        ? html`<p class="rest">
            ${NAMES.rowsShown(rows.length, cells.length)}
            <button type="button" class="button" @click=${onMore}>${moreRows(rest, MORE_ROWS, cells.length)}</button>
          </p>`
        : nothing
    }`;
}

const isUnused = ({ role }: SheetColumn): boolean => role === 'other' || role === 'derived';

/** The heights stay in sight where they lead the sheet. */
const leads = ({ columns }: Understanding): boolean => columns[0]?.role === 'travel' || columns[0]?.role === 'height';

const lead = (index: number, { understanding }: PreviewOptions): string =>
  index === 0 && leads(understanding) ? 'lead' : '';

function renderHead(column: SheetColumn, index: number, options: PreviewOptions): TemplateResult {
  const { understanding, open, onColumn } = options;
  const note = columnNote(column);
  return html`<th scope="col" class=${`${lead(index, options)} ${isUnused(column) ? 'unused' : ''}`}>
    <button type="button" id="head-${index}" aria-expanded=${open === index} @click=${() => onColumn(index)}>
      <span class="letter">${columnName(index)}</span>
      <span class="role">${roleName(column.role, understanding)} <span aria-hidden="true">▾</span></span>
      ${note ? html`<span class="note">${note}</span>` : nothing}
      <span class="visually-hidden">${NAMES.change}</span>
    </button>
  </th>`;
}

/** Whether a row gives a reading, and whether it would with a question answered. */
interface RowState {
  isReading: boolean;
  isWaiting: boolean;
}

function renderRow(row: readonly SheetCell[], r: number, options: PreviewOptions): TemplateResult {
  const state = { isReading: row.some(isTaken), isWaiting: row.some(isWaiting) };
  // A line of words takes the width that it needs from the empty cells beside it.
  const isLine = row.length > 1 && row.every(({ text }, c) => (text === '') === c > 0);
  return html`<tr>
    <th scope="row" class="row">${r + 1}</th>
    ${
      isLine && row[0]!.state !== 'problem'
        ? html`<td colspan=${row.length} class="line ${row[0]!.state}">
            <span>${row[0]!.text}</span>${noteOf(row[0]!, options.understanding.columns[0]!, state, options)}
          </td>`
        : row.map((cell, c) => renderCell(cell, r, c, state, options))
    }
  </tr>`;
}

function renderCell(cell: SheetCell, r: number, c: number, state: RowState, options: PreviewOptions): TemplateResult {
  const { understanding, mended, onCell } = options;
  const column = understanding.columns[c]!;
  const { text, state: of } = cell;
  const name = cellName(r, c);
  const was = mended.get(`${r},${c}`)?.was;
  const kind = `${of} ${lead(c, options)} ${isUnused(column) ? 'unused' : ''}`;
  if (of === 'problem') {
    return html`<td class=${kind}>
      <button type="button" id="cell-${r}-${c}" @click=${() => onCell(r, c)}>
        <span>${text}</span><small>✗ ${NAMES.unread}</small><span class="visually-hidden">, ${NAMES.correct} ${name}</span>
      </button>
    </td>`;
  }
  return html`<td class=${kind}>
    ${text === '' ? nothing : html`<span>${text}</span>`}${noteOf(cell, column, state, options)}${
      was === undefined
        ? nothing
        : html`<button type="button" class="mended" id="cell-${r}-${c}" @click=${() => onCell(r, c)}>
            <small>${was} ${NAMES.mended}<span class="visually-hidden">, ${NAMES.change} ${name}</span></small>
          </button>`
    }
  </td>`;
}

/** What stands under a pasted text. */
function noteOf(
  cell: SheetCell,
  column: SheetColumn,
  { isReading, isWaiting }: RowState,
  { understanding, display }: PreviewOptions,
): TemplateResult | typeof nothing {
  const { state, why } = cell;
  if (state === 'heading') return html`<span class="visually-hidden">, ${NAMES.heading}</span>`;
  if (state === 'empty')
    return isReading && column.role === 'value' ? html`<small class="gap">${NAMES.gap}</small>` : nothing;
  if (state === 'left-out') {
    // A column that is not used says so at its head.
    if (!why || why === 'other-column' || column.role === 'derived')
      return html`<span class="visually-hidden">, ${NAMES.why[why ?? 'other-column']}</span>`;
    // It waits for an answer, not for a figure.
    return isWaiting && why === 'no-value' ? nothing : html`<small>${NAMES.why[why]}</small>`;
  }
  const becomes = becomesText(cell, column, understanding, display);
  const mark =
    state === 'asked'
      ? html`<span class="mark" aria-hidden="true"> ?</span><span class="visually-hidden">, ${NAMES.asked}</span>`
      : nothing;
  return becomes || state === 'asked' ? html`<small>→ ${becomes}${mark}</small>` : nothing;
}

/** The value of a cell in the user's unit; empty where it is what was pasted. */
function becomesText(
  cell: SheetCell,
  column: SheetColumn,
  understanding: Understanding,
  { units, language }: Display,
): string {
  const { text, value, state } = cell;
  const reading = cell.reading === undefined ? undefined : understanding.readings[cell.reading];
  if (column.role === 'pass') {
    const own = (pass?: string) =>
      [reading && setOf(cell.reading!, understanding), pass].filter((part) => part).join(', ');
    return own(reading?.pass) === text.trim() ? '' : own(reading?.pass && shownName(reading.pass));
  }
  if (column.role === 'going') return reading?.going && reading.going !== text.trim() ? goingText(reading.going) : '';
  // A line of its own that names the pass or the direction of those below it.
  if (reading && value === undefined) return sectionText(reading, text.trim(), setOf(cell.reading!, understanding));
  const isPair = column.role === 'dialFront' || column.role === 'dialRear';
  if (column.role === 'dialFront' && reading) {
    return formatQuantity(reading.value, understanding.quantity, units, { language, sign: 'always' }).text;
  }
  const quantity = quantityOf(column, understanding);
  if (value === undefined || !quantity) return '';
  const isAngle = quantity === understanding.quantity;
  if ((state !== 'asked' || isPair) && isPlainly(text, toShown(value, isAngle ? 'angle' : 'length', units))) return '';
  // Dials are read more finely than lengths are told.
  if (isPair) return `${formatNumber(toShown(value, 'length', units), 3, language)}${SPACE}${units.length}`;
  const sign = column.role === 'travel' || column.role === 'height' ? 'always' : 'auto';
  return formatQuantity(value, quantity, units, { language, sign }).text;
}

const setOf = (reading: number, { sets }: Understanding): string =>
  sets.length > 1 ? (sets.find(({ readings }) => readings.includes(reading))?.name ?? '') : '';

/** What a line of words says, where it says more or other than its own words. */
function sectionText({ pass, going }: Reading, own: string, set: string): string {
  const parts = [set, pass === own ? pass : pass && shownName(pass), going && goingText(going)].filter((part) => part);
  return parts.length === 1 && parts[0] === own ? '' : parts.join(', ');
}

/** Whether a text shows a figure as anybody would read it, its unit and the kind of its marks aside. */
function isPlainly(text: string, figure: number): boolean {
  const plain = text
    .trim()
    .replace(/^[-‐-―−]\s?/, '-')
    .replace(',', '.')
    .replace(/\s*(?:mm|°)$/, '');
  return plain !== '' && Math.abs(Number(plain) - figure) <= 1e-9 * Math.max(1, Math.abs(figure));
}
