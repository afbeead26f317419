import { curveFrom } from '../../../core/curve/check-curve-data.js';
import type { Candidate, CurveFit } from '../../../core/curve/curve-fit.js';
import { type FitOptions, fitCurve } from '../../../core/curve/fit.js';
import type { Reading } from '../../../core/readings/reading.js';
import { plusMinus95 } from '../../../core/uncertainty/combine.js';
import { randomNumbers } from '../driveway/random-car.js';
import type { Claim } from '../study-limits.js';
import type { Cell } from './noise-cells.js';
import { CHANGES, type Noise, randomSeries, type Series } from './noisy-series.js';

/** Seeds of the tests and of the bench. */
export const SEEDS = [1, 2, 3] as const;

/** How a series is fitted. */
export type Method = (readings: Reading[], options?: FitOptions) => CurveFit;

/** The degree that a criterion likes best, and some more. */
const bestBy =
  (criterion: (candidate: Candidate, readings: number) => number, more = 0): Method =>
  (readings) => {
    const { candidates } = fitCurve(readings, { plain: true });
    const [best] = [...candidates].sort((a, b) => criterion(a, readings.length) - criterion(b, readings.length));
    return fitCurve(readings, { plain: true, degree: Math.min(best!.degree + more, candidates.length) });
  };

/** Schwarz 1978, up to a constant: n ln(RSS/n) + k ln n. */
const bic = ({ residualSd, dof }: Candidate, n: number) =>
  n * Math.log((residualSd ** 2 * dof) / n) - dof * Math.log(n);

/** The mean of all passes at each height, fitted without regard to which passes are in it. */
export const averaged: Method = (readings) => {
  const byHeight = new Map<number, number[]>();
  for (const { travel, value } of readings) byHeight.set(travel, [...(byHeight.get(travel) ?? []), value]);
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  return fitCurve(
    [...byHeight].map(([travel, values]) => ({ travel, value: mean(values) })),
    { plain: true },
  );
};

export const METHODS = {
  automatic: (readings, options) => fitCurve(readings, options),
  /** Scatter alone, independent: the band that all other doubt is left out of. */
  plain: (readings) => fitCurve(readings, { plain: true }),
  'AICc alone': bestBy(({ criterion }) => criterion),
  'AICc plus one': bestBy(({ criterion }) => criterion, 1),
  'AICc plus two': bestBy(({ criterion }) => criterion, 2),
  'BIC alone': bestBy(bic),
  'BIC plus one': bestBy(bic, 1),
  'adjusted R² alone': bestBy(({ adjustedRSquared }) => -adjustedRSquared),
  cubic: (readings) => {
    const { candidates } = fitCurve(readings, { plain: true });
    return fitCurve(readings, { plain: true, degree: Math.min(3, candidates.length) });
  },
  averaged,
} satisfies Record<string, Method>;

/** Up to so many readings a set is small. */
const FEW = 20;

export interface Coverage {
  /** Shares of series whose true change lies in the 95 % band, for each of CHANGES. */
  covered: number[];
  /** The same of sets of at most FEW readings, and how many these are. */
  few: number[];
  fewCount: number;
  /** The same of the value at height 0, where there are several passes. */
  level: number;
  /** Mean half-width of the changes' bands, degrees. */
  plusMinus: number[];
  /** Share of series, all without an outlier, in which one was flagged. */
  accused: number;
  degree: number;
  series: number;
}

export interface Study {
  seeds: readonly number[];
  /** So many a seed. */
  series: number;
  noise?: Noise;
  options?: FitOptions;
  method?: Method;
  /** Only series of which this is true. */
  only?: (series: Series) => boolean;
}

export function coverage({
  seeds,
  series,
  noise = {},
  options = {},
  method = METHODS.automatic,
  only = () => true,
}: Study): Coverage {
  const zeros = () => CHANGES.map(() => 0);
  const total = { covered: zeros(), few: zeros(), plusMinus: zeros(), level: 0, accused: 0, degree: 0 };
  let [n, several, fewCount] = [0, 0, 0];
  for (const seed of seeds) {
    const random = randomNumbers(seed);
    const end = n + series;
    while (n < end) {
      const drawn = randomSeries(random, noise);
      if (!only(drawn)) continue;
      const fit = method(drawn.readings, options);
      const { sources } = fit.curve;
      const curve = curveFrom(fit.curve);
      if (!(curve.domain[0] <= 0 && curve.domain[1] >= CHANGES.at(-1)!)) continue;
      n++;
      const isFew = drawn.readings.length <= FEW;
      if (isFew) fewCount++;
      CHANGES.forEach((travel, i) => {
        const change = curve.changeEstimate(travel, 0);
        const plusMinus = plusMinus95(change, sources);
        const isIn = Math.abs(change.value - (drawn.truth[i + 1]! - drawn.truth[0]!)) <= plusMinus;
        if (isIn) total.covered[i]! += 1;
        if (isIn && isFew) total.few[i]! += 1;
        total.plusMinus[i]! += plusMinus;
      });
      const value = curve.estimate(0);
      if (fit.passOffsets.length > 1) {
        several++;
        if (Math.abs(value.value - drawn.truth[0]!) <= plusMinus95(value, sources)) total.level++;
      }
      if (fit.strangers.length > 0) total.accused++;
      total.degree += fit.degree;
    }
  }
  return {
    covered: total.covered.map((count) => count / n),
    few: total.few.map((count) => count / fewCount),
    fewCount,
    plusMinus: total.plusMinus.map((sum) => sum / n),
    level: total.level / several,
    accused: total.accused / n,
    degree: total.degree / n,
    series: n,
  };
}

/** What a cell claims of its sets: 93 to 97 % of the changes held; where an error is fixed inside what is allowed for, 93 % at least. */
export const heldClaims = ({ goal }: Pick<Cell, 'goal'>, { covered, series }: Coverage): Claim[] =>
  covered.map((share, i) => ({
    what: `over ${CHANGES[i]} mm`,
    share,
    draws: series,
    least: 0.93,
    ...(goal === 'stated' && { most: 0.97 }),
  }));

/** And of its small sets, 90 %. */
export const fewClaims = ({ few, fewCount }: Coverage): Claim[] =>
  few.map((share, i) => ({ what: `few readings, over ${CHANGES[i]} mm`, share, draws: fewCount, least: 0.9 }));

/** Of passes up and down in turn: the value at height 0 is held as well, and hardly anything accused. */
export const levelClaims = ({ level, accused, series: draws }: Coverage): Claim[] => [
  { what: 'value at height 0', share: level, draws, least: 0.9 },
  { what: 'accused', share: accused, draws, most: 0.03 },
];

/** What another way of fitting would not hold: the reason for this one. */
export const plainClaim = (most: number, { covered, series: draws }: Coverage, at = 1): Claim => ({
  what: 'held otherwise',
  share: covered[at]!,
  draws,
  most,
});
/** By the degree that the criterion likes best, over 25 mm; by passes averaged height by height, over 50 mm. */
export const CRITERION_MOST = 0.91;
export const AVERAGED_MOST = 0.9;
