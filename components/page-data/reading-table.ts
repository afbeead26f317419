import type { ReadingQuantity } from '../../core/readings/reading.js';
import type { Understanding } from '../../core/readings/table/understanding.js';
import { languageOf } from '../element/language.js';
import { readReadingSheet } from './reading-sheet.js';
import { captionOf, gridOf } from './table-grid.js';

export { readDoubts } from './doubts-attribute.js';
export { captionOf } from './table-grid.js';

/**
 * Reads a page's table of readings: headings name columns and units (mm and degrees otherwise), a `<data value>` in a cell stands
 * for its text, the table's language decides what `1,500` is, and nobody is asked. What a table of heights or dials cannot leave
 * open stands in its attributes, mm: `data-zero`, the height that is called zero, `data-base`, how far the dials or the places
 * of a tape stand apart, and `data-front`: `inboard` where the front figure grows as the front of the wheel moves inboard, else `outboard`.
 * `data-order="any"` says that the order of the rows is not that of reading: then it tells no direction.
 * `data-doubts` says how far its instruments can be trusted (`readDoubts`).
 */
export const readReadingTable = (table: HTMLTableElement, quantity: ReadingQuantity): Understanding =>
  readReadingSheet(
    { rows: gridOf(table).rows, caption: captionOf(table), attributes: table.dataset, language: languageOf(table) },
    quantity,
  );
