import type { CurveFit } from '../curve/curve-fit.js';
import { horner } from '../curve/polynomial.js';
import type { Reading } from './reading.js';
import { passOf } from './warnings/robust-fit.js';

/** What averaging by eye gives at one height. */
export interface RawMean {
  /** mm. */
  travel: number;
  /** Mean of all readings at this height, degrees. */
  mean: number;
  count: number;
  /** Mean less the fitted curve, degrees: the readings' scatter and the pull together. */
  lessCurve: number;
  /** How far the mean is pulled because not every pass is in it: the mean of the zeros of those that are, degrees. */
  pull: number;
}

export interface RawMeans {
  /** By height, ascending. */
  points: RawMean[];
  /** By how much a change between two heights may be pulled: the largest pull less the smallest, degrees. */
  mostPull: number;
  /** The two heights, mm, of the smallest and the largest pull. Absent where nothing is pulled. */
  between?: [number, number];
}

/** Rounding, degrees. */
const NOTHING = 1e-9;

/**
 * The plain mean at each height, which people draw a curve through. Where a height lacks a pass, the zero of that pass is missing
 * from the mean and bends the curve; the fit takes it out.
 *
 * @param fit of the same readings
 */
export function rawMeans(readings: readonly Reading[], fit: CurveFit): RawMeans {
  const zeros = new Map(fit.passOffsets.map(({ pass, offset }) => [pass, offset]));
  const half = (fit.upLessDown?.value ?? 0) / 2;
  const ways = { up: half, down: -half };
  const heights = new Map<number, Reading[]>();
  for (const reading of readings) {
    // As the fit does: an inch and back is the same height.
    const key = Math.round(reading.travel * 1e6) / 1e6;
    const taken = heights.get(key);
    if (taken) taken.push(reading);
    else heights.set(key, [reading]);
  }
  const points = [...heights]
    .sort(([a], [b]) => a - b)
    .map(([travel, taken]): RawMean => {
      const meanOf = (of: (reading: Reading) => number) => taken.reduce((sum, one) => sum + of(one), 0) / taken.length;
      const mean = meanOf(({ value }) => value);
      return {
        travel,
        mean,
        count: taken.length,
        lessCurve: mean - horner(fit.powerCoefficients, travel),
        pull: meanOf((one) => (zeros.get(passOf(one)) ?? 0) + (one.going ? ways[one.going] : 0)),
      };
    });
  if (points.length === 0) return { points, mostPull: 0 };
  const least = points.reduce((a, b) => (b.pull < a.pull ? b : a));
  const most = points.reduce((a, b) => (b.pull > a.pull ? b : a));
  const mostPull = most.pull - least.pull;
  if (mostPull < NOTHING) return { points, mostPull: 0 };
  return { points, mostPull, between: [least.travel, most.travel] };
}
