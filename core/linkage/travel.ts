import type { LimitingLink, Linkage, Reach } from './linkage.js';
import {
  ARM_ANGLE,
  CLOSED,
  type Closing,
  POSE_SIZE,
  poseAt,
  RACK,
  STRUT_RAN_OUT,
  TRAVEL,
  UPPER_ARM_RAN_OUT,
  WHEEL,
  WHEEL_RATE,
} from './pose.js';

/** Step with which the arm is turned to find the ends of reach; about 10 mm of travel on a usual arm. */
const MARCH_RADIANS = 0.03;
/** Share of the wheel centre's rate at home below which it counts as slow. */
const SLOW = 0.4;
const CONVERGED_MM = 1e-11;
/** A position that is off by more than this is not the one that was asked for. */
const STILL_THERE_MM = 1e-4;
const MOST_STEPS = 80;

/** The link that keeps a position from closing. */
export function linkThatRanOut(closing: Exclude<Closing, typeof CLOSED>): LimitingLink {
  if (closing === STRUT_RAN_OUT) return 'strut';
  return closing === UPPER_ARM_RAN_OUT ? 'upperArm' : 'tieRod';
}

/** Why the position at this arm angle does not count, or undefined when it does. */
function ends(pose: Float64Array, linkage: Linkage, angle: number): LimitingLink | undefined {
  pose[ARM_ANGLE] = angle;
  const closing = poseAt(pose, linkage);
  if (closing !== CLOSED) return linkThatRanOut(closing);
  // Past the highest or lowest wheel centre, one travel would have two positions.
  return pose[WHEEL_RATE + 2]! > 0 ? undefined : 'lowerArm';
}

/** The arm angle between two at which the wheel centre is slowest, by ternary search. */
function bottomOfDip(pose: Float64Array, linkage: Linkage, from: number, to: number): number {
  const rateAt = (angle: number) => (ends(pose, linkage, angle) ? -1 : pose[WHEEL_RATE + 2]!);
  let [a, b] = [from, to];
  for (let i = 0; i < 40; i++) {
    const [low, high] = [a + (b - a) / 3, b - (b - a) / 3];
    if (rateAt(low) < rateAt(high)) b = high;
    else a = low;
  }
  return (a + b) / 2;
}

function endInDirection(pose: Float64Array, linkage: Linkage, direction: 1 | -1) {
  let good = linkage.home;
  let bad = good;
  let endedBy: LimitingLink = 'lowerArm';
  ends(pose, linkage, good);
  const slow = SLOW * pose[WHEEL_RATE + 2]!;
  let rate = pose[WHEEL_RATE + 2]!;
  let before = { angle: good, rate };
  for (let turn = 0; turn < Math.PI; ) {
    // Where the wheel centre slows down it may turn back and on again within one step: there the steps are short, and the
    // bottom of a dip is looked for.
    turn += rate < slow ? MARCH_RADIANS / 20 : MARCH_RADIANS;
    bad = linkage.home + direction * turn;
    const reason = ends(pose, linkage, bad);
    if (reason) {
      endedBy = reason;
      break;
    }
    const next = pose[WHEEL_RATE + 2]!;
    if (rate < slow && rate < before.rate && rate < next) {
      const bottom = bottomOfDip(pose, linkage, before.angle, bad);
      if (ends(pose, linkage, bottom)) {
        good = before.angle;
        bad = bottom;
        break;
      }
    }
    before = { angle: good, rate };
    rate = next;
    good = bad;
  }
  const halve = () => {
    for (let i = 0; i < 60; i++) {
      const middle = (good + bad) / 2;
      if (middle === good || middle === bad) break;
      const reason = ends(pose, linkage, middle);
      if (reason) {
        bad = middle;
        endedBy = reason;
      } else good = middle;
    }
  };
  halve();
  // A link may run out within the very step that holds a dip.
  const bottom = bottomOfDip(pose, linkage, before.angle, good);
  if (ends(pose, linkage, bottom)) {
    good = before.angle;
    bad = bottom;
    endedBy = 'lowerArm';
    halve();
  }
  if (endedBy === 'lowerArm') {
    // A tie rod about to run out turns the carrier ever faster and takes the wheel centre back with it. Then the rod is the end.
    pose[ARM_ANGLE] = good + direction * MARCH_RADIANS;
    const beyond = poseAt(pose, linkage);
    if (beyond !== CLOSED) endedBy = linkThatRanOut(beyond);
  }
  pose[ARM_ANGLE] = good;
  poseAt(pose, linkage);
  return { angle: good, travel: pose[WHEEL + 2]! - linkage.wheelCentreZ, endedBy };
}

/**
 * How far the links let the wheel move: from the reference position outward until a discriminant vanishes or the wheel centre
 * turns back. Travel in between belongs to exactly one position. A rack so far out that the links do not close at the home angle
 * leaves no reach: both ends NaN.
 */
export function findReach(linkage: Linkage, rackMm = 0): Reach {
  const pose = new Float64Array(POSE_SIZE);
  pose[RACK] = rackMm;
  const stuck = ends(pose, linkage, linkage.home);
  if (stuck) {
    const none = { droop: Number.NaN, bump: Number.NaN, droopAngle: linkage.home, bumpAngle: linkage.home };
    return { ...none, droopEndedBy: stuck, bumpEndedBy: stuck };
  }
  const droop = endInDirection(pose, linkage, -1);
  const bump = endInDirection(pose, linkage, 1);
  return {
    droop: droop.travel,
    bump: bump.travel,
    droopEndedBy: droop.endedBy,
    bumpEndedBy: bump.endedBy,
    droopAngle: droop.angle,
    bumpAngle: bump.angle,
  };
}

/** An arm turns less than this either way, radians: far beyond any travel that is asked for. */
const OPEN_RADIANS = 1.2;

/**
 * The reach of a linkage whose ends nobody asks for, because it is nearly one whose ends are known: looking for them costs more than
 * all else of it. A position that does not close is then left out where it is asked for.
 */
export const openReach = (home: number): Reach => ({
  droop: Number.NEGATIVE_INFINITY,
  bump: Number.POSITIVE_INFINITY,
  droopEndedBy: 'lowerArm',
  bumpEndedBy: 'lowerArm',
  droopAngle: home - OPEN_RADIANS,
  bumpAngle: home + OPEN_RADIANS,
});

/** Whether a linkage's ends were not looked for. */
export const isOpen = ({ reach }: Linkage): boolean => reach.bump === Number.POSITIVE_INFINITY;

/** The same linkage, so that what is made of it by parts is not asked for its ends either. */
export const opened = (linkage: Linkage): Linkage => ({ ...linkage, reach: openReach(linkage.home) });

/**
 * Moves the wheel centre to the travel in `pose[TRAVEL]`, rack in `pose[RACK]`, starting from the arm angle in
 * `pose[ARM_ANGLE]`: Newton's rule with the exact derivative, inside a bracket that takes over by bisection when a step leaves
 * it.
 *
 * @param reach ends for this rack position
 * @returns whether that travel is within reach. If not, `pose` means nothing.
 */
export function moveTo(pose: Float64Array, linkage: Linkage, reach: Reach): boolean {
  const travel = pose[TRAVEL]!;
  if (!(travel >= reach.droop && travel <= reach.bump)) return false;
  const wanted = linkage.wheelCentreZ + travel;
  let low = reach.droopAngle;
  let high = reach.bumpAngle;
  let angle = pose[ARM_ANGLE]!;
  if (!(angle > low && angle < high)) angle = linkage.home;
  let error = Number.NaN;
  let step = high - low;
  let stepBefore = step;
  for (let i = 0; i < MOST_STEPS; i++) {
    pose[ARM_ANGLE] = angle;
    if (poseAt(pose, linkage) === CLOSED) {
      error = pose[WHEEL + 2]! - wanted;
      if (Math.abs(error) < CONVERGED_MM) return true;
      if (error > 0) high = angle;
      else low = angle;
      const newton = angle - error / pose[WHEEL_RATE + 2]!;
      // A step that is not half the one before the last does not converge: then the bracket is halved.
      const isGood = newton > low && newton < high && Math.abs(newton - angle) < Math.abs(stepBefore) / 2;
      const next = isGood ? newton : (low + high) / 2;
      stepBefore = step;
      step = next - angle;
      // The bracket has no number left between its ends: as near as floating point gets.
      if (next === angle || next === low || next === high) break;
      angle = next;
    } else {
      // Only at the very end of reach, where rounding decides. Step back inside.
      if (angle > linkage.home) high = angle;
      else low = angle;
      angle = (low + high) / 2;
    }
  }
  // `pose` holds the last position that closed. At the end of reach one step of a double in the angle is up to 1e-5 mm of travel.
  return Math.abs(error) < STILL_THERE_MM;
}
