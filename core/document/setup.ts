import type { ReadingDoubts } from '../readings/doubts.js';
import type { Reading, ReadingQuantity } from '../readings/reading.js';
import type { CornerName } from './corner-name.js';

/** A named set of parts on one corner, with the readings that were taken with it. Plain immutable data; mm and degrees. */
export interface Setup {
  /** For people: "Standard arms", "Joint extensions 20 mm". */
  readonly name: string;
  readonly cornerName: CornerName;
  readonly quantity: ReadingQuantity;
  /** In the order in which they were entered; the order changes no result. */
  readonly readings: readonly Reading[];
  /** Indexes into `readings` of those that the user set aside. Never set by us. */
  readonly setAside?: readonly number[];
  /** Degree of the curve; without it the evidence decides. */
  readonly degree?: number;
  /** Whose readings these are, where a set that a page gave, or the example's, stands among the user's own: kept beside them, or changed. */
  readonly givenBy?: 'page' | 'example';
  /** The drop from stock height, mm, at which the wheel stood where travel is called zero. Without it: stock height. */
  readonly zeroAt?: number;
  /** How far gauge, tape and zero height can be trusted, where somebody said it. */
  readonly doubts?: ReadingDoubts;
}
