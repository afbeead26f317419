import { type PointRow, readPointRows } from '../../core/document/point-rows.js';
import { METRIC, type UnitSystem } from '../../core/quantity/units.js';
import { cellText } from './cell-text.js';
import { languageOf } from './language.js';

/**
 * Reads a table of hard points: the first cell names the row, a `<data value>` in a cell stands for its text. Headings may name
 * the unit, "x (in)"; mm and degrees otherwise.
 */
export function readPointTable(table: HTMLTableElement): ReturnType<typeof readPointRows> {
  const heading = table.tHead?.rows[0];
  const lengthUnit = [...(heading?.cells ?? [])].slice(1).map((cell) => {
    const unit = /\((mm|in)\)/.exec(cell.textContent ?? '')?.[1];
    return unit as UnitSystem['length'] | undefined;
  });
  const rows: PointRow[] = [];
  for (const body of table.tBodies) {
    for (const row of body.rows) {
      const name = row.cells[0]?.textContent?.trim();
      const cells = [...row.cells].slice(1).map(cellText);
      if (name) rows.push({ name, cells });
    }
  }
  return readPointRows(rows, METRIC, lengthUnit, languageOf(table));
}
