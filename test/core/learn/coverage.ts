import { type Curve, curveOf } from '../../../core/curve/curve.js';
import { type LearntCorner, learnCorner } from '../../../core/learn/learn-corner.js';
import { ACCUSED } from '../../../core/learn/pulls.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { Corner } from '../../../core/linkage/corner.js';
import { type PartData, withMore } from '../../../core/linkage/parts/part-kinds.js';
import { InputError } from '../../../core/quantity/problem.js';
import type { Reading } from '../../../core/readings/reading.js';
import { plusMinus95 } from '../../../core/uncertainty/combine.js';
import { randomNumbers } from '../driveway/random-car.js';
import { missed } from '../study-limits.js';
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
  baseline: Baseline[];
  cars: number;
  /** What was said of cars whose readings were refused. */
  refused: string[];
  /** Cars of which something was said to be wrong: a slip, readings and corner that contradict each other, or any of this. */
  slipped: number;
  contradicted: number;
  accused: number;
}

/** Something is said to be wrong: a slip, a measurement far from what all the rest says, or readings that contradict the corner. */
export const isAccused = ({ slips, odd, pulls, widened }: LearntCorner): boolean =>
  slips.length > 0 || odd !== undefined || widened > 1 || Math.abs(pulls[0]?.sigma ?? 0) > ACCUSED;

/** Cars of a cell, each measured, read and asked. */
export function study(which: Cell, { seed, cars }: { seed: number; cars: number }): Found {
  const random = randomNumbers(seed);
  const found: Found = { outcomes: [], baseline: [], cars, refused: [], slipped: 0, contradicted: 0, accused: 0 };
  for (let n = 0; n < cars; n++) {
    const { truth, corner, readings } = drawnCar(random, which);
    const learnt = tried(() => learnCorner({ corner, readings, allowances: which.doubts }), found.refused);
    if (!learnt) continue;
    found.slipped += Number(learnt.slips.length > 0);
    found.contradicted += Number(learnt.widened > 1);
    found.accused += Number(isAccused(learnt));
    const outcomes = outcomesOf(random, truth, learnt, which.parts, madeOf(which.bias?.amount));
    found.outcomes.push(...outcomes);
    if (which.cars !== 'wishbone') {
      found.baseline.push(...baselineOf(curveOf(learnt.estimated.sets[0]!.fit.curve), outcomes));
    }
  }
  return found;
}

export const pooled = (all: readonly Found[]): Found => ({
  outcomes: all.flatMap(({ outcomes }) => outcomes),
  baseline: all.flatMap(({ baseline }) => baseline),
  cars: all.reduce((sum, { cars }) => sum + cars, 0),
  refused: all.flatMap(({ refused }) => refused),
  slipped: all.reduce((sum, { slipped }) => sum + slipped, 0),
  contradicted: all.reduce((sum, { contradicted }) => sum + contradicted, 0),
  accused: all.reduce((sum, { accused }) => sum + accused, 0),
});

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
  /** Root mean square of the errors, each over the estimate's own standard uncertainty: what a linear problem with normal errors allows. */
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
        overBound: rootMeanSquare(own.map(({ error, sd }) => error / sd)),
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

/** Of the medians at 25 mm, so many times narrower than the tape's. */
const NARROWER = { exact: 5, allowances: 3.3 };
/** Root mean square error over what the estimate's own uncertainty says, near and far. */
const OVER_BOUND = { near: 1.15, far: 1.25 };
const ACCUSED_MOST = 0.02;

/** What a cell is to hold and does not: none is what a bench wants. @param isSample fewer cars than the claim is about */
export function claimsMissed({ name, goal, doubts }: Cell, found: Found, isSample: boolean): string[] {
  if (goal === 'beyond') return [];
  const rows = rowsOf(found.outcomes);
  const covered = rows.map(({ part, mm, covered: share, draws }) => {
    const what = `${name}, ${part} at ${mm} mm: covered`;
    return { what, share, draws, least: 0.93, ...(goal === 'stated' && { most: 0.97 }) };
  });
  if (goal === 'inside') return missed(covered, isSample);
  const refused = found.refused.map((said) => `${name}: refused, ${said}`);
  const accused = {
    what: `${name}: accused`,
    share: found.accused / found.cars,
    draws: found.cars,
    most: ACCUSED_MOST,
  };
  return [...missed([...covered, accused], isSample), ...refused, ...figuresMissed(name, doubts, rows)];
}

function figuresMissed(name: string, doubts: Cell['doubts'], rows: readonly Row[]): string[] {
  const least = doubts.drift === 0 ? NARROWER.exact : NARROWER.allowances;
  return rows.flatMap(({ part, mm, narrower, overBound }) => {
    const most = Math.abs(mm) > 25 ? OVER_BOUND.far : OVER_BOUND.near;
    const where = `${name}, ${part} at ${mm} mm`;
    return [
      ...(mm === 25 && narrower < least ? [`${where}: ${narrower.toFixed(2)} times narrower, not ${least}`] : []),
      ...(overBound > most ? [`${where}: rms error ${overBound.toFixed(2)} of the bound, not ${most}`] : []),
    ];
  });
}
