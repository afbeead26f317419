import { InputError } from '../../quantity/problem.js';
import type { Linkage } from '../linkage.js';
import { ARM_ANGLE, POSE_SIZE, poseAt, SPIN } from '../pose.js';
import { checkNumbers, type Part } from './part.js';
import { tieRodLonger } from './tie-rod.js';

const DEGREES = 180 / Math.PI;
const CLOSE_ENOUGH_DEG = 1e-11;
/** Differences for the slopes: mm or degrees of a part. */
const NUDGE = 1e-3;
const MOST_STEPS = 40;

/** Camber and toe at ride height, rack in the middle, degrees. */
export function staticAngles(linkage: Linkage): { camber: number; toe: number } {
  const pose = new Float64Array(POSE_SIZE);
  pose[ARM_ANGLE] = linkage.home;
  poseAt(pose, linkage);
  const [x, y, z] = [pose[SPIN]!, pose[SPIN + 1]!, pose[SPIN + 2]!];
  return { camber: Math.atan2(-z, y) * DEGREES, toe: Math.atan2(x, y) * DEGREES };
}

/**
 * Toe at ride height set by the tie rod's length, as on an alignment rack.
 *
 * @throws InputError `out-of-range`, path `toe`, when no length gives it
 */
export function toeReset(linkage: Linkage, toeDeg: number): Linkage {
  checkNumbers({ toe: toeDeg });
  const fail = () => new InputError([{ code: 'out-of-range', path: 'toe', value: toeDeg }]);
  let set = linkage;
  for (let i = 0; i < MOST_STEPS; i++) {
    const error = staticAngles(set).toe - toeDeg;
    if (Math.abs(error) < CLOSE_ENOUGH_DEG) return set;
    const slope =
      (staticAngles(turnRod(set, NUDGE, fail)).toe - staticAngles(turnRod(set, -NUDGE, fail)).toe) / (2 * NUDGE);
    set = turnRod(set, -error / slope, fail);
  }
  if (Math.abs(staticAngles(set).toe - toeDeg) < 1e-9) return set;
  throw fail();
}

function turnRod(linkage: Linkage, mm: number, fail: () => InputError): Linkage {
  try {
    return tieRodLonger({ mm })(linkage);
  } catch (error) {
    throw error instanceof InputError ? fail() : error;
  }
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
 * @param adjust the part for an amount, e.g. `(mm) => topMountMoved({ vector: [0, mm, 0] })`
 * @throws InputError `out-of-range`, path `camber`, when the part cannot give it
 */
export function camberAndToeSet(
  linkage: Linkage,
  target: { camber: number; toe: number },
  adjust: (amount: number) => Part,
): CamberSetting {
  checkNumbers({ camber: target.camber, toe: target.toe });
  const fail = () => new InputError([{ code: 'out-of-range', path: 'camber', value: target.camber }]);
  const at = (amount: number, rod: number): Linkage => {
    try {
      return tieRodLonger({ mm: rod })(adjust(amount)(linkage));
    } catch (error) {
      throw error instanceof InputError ? fail() : error;
    }
  };
  let amount = 0;
  let rod = 0;
  for (let i = 0; i < MOST_STEPS; i++) {
    const built = at(amount, rod);
    const now = staticAngles(built);
    const camberError = now.camber - target.camber;
    const toeError = now.toe - target.toe;
    if (Math.abs(camberError) < 1e-10 && Math.abs(toeError) < 1e-10) return { linkage: built, amount };
    const byAmount = slopes(staticAngles(at(amount - NUDGE, rod)), staticAngles(at(amount + NUDGE, rod)));
    const byRod = slopes(staticAngles(at(amount, rod - NUDGE)), staticAngles(at(amount, rod + NUDGE)));
    const determinant = byAmount.camber * byRod.toe - byRod.camber * byAmount.toe;
    if (!(Math.abs(determinant) > 1e-12)) throw fail();
    amount -= (camberError * byRod.toe - toeError * byRod.camber) / determinant;
    rod -= (toeError * byAmount.camber - camberError * byAmount.toe) / determinant;
  }
  throw fail();
}

const slopes = (below: { camber: number; toe: number }, above: { camber: number; toe: number }) => ({
  camber: (above.camber - below.camber) / (2 * NUDGE),
  toe: (above.toe - below.toe) / (2 * NUDGE),
});
