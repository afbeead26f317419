import { groupsAmong } from '../warnings/differ.js';
import { understandSheet } from './understand-sheet.js';
import type { Understanding, UnderstandOptions } from './understanding.js';

/** Reads a sheet that somebody can be asked about; see `understandSheet`. */
export const understand = (rows: readonly (readonly string[])[], options: UnderstandOptions): Understanding =>
  understandSheet(rows, options, groupsAmong);
