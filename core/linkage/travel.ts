import type { LimitingLink, Linkage, Reach } from './linkage.js';
import { CLOSED, type Closing, POSE_SIZE, poseAt, STRUT_RAN_OUT, WHEEL, WHEEL_RATE } from './pose.js';

/** Step with which the arm is turned to find the ends of reach; about 10 mm of travel on a usual arm. */
const MARCH_RADIANS = 0.03;
const CONVERGED_MM = 1e-11;
/** A position that is off by more than this is not the one that was asked for. */
const STILL_THERE_MM = 1e-4;
const MOST_STEPS = 80;

const linkThatRanOut = (closing: Closing): LimitingLink => (closing === STRUT_RAN_OUT ? 'strut' : 'tieRod');

/** Why the position at this arm angle does not count, or undefined when it does. */
function ends(pose: Float64Array, linkage: Linkage, angle: number, rackMm: number): LimitingLink | undefined {
  const closing = poseAt(pose, linkage, angle, rackMm);
  if (closing !== CLOSED) return linkThatRanOut(closing);
  // Past the highest or lowest wheel centre, one travel would have two positions.
  return pose[WHEEL_RATE + 2]! > 0 ? undefined : 'lowerArm';
}

function endInDirection(linkage: Linkage, direction: 1 | -1, rackMm: number) {
  const pose = new Float64Array(POSE_SIZE);
  let good = 0;
  let bad = 0;
  let endedBy: LimitingLink = 'lowerArm';
  for (let angle = MARCH_RADIANS; angle < Math.PI + MARCH_RADIANS; angle += MARCH_RADIANS) {
    bad = direction * angle;
    const reason = ends(pose, linkage, bad, rackMm);
    if (reason) {
      endedBy = reason;
      break;
    }
    good = bad;
  }
  for (let i = 0; i < 60; i++) {
    const middle = (good + bad) / 2;
    if (middle === good || middle === bad) break;
    const reason = ends(pose, linkage, middle, rackMm);
    if (reason) {
      bad = middle;
      endedBy = reason;
    } else good = middle;
  }
  if (endedBy === 'lowerArm') {
    // A tie rod about to run out turns the carrier ever faster and takes the wheel centre back with it. Then the rod is the end.
    const beyond = poseAt(pose, linkage, good + direction * MARCH_RADIANS, rackMm);
    if (beyond !== CLOSED) endedBy = linkThatRanOut(beyond);
  }
  poseAt(pose, linkage, good, rackMm);
  return { angle: good, travel: pose[WHEEL + 2]! - linkage.wheelCentreZ, endedBy };
}

/**
 * How far the links let the wheel move: from the reference position outward until a discriminant vanishes or the wheel centre
 * turns back. Travel in between belongs to exactly one position. A rack so far out that the links do not close at arm angle 0
 * leaves no reach: both ends NaN.
 */
export function findReach(linkage: Linkage, rackMm = 0): Reach {
  const stuck = ends(new Float64Array(POSE_SIZE), linkage, 0, rackMm);
  if (stuck) {
    const none = { droop: Number.NaN, bump: Number.NaN, droopAngle: 0, bumpAngle: 0 };
    return { ...none, droopEndedBy: stuck, bumpEndedBy: stuck };
  }
  const droop = endInDirection(linkage, -1, rackMm);
  const bump = endInDirection(linkage, 1, rackMm);
  return {
    droop: droop.travel,
    bump: bump.travel,
    droopEndedBy: droop.endedBy,
    bumpEndedBy: bump.endedBy,
    droopAngle: droop.angle,
    bumpAngle: bump.angle,
  };
}

/**
 * Finds the arm angle at which the wheel centre has moved by `travelMm`, by Newton's rule from a neighbouring angle with the
 * exact derivative, inside a bracket that takes over by bisection when a step leaves it. Leaves that position in `pose`.
 *
 * @param reach ends for this rack position
 * @param start arm angle to start from, radians
 * @returns the angle, or NaN when the travel is out of reach (then `pose` means nothing)
 */
export function angleAtTravel(
  pose: Float64Array,
  linkage: Linkage,
  reach: Reach,
  travelMm: number,
  start: number,
  rackMm: number,
): number {
  if (!(travelMm >= reach.droop && travelMm <= reach.bump)) return Number.NaN;
  const wanted = linkage.wheelCentreZ + travelMm;
  let low = reach.droopAngle;
  let high = reach.bumpAngle;
  let angle = start > low && start < high ? start : 0;
  let error = Number.NaN;
  for (let i = 0; i < MOST_STEPS; i++) {
    if (poseAt(pose, linkage, angle, rackMm) === CLOSED) {
      error = pose[WHEEL + 2]! - wanted;
      if (Math.abs(error) < CONVERGED_MM) return angle;
      if (error > 0) high = angle;
      else low = angle;
      const newton = angle - error / pose[WHEEL_RATE + 2]!;
      const next = newton > low && newton < high ? newton : (low + high) / 2;
      // The bracket has no number left between its ends: as near as floating point gets.
      if (next === angle || next === low || next === high) break;
      angle = next;
    } else {
      // Only at the very end of reach, where rounding decides. Step back inside.
      if (angle > 0) high = angle;
      else low = angle;
      angle = (low + high) / 2;
    }
  }
  // `pose` holds the last position that closed. At the end of reach one step of a double in the angle is up to 1e-5 mm of travel.
  return Math.abs(error) < STILL_THERE_MM ? angle : Number.NaN;
}
