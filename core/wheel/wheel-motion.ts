import { subtract, unit, type Vec } from '../math/vector.js';
import { between, blendAcross, blendVector, samples } from './between-samples.js';
import type { WheelMotion } from './motion-table.js';

export type { MotionDoubt, WheelMotion } from './motion-table.js';

/** Of one steer alone, that one. */
export const indexAhead = ({ rack }: WheelMotion): number => (rack.length === 1 ? 0 : rack.indexOf(0));

/** The same, straight ahead only: what a drag asks for again and again. */
export const aheadOf = (motion: WheelMotion): WheelMotion => columnAt(motion, motion.toe[indexAhead(motion)]!);

/** The same at one steer alone. @param steer degrees, on the scale of `toe` */
export function columnAt(motion: WheelMotion, steer: number, toe = Float64Array.of(steer)): WheelMotion {
  const { travel, rack, joints, lock: _, doubts, ...rest } = motion;
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
    toe,
    centre: column(motion.centre),
    spin: column(motion.spin, unit),
    ...(joints && { joints: { ...joints, tieOuter: column(joints.tieOuter), ball: column(joints.ball) } }),
    ...(doubts && { doubts: doubts.map((doubt) => ({ ...doubt, motion: columnAt(doubt.motion, steer, toe) })) }),
  };
}

/** The same without its doubt: what a picture is drawn by. */
export const bareOf = ({ doubts: _, ...motion }: WheelMotion): WheelMotion => motion;

/**
 * The same counted from another height: a car measured as it stands, already lowered, moves as it does from where the drop has put
 * it. What is along and across the car is counted from the wheel's centre at that height, where the links reach it.
 *
 * @param by travel from there to where it was measured, mm, positive in bump (lowered)
 */
export function countedFrom(motion: WheelMotion, by: number): WheelMotion {
  return by === 0 ? motion : recounted(motion, by, new Map());
}

/** @param travels made before: motions that shared theirs still do */
function recounted(motion: WheelMotion, by: number, travels: Map<Float64Array, Float64Array>): WheelMotion {
  const { travel, damper, reach, joints, doubts } = motion;
  const higher = (at: Float64Array) => {
    const found = travels.get(at) ?? at.map((t) => t + by);
    travels.set(at, found);
    return found;
  };
  const here = samples();
  between(here, motion, -by, motion.toe[indexAhead(motion)]!);
  const found = blendVector(here, motion.centre);
  const origin: Vec = [found[0] || 0, found[1] || 0, -by];
  const from = (point: Float64Array) => point.map((x, i) => x - origin[i % 3]!);
  return {
    ...motion,
    travel: higher(travel),
    centre: from(motion.centre),
    ...(joints && {
      joints: {
        ...joints,
        tieOuter: from(joints.tieOuter),
        ball: from(joints.ball),
        tieInner: subtract(joints.tieInner, origin),
        armPivot: subtract(joints.armPivot, origin),
      },
    }),
    ...(damper && { damper: { ...damper, travel: damper.travel.map((t) => t + by) } }),
    ...(reach && { reach: { droop: reach.droop + by, bump: reach.bump + by } }),
    ...(doubts && { doubts: doubts.map((doubt) => ({ ...doubt, motion: recounted(doubt.motion, by, travels) })) }),
  };
}
