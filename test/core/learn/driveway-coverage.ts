import { curveOf } from '../../../core/curve/curve.js';
import { linkageWith, solveKnownParts } from '../../../core/curve-sources/solve-parts.js';
import { learnCorner } from '../../../core/learn/learn-corner.js';
import { predictCurve, predictRollCentre } from '../../../core/learn/predict-curve.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { PartData } from '../../../core/linkage/parts/part-kinds.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { DEFAULT_DOUBTS, type ReadingDoubts } from '../../../core/readings/doubts.js';
import { plusMinus95 } from '../../../core/uncertainty/combine.js';
import { type Level, six, withErrors } from '../driveway/coverage.js';
import { STUDIED } from '../driveway/part-coverage.js';
import { ORDINARY, randomCar, randomNumbers } from '../driveway/random-car.js';
import type { Claim } from '../study-limits.js';
import { median, rootMeanSquare } from './coverage.js';
import { asMade, drawnAfternoon, readAfternoon } from './study.js';

/** mm of travel from stock height over which the camber with a part on is asked. */
export const OVER_MM = [-40, 40] as const;

const STOCK = 'stock';
export const LEARNT_PARTS: Readonly<Record<string, readonly PartData[]>> = {
  [STOCK]: [],
  ...Object.fromEntries(Object.entries(STUDIED).map(([name, data]) => [name, [data]])),
};

interface One {
  error: number;
  plusMinus: number;
  before: number;
}

export interface LearntDriveway {
  /** By part and travel, degrees. */
  changes: Record<string, One[]>;
  /** By part, of the roll centre's height at stock height, mm. */
  rollCentres: Record<string, Omit<One, 'before'>[]>;
}

export interface DrivewayStudy {
  seed: number;
  cars: number;
  doubts?: Required<ReadingDoubts>;
  /** How sure of all six; drawn for each where it is left out. */
  level?: Level;
  parts?: readonly string[];
}

/** Random three-dimensional cars, measured by six measurements and read over their travel; toe set again once a part is on. */
export function learntDriveway(study: DrivewayStudy): LearntDriveway {
  const { seed, cars, doubts = DEFAULT_DOUBTS, level, parts: asked = Object.keys(LEARNT_PARTS) } = study;
  const random = randomNumbers(seed);
  const found: LearntDriveway = { changes: {}, rollCentres: {} };
  for (let n = 0; n < cars; n++) {
    const truth = randomCar(random, ORDINARY);
    const driveway = withErrors(six(truth), random, level);
    const readings = readAfternoon(random, buildLinkage(truth), drawnAfternoon(random, doubts));
    const learnt = learnCorner({ driveway, readings, allowances: doubts });
    for (const name of asked) {
      const parts = LEARNT_PARTS[name]!;
      const how = { alignment: 'toe' } as const;
      const real = sweepTravel(linkageWith(truth, asMade(random, parts), { ...how, isOpen: true }), [0, ...OVER_MM]);
      const predicted = curveOf(predictCurve(learnt, parts, 'camber', how));
      const before = curveOf(solveKnownParts(learnt.before, parts, 'toe').camber);
      OVER_MM.forEach((mm, i) => {
        const change = predicted.changeEstimate(mm, 0);
        const error = change.value - (real.camber[i + 1]! - real.camber[0]!);
        if (!Number.isFinite(error)) return;
        const key = `${name}, ${mm} mm`;
        found.changes[key] ??= [];
        found.changes[key].push({
          error,
          plusMinus: plusMinus95(change, predicted.data.sources),
          before: plusMinus95(before.changeEstimate(mm, 0), before.data.sources),
        });
      });
      const { height, plusMinus } = predictRollCentre(learnt, parts, [0], how);
      found.rollCentres[name] ??= [];
      found.rollCentres[name].push({ error: height[0]! - real.rollCentreHeight[0]!, plusMinus: plusMinus[0]! });
    }
  }
  return found;
}

export const pooledDriveways = (all: readonly LearntDriveway[]): LearntDriveway => {
  const joined = <T>(of: readonly Record<string, T[]>[]) =>
    Object.fromEntries(Object.keys(of[0]!).map((key) => [key, of.flatMap((one) => one[key] ?? [])]));
  return { changes: joined(all.map((one) => one.changes)), rollCentres: joined(all.map((one) => one.rollCentres)) };
};

export interface DrivewayRow {
  what: string;
  draws: number;
  covered: number;
  /** Medians. */
  plusMinus: number;
  before?: number;
  rms: number;
}

export function drivewayRows({ changes, rollCentres }: LearntDriveway): DrivewayRow[] {
  const row = (what: string, all: readonly Omit<One, 'before'>[]): DrivewayRow => ({
    what,
    draws: all.length,
    covered: all.filter(({ error, plusMinus }) => Math.abs(error) <= plusMinus).length / all.length,
    plusMinus: median(all.map(({ plusMinus }) => plusMinus)),
    rms: rootMeanSquare(all.map(({ error }) => error)),
  });
  return [
    ...Object.entries(changes).map(([key, all]) => ({
      ...row(key, all),
      before: median(all.map(({ before }) => before)),
    })),
    ...Object.entries(rollCentres).map(([name, all]) => row(`roll centre, ${name}`, all)),
  ];
}

/** Of a joint without its rod the band has two humps to hold, of cars with the rod behind and ahead: wider for all is right for most. */
export const drivewayClaims = (rows: readonly DrivewayRow[]): Claim[] =>
  rows.map(({ what, draws, covered }) => ({ what, share: covered, draws, least: 0.93, most: 0.98 }));
