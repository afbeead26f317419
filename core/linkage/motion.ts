import type { Vector3 } from './corner.js';
import type { Linkage } from './linkage.js';
import { BALL, LOW, POSE_SIZE, SPIN, TIE_OUTER, TURN_RATE, WHEEL, WHEEL_RATE } from './pose.js';
import { angleAtTravel } from './travel.js';

/**
 * Where the joints are over travel, for drawings: plain arrays, three numbers a sample, in the body's frame (mm). Enough to
 * draw any position in between without asking the solver again.
 */
export interface Motion {
  /** Ascending, mm. */
  travel: Float64Array;
  ball: Float64Array;
  low: Float64Array;
  tieOuter: Float64Array;
  wheelCentre: Float64Array;
  spin: Float64Array;
  /**
   * What the instant centre in the transverse plane through the wheel centre is made of, three numbers a sample: v_y/v_z of the
   * wheel centre, ω_x/v_z, and 0. As ratios they stay finite where the centre goes to infinity.
   */
  instant: Float64Array;
  fixed: {
    armFront: Vector3;
    armRear: Vector3;
    /** Where the transverse plane through the ball joint at reference height cuts the arm's pivot axis. */
    armPivot: Vector3;
    top: Vector3;
    tieInner: Vector3;
  };
  loadedRadius: number;
}

/** @param travels mm, ascending, all within reach. Throws RangeError otherwise. */
export function motionOf(linkage: Linkage, travels: Float64Array): Motion {
  const count = travels.length;
  const vectors = () => new Float64Array(3 * count);
  const motion: Motion = {
    travel: travels.slice(),
    ball: vectors(),
    low: vectors(),
    tieOuter: vectors(),
    wheelCentre: vectors(),
    spin: vectors(),
    instant: vectors(),
    fixed: {
      armFront: linkage.corner.lowerArm.front,
      armRear: linkage.corner.lowerArm.rear,
      armPivot: pivotBesideBall(linkage),
      top: linkage.body.top,
      tieInner: linkage.body.tieInner,
    },
    loadedRadius: linkage.loadedRadius,
  };
  const pose = new Float64Array(POSE_SIZE);
  let angle = 0;
  for (let i = 0; i < count; i++) {
    angle = angleAtTravel(pose, linkage, linkage.reach, travels[i]!, angle, 0);
    if (Number.isNaN(angle)) throw new RangeError(`Travel ${travels[i]} mm is out of reach.`);
    for (let axis = 0; axis < 3; axis++) {
      motion.ball[3 * i + axis] = pose[BALL + axis]!;
      motion.low[3 * i + axis] = pose[LOW + axis]!;
      motion.tieOuter[3 * i + axis] = pose[TIE_OUTER + axis]!;
      motion.wheelCentre[3 * i + axis] = pose[WHEEL + axis]!;
      motion.spin[3 * i + axis] = pose[SPIN + axis]!;
    }
    motion.instant[3 * i] = pose[WHEEL_RATE + 1]! / pose[WHEEL_RATE + 2]!;
    motion.instant[3 * i + 1] = pose[TURN_RATE]! / pose[WHEEL_RATE + 2]!;
  }
  return motion;
}

function pivotBesideBall(linkage: Linkage): Vector3 {
  const { armAxis, armCentre } = linkage.body;
  const ball = linkage.corner.lowerArm.ball;
  // An axis that runs across the car never meets that plane: the foot of the ball joint stands in.
  if (Math.abs(armAxis[0]) < 0.1) return armCentre;
  const along = (ball[0] - armCentre[0]) / armAxis[0];
  return [ball[0], armCentre[1] + along * armAxis[1], armCentre[2] + along * armAxis[2]];
}
