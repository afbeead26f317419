import { type IndependentCorner, independentCamberChange, independentStrutSweep } from './independent-strut.js';

/*
 * A second construction of the strut that driveway measurements with caster and bump steer describe, to check the project's own
 * with. Nothing is imported from core/. The points are laid out one after the other: in front view as the plane strut
 * (independent-plane-strut.ts), then leaned back by the caster, so that in side view the damper's axis covers the line from the ball
 * joint to the top mount. The tie rod lies 130 mm behind, as long as the arm's reach and ending over the arm's pivot: the height of
 * its inner end is sought by halves until the wheel of the Newton solver (independent-strut.ts) toes in at the rate that was given.
 */
export interface LeanedStrut {
  armLength: number;
  pivotHeight: number;
  ballHeight: number;
  wheelCentreHeight: number;
  topHeight: number;
  /** Degrees, in front view, top inboard positive. */
  damperLean: number;
  /** The ball joint outboard of the damper's axis, at right angles to it in front view, mm. */
  ballOffset: number;
  /** The wheel centre outboard of the ball joint, mm. */
  hubOffset: number;
  /** Degrees, of the steering axis, top rearward positive. */
  caster: number;
  /** Degrees of toe-in over 25 mm of bump. */
  bumpSteer: number;
}

const RADIANS = Math.PI / 180;
const BEHIND = 130;
const HALF_TRACK = 750;
const NEAR_MM = 0.5;

/** What the front view does not show, mm: all 0 as the strut is taken to be. */
export interface Unseen {
  /** The ball joint ahead of the wheel's centre. */
  ahead: number;
  /** The arm's pivots, 130 mm ahead of and behind the ball joint: the front one so much higher, the rear one so much lower. */
  tilt: number;
  /** The rod's inner end so much nearer to its outer end, along the rod. */
  shorter: number;
}
export const NOTHING_UNSEEN: Unseen = { ahead: 0, tilt: 0, shorter: 0 };

function leanedStrut(of: LeanedStrut, { ahead, tilt, shorter }: Unseen = NOTHING_UNSEEN): IndependentCorner {
  const { armLength, pivotHeight, ballHeight, topHeight, ballOffset } = of;
  const [lean, caster] = [of.damperLean * RADIANS, of.caster * RADIANS];
  const reach = Math.sqrt(armLength ** 2 - (ballHeight - pivotHeight) ** 2);
  const ball = HALF_TRACK - of.hubOffset;
  // The foot of the ball joint on the axis, and from there up the axis to the top mount's height.
  const foot = [ball - ballOffset * Math.cos(lean), ballHeight - ballOffset * Math.sin(lean)] as const;
  const up = topHeight - foot[1];
  const back = (height: number) => -(height - ballHeight) * Math.tan(caster);
  const pivot = ball - reach;
  const built = (rodHeight: number): IndependentCorner => ({
    wheelCentre: [-ahead, HALF_TRACK, of.wheelCentreHeight],
    loadedRadius: of.wheelCentreHeight,
    camber: 0,
    toe: 0,
    lowerArm: {
      front: [BEHIND, pivot, pivotHeight + tilt],
      rear: [-BEHIND, pivot, pivotHeight - tilt],
      ball: [0, ball, ballHeight],
    },
    strut: {
      top: [back(topHeight), foot[0] - up * Math.tan(lean), topHeight],
      low: [back(foot[1]), foot[0], foot[1]],
    },
    tieRod: { inner: [-BEHIND, pivot, rodHeight], outer: [-BEHIND, ball, ballHeight] },
  });
  const whole = leanedRod((height) => built(height), pivotHeight, of.bumpSteer / 25, tilt !== 0 ? leanedStrut(of) : undefined);
  if (shorter === 0) return whole;
  const { inner, outer } = whole.tieRod;
  const length = Math.hypot(outer[1] - inner[1], outer[2] - inner[2]);
  const along = (axis: 1 | 2) => inner[axis] + (shorter * (outer[axis] - inner[axis])) / length;
  return { ...whole, tieRod: { inner: [inner[0], along(1), along(2)], outer } };
}

/** @param known a corner whose rod is kept in place of a rate */
function leanedRod(
  of: (rodHeight: number) => IndependentCorner,
  level: number,
  perMm: number,
  known: IndependentCorner | undefined,
): IndependentCorner {
  if (known) return of(known.tieRod.inner[2]);
  const rate = (height: number) => {
    const [low, high] = independentStrutSweep(of(height), [-NEAR_MM, NEAR_MM]);
    return (high!.toe - low!.toe) / (2 * NEAR_MM);
  };
  let [low, high] = [level - 80, level + 80];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (rate(middle) < perMm) low = middle;
    else high = middle;
  }
  return of((low + high) / 2);
}

/** Camber at a travel (mm, bump positive) less that at 0, degrees, positive top outward. */
export const leanedStrutCamberChange = (of: LeanedStrut, travelMm: number, unseen?: Unseen): number =>
  independentCamberChange(leanedStrut(of, unseen), travelMm);
