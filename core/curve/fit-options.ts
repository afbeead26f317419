import type { ReadingDoubts } from '../readings/doubts.js';
import type { ReadingQuantity } from '../readings/reading.js';

export interface FitOptions extends ReadingDoubts {
  /** 1 to 10; chosen by evidence when left out. */
  degree?: number | 'auto';
  /** The highest degree that is tried, 6 by default; a degree that is asked for is tried in any case. */
  maxDegree?: number;
  /** Camber by default. */
  quantity?: ReadingQuantity;
  /** The readings of each pass stand in the order in which they were taken. Without it the order given says nothing. */
  inOrder?: boolean;
  /**
   * Plain least squares, to be compared with a regression library: curve, zeros of the passes and the difference between up and down
   * alone, scatter that is independent, and no other source of doubt.
   */
  plain?: boolean;
}
