import { InputError } from '../../quantity/problem.js';
import type { Linkage } from '../linkage.js';
import { ARM_ANGLE, POSE_SIZE, poseAt, SPIN } from '../pose.js';
import { opened } from '../travel.js';
import { checkNumbers, given, wrongShape } from './check.js';
import { type Part, rebuilt } from './part.js';
import { solvePair } from './solve-pair.js';
import { tieRodLonger } from './tie-rod.js';

const DEGREES = 180 / Math.PI;

interface StaticAngles {
  camber: number;
  toe: number;
}

/** Camber (top outward positive) and toe-in at ride height, rack in the middle, degrees. */
export function staticAngles(linkage: Linkage): StaticAngles {
  const pose = new Float64Array(POSE_SIZE);
  pose[ARM_ANGLE] = linkage.home;
  poseAt(pose, linkage);
  const [x, y, z] = [pose[SPIN]!, pose[SPIN + 1]!, pose[SPIN + 2]!];
  return { camber: Math.atan2(-z, y) * DEGREES, toe: Math.atan2(x, y) * DEGREES };
}

/** What the links do not allow is no position; any other error is whose it is. */
export function ifJoined(build: () => Linkage): Linkage | undefined {
  try {
    return build();
  } catch (error) {
    if (error instanceof InputError && ['cannot-close', 'out-of-range'].includes(error.code)) return undefined;
    throw error;
  }
}

/**
 * A part and a longer tie rod put together in one go. One after the other, the linkage in between need not join where the two
 * together do; so the part is given the points and lengths with the rod changed, not yet put together.
 */
function withRod(linkage: Linkage, mm: number, part: Part): Linkage {
  const tieRod = linkage.lengths.tieRod + mm;
  if (!(tieRod > 0)) throw new InputError([{ code: 'out-of-range', path: 'tieRod.mm', value: mm }]);
  const loose: Linkage = { ...linkage, lengths: { ...linkage.lengths, tieRod } };
  const built = part(loose);
  // A part that changes nothing puts nothing together.
  return built.solver === loose.solver ? rebuilt(built, {}) : built;
}

/**
 * Toe at ride height set by the tie rod's length, as on an alignment rack; nothing else of the linkage changes.
 *
 * @param toeDeg toe-in of this wheel, degrees
 * @throws InputError `out-of-range`, path `toe`, when turning the rod from where it is does not lead to it
 */
export function toeReset(linkage: Linkage, toeDeg: number): Linkage {
  checkNumbers({ toe: toeDeg });
  // The first unknown stands for a part that is not there: its equation is its own and already solved.
  const tried = opened(linkage);
  const found = solvePair((none, rod) => {
    const set = ifJoined(() => tieRodLonger({ mm: rod })(tried));
    return set && { linkage: set, miss: [none, staticAngles(set).toe - toeDeg] };
  });
  if (!found) throw new InputError([{ code: 'out-of-range', path: 'toe', value: toeDeg }]);
  return tieRodLonger({ mm: found.y })(linkage);
}

/** A linkage set to a target, and by how much the part had to be adjusted for it (mm or degrees of that part). */
export interface CamberSetting {
  linkage: Linkage;
  amount: number;
}

/**
 * Camber and toe at ride height set together: camber by the amount of one part, toe by the tie rod's length (Newton's rule in
 * two unknowns on the exact linkage; each moves both angles).
 *
 * @param target degrees, camber top outward positive, toe-in positive
 * @param adjust the part for an amount, e.g. `(mm) => topMountMoved({ vector: [0, mm, 0] })`; 0 must leave the linkage as it is
 * @returns the linkage with part and tie rod on, and the part's amount; the tie rod's change is that of `lengths.tieRod`
 * @throws InputError `out-of-range`, path `camber`, when following the two from where they are does not lead to it; path `toe`,
 *   when the tie rod cannot give that toe without the part either; from `target`, `camber`, `toe`, `adjust`; what `adjust` throws
 *   about itself (`wrong-shape` where this kind of corner has no such part)
 */
export function camberAndToeSet(
  linkage: Linkage,
  target: { camber: number; toe: number },
  adjust: (amount: number) => Part,
): CamberSetting {
  const { camber, toe } = given(target, 'target');
  checkNumbers({ camber, toe });
  if (typeof adjust !== 'function') return wrongShape('adjust', adjust);
  const tried = opened(linkage);
  const found = solvePair((amount, rod) => {
    const set = ifJoined(() => withRod(tried, rod, adjust(amount)));
    if (!set) return undefined;
    const now = staticAngles(set);
    return { linkage: set, miss: [now.camber - camber, now.toe - toe] };
  });
  if (found) return { linkage: withRod(linkage, found.y, adjust(found.x)), amount: found.x };
  toeReset(linkage, toe);
  throw new InputError([{ code: 'out-of-range', path: 'camber', value: camber }]);
}
