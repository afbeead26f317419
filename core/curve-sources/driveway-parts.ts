import type { Driveway } from '../driveway/driveway.js';
import { buildLinkage } from '../linkage/build-linkage.js';
import { type Corner, hardPoint, type Vector3, withHardPoint } from '../linkage/corner.js';
import type { CornerSource } from '../linkage/corner-source.js';
import type { PartData } from '../linkage/parts/part-kinds.js';
import { sweepTravel } from '../linkage/sweep.js';

/** Standard uncertainty of where the steering arm's end is along the car, mm. */
const STEERING_ARM = 140;
/** Of how high the rod stands over the ball joint, mm. */
const RISE = 60;
/** Of a part's whole effect on camber over travel, as a share of it: what else is not plane. */
const REST = 0.13;
/** The same once readings have corrected the corner. Fitted to random three-dimensional cars, seed 9001, and tested on others (bench `learn`). */
const LEARNT = { steeringArm: 130, rest: 0.1 };
/** Over which the rod's height is differenced, mm. */
const DIFFERENCE = 0.5;

/**
 * What six measurements do not tell of the tie rod, and what shows as soon as a part is on: whether it lies ahead of the axle or behind
 * it, how long the steering arm is, and how high the rod stands over the ball joint. The rod's inner end goes up or down with it so that
 * the bare corner steers as it did.
 *
 * Once readings have corrected the corner, a lower joint whose rod goes along with it has none of these: its curve is the one that was
 * read, begun at another height, and all that is not plane is in that.
 */
export function drivewayPartsSources(
  { corner, driveway }: { corner: Corner; driveway?: Driveway },
  parts: readonly PartData[],
): CornerSource[] {
  const isLearnt = driveway?.isLearnt ?? false;
  if (!driveway || parts.length === 0 || (isLearnt && parts.every(isWithItsRod))) return [];

  const method = (id: string) => ({ id: `method.parts.${id}`, label: 'the method', dof: Number.POSITIVE_INFINITY });
  const ofRod = (id: string, by: Vector3): CornerSource => ({
    ...method(id),
    moves: rodMoved(corner, by),
    isOfPartsAlone: true,
  });
  return [
    ofRod('arm', [isLearnt ? LEARNT.steeringArm : STEERING_ARM, 0, 0]),
    ofRod('rise', [0, 0, RISE]),
    { ...method('rest'), moves: {}, isOfPartsAlone: true, shareOfParts: isLearnt ? LEARNT.rest : REST },
  ];
}

const isWithItsRod = (data: PartData) => 'correctTieRod' in data && data.correctTieRod === true;

/** Both ends of the rod moved, the inner one in height besides, so that bump steer where the car stands stays as it is, to first order. */
function rodMoved(corner: Corner, by: Vector3): CornerSource['moves'] {
  const rate = (times: number, up: number) => {
    const moved = (['tieRod.inner', 'tieRod.outer'] as const).reduce<Corner>((of, key) => {
      const [x, y, z] = hardPoint(of, key)!;
      const rise = key === 'tieRod.inner' ? up : 0;
      return withHardPoint(of, key, [x + times * by[0], y + times * by[1], z + times * by[2] + rise]);
    }, corner);
    return sweepTravel(buildLinkage(moved, { isOpen: true }), [0]).toeRate[0]!;
  };
  const size = Math.hypot(...by) / DIFFERENCE;
  const ofRod = (rate(1 / size, 0) - rate(-1 / size, 0)) * size;
  const ofHeight = (rate(0, DIFFERENCE) - rate(0, -DIFFERENCE)) / DIFFERENCE;
  return { 'tieRod.outer': by, 'tieRod.inner': [by[0], by[1], by[2] - ofRod / ofHeight] };
}
