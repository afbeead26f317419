import { InputError } from '../quantity/problem.js';
import type { Linkage } from './linkage.js';
import { checkNumbers } from './parts/part.js';
import { ARM_ANGLE, POSE_SIZE, RACK, SPIN, TRAVEL } from './pose.js';
import { findReach, moveTo } from './travel.js';

const DEGREES = 180 / Math.PI;
const STEP_MM = 4;
const LONGEST_RACK_MM = 400;
/** How closely the rack position of the last angle is found. There the angle may go with the square root of what is missing. */
const END_MM = 1e-9;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** How far a left wheel can be steered by its links. */
export interface SteerRange {
  /** The last angle to the left and to the right, absolute, degrees, positive to the left. */
  left: number;
  right: number;
  /** The rack positions that give them, mm, positive towards the car's left. */
  leftRack: number;
  rightRack: number;
}

/**
 * Where this LEFT wheel points, degrees, positive to the left (ISO 8855): minus its toe-in. NaN where the links do not join.
 *
 * @param rackMm positive towards the car's left
 */
export function steerAngle(linkage: Linkage, rackMm: number, travelMm = 0): number {
  const pose = new Float64Array(POSE_SIZE);
  pose[RACK] = rackMm;
  pose[TRAVEL] = travelMm;
  pose[ARM_ANGLE] = linkage.home;
  const reach = rackMm === 0 ? linkage.reach : findReach(linkage, rackMm);
  return moveTo(pose, linkage, reach) ? -Math.atan2(pose[SPIN]!, pose[SPIN + 1]!) * DEGREES : Number.NaN;
}

/**
 * The rack position at which the left wheel points `steerDeg`: the direction of the wheel plane, absolute, not from where it
 * points at rest. Users know lock angles, not rack travel. For a right wheel, ask its mirror image for −steerDeg and reverse the
 * answer's sign.
 *
 * @param steerDeg degrees, positive to the left
 * @returns mm, positive towards the car's left
 * @throws InputError `out-of-range`, path `steer`, with the last angle the links reach on that side as limit; `outside-domain`,
 *   path `travel`, with the end of reach as limit
 */
export function rackForSteer(linkage: Linkage, steerDeg: number, options?: { travel?: number }): number {
  const travel = options?.travel ?? 0;
  checkNumbers({ steer: steerDeg, travel });
  const at = (rack: number) => steerAngle(linkage, rack, travel);
  const rest = angleAtRest(linkage, travel);
  if (steerDeg === rest) return 0;
  const side = steerDeg > rest ? 1 : -1;
  const { inside, outside, outsideAngle } = turnTo(at, rest, side, steerDeg);
  if (side * (outsideAngle - steerDeg) < 0) {
    throw new InputError([{ code: 'out-of-range', path: 'steer', value: steerDeg, limit: outsideAngle }]);
  }
  return between(at, steerDeg, inside, outside);
}

/**
 * The last angles that the links reach, at one travel: where the tie rod runs out, or where more rack turns the wheel back. A
 * steering gear has stops, and a tyre something it touches, long before.
 *
 * @throws InputError `outside-domain`, path `travel`, with the end of reach as limit
 */
export function steerRange(linkage: Linkage, travel = 0): SteerRange {
  checkNumbers({ travel });
  const at = (rack: number) => steerAngle(linkage, rack, travel);
  const rest = angleAtRest(linkage, travel);
  const left = turnTo(at, rest, 1, Number.POSITIVE_INFINITY);
  const right = turnTo(at, rest, -1, Number.NEGATIVE_INFINITY);
  return {
    left: left.outsideAngle,
    right: right.outsideAngle,
    leftRack: left.outside,
    rightRack: right.outside,
  };
}

function angleAtRest(linkage: Linkage, travel: number): number {
  const angle = steerAngle(linkage, 0, travel);
  if (!Number.isNaN(angle)) return angle;
  const { droop, bump } = linkage.reach;
  throw new InputError([{ code: 'outside-domain', path: 'travel', value: travel, limit: travel > 0 ? bump : droop }]);
}

/**
 * Moves the rack until the wheel points at least as far as wanted, or to the last angle it can have: the rack position before
 * and the one after, and the angle there.
 *
 * @param side 1 to turn the wheel left, −1 right
 */
function turnTo(at: (rack: number) => number, rest: number, side: 1 | -1, wanted: number) {
  const direction = at(0.01) > rest === side > 0 ? 1 : -1;
  let before = 0;
  let inside = 0;
  let angle = rest;
  for (let rack = direction * STEP_MM; Math.abs(rack) <= LONGEST_RACK_MM; rack += direction * STEP_MM) {
    const next = at(rack);
    // Past the point where the links straighten, more rack turns the wheel back.
    if (Number.isNaN(next) || side * (next - angle) <= 0) {
      const outside = lastTurn((x) => side * at(x), before, rack);
      return { inside, outside, outsideAngle: at(outside) };
    }
    if (side * (next - wanted) >= 0) return { inside, outside: rack, outsideAngle: next };
    before = inside;
    inside = rack;
    angle = next;
  }
  return { inside, outside: inside, outsideAngle: angle };
}

/** The rack position of the largest angle between two, by golden section. Where the links do not join counts as least. */
function lastTurn(turned: (rack: number) => number, from: number, to: number): number {
  const valueAt = (rack: number) => {
    const angle = turned(rack);
    return Number.isNaN(angle) ? Number.NEGATIVE_INFINITY : angle;
  };
  let [a, b] = [from, to];
  let [x, y] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [atX, atY] = [valueAt(x), valueAt(y)];
  let best = { rack: a, angle: valueAt(a) };
  while (Math.abs(b - a) > END_MM) {
    // Of two places where nothing joins the nearer is kept: what joins lies before both.
    if (atX > atY || atX === Number.NEGATIVE_INFINITY) {
      b = y;
      [y, atY] = [x, atX];
      x = b - GOLDEN * (b - a);
      atX = valueAt(x);
    } else {
      a = x;
      [x, atX] = [y, atY];
      y = a + GOLDEN * (b - a);
      atY = valueAt(y);
    }
    if (atX > best.angle) best = { rack: x, angle: atX };
    if (atY > best.angle) best = { rack: y, angle: atY };
  }
  return best.rack;
}

/** Regula falsi in its Illinois form: a bracket that halves a stuck end's weight. */
function between(at: (rack: number) => number, wanted: number, from: number, to: number): number {
  let [a, b] = [from, to];
  let [errorA, errorB] = [at(a) - wanted, at(b) - wanted];
  let rack = b;
  for (let i = 0; i < 100; i++) {
    rack = (a * errorB - b * errorA) / (errorB - errorA);
    const error = at(rack) - wanted;
    if (Math.abs(error) < 1e-11 || rack === a || rack === b) return rack;
    if (error > 0 === errorB > 0) errorA /= 2;
    else {
      a = b;
      errorA = errorB;
    }
    b = rack;
    errorB = error;
  }
  return rack;
}
