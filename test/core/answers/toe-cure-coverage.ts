import { toeCureDoubt } from '../../../core/answers/from-source.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner, Vector3 } from '../../../core/linkage/corner.js';
import { hardPoint, STRUT_POINT_KEYS, withHardPoint } from '../../../core/linkage/corner.js';
import { toeCorrection } from '../../../core/linkage/toe-correction.js';
import { NORMAL_95 } from '../../../core/uncertainty/normal.js';
import { normal, ORDINARY, randomCar, randomNumbers } from '../driveway/random-car.js';
import { missed } from '../study-limits.js';

/** Half-width of a 95 % interval of every coordinate, mm: a careful tape. */
const PLUS_MINUS = 1.5;
const OPTIMA = ['slope', 'leastSquares', 'minimax'] as const;

/** Shares of cars whose true amount lies inside the band that is shown, and its mean half-width, mm. */
export type CureCoverage = Record<(typeof OPTIMA)[number], { covered: number; plusMinus: number }> & { none: number };

/**
 * Random struts, every coordinate measured once with a normal error of its ±: how often does the band hold the amount that the true
 * car needs?
 */
export function cureCoverage({ seed, cars }: { seed: number; cars: number }): CureCoverage {
  const random = randomNumbers(seed);
  const total = { slope: [0, 0], leastSquares: [0, 0], minimax: [0, 0] } as Record<
    (typeof OPTIMA)[number],
    [number, number]
  >;
  let none = 0;
  // The end that goes up is clamped where it is for the study: what a range ends is no optimum.
  const how = { at: 0, window: [-40, 40], adjust: 'outerEnd', range: [-80, 80] } as const;
  for (let n = 0; n < cars; n++) {
    const truth = randomCar(random, ORDINARY);
    const corner: StrutCorner = STRUT_POINT_KEYS.reduce((of, key) => {
      const point = hardPoint(of, key).map((one) => one + (normal(random) * PLUS_MINUS) / NORMAL_95);
      return withHardPoint(of, key, point as unknown as Vector3) as StrutCorner;
    }, truth);
    const measured = { ...corner, plusMinus: { other: PLUS_MINUS } };
    const wanted = toeCorrection(buildLinkage(truth), { ...how, toe: truth.toe });
    const said = toeCorrection(buildLinkage(corner), { ...how, toe: truth.toe });
    const doubt = toeCureDoubt({ source: { kind: 'corner', corner: measured }, ...how, toe: truth.toe });
    if (OPTIMA.some((name) => !wanted[name] || !said[name] || !doubt[name])) {
      none++;
      continue;
    }
    for (const name of OPTIMA) {
      const { plusMinus } = doubt[name]!.amount;
      if (Math.abs(said[name]!.amount - wanted[name]!.amount) <= plusMinus) total[name][0]++;
      total[name][1] += plusMinus;
    }
  }
  const drawn = cars - none;
  const shares = OPTIMA.map((name) => [name, { covered: total[name][0] / drawn, plusMinus: total[name][1] / drawn }]);
  return { ...Object.fromEntries(shares), none } as CureCoverage;
}

/** What the study holds of all cars. */
export const cureMissed = (found: CureCoverage, cars: number, isSample: boolean): string[] =>
  missed(
    OPTIMA.map((name) => ({
      what: `amount of ${name}: covered`,
      share: found[name].covered,
      draws: cars - found.none,
      least: 0.93,
      most: 0.97,
    })),
    isSample,
  );
