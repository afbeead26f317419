import { toeFromDials } from './instruments.js';

/** From dials on a hub to a plate along the car, mm: common practice, no source. */
export const BASES = [20, 4000] as const;
/** Which way the front of the wheel goes where the figure at the front grows. */
export const FRONT_SIGNS = ['inboard', 'outboard'] as const;
export type FrontSign = (typeof FRONT_SIGNS)[number];
/** What the two figures are read with. */
export const PAIR_GAUGES = ['dials', 'tape'] as const;

/** How toe was read that no gauge gives as an angle: by two figures, at the front and at the rear of the wheel, or of a plate on its hub. */
export interface OverBase {
  by: (typeof PAIR_GAUGES)[number];
  /** From one place to the other, mm. */
  base: number;
  /** A string lies outside the wheel: `inboard`. A tape from the car's centreline: `outboard`. */
  front: FrontSign;
}

/** What stood at the front and at the rear, mm. */
export type Pair = readonly [front: number, rear: number];

/** Degrees, toe-in positive. */
export const toeOfPair = ([front, rear]: Pair, over: Pick<OverBase, 'base' | 'front'>): number =>
  (over.front === 'inboard' ? 1 : -1) * toeFromDials(front, rear, over.base) + 0;
