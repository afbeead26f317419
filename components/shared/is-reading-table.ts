import { rowKey } from '../../core/document/point-rows.js';
import { cellText } from './cell-text.js';

/** Whether a table holds readings: rows of figures, none of them named like a hard point or another measure of a corner. */
export function isReadingTable(table: HTMLTableElement): boolean {
  const rows = [...table.tBodies].flatMap((body) => [...body.rows]);
  const isNamed = rows.some(
    ({ cells }) => cells[0] && rowKey(cells[0].textContent ?? '') !== undefined && cells.length > 1,
  );
  return !isNamed && rows.some(({ cells }) => [...cells].filter((cell) => /\d/.test(cellText(cell))).length > 1);
}
