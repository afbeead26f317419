import { unit, type Vec } from '../math/vector.js';
import type { DamperPath } from '../travel/damper-path.js';
import { between, blendAcross, blendVector, samples } from './between-samples.js';

/**
 * How a wheel moves against the body: mm, x forward, y outboard (a left corner), z up, from where the wheel's centre is at
 * reference height, steering straight. The wheel's centre is in the middle plane of the wheel that was on when this was known.
 * A pose at travel i and rack j stands at 3·(i·racks + j); NaN where the links do not reach.
 */
export interface WheelMotion {
  readonly from: 'points' | 'driveway' | 'readings' | 'coefficients';
  /** Ascending; 0 lies inside. */
  readonly travel: Float64Array;
  /** Ascending, mm to the car's left; 0 is one of them, unless it is one steer alone (`columnAt`). */
  readonly rack: Float64Array;
  /** What toe each gives at reference height, degrees: rising or falling all the way. */
  readonly toe: Float64Array;
  readonly centre: Float64Array;
  /** Outboard unit spin axis. */
  readonly spin: Float64Array;
  /** Joints at every pose, and the inner ends: the tie rod's goes with the rack, the arm swings about a line. */
  readonly joints?: {
    readonly tieOuter: Float64Array;
    readonly tieInner: readonly [number, number, number];
    readonly ball: Float64Array;
    readonly armPivot: readonly [number, number, number];
    /** Unit vector along the line through the arm's pivots. */
    readonly armAxis: readonly [number, number, number];
  };
  /** Of the damper, straight ahead. */
  readonly damper?: DamperPath;
  /** Of the links, straight ahead. */
  readonly reach?: { readonly droop: number; readonly bump: number };
  /** Full lock that was asked for, degrees; `toe` says what the links gave: less where they ran out before. */
  readonly lock?: number;
  /** Static camber is not known: the wheel was taken as upright at reference height. */
  readonly isUpright?: true;
}

/** Of one steer alone, that one. */
export const indexAhead = ({ rack }: WheelMotion): number => (rack.length === 1 ? 0 : rack.indexOf(0));

/** The same, straight ahead only: what a drag asks for again and again. */
export const aheadOf = (motion: WheelMotion): WheelMotion => columnAt(motion, motion.toe[indexAhead(motion)]!);

/** The same at one steer alone. @param steer degrees, on the scale of `toe` */
export function columnAt(motion: WheelMotion, steer: number): WheelMotion {
  const { travel, rack, joints, lock: _, ...rest } = motion;
  if (rack.length === 1) return motion;
  const here = samples();
  const column = (from: Float64Array, finish = (found: Vec): Vec => found) => {
    const to = new Float64Array(3 * travel.length);
    travel.forEach((t, i) => {
      between(here, motion, t, steer);
      to.set(here.count === 1 ? blendVector(here, from) : finish(blendVector(here, from)), 3 * i);
    });
    return to;
  };
  // The steer is that of reference height.
  between(here, motion, 0, steer);
  return {
    ...rest,
    travel,
    rack: Float64Array.of(blendAcross(here, rack)),
    toe: Float64Array.of(steer),
    centre: column(motion.centre),
    spin: column(motion.spin, unit),
    ...(joints && { joints: { ...joints, tieOuter: column(joints.tieOuter), ball: column(joints.ball) } }),
  };
}
