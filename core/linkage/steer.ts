import { InputError } from '../quantity/problem.js';
import type { Linkage } from './linkage.js';
import { checkNumbers } from './parts/part.js';
import { ARM_ANGLE, POSE_SIZE, RACK, SPIN, TRAVEL } from './pose.js';
import { findReach, moveTo } from './travel.js';

const DEGREES = 180 / Math.PI;
const STEP_MM = 4;
const LONGEST_RACK_MM = 400;

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
 * The rack position at which the left wheel points `steerDeg`, absolute, not from where it points at rest. Users know lock
 * angles, not rack travel.
 *
 * @param steerDeg degrees, positive to the left
 * @returns mm, positive towards the car's left
 * @throws InputError `out-of-range`, path `steer`, with the last angle the links reach on that side as limit
 */
export function rackForSteer(linkage: Linkage, steerDeg: number, options?: { travel?: number }): number {
  const travel = options?.travel ?? 0;
  checkNumbers({ steer: steerDeg, travel });
  const at = (rack: number) => steerAngle(linkage, rack, travel);
  const rest = at(0);
  if (Number.isNaN(rest)) throw new InputError([{ code: 'outside-domain', path: 'travel', value: travel }]);
  if (steerDeg === rest) return 0;
  const wantsMore = steerDeg > rest;
  const direction = at(0.01) > rest === wantsMore ? 1 : -1;
  let inside = 0;
  let angle = rest;
  for (let rack = direction * STEP_MM; Math.abs(rack) <= LONGEST_RACK_MM; rack += direction * STEP_MM) {
    const next = at(rack);
    // Past the point where the links straighten, more rack turns the wheel back.
    if (Number.isNaN(next) || next > angle !== wantsMore) break;
    if (next > steerDeg === wantsMore) return between(at, steerDeg, inside, rack);
    inside = rack;
    angle = next;
  }
  throw new InputError([{ code: 'out-of-range', path: 'steer', value: steerDeg, limit: angle }]);
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
