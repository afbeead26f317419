import type { Pair } from './over-base.js';

/** What is read off the gauge. Camber from a gauge on the hub is the wheel's inclination: equal to camber at zero toe. */
export type ReadingQuantity = 'camber' | 'toe';

/** One reading of an angle at one height of the wheel, as plain data. */
export interface Reading {
  /** mm from the height that is called zero, bump positive. */
  travel: number;
  /** Degrees. Camber positive top outward, toe positive in. */
  value: number;
  /** Readings of one pass share the gauge's zero. Without it a reading belongs to the one pass that has no name. */
  pass?: string;
  /** Which way the wheel was moving when it was stopped for this reading. */
  going?: 'up' | 'down';
  /** The first height of its pass, read once more at the end of it: shows whether the gauge drifted. */
  again?: true;
  /** A reference on the body, read at the same time, mm upward: shows whether the body moved on its stands. */
  body?: number;
  /** Of toe over a base: both figures as they were read, mm. `value` follows from them and what the set says of how it was read. */
  pair?: Pair;
}

/** More than anybody takes on one corner, and as many as are fitted and drawn while one waits. */
export const MOST_READINGS = 5000;
