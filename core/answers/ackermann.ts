import { DEG } from '../math/angle.js';

/** A turn about a point on the rear axle's line. m. */
export interface TurnRadius {
  /** From there to the middle of the rear axle. */
  radius: number;
  wheelbase: number;
}

/** What is not known of a radius, as a share of it. */
const CLOSE = 1e-12;
const MOST_HALVINGS = 80;

/**
 * The steer at which neither front wheel scrubs: tan(outer) = L/(R + t/2), tan(inner) = L/(R − t/2), so that cot(outer) − cot(inner) = t/L
 * (Ackermann's condition; from memory, checked by that identity). Degrees into the turn.
 *
 * @param pivotTrack between the points where the two steering axes meet the road, mm
 */
export function ackermannAngles(
  { radius, wheelbase }: TurnRadius,
  pivotTrack: number,
): { outer: number; inner: number } {
  const half = pivotTrack / 2000;
  return {
    outer: Math.atan2(wheelbase, radius + half) / DEG,
    inner: Math.atan2(wheelbase, radius - half) / DEG,
  };
}

/** The radius, m, at which those two come to a mean, degrees. */
export function radiusOfMean(mean: number, wheelbase: number, pivotTrack: number): number {
  let [low, high] = [0, 1e6];
  for (let i = 0; i < MOST_HALVINGS && high - low > CLOSE * high; i++) {
    const radius = (low + high) / 2;
    const { outer, inner } = ackermannAngles({ radius, wheelbase }, pivotTrack);
    if ((outer + inner) / 2 > mean) low = radius;
    else high = radius;
  }
  return high;
}
