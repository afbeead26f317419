import type { DamperPath } from '../travel/damper-path.js';
import type { Source } from '../uncertainty/estimate.js';

/**
 * How a wheel moves against the body: mm, x forward, y outboard (a left corner), z up, from where the wheel's centre is at
 * reference height, steering straight. The wheel's centre is in the middle plane of the wheel that was on when this was known.
 * A pose at travel i and rack j stands at 3·(i·racks + j); NaN where the links do not reach.
 */
export interface WheelMotion {
  /** What it was made from. */
  readonly from: 'points' | 'driveway' | 'readings' | 'coefficients';
  /** Ascending; 0 lies inside. */
  readonly travel: Float64Array;
  /** Ascending, mm to the car's left; 0 is one of them, unless it is one steer alone (`columnAt`). */
  readonly rack: Float64Array;
  /** What toe each gives at reference height, degrees: rising or falling all the way. */
  readonly toe: Float64Array;
  /** The wheel’s centre at every pose. */
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
  /** How it would move with one thing after another otherwise than it is taken to be: what is known of its doubt. */
  readonly doubts?: readonly MotionDoubt[];
}

/** One independent cause of doubt about a motion. */
export interface MotionDoubt extends Source {
  /** The motion with that cause off by `by` standard uncertainties, at fewer travels and steers: those of all doubts alike. */
  readonly motion: WheelMotion;
  /** Mostly 1: less where the links would not join. */
  readonly by: number;
}
