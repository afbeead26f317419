import { cellText } from './cell-text.js';

/** A table as rows of texts. A cell over several columns stands in the first of them, one beside several rows in its first row. */
export interface TableGrid {
  rows: string[][];
  /** What a cell over several columns says in each of them; empty elsewhere. */
  merged: string[][];
}

/** What is seen of a table: hidden rows and cells are not there, as in the table that is drawn. */
export function gridOf(table: HTMLTableElement): TableGrid {
  const seen = [...table.rows].filter((row) => !row.hidden && !(row.parentElement as HTMLElement).hidden);
  const rows: string[][] = seen.map(() => []);
  const merged: string[][] = seen.map(() => []);
  for (const [r, row] of seen.entries()) {
    let c = 0;
    for (const cell of row.cells) {
      if (cell.hidden) continue;
      while (rows[r]![c] !== undefined) c++;
      const text = cellText(cell);
      for (let down = 0; down < cell.rowSpan && r + down < seen.length; down++) {
        for (let along = 0; along < cell.colSpan; along++) {
          rows[r + down]![c + along] = down + along === 0 ? text : '';
          if (down === 0 && cell.colSpan > 1) merged[r]![c + along] = text;
        }
      }
    }
  }
  const full = (row: string[]) => Array.from(row, (text) => text ?? '');
  return { rows: rows.map(full), merged: merged.map(full) };
}

/** What stands over a table, without footnotes. */
export const captionOf = (table: HTMLTableElement): string => (table.caption ? cellText(table.caption) : '');
