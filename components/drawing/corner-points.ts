import type { HardPointKey, Vector3 } from '../../core/linkage/corner.js';
import type { Motion } from '../../core/linkage/motion.js';
import { interpolate } from '../../core/math/interpolate.js';

/** Where the hard points of a corner stand, mm in the body's frame. */
export type CornerPoints = Partial<Record<HardPointKey, Vector3>>;

/**
 * The hard points at a travel, from a solved motion: straight lines between its samples, good for drawing and not for numbers.
 *
 * @param travel mm, clamped to what the motion covers
 */
export function cornerPointsAt(motion: Motion, travel: number): CornerPoints {
  const { travel: known, fixed, kind } = motion;
  const at = Math.min(Math.max(travel, known[0]!), known[known.length - 1]!);
  const point = (vectors: Float64Array): Vector3 => {
    const axis = (n: number) =>
      interpolate(
        known,
        known.map((_, i) => vectors[3 * i + n]!),
        at,
      );
    return [axis(0), axis(1), axis(2)];
  };
  const low = point(motion.low);
  const upper = point(motion.upper);
  return {
    'lowerArm.front': fixed.armFront,
    'lowerArm.rear': fixed.armRear,
    'lowerArm.ball': point(motion.ball),
    'tieRod.inner': fixed.tieInner,
    'tieRod.outer': point(motion.tieOuter),
    wheelCentre: point(motion.wheelCentre),
    ...(kind === 'strut' ? { 'strut.top': upper, 'strut.low': low } : { 'upperArm.ball': upper }),
    ...(fixed.upperFront &&
      fixed.upperRear && { 'upperArm.front': fixed.upperFront, 'upperArm.rear': fixed.upperRear }),
    ...(fixed.damperTop && { 'damper.top': fixed.damperTop, 'damper.low': low }),
  };
}
