import { curveFrom } from '../../../core/curve/curve.js';
import { type FitOptions, fitCurve } from '../../../core/curve/fit.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import type { Reading } from '../../../core/readings/reading.js';
import { plusMinus95 } from '../../../core/uncertainty/combine.js';
import { normal, randomCar, randomNumbers } from '../driveway/random-car.js';

export const SEEDS = [1, 2, 3] as const;
/** Travels over which the change is compared, mm. */
export const OVER_MM = [25, 50] as const;

const between = (random: () => number, low: number, high: number) => low + (high - low) * random();
const oneOf = <T>(random: () => number, items: readonly T[]): T => items[Math.floor(random() * items.length)]!;

/**
 * Readings as somebody takes them of a car whose linkage is known. Ranges: common practice, no source.
 *
 * | what                               | range                                                    |
 * | ---------------------------------- | -------------------------------------------------------- |
 * | passes                             | 2, 3 or 4, each with a zero of its own (SD 0.1°)         |
 * | heights                            | every 5, 7.5 or 10 mm from −40 or −30 to 55 or 60 mm     |
 * | gauge, standard deviation          | 0.03 to 0.1°                                             |
 * | height, standard deviation         | 1 mm, another for each reading                           |
 * | missing                            | one reading in eight; one pass in three ends half way    |
 */
export function takenReadings(random: () => number): { readings: Reading[]; truth(travel: number): number } {
  const linkage = buildLinkage(randomCar(random));
  const truth = (travel: number) => sweepTravel(linkage, [travel]).inclination[0]!;
  const step = oneOf(random, [5, 7.5, 10]);
  const from = oneOf(random, [-40, -30]);
  const to = oneOf(random, [55, 60]);
  const gauge = between(random, 0.03, 0.1);
  const readings: Reading[] = [];
  for (let pass = 0, passes = oneOf(random, [2, 3, 4]); pass < passes; pass++) {
    const zero = 0.1 * normal(random);
    const isShort = random() < 1 / 3;
    const middle = between(random, from, to);
    const keepsLow = random() < 0.5;
    for (let travel = from; travel <= to; travel += step) {
      const value = truth(travel + normal(random)) + zero + gauge * normal(random);
      const isMissing = random() < 1 / 8 || (isShort && pass > 0 && travel < middle !== keepsLow);
      if (!isMissing) readings.push({ travel, value, pass: `${pass + 1}` });
    }
  }
  return { readings, truth };
}

export interface Study {
  /** Shares of cars whose true change lies inside the 95 % band, by `OVER_MM`. */
  covered: number[];
  /** Mean half-width of the band, degrees. */
  plusMinus: number[];
  /** How often each degree was taken. */
  degrees: number[];
}

/** @param averaged the plain means of each height in place of the readings: what a spreadsheet does */
export function study(seed: number, cars: number, options: FitOptions = {}, averaged = false): Study {
  const random = randomNumbers(seed);
  const counted = OVER_MM.map(() => 0);
  const covered = OVER_MM.map(() => 0);
  const plusMinus = OVER_MM.map(() => 0);
  const degrees: number[] = [];
  for (let car = 0; car < cars; car++) {
    const { readings, truth } = takenReadings(random);
    const fit = fitCurve(averaged ? meansOf(readings) : readings, options);
    const curve = curveFrom(fit.curve);
    degrees[fit.degree] = (degrees[fit.degree] ?? 0) + 1;
    OVER_MM.forEach((over, i) => {
      const change = curve.changeEstimate(over, 0);
      // Where nothing was measured nothing is said.
      if (Number.isNaN(change.value)) return;
      const half = plusMinus95(change, fit.curve.sources);
      counted[i]!++;
      if (Math.abs(change.value - (truth(over) - truth(0))) <= half) covered[i]!++;
      plusMinus[i]! += half;
    });
  }
  const shares = (sums: number[]) => sums.map((sum, i) => sum / counted[i]!);
  return { covered: shares(covered), plusMinus: shares(plusMinus), degrees };
}

function meansOf(readings: readonly Reading[]): Reading[] {
  const heights = new Map<number, number[]>();
  for (const { travel, value } of readings) heights.set(travel, [...(heights.get(travel) ?? []), value]);
  return [...heights].map(([travel, values]) => ({
    travel,
    value: values.reduce((sum, value) => sum + value, 0) / values.length,
  }));
}
