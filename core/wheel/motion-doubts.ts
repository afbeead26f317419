import type { CornerMoves, CornerSource } from '../linkage/corner-source.js';
import type { Linkage } from '../linkage/linkage.js';
import { POSE_SIZE } from '../linkage/pose.js';
import { InputError } from '../quantity/problem.js';
import { motionOver, type RackReaches, toeAt } from './rack-motion.js';
import type { MotionDoubt, WheelMotion } from './wheel-motion.js';

/** Travels and steers of a motion that only tells how much another one is in doubt: every sixth and every third, with the ends. */
const EVERY_TRAVEL = 6;
const EVERY_RACK = 3;
/** Standard uncertainties by which a corner is tried to be off, until its links join. */
const TRIED = [1, -1, 0.25, -0.25, 0.05, -0.05];
/** Steps of the search for a steer, and how near is near enough, degrees. */
const SECANT_STEPS = 8;
const SAME_STEER = 1e-6;

/**
 * How a corner's wheel would move with each of its sources of doubt a standard uncertainty off, steered to the same toe at reference
 * height. A source a step.
 *
 * @param moved the linkage with a source off by so many standard uncertainties
 * @param motion of the corner's linkage
 * @throws InputError where a source leaves no links that join, however little of it there is
 */
export function* motionDoubts(
  moved: (by: CornerMoves, times: number) => Linkage,
  racks: RackReaches,
  motion: Pick<WheelMotion, 'travel' | 'toe' | 'rack' | 'from'>,
  sources: readonly CornerSource[],
): Generator<undefined, MotionDoubt[]> {
  const travel = some(motion.travel, EVERY_TRAVEL);
  const ahead = motion.rack.indexOf(0);
  const at = [...motion.rack.keys()].filter(
    (j) => (j - ahead) % EVERY_RACK === 0 || j === 0 || j === motion.rack.length - 1,
  );
  const toe = Float64Array.from(at, (j) => motion.toe[j]!);
  const known = at.map((j) => ({ rack: motion.rack[j]!, reach: racks.reaches[j]!, toe: motion.toe[j]! }));
  const doubts: MotionDoubt[] = [];
  for (const { id, label, dof, ...moves } of sources) {
    const { linkage, by } = doubtedLinkage(moved, moves);
    const own = racksAt(linkage, known);
    const doubted = yield* motionOver(linkage, own, travel);
    doubts.push({ id, label, dof, by, motion: { from: motion.from, ...doubted, travel, toe } });
  }
  return doubts;
}

/** Every so many of them from the first, and the last. */
const some = (all: Float64Array, every: number): Float64Array =>
  all.filter((_, i) => i % every === 0 || i === all.length - 1);

/** The linkage with one thing off, and by how many standard uncertainties. */
function doubtedLinkage(
  moved: (by: CornerMoves, times: number) => Linkage,
  moves: CornerMoves,
): { linkage: Linkage; by: number } {
  let failed: unknown;
  for (const by of TRIED) {
    try {
      return { linkage: moved(moves, by), by };
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      failed ??= error;
    }
  }
  throw failed;
}

/**
 * The rack positions at which a linkage that is nearly the same steers its wheel as far. Its own ends of reach are not looked for: a
 * position that is asked for and does not close is left out.
 */
function racksAt(
  linkage: Linkage,
  known: readonly { rack: number; reach: RackReaches['reaches'][number]; toe: number }[],
) {
  const pose = new Float64Array(POSE_SIZE);
  const reaches = known.map(({ reach }) => ({
    ...reach,
    droop: Number.NEGATIVE_INFINITY,
    bump: Number.POSITIVE_INFINITY,
  }));
  const rack = Float64Array.from(known, ({ rack: start, toe }, j) => {
    if (start === 0) return 0;
    const missing = (at: number) => (toeAt(pose, linkage, at, reaches[j]!) ?? Number.NaN) - toe;
    let [before, at] = [0.98 * start, start];
    let [error0, error] = [missing(before), missing(at)];
    for (let i = 0; i < SECANT_STEPS && Math.abs(error) > SAME_STEER; i++) {
      const next = at - (error * (at - before)) / (error - error0);
      [before, error0, at] = [at, error, next];
      error = missing(at);
    }
    return at;
  });
  return { rack, reaches };
}
