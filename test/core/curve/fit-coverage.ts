import { curveFrom } from '../../../core/curve/curve.js';
import type { Candidate, CurveFit } from '../../../core/curve/curve-fit.js';
import { fitCurve } from '../../../core/curve/fit.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { Corner, Vector3, WishboneCorner } from '../../../core/linkage/corner.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import type { Reading } from '../../../core/readings/reading.js';
import { plusMinus95 } from '../../../core/uncertainty/combine.js';
import { normal, randomCar, randomNumbers, SURE_TRAVEL_MM } from '../driveway/random-car.js';

/** Seeds of the tests and of the bench. */
export const SEEDS = [1, 2, 3] as const;
/** mm of bump from height 0. */
export const CHANGES = [25, 50] as const;

/** A plausible unequal-arm double wishbone: every coordinate uniform within some centimetres. Common practice, no source. */
function randomWishbone(random: () => number): WishboneCorner {
  const about = (centre: Vector3, by: Vector3) =>
    centre.map((at, axis) => at + (2 * random() - 1) * by[axis]!) as unknown as Vector3;
  return {
    kind: 'wishbone',
    wheelCentre: about([0, 750, 310], [10, 40, 20]),
    loadedRadius: 310,
    camber: -1,
    toe: 0.1,
    lowerArm: {
      front: about([150, 360, 200], [40, 30, 15]),
      rear: about([-170, 365, 205], [40, 30, 15]),
      ball: about([0, 715, 190], [15, 20, 20]),
    },
    upperArm: {
      front: about([110, 450, 470], [30, 25, 20]),
      rear: about([-130, 455, 470], [30, 25, 20]),
      ball: about([-15, 690, 500], [15, 20, 25]),
    },
    tieRod: { inner: about([-145, 370, 258], [20, 20, 10]), outer: about([-140, 695, 255], [15, 15, 10]) },
  };
}

/** Three struts to a wishbone, that moves as far as the struts do. */
function randomLinkage(random: () => number) {
  for (;;) {
    const corner: Corner = random() < 0.75 ? randomCar(random) : randomWishbone(random);
    try {
      const linkage = buildLinkage(corner);
      if (linkage.reach.bump >= SURE_TRAVEL_MM && linkage.reach.droop <= -SURE_TRAVEL_MM) return linkage;
    } catch {
      // Does not close.
    }
  }
}

/** Readings of one random car, and the truth at height 0 and at each of CHANGES. */
export interface Series {
  readings: Reading[];
  truth: Float64Array;
}

export interface Kind {
  /** Standard deviation of the gauge, degrees, uniform. 0.03 to 0.1 by default. */
  gauge?: readonly [least: number, most: number];
  /** Standard deviation of the height, mm. 1 by default. */
  travelError?: number;
}

/**
 * A random three-dimensional linkage measured in one to five passes. Drawn uniformly: a reading every 2, 5 or 10 mm, from 20 to 65 mm
 * of droop to 50 to 65 mm of bump; half the passes of several begin late or end early, by up to half the heights or two fifths; up to
 * 30 % of the other readings are not taken. The zero of each pass is normal with 0.1°, values are written down to 0.01°.
 * Ranges: common practice, no source.
 */
export function randomSeries(random: () => number, { gauge = [0.03, 0.1], travelError = 1 }: Kind = {}): Series {
  const between = (least: number, most: number) => least + (most - least) * random();
  const linkage = randomLinkage(random);
  const scatter = between(...gauge);
  const passes = 1 + Math.floor(5 * random());
  const step = [2, 5, 10][Math.floor(3 * random())]!;
  const low = -Math.round(between(20, 65) / step) * step;
  const high = Math.ceil(between(50, 65) / step) * step;
  const missing = between(0, 0.3);
  const heights = Array.from({ length: (high - low) / step + 1 }, (_, i) => low + i * step);
  const readings: Reading[] = [];
  for (let pass = 1; pass <= passes; pass++) {
    const zero = 0.1 * normal(random);
    const late = random() < 0.5 ? 0 : Math.floor((random() * heights.length) / 2);
    const early = random() < 0.5 ? 0 : Math.floor(random() * heights.length * 0.4);
    const taken = (passes > 1 ? heights.slice(late, heights.length - early) : heights).filter(
      () => random() >= missing,
    );
    const { camber } = sweepTravel(
      linkage,
      taken.map((height) => height + travelError * normal(random)),
    );
    taken.forEach((travel, i) => {
      const value = Math.round(100 * (camber[i]! + zero + scatter * normal(random))) / 100;
      readings.push({ travel, value, pass: `Pass ${pass}` });
    });
  }
  return { readings, truth: sweepTravel(linkage, [0, ...CHANGES]).camber };
}

/** How a series is fitted. */
export type Method = (readings: Reading[]) => CurveFit;

/** The degree that a criterion likes best, and some more. */
const bestBy =
  (criterion: (candidate: Candidate, readings: number) => number, more = 0): Method =>
  (readings) => {
    const { candidates } = fitCurve(readings);
    const [best] = [...candidates].sort((a, b) => criterion(a, readings.length) - criterion(b, readings.length));
    return fitCurve(readings, { degree: Math.min(best!.degree + more, candidates.length) });
  };

/** Schwarz 1978, up to a constant: n ln(RSS/n) + k ln n. */
const bic = ({ residualSd, dof }: Candidate, n: number) =>
  n * Math.log((residualSd ** 2 * dof) / n) - dof * Math.log(n);

/** The mean of all passes at each height, fitted without regard to which passes are in it. */
export const averaged: Method = (readings) => {
  const byHeight = new Map<number, number[]>();
  for (const { travel, value } of readings) byHeight.set(travel, [...(byHeight.get(travel) ?? []), value]);
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  return fitCurve([...byHeight].map(([travel, values]) => ({ travel, value: mean(values) })));
};

export const METHODS = {
  automatic: (readings) => fitCurve(readings),
  'AICc alone': bestBy(({ criterion }) => criterion),
  'AICc plus one': bestBy(({ criterion }) => criterion, 1),
  'AICc plus two': bestBy(({ criterion }) => criterion, 2),
  'BIC alone': bestBy(bic),
  'BIC plus one': bestBy(bic, 1),
  'adjusted R² alone': bestBy(({ adjustedRSquared }) => -adjustedRSquared),
  cubic: (readings) => fitCurve(readings, { degree: 3 }),
  averaged,
} satisfies Record<string, Method>;

export interface Coverage {
  /** Shares of series whose true change lies in the 95 % band, for each of CHANGES. */
  covered: number[];
  /** The same of the value at height 0, where there are several passes. */
  level: number;
  /** Mean half-width of the changes' bands, degrees. */
  plusMinus: number[];
  /** Share of series, all without a stranger, in which one was flagged. */
  accused: number;
  degree: number;
}

export interface Study extends Kind {
  seed: number;
  series: number;
  method?: Method;
  /** Only series of which this is true. */
  only?: (series: Series) => boolean;
}

export function coverage({ seed, series, method = METHODS.automatic, only = () => true, ...kind }: Study): Coverage {
  const random = randomNumbers(seed);
  const total = { covered: CHANGES.map(() => 0), plusMinus: CHANGES.map(() => 0), level: 0, accused: 0, degree: 0 };
  let n = 0;
  let several = 0;
  while (n < series) {
    const drawn = randomSeries(random, kind);
    if (!only(drawn)) continue;
    const fit = method(drawn.readings);
    const { sources } = fit.curve;
    const curve = curveFrom(fit.curve);
    if (!(curve.domain[0] <= 0 && curve.domain[1] >= 50)) continue;
    n++;
    CHANGES.forEach((travel, i) => {
      const change = curve.changeEstimate(travel, 0);
      const plusMinus = plusMinus95(change, sources);
      if (Math.abs(change.value - (drawn.truth[i + 1]! - drawn.truth[0]!)) <= plusMinus) total.covered[i]! += 1;
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
  return {
    covered: total.covered.map((count) => count / n),
    plusMinus: total.plusMinus.map((sum) => sum / n),
    level: total.level / several,
    accused: total.accused / n,
    degree: total.degree / n,
  };
}
