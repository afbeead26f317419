import type { TriedSource } from '../curve-sources/solved-source.js';
import { finished } from '../math/finished.js';
import { InputError } from '../quantity/problem.js';
import { aheadOf, bareOf, columnAt, type WheelMotion } from '../wheel/wheel-motion.js';
import { type ClearanceAnswer, clearanceSteered, clearanceSwept } from './clearance.js';
import { type ClearanceRequest, checkedFitment } from './clearance-request.js';
import { lazily } from './lazily.js';
import { type WheelMotionRequest, wheelMotionSteps } from './wheel-motion.js';

/** As an element asks: with what the motion comes from in place of the motion. */
export type ClearanceQuestion<S = TriedSource> = Omit<ClearanceRequest, 'motion'> & WheelMotionRequest<S>;

/** An answer, with what its pictures are drawn by: the motion straight ahead, and steered as each place is tightest. */
export type DrawnClearance = ClearanceAnswer & {
  /** How the wheel moves, as its drawing needs it. */
  motion: WheelMotion;
  /** Of every place, at the steer at which it decides; undefined where that is straight ahead. */
  steered: readonly (WheelMotion | undefined)[];
};

/** What is asked of wheels in their arches, by name. Served apart: it is nothing to who asks about camber alone. */
export const clearanceQuestions = {
  /** With its doubt: for who goes on from it on the page. What is wrong with the wheels is told with what is wrong with the motion. */
  *wheelMotion(request: ClearanceQuestion): Generator<undefined, WheelMotion> {
    return yield* motionFor(request);
  },
  /** At once, of a motion that is known: while something is dragged. */
  clearanceSwept: (request: ClearanceRequest): DrawnClearance =>
    finished(drawn(request.motion, clearanceSwept(request))),
  *clearanceSteered(request: ClearanceQuestion): Generator<undefined, DrawnClearance> {
    const motion = yield* motionFor(request);
    return yield* drawn(motion, clearanceSteered({ ...request, motion }));
  },
};

function* drawn(
  motion: WheelMotion,
  answering: Generator<undefined, ClearanceAnswer>,
): Generator<undefined, DrawnClearance> {
  const answer = yield* answering;
  const bare = bareOf(motion);
  return lazily(answer, {
    motion: () => aheadOf(bare),
    steered: () => {
      const columns = new Map<number, WheelMotion>();
      return answer.places.map(({ decisive: { isAhead, toe } }) => {
        if (isAhead) return undefined;
        const column = columns.get(toe) ?? columnAt(bare, toe);
        columns.set(toe, column);
        return column;
      });
    },
  });
}

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
