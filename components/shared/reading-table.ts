import { METRIC } from '../../core/quantity/units.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';
import { upright } from '../../core/readings/sideways.js';
import { understand } from '../../core/readings/understand.js';
import type { Understanding } from '../../core/readings/understanding.js';
import { cellText } from './cell-text.js';
import { languageOf } from './language.js';

export { readDoubts } from './doubts-attribute.js';

/**
 * Reads a page's table of readings: headings name columns and units (mm and degrees otherwise), a `<data value>` in a cell stands
 * for its text, the table's language decides what `1,500` is, and nobody is asked. What a table of heights or dials cannot leave
 * open stands in its attributes, mm: `data-zero`, the height that is called zero, and `data-base`, how far the dials stand apart.
 * `data-doubts` says how far its instruments can be trusted (`readDoubts`).
 */
export function readReadingTable(table: HTMLTableElement, quantity: ReadingQuantity): Understanding {
  const { zero, base } = table.dataset;
  const answers = { ...(zero !== undefined && { zero }), ...(base !== undefined && { base }) };
  return understand(upright(rowsOf(table)), { quantity, units: METRIC, language: languageOf(table), answers });
}

/** Cells in their columns: one over several columns stands in the first, one beside several rows in its first row. */
function rowsOf(table: HTMLTableElement): string[][] {
  const grid: string[][] = [...table.rows].map(() => []);
  for (const [r, row] of [...table.rows].entries()) {
    let c = 0;
    for (const cell of row.cells) {
      while (grid[r]![c] !== undefined) c++;
      for (let down = 0; down < cell.rowSpan && r + down < grid.length; down++) {
        for (let along = 0; along < cell.colSpan; along++) {
          grid[r + down]![c + along] = down + along === 0 ? cellText(cell) : '';
        }
      }
    }
  }
  return grid.map((row) => Array.from(row, (text) => text ?? ''));
}
