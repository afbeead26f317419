import { InputError } from '../quantity/problem.js';
import { aheadOf, type WheelMotion } from '../wheel/wheel-motion.js';
import type { SolvableSource } from './camber-source.js';
import { type ClearanceAnswer, clearance, clearanceSteered } from './clearance.js';
import { type ClearanceRequest, checkedFit } from './clearance-request.js';
import { type WheelMotionRequest, wheelMotionOfChecked } from './wheel-motion.js';

/** As an element asks: with what the motion comes from in place of the motion. */
export type ClearanceQuestion<S = SolvableSource> = Omit<ClearanceRequest, 'motion'> & WheelMotionRequest<S>;

/** An answer, with the motion straight ahead that its pictures are drawn by. */
export type DrawnClearance = ClearanceAnswer & { motion: WheelMotion };

/** What is asked of wheels in their arches, by name. Served apart: it is nothing to who asks about camber alone. */
export const clearanceQuestions = {
  clearance: (request: ClearanceQuestion): DrawnClearance => {
    const motion = aheadOf(motionFor(request));
    return { ...clearance({ ...request, motion }), motion };
  },
  *clearanceSteered(request: ClearanceQuestion): Generator<undefined, DrawnClearance> {
    const motion = motionFor(request);
    return { ...(yield* clearanceSteered({ ...request, motion })), motion: aheadOf(motion) };
  },
};

export type ClearanceQuestions = typeof clearanceQuestions;

const remembered = new Map<string, WheelMotion>();
const REMEMBERED_AT_MOST = 4;

/** Wheels and heights change nothing of the motion: the last few are remembered. */
function motionFor(request: ClearanceQuestion): WheelMotion {
  const { source, lock, sideways } = request;
  const key = JSON.stringify([source, lock, sideways]);
  let motion = remembered.get(key);
  if (motion) return motion;
  try {
    motion = wheelMotionOfChecked(request);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    // What is wrong with the wheels is told together with it.
    const problems = [...error.problems];
    try {
      checkedFit(request);
    } catch (other) {
      if (!(other instanceof InputError)) throw other;
      problems.push(...other.problems);
    }
    throw new InputError(problems);
  }
  if (remembered.size >= REMEMBERED_AT_MOST) remembered.delete(remembered.keys().next().value as string);
  remembered.set(key, motion);
  return motion;
}
