import type { TriedSource } from '../curve-sources/solved-source.js';
import { finished } from '../math/finished.js';
import { InputError } from '../quantity/problem.js';
import { aheadOf, bareOf, columnAt, type WheelMotion } from '../wheel/wheel-motion.js';
import { type ClearanceAnswer, clearance, clearanceSteered } from './clearance.js';
import { type ClearanceRequest, checkedFitment } from './clearance-request.js';
import { LARGEST_LOCK, type WheelMotionRequest, wheelMotionSteps } from './wheel-motion.js';

/** As an element asks: with what the motion comes from in place of the motion. */
export type ClearanceQuestion<S = TriedSource> = Omit<ClearanceRequest, 'motion'> & WheelMotionRequest<S>;

/** An answer, with what its pictures are drawn by: the motion straight ahead, and steered as each place is tightest. */
export type DrawnClearance = ClearanceAnswer & {
  motion: WheelMotion;
  /** Of every place, at the steer at which it decides; undefined where that is straight ahead. */
  steered: readonly (WheelMotion | undefined)[];
};

/** What is asked of wheels in their arches, by name. Served apart: it is nothing to who asks about camber alone. */
export const clearanceQuestions = {
  clearance: (request: ClearanceQuestion): DrawnClearance => {
    // Straight ahead alone: the steering takes its time, and is not looked at here.
    const motion = aheadOf(finished(motionFor(isLock(request.lock) ? { ...request, lock: 0 } : request)));
    return { ...clearance({ ...request, motion }), motion: bareOf(motion), steered: [] };
  },
  *clearanceSteered(request: ClearanceQuestion): Generator<undefined, DrawnClearance> {
    const motion = yield* motionFor(request);
    const answer = yield* clearanceSteered({ ...request, motion });
    const bare = bareOf(motion);
    const columns = new Map<number, WheelMotion>();
    const steered: (WheelMotion | undefined)[] = [];
    for (const { decisive } of answer.places) {
      if (!columns.has(decisive.toe)) columns.set(decisive.toe, columnAt(bare, decisive.toe));
      steered.push(decisive.isAhead ? undefined : columns.get(decisive.toe));
      yield;
    }
    return { ...answer, motion: aheadOf(bare), steered };
  },
};

export type ClearanceQuestions = typeof clearanceQuestions;

type KnownMotion = Record<'lock' | 'sideways' | 'measuredAt', number | undefined> & { motion: WheelMotion };

/** Of a source that was solved: wheels and heights change nothing of the motion. */
const known = new WeakMap<TriedSource, KnownMotion[]>();
const KNOWN_AT_MOST = 4;

function* motionFor(request: ClearanceQuestion): Generator<undefined, WheelMotion> {
  const { source, lock, sideways, measuredAt } = request;
  const motions = known.get(source) ?? [];
  const found = motions.find((one) => one.lock === lock && one.sideways === sideways && one.measuredAt === measuredAt);
  if (found) return found.motion;
  let motion: WheelMotion;
  try {
    motion = yield* wheelMotionSteps(request);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    // What is wrong with the wheels is told together with it.
    const problems = [...error.problems];
    try {
      checkedFitment(request);
    } catch (other) {
      if (!(other instanceof InputError)) throw other;
      problems.push(...other.problems);
    }
    throw new InputError(problems);
  }
  known.set(source, [...motions.slice(1 - KNOWN_AT_MOST), { lock, sideways, measuredAt, motion }]);
  return motion;
}

/** One that is none is told with the rest. */
const isLock = (lock: number | undefined): boolean => lock === undefined || (lock >= 0 && lock <= LARGEST_LOCK);
