import { buildLinkage } from '../linkage/build-linkage.js';
import type { Corner } from '../linkage/corner.js';
import { type CornerMoves, type CornerSource, movedBy } from '../linkage/corner-source.js';
import type { Linkage } from '../linkage/linkage.js';
import { POSE_SIZE } from '../linkage/pose.js';
import { InputError } from '../quantity/problem.js';
import { motionOver, type RackReaches, racksBetween, toeAt } from './rack-motion.js';
import type { MotionDoubt, WheelMotion } from './wheel-motion.js';

/** Between the travels of a motion that only tells how much another one is in doubt, mm. */
const STEP_MM = 10;
/** Standard uncertainties by which a corner is tried to be off, until its links join. */
const TRIED = [1, -1, 0.25, -0.25, 0.05, -0.05];
/** Steps of the search for a lock, and how near is near enough, degrees. */
const SECANT_STEPS = 6;
const SAME_STEER = 0.01;

/**
 * How a corner's wheel would move with each of its sources of doubt a standard uncertainty off, steered to the same lock. One rack
 * position a step.
 *
 * @param linkage built from the corner
 * @throws InputError where a source leaves no links that join, however little of it there is
 */
export function* motionDoubts(
  corner: Corner,
  linkage: Linkage,
  racks: RackReaches,
  sources: readonly CornerSource[],
  from: WheelMotion['from'],
): Generator<undefined, MotionDoubt[]> {
  const doubts: MotionDoubt[] = [];
  for (const { id, label, dof, ...moves } of sources) {
    const { linkage: other, by } = doubtedLinkage(corner, moves);
    const motion = yield* motionOver(other, racksLike(other, linkage, racks), STEP_MM);
    doubts.push({ id, label, dof, by, motion: { from, ...motion } });
  }
  return doubts;
}

/** The corner with one thing off, and by how many standard uncertainties. */
function doubtedLinkage(corner: Corner, moves: CornerMoves): { linkage: Linkage; by: number } {
  let failed: unknown;
  for (const by of TRIED) {
    try {
      return { linkage: buildLinkage(movedBy(corner, moves, by)), by };
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      failed ??= error;
    }
  }
  throw failed;
}

/**
 * The rack positions at which a linkage that is nearly the same steers its wheel as far as the other one does. Its own ends of reach
 * are not looked for: a position that is asked for and does not close is left out.
 */
function racksLike(linkage: Linkage, known: Linkage, { rack, reaches }: RackReaches): RackReaches {
  const open = reaches.map((reach) => ({ ...reach, droop: Number.NEGATIVE_INFINITY, bump: Number.POSITIVE_INFINITY }));
  if (rack.length === 1) return { rack, reaches: open };
  const pose = new Float64Array(POSE_SIZE);
  const steer = (of: Linkage, at: number, j: number) =>
    (toeAt(pose, of, at, open[j]!) ?? Number.NaN) - (toeAt(pose, of, 0, of.reach) ?? 0);
  const ends = [0, rack.length - 1].map((j) => {
    const wanted = steer(known, rack[j]!, j);
    let [before, at] = [0, rack[j]!];
    let [steered, error] = [-wanted, steer(linkage, at, j) - wanted];
    for (let i = 0; i < SECANT_STEPS && Math.abs(error) > SAME_STEER; i++) {
      const next = at - (error * (at - before)) / (error - steered);
      const here = steer(linkage, next, j) - wanted;
      if (!(Math.abs(here) < Math.abs(error))) break;
      [before, steered, at, error] = [at, error, next, here];
    }
    return at;
  });
  return { rack: racksBetween(ends[0]!, ends[1]!), reaches: open };
}
