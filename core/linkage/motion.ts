import { add, length, scale, subtract } from '../math/vector.js';
import type { Vector3 } from './corner.js';
import type { Linkage } from './linkage.js';
import {
  ARM_ANGLE,
  BALL,
  LOW,
  POSE_SIZE,
  SPIN,
  TIE_OUTER,
  TRAVEL,
  TURN_RATE,
  UPPER,
  WHEEL,
  WHEEL_RATE,
} from './pose.js';
import { moveTo } from './travel.js';

/**
 * Where the joints are over travel, for drawings: plain arrays, three numbers a sample, in the body's frame (mm). Enough to
 * draw any position in between without asking the solver again.
 */
export interface Motion {
  /** Of the corner. */
  kind: Linkage['kind'];
  /** Ascending, mm. */
  travel: Float64Array;
  /** The lower ball joint. */
  ball: Float64Array;
  /** Second point of the steering axis: top mount of a strut (it stays), upper ball joint of a wishbone. */
  upper: Float64Array;
  /** The damper's lower end; NaN without a damper. */
  low: Float64Array;
  /** The tie rod’s outer end. */
  tieOuter: Float64Array;
  /** The wheel’s centre. */
  wheelCentre: Float64Array;
  /** Unit vector along the wheel’s axis, outboard. */
  spin: Float64Array;
  /**
   * What the instant centre in the transverse plane through the wheel centre is made of, three numbers a sample: v_y/v_z of the
   * wheel centre, ω_x/v_z, and 0. As ratios they stay finite where the centre goes to infinity.
   */
  instant: Float64Array;
  /** What stays on the body. */
  fixed: {
    armFront: Vector3;
    armRear: Vector3;
    /** Where the transverse plane through the ball joint at reference height cuts the arm's pivot axis. */
    armPivot: Vector3;
    tieInner: Vector3;
    /** Of a wishbone. */
    upperFront?: Vector3;
    upperRear?: Vector3;
    /** Of a wishbone's damper. */
    damperTop?: Vector3;
  };
  /** Hub centre to ground, mm. */
  loadedRadius: number;
}

/** @param travels mm, ascending, all within reach. Throws RangeError otherwise. */
export function motionOf(linkage: Linkage, travels: Float64Array): Motion {
  const vectors = () => new Float64Array(3 * travels.length);
  const motion: Motion = {
    kind: linkage.kind,
    travel: travels.slice(),
    ball: vectors(),
    upper: vectors(),
    low: vectors(),
    tieOuter: vectors(),
    wheelCentre: vectors(),
    spin: vectors(),
    instant: vectors(),
    fixed: {
      armFront: linkage.body.lowerFront,
      armRear: linkage.body.lowerRear,
      armPivot: pivotBesideBall(linkage),
      tieInner: linkage.body.tieInner,
      ...upperPivots(linkage),
      ...(linkage.body.damperTop && { damperTop: linkage.body.damperTop }),
    },
    loadedRadius: linkage.loadedRadius,
  };
  const pose = new Float64Array(POSE_SIZE);
  pose[ARM_ANGLE] = linkage.home;
  travels.forEach((travel, i) => {
    pose[TRAVEL] = travel;
    if (!moveTo(pose, linkage, linkage.reach)) throw new RangeError(`Travel ${travel} mm is out of reach.`);
    const keep = (to: Float64Array, from: number) => to.set(pose.subarray(from, from + 3), 3 * i);
    keep(motion.ball, BALL);
    keep(motion.upper, UPPER);
    keep(motion.low, LOW);
    keep(motion.tieOuter, TIE_OUTER);
    keep(motion.wheelCentre, WHEEL);
    keep(motion.spin, SPIN);
    motion.instant[3 * i] = pose[WHEEL_RATE + 1]! / pose[WHEEL_RATE + 2]!;
    motion.instant[3 * i + 1] = pose[TURN_RATE]! / pose[WHEEL_RATE + 2]!;
  });
  return motion;
}

const upperPivots = ({
  body: { upperFront, upperRear },
}: Linkage): Pick<Motion['fixed'], 'upperFront' | 'upperRear'> =>
  upperFront && upperRear ? { upperFront, upperRear } : {};

/** Where the transverse plane through the ball joint at the home angle cuts the arm's pivot axis. */
function pivotBesideBall({ body, solver, home }: Linkage): Vector3 {
  const { centre, out, up, radius } = solver.lower;
  const axis = subtract(body.lowerFront, body.lowerRear);
  const ballX = centre[0] + radius * (Math.cos(home) * out[0] + Math.sin(home) * up[0]);
  // An axis that runs across the car never meets that plane: the foot of the ball joint stands in.
  if (Math.abs(axis[0]) < 0.1 * length(axis)) return centre;
  return add(centre, scale(axis, (ballX - centre[0]) / axis[0]));
}
