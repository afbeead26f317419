import { finished } from '../math/finished.js';
import { illinoisSteps } from '../math/illinois.js';
import { least } from '../math/least.js';
import { axleIfReached } from './axle.js';
import type { Linkage } from './linkage.js';
import { ARM_ANGLE, POSE_SIZE, RACK, SPIN } from './pose-layout.js';
import { moveTo } from './travel.js';

const STEP_MM = 8;
const NUDGE_MM = 0.01;
const LONGEST_RACK_MM = 400;
const END_MM = 1e-6;
const CLOSE_DEG = 1e-9;

/** How far the rack has to be moved, and the mean angle of both wheels there: the one that was wanted, or the last one there is. */
export interface TurnedIn {
  /** mm, positive towards the car's left. */
  rack: number;
  /** Degrees, positive to the left. */
  angle: number;
  isReached: boolean;
}

/** Which way the rack turns the wheels to the left: 1 or −1. */
export function leftwards(linkage: Linkage): 1 | -1 {
  const pose = new Float64Array(POSE_SIZE);
  const forward = (rack: number) => {
    pose[RACK] = rack;
    pose[ARM_ANGLE] = linkage.home;
    return moveTo(pose, linkage, linkage.reach) ? pose[SPIN]! : Number.NaN;
  };
  return forward(NUDGE_MM) < forward(-NUDGE_MM) ? 1 : -1;
}

/** Where both wheels of a symmetric axle in roll point in the mean, degrees, positive to the left; NaN where it is not reached. */
function meanSteer(linkage: Linkage, roll: number, rack: number, ends: 'open' | 'found-if-needed'): number {
  const axle = axleIfReached(linkage, linkage, { roll, rack }, ends);
  return axle ? (axle.left.steer + axle.right.steer) / 2 : Number.NaN;
}

/**
 * The rack position at which the wheels of a symmetric axle point `wanted` in the mean while the body rolls: what roll steers by itself is
 * counted. From the middle outward to where the links run out or turn a wheel back; whether each wheel is within its own reach there is
 * left to who asks.
 *
 * @param wanted degrees, positive to the left
 */
export function rackForMeanSteer(linkage: Linkage, roll: number, wanted: number): TurnedIn {
  const rest = meanSteer(linkage, roll, 0, 'open');
  const side = wanted >= rest ? 1 : -1;
  const direction = side * leftwards(linkage);
  const at = (size: number, ends: 'open' | 'found-if-needed' = 'found-if-needed') =>
    side * meanSteer(linkage, roll, direction * size, ends);
  const target = side * wanted;
  let [before, inside, angle] = [0, 0, side * rest];
  for (let size = STEP_MM; size <= LONGEST_RACK_MM; size += STEP_MM) {
    let [outside, next] = [size, at(size)];
    const isEnd = !(next > angle);
    if (isEnd) {
      // Past the point where a tie rod straightens, more rack turns its wheel back.
      const last = least((x) => missing(-at(x, 'open')), before, size, END_MM);
      [outside, next] = [last.x, -last.value];
      if (outside < inside) [inside, angle] = [before, at(before)];
    }
    if (next >= target) {
      const [found, reached] = finished(illinoisSteps(at, target, [inside, angle], [outside, next], CLOSE_DEG));
      return { rack: direction * found || 0, angle: side * reached, isReached: true };
    }
    if (isEnd) return { rack: direction * outside, angle: side * next, isReached: false };
    before = inside;
    [inside, angle] = [outside, next];
  }
  return { rack: direction * inside, angle: side * angle, isReached: false };
}

/** What is not there is worst. */
const missing = (value: number): number => (Number.isNaN(value) ? Number.POSITIVE_INFINITY : value);
