import type { KnownCorner } from '../curve-sources/solve-corner.js';
import { knownCorner } from '../curve-sources/solve-parts.js';
import type { ReadSetup } from '../curve-sources/source.js';
import type { PartData } from '../linkage/parts/part-kinds.js';
import { studentTQuantile } from '../math/student-t.js';
import { InputError, type Problem } from '../quantity/problem.js';
import type { ReadingDoubts } from '../readings/doubts.js';
import type { Reading, ReadingQuantity } from '../readings/reading.js';
import { type Goodness, goodnessOf } from './goodness.js';
import { type Estimated, estimate } from './learn.js';
import { type OddPass, passFaults } from './odd-pass.js';
import { knownAfterwards } from './posterior.js';
import { ACCUSED, asOfMany, type Pull, pullsOf } from './pulls.js';
import { type ReadSet, readSet } from './read-set.js';
import { type Slip, slipsOf } from './slips.js';
import { type Turned, turnedThatFits } from './turned.js';

export interface LearnRequest {
  /** Hard points, with the ± of each (`plusMinus`, half-widths of 95 % intervals, mm). */
  corner?: unknown;
  /** Or what was measured in a driveway: `DrivewayMeasurements`. */
  driveway?: unknown;
  /** Of camber, with the parts as they stand. Travel mm, bump positive; degrees, top outward positive. */
  readings?: readonly Reading[];
  /** Of toe, with the parts as they stand; degrees, toe-in positive. */
  toe?: readonly Reading[];
  setups?: readonly ReadSetup[];
  /** How far gauge, tape and zero height can be trusted; default as for readings alone. */
  allowances?: ReadingDoubts;
  /** Of toe, where another instrument read it. */
  toeAllowances?: ReadingDoubts;
  /** The readings of each pass stand in the order in which they were taken. */
  inOrder?: boolean;
  /** How much higher the wheel stood in the body, at the readings' travel zero, than where the corner was measured, mm. Default 0. */
  raisedBy?: number;
}

/** A pass of readings, and what was found of it: mm and degrees, each with the half-width of its 95 % interval. */
export interface LearntPass {
  /** Which of the sets, from 0. */
  set: number;
  /** Its name. */
  pass: string;
  /**
   * By how much the wheel stood higher than was read, as all the rest says; what was thought of it beforehand is left out, so that one far
   * off is found where it is. Of a single pass nothing is known.
   */
  height?: {
    value: number;
    plusMinus: number;
    /** It was begun higher or lower than is allowed for, and than chance alone would have it: an accusation. */
    isOff: boolean;
  };
}

export interface LearntSet {
  /** What the gauge read. */
  quantity: ReadingQuantity;
  /** Parts on it, none of the stock set. */
  parts: readonly PartData[];
  /** How many. */
  readings: number;
  /** How many. */
  passes: number;
  /** Travels between which something was read, mm from the corner's height. */
  measured: readonly [number, number];
  /** Standard deviation of a reading, degrees. */
  sd: number;
}

/** A corner that readings have narrowed down. */
export interface LearntCorner {
  /** Where its points most likely are, and what is left open of them. */
  known: KnownCorner;
  /** The same before anything was read. */
  before: KnownCorner;
  sets: readonly LearntSet[];
  passes: readonly LearntPass[];
  goodness: Goodness;
  /**
   * 1: readings and corner go together. Else one of them is wrong, nobody knows which, and the readings narrow nothing: what was not known
   * before is not known afterwards, and is so many times larger.
   */
  widened: number;
  pulls: readonly Pull[];
  /** None of a pass that does not belong: all of that is off. */
  slips: readonly Slip[];
  /** The pass whose curve is another than that of the rest, where there is one. */
  odd?: OddPass;
  /** What would have to be turned round for contradicting readings to go with the corner, where that is all. */
  turned?: Turned;
  isConverged: boolean;
  /** As many unknowns of the links as the readings told. */
  told: number;
  estimated: Estimated;
}

/** Below this chance readings and corner are said not to go together, and narrow nothing. */
export const DOUBTFUL = 0.01;
/** Beyond so many standard uncertainties no widening makes it honest. */
const MOST_WIDENED = 6;
/** Share of the variance beforehand below which readings say nothing of an unknown. */
const LEAST_TOLD = 1e-4;

/**
 * A corner learnt from readings: hard points or measurements with their ±, corrected by what a gauge read over travel. Every unknown of
 * gauge, tape and passes is estimated with it, and what cannot be seen stays in the ±.
 *
 * @throws InputError of the corner, of readings that say too little (`too-few`), `cannot-close` at `readings` where no corner near the
 *   measured one reaches what was read, `inconsistent` at `readings` where none near it gives what was read
 */
export const learnCorner = (request: LearnRequest): LearntCorner => learnKnown(beforehand(request), request);

type Known = Omit<LearnRequest, 'corner' | 'driveway'>;

/** As `learnCorner`, of a corner that is known already. @throws InputError as that */
export function learnKnown(before: KnownCorner, request: Known): LearntCorner {
  const sets = readSets(request);
  const estimated = explained(() => estimate(before, sets), before, request);
  const goodness = goodnessOf(estimated);
  const widened = goodness.chance < DOUBTFUL ? Math.max(1, goodness.apart) : 1;
  if (!isNear(estimated) || widened > MOST_WIDENED) {
    const problem: Problem = {
      code: 'inconsistent',
      path: 'readings',
      value: goodness.apart,
      names: namesOf(estimated),
    };
    throw new InputError([named(problem, before, request)]);
  }
  const { slips, odd } = passFaults(estimated, goodness, slipsOf(estimated, goodness));
  const turned = widened > 1 ? turnedThatFits(before, request, badness) : undefined;
  return {
    known: knownAfterwards(estimated, widened),
    before,
    sets: sets.map(({ quantity, parts, rows, travels, sd }) => ({
      quantity,
      parts,
      readings: rows.n,
      passes: rows.passes.length,
      measured: [travels[0]!, travels.at(-1)!] as const,
      sd,
    })),
    passes: passesOf(estimated, widened),
    goodness,
    widened,
    pulls: pullsOf(estimated),
    slips,
    ...(odd && { odd }),
    ...(turned && { turned }),
    isConverged: estimated.isConverged,
    told: toldOf(estimated),
    estimated,
  };
}

/** A search that ended, at a corner that is no other than was measured. */
const isNear = ({ isConverged, at, passes }: Estimated): boolean =>
  isConverged && Math.max(...at.subarray(passes.length).map(Math.abs)) <= MOST_WIDENED;

/** The sum of squares, where readings and corner go together. */
function badness(before: KnownCorner, request: Known): number | undefined {
  const estimated = estimate(before, readSets(request));
  return isNear(estimated) && goodnessOf(estimated).chance >= DOUBTFUL ? estimated.sum : undefined;
}

/** @throws InputError with what would have to be turned round, where readings are out of reach */
function explained<T>(run: () => T, before: KnownCorner, request: Known): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.problems.map((one) => named(one, before, request)));
  }
}

/** Of readings that cannot be those of the corner: `other` says what would have to be turned round for them to be. */
function named(problem: Problem, before: KnownCorner, request: Known): Problem {
  if (problem.path !== 'readings') return problem;
  const turned = turnedThatFits(before, request, badness);
  return turned ? { ...problem, other: turned } : problem;
}

function beforehand({ corner, driveway }: LearnRequest): KnownCorner {
  if (corner !== undefined) return knownCorner({ kind: 'corner', corner });
  if (driveway !== undefined) return knownCorner({ kind: 'driveway', driveway });
  throw new InputError([{ code: 'missing', path: 'corner', value: undefined }]);
}

function readSets({ readings, toe, setups = [], allowances = {}, ...request }: LearnRequest): ReadSet[] {
  const { toeAllowances = allowances, inOrder = false, raisedBy = 0 } = request;
  const all = [{ parts: [], readings, toe } as ReadSetup, ...setups];
  const sets = all.flatMap(({ parts, readings: camber, toe: ofToe, alignment = 'as-fitted' }, k) =>
    (
      [
        ['camber', camber, allowances],
        ['toe', ofToe, toeAllowances],
      ] as const
    ).flatMap(([quantity, of, doubts]) => {
      if (of === undefined || of.length === 0) return [];
      const asked = { quantity, readings: of, parts, alignment, allowances: doubts, inOrder, raisedBy };
      const place = quantity === 'toe' ? 'toe' : 'readings';
      return [inPlace(k === 0 ? place : `setups.${k - 1}.${place}`, () => readSet(asked, `${quantity}.${k}`))];
    }),
  );
  if (sets.length === 0) throw new InputError([{ code: 'missing', path: 'readings', value: undefined }]);
  return sets;
}

/** @throws InputError with the paths of readings where they stand in the request */
function inPlace<T>(place: string, run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.problems.map((one) => ({ ...one, path: one.path.replace(/^readings/, place) })));
  }
}

/** Likeliest causes, for people: what would have to be off furthest. */
const namesOf = (estimated: Estimated): string[] =>
  pullsOf(estimated)
    .slice(0, 3)
    .map(({ label }) => label);

function passesOf({ sets, passes, at, factor }: Estimated, widened: number): LearntPass[] {
  return sets.flatMap(({ rows, nuisances, dof }, set) =>
    rows.passes.map(({ name }): LearntPass => {
      const own = nuisances.find(({ id }) => id.endsWith(`.height.${name}`));
      if (!own) return { set, pass: name };
      const j = passes.findIndex(({ id }) => id === own.id);
      // Mean and variance are those of two normal laws together; the one beforehand has mean 0 and variance 1.
      const variance = factor.reduce((sum, column) => sum + column[j]! ** 2, 0);
      const left = 1 - variance;
      if (left < LEAST_TOLD) return { set, pass: name };
      const plusMinus = studentTQuantile(0.975, dof) * widened * Math.sqrt(variance / left) * own.unit;
      const isOff = Math.abs(at[j]!) * asOfMany(ACCUSED, dof) > ACCUSED * Math.sqrt(left);
      return { set, pass: name, height: { value: (at[j]! / left) * own.unit, plusMinus, isOff } };
    }),
  );
}

/** As many unknowns as the readings told in all: the sum of the shares of each one's variance that are gone (effective number of parameters). */
function toldOf({ factor, passes, unknowns }: Estimated): number {
  const first = passes.length;
  const size = unknowns.sources.length;
  const left = factor.reduce(
    (sum, column) => sum + column.subarray(first, first + size).reduce((all, one) => all + one * one, 0),
    0,
  );
  return size - left;
}
