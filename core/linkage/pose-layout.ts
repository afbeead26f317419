/**
 * Where everything is in one position, and how it moves per radian of the lower arm's angle. One flat array, so that a sweep
 * allocates nothing; offsets below, three numbers a vector, mm and radians. The first two are what a position is asked for.
 */
export const ARM_ANGLE = 0;
/** Rack displacement, mm, positive towards the car's left. */
export const RACK = 1;
export const BALL = 2;
/** Second point of the steering axis: top mount of a strut, upper ball joint of a wishbone. */
export const UPPER = 5;
/** The damper's lower end. */
export const LOW = 8;
export const TIE_OUTER = 11;
export const WHEEL = 14;
/** Outboard unit spin axis. */
export const SPIN = 17;
/** Velocity of the ball joint per radian of arm angle. */
export const BALL_RATE = 20;
/** Angular velocity of the carrier per radian of arm angle. */
export const TURN_RATE = 23;
/** Velocity of the wheel centre per radian of arm angle. */
export const WHEEL_RATE = 26;
/** d(damper length)/d(arm angle), mm per radian; NaN without a damper. */
export const DAMPER_RATE = 29;
export const DAMPER_LENGTH = 30;
/** The carrier's axes in the world: three rows of a rotation matrix, world = R · carrier. */
export const ROTATION = 31;
/** Asked of `moveTo`: wheel travel, mm. It stands here because a number passed as an argument would be put on the heap. */
export const TRAVEL = 40;
export const POSE_SIZE = 41;

/** The position exists. */
export const CLOSED = 0;
/** The ball joint is too near to the top mount for the damper's axis to pass through it. */
export const STRUT_RAN_OUT = 1;
/** The tie rod is too long or too short to join. */
export const TIE_ROD_RAN_OUT = 2;
/** The upper arm does not reach the carrier. */
export const UPPER_ARM_RAN_OUT = 3;
export type Closing = typeof CLOSED | typeof STRUT_RAN_OUT | typeof TIE_ROD_RAN_OUT | typeof UPPER_ARM_RAN_OUT;
