import { type Curve, curveOf } from '../../../core/curve/curve.js';
import { type LearntCorner, learnCorner } from '../../../core/learn/learn-corner.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { Corner } from '../../../core/linkage/corner.js';
import { type PartData, withMore } from '../../../core/linkage/parts/part-kinds.js';
import { InputError } from '../../../core/quantity/problem.js';
import type { Reading } from '../../../core/readings/reading.js';
import { plusMinus95 } from '../../../core/uncertainty/combine.js';
import { randomNumbers } from '../driveway/random-car.js';
import { CARS, type Cell } from './cells.js';
import {
  ASKED_MM,
  asMade,
  drawnAfternoon,
  EXACT,
  JOINT_MM,
  type Outcome,
  outcomesOf,
  readAfternoon,
  taped,
} from './study.js';

/** One car's readings and the tape's corner, with what is true. */
export interface Drawn {
  truth: Corner;
  corner: Corner;
  readings: Reading[];
}

export function drawnCar(random: () => number, { cars, doubts, isAlternating = false, bias }: Cell): Drawn {
  const truth = CARS[cars](random);
  const corner = taped(random, truth);
  const afternoon = drawnAfternoon(random, bias ? EXACT : doubts, { isAlternating });
  const { amount: _, ...off } = bias ?? {};
  return { truth, corner, readings: readAfternoon(random, buildLinkage(truth), { ...afternoon, ...off }) };
}

export interface Found {
  outcomes: Outcome[];
  /** Cars whose readings were refused, by what was said. */
  refused: string[];
  /** Of those that were not: with a slip told, with a measurement accused, with everything widened. */
  slipped: number;
  accused: number;
  widened: number;
  cars: number;
  baseline: Baseline[];
}

/** Cars of a cell, each measured, read and asked. */
export function study(
  which: Cell,
  {
    seed,
    cars,
    isAccused = () => false,
  }: { seed: number; cars: number; isAccused?: (learnt: LearntCorner) => boolean },
): Found {
  const random = randomNumbers(seed);
  const found: Found = { outcomes: [], refused: [], slipped: 0, accused: 0, widened: 0, cars, baseline: [] };
  for (let n = 0; n < cars; n++) {
    const { truth, corner, readings } = drawnCar(random, which);
    const learnt = tried(() => learnCorner({ corner, readings, allowances: which.doubts }), found.refused);
    if (!learnt) continue;
    found.slipped += Number(learnt.slips.length > 0);
    found.widened += Number(learnt.widened > 1);
    found.accused += Number(isAccused(learnt));
    const outcomes = outcomesOf(random, truth, learnt, which.parts, madeOf(which.bias?.amount));
    found.outcomes.push(...outcomes);
    found.baseline.push(...baselineOf(curveOf(learnt.estimated.sets[0]!.fit.curve), outcomes));
  }
  return found;
}

const madeOf = (amount: number | undefined) =>
  amount === undefined
    ? asMade
    : (_: () => number, parts: readonly PartData[]) => parts.map((data) => withMore(data, 'mm', amount));

export function tried<T>(run: () => T, refused: string[]): T | undefined {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    refused.push(`${error.problems[0]!.code} ${error.problems[0]!.path}`);
    return undefined;
  }
}

/** Of a joint lower by h with the rod corrected: the curve that was read, moved by so many times h. */
export const SHIFT_OF_JOINT = 1.1;

/** The plain way: no links, the fit of the stock readings moved. */
export interface Baseline {
  mm: number;
  error: number;
  plusMinus: number;
  /** What the model makes of the same. */
  ofModel: number;
}

/** Where the stock readings reach far enough into droop for it. */
function baselineOf(stock: Curve, outcomes: readonly Outcome[]): Baseline[] {
  const by = SHIFT_OF_JOINT * JOINT_MM;
  return outcomes
    .filter(({ part }) => part === 'joint')
    .flatMap(({ mm, real, error }): Baseline[] => {
      const change = stock.changeEstimate(mm - by, -by);
      if (!Number.isFinite(change.value)) return [];
      const plusMinus = plusMinus95(change, stock.data.sources);
      return [{ mm, error: change.value - real, plusMinus, ofModel: error }];
    });
}

/** Of one cell's part at one travel. */
export interface Row {
  part: string;
  mm: number;
  draws: number;
  covered: number;
  /** Medians: of the half-width, of that of the tape alone, and of how many times narrower. */
  plusMinus: number;
  before: number;
  narrower: number;
  rms: number;
  /** Root mean square of the error over that of the estimate's own standard uncertainty. */
  overBound: number;
  beforeCovered: number;
}

export function rowsOf(outcomes: readonly Outcome[]): Row[] {
  const parts = [...new Set(outcomes.map(({ part }) => part))];
  return parts.flatMap((part) =>
    ASKED_MM.map((mm): Row => {
      const own = outcomes.filter((one) => one.part === part && one.mm === mm);
      const share = (is: (one: Outcome) => boolean) => own.filter(is).length / own.length;
      const rms = rootMeanSquare(own.map(({ error }) => error));
      return {
        part,
        mm,
        draws: own.length,
        covered: share(({ error, plusMinus }) => Math.abs(error) <= plusMinus),
        plusMinus: median(own.map(({ plusMinus }) => plusMinus)),
        before: median(own.map(({ before }) => before)),
        narrower: median(own.map(({ before, plusMinus }) => before / plusMinus)),
        rms,
        overBound: rms / rootMeanSquare(own.map(({ sd }) => sd)),
        beforeCovered: share(({ beforeError, before }) => Math.abs(beforeError) <= before),
      };
    }),
  );
}

export const rootMeanSquare = (all: readonly number[]): number =>
  Math.sqrt(all.reduce((sum, one) => sum + one * one, 0) / all.length);

export function median(all: readonly number[]): number {
  const sorted = [...all].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}
