import type { Motion } from '../../core/linkage/motion.js';
import type { Point } from './items.js';
import type { FrontViewPose } from './strut-front-view.js';

const DEGREES = 180 / Math.PI;

/**
 * The front view at a travel, from a solved motion. Between its samples (a few mm apart) joints run on circles, so straight
 * lines between them are off by hundredths of a millimetre at most: good for drawing, not for numbers.
 *
 * @param travelMm clamped to what the motion covers
 */
export function poseAtTravel(motion: Motion, travelMm: number): FrontViewPose {
  const { travel, fixed, loadedRadius } = motion;
  const last = travel.length - 1;
  const t = Math.min(Math.max(travelMm, travel[0]!), travel[last]!);
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (travel[middle]! <= t) low = middle;
    else high = middle;
  }
  const share = high === low ? 0 : (t - travel[low]!) / (travel[high]! - travel[low]!);
  const at = (vectors: Float64Array, axis: number) => {
    const from = vectors[3 * low + axis]!;
    return from + share * (vectors[3 * high + axis]! - from);
  };
  const front = (vectors: Float64Array): Point => [at(vectors, 1), at(vectors, 2)];
  const flat = ([, y, z]: readonly [number, number, number]): Point => [y, z];

  const centre = front(motion.wheelCentre);
  const spinY = at(motion.spin, 1);
  const spinZ = at(motion.spin, 2);
  const tilt = Math.sqrt(Math.max(0, 1 - spinZ * spinZ));
  const sideways = at(motion.instant, 0);
  const turn = at(motion.instant, 1);
  const ground = (height: number) => height - loadedRadius * tilt;
  // Wheel centre at travel 0 is not a sample of its own when the motion's ends are odd: travel is its height's change.
  const referenceCentreZ = centre[1] - t;
  return {
    armPivot: flat(fixed.armPivot),
    armFront: flat(fixed.armFront),
    armRear: flat(fixed.armRear),
    ball: front(motion.ball),
    top: front(motion.upper),
    low: front(motion.low),
    tieInner: flat(fixed.tieInner),
    tieOuter: front(motion.tieOuter),
    wheelCentre: centre,
    camberDeg: Math.atan2(-spinZ, spinY) * DEGREES,
    groundZ: ground(centre[1]),
    referenceGroundZ: ground(referenceCentreZ),
    instantCentre: [centre[0] - 1 / turn, centre[1] + sideways / turn],
    loadedRadius,
  };
}
