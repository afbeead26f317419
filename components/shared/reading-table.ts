import { METRIC } from '../../core/quantity/units.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';
import { upright } from '../../core/readings/sideways.js';
import { understand } from '../../core/readings/understand.js';
import type { Understanding } from '../../core/readings/understanding.js';
import { languageOf } from './language.js';
import { gridOf } from './table-grid.js';

export { captionOf } from './table-grid.js';

/**
 * Reads a page's table of readings: headings name columns and units (mm and degrees otherwise), a `<data value>` in a cell stands
 * for its text, the table's language decides what `1,500` is, and nobody is asked. What a table of heights or dials cannot leave
 * open stands in its attributes, mm: `data-zero`, the height that is called zero, and `data-base`, how far the dials stand apart.
 */
export function readReadingTable(table: HTMLTableElement, quantity: ReadingQuantity): Understanding {
  const { zero, base } = table.dataset;
  const answers = { ...(zero !== undefined && { zero }), ...(base !== undefined && { base }) };
  return understand(upright(gridOf(table).rows), { quantity, units: METRIC, language: languageOf(table), answers });
}
