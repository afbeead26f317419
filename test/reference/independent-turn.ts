import { independentAxle } from './independent-axle.js';
import { type IndependentCorner, independentStrutSweep } from './independent-strut.js';

/*
 * An axle in a turn: both wheels in one rolled frame by independent-axle.ts, the outer wheel's angle to the road split into what it stands
 * on, and roll at a lateral acceleration. Computed here. Imports nothing from core/.
 */

/** Of the outer wheel, degrees, positive top outward. The first three add up to `road` but for what toe makes of roll. */
export interface IndependentShares {
  /** Camber to the body before the body rolls. */
  standing: number;
  /** What the outer wheel's bump adds to it. */
  bump: number;
  roll: number;
  road: number;
  inner: number;
  /** Of the outer wheel from the height it stands at, mm. */
  travel: number;
  track: number;
}

/** Roll to the right, so a left turn: the right wheel is the outer one. Steering straight, zero net heave about the height. */
export function independentShares(corner: IndependentCorner, drop: number, roll: number): IndependentShares {
  const axle = independentAxle(corner, drop, roll, 0);
  const [standing, bumped] = independentStrutSweep(corner, [drop, axle.travelRight]).map(({ camber }) => camber);
  return {
    standing: standing!,
    bump: bumped! - standing!,
    roll,
    road: axle.inclinationRight,
    inner: axle.inclinationLeft,
    travel: axle.travelRight - drop,
    track: axle.left[0] - axle.right[0],
  };
}

/**
 * The corner as it stands at a drop, its wheel turned in the knuckle to a camber and a toe, degrees: no joint moves. Its zero of travel
 * is that height.
 */
export function setAgain(
  corner: IndependentCorner,
  drop: number,
  angles: { camber: number; toe: number },
): IndependentCorner {
  const [pose] = independentStrutSweep(corner, [drop]);
  return {
    ...corner,
    ...angles,
    wheelCentre: pose!.wheelCentre,
    lowerArm: { ...corner.lowerArm, ball: pose!.ball },
    strut: { ...corner.strut, low: pose!.low },
    tieRod: { ...corner.tieRod, outer: pose!.tieOuter },
  };
}

/**
 * Steady roll of the sprung mass on linear springs, small angle, with the moment of its own shift, radians. From memory; checked against
 * the moment about the ground in each row of body_roll_cases.csv, whose last row is a textbook's car.
 *
 * @param acceleration as a multiple of gravity
 * @param arm centre of gravity above the roll axis, mm
 * @param stiffness roll stiffness over sprung weight, mm
 */
export const rollAt = (acceleration: number, arm: number, stiffness: number): number =>
  (acceleration * arm) / (stiffness - arm);

/** With which `rollAt` gives that roll, radians; mm. */
export const stiffnessFor = (acceleration: number, arm: number, roll: number): number =>
  arm + (acceleration * arm) / roll;
