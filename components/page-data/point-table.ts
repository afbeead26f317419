import type { readPointRows } from '../../core/document/point-rows.js';
import { readPointSheet } from '../../core/document/point-sheet.js';
import { languageOf } from '../element/language.js';
import { captionOf, gridOf } from './table-grid.js';

/** Reads a table of hard points or driveway measurements: see `readPointSheet`; what counts as a cell's text, `cellText` tells. */
export function readPointTable(table: HTMLTableElement): ReturnType<typeof readPointRows> {
  return readPointSheet({ ...gridOf(table), caption: captionOf(table) }, languageOf(table));
}
