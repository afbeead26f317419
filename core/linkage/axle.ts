import { add, cross, dot, scale, subtract, type Vec } from '../math/vector.js';
import { InputError } from '../quantity/problem.js';
import type { Vector3 } from './corner.js';
import type { Linkage, Reach } from './linkage.js';
import { checkNumbers } from './parts/part.js';
import { ARM_ANGLE, POSE_SIZE, RACK, SPIN, TRAVEL, TURN_RATE, WHEEL, WHEEL_RATE } from './pose.js';
import { findReach, moveTo } from './travel.js';

const DEGREES = 180 / Math.PI;

/** How the body stands over the road. */
export interface AxlePosition {
  /**
   * Net heave: mean wheel travel of the two corners, mm, bump positive. A roll axis is not asked for: with 3° of roll its height
   * changes camber to the road by hundredths of a degree.
   */
  heave?: number;
  /** Suspension roll of the body over the road, degrees, ISO 8855: positive lowers the right side. The tyres' deflection adds to it. */
  roll?: number;
  /** Rack displacement, mm, positive towards the car's left. */
  rack?: number;
}

/** One wheel of an axle. Angles in degrees: camber positive top outward, toe positive in, for either side. */
export interface AxleWheel {
  travel: number;
  /** Relative to the body. */
  camber: number;
  toe: number;
  /** Where it points, positive to the left. */
  steer: number;
  /** Of the wheel plane to the road's normal: what the tyre sees. Positive top outward. */
  inclination: number;
  /** Contact centre in the car's axes (the right one has negative y), mm. */
  contact: Vector3;
}

export interface AxleState {
  left: AxleWheel;
  right: AxleWheel;
  /** Between the contact centres along the road, mm. */
  track: number;
  /** Where the body turns about on the road at this instant, of the contact points tracked as lowest points: mm above the road, and from the car's centreline, left positive. */
  rollCentreHeight: number;
  rollCentreOffset: number;
}

/** A solved wheel in its own left-hand frame: contact centre, its velocity per mm of travel, spin axis. */
interface Side {
  contact: Vec;
  rate: Vec;
  spin: Vec;
}

const at = (pose: Float64Array, offset: number): Vec => [pose[offset]!, pose[offset + 1]!, pose[offset + 2]!];

function sideAt(pose: Float64Array, linkage: Linkage, reach: Reach, travel: number, normal: Vec): Side | undefined {
  pose[TRAVEL] = travel;
  if (!moveTo(pose, linkage, reach)) return undefined;
  const spin = at(pose, SPIN);
  const perMm = 1 / pose[WHEEL_RATE + 2]!;
  // Lowest point towards the road: down the wheel plane, m = −(n − (n·s) s)/k with k = √(1 − (n·s)²).
  const lean = dot(normal, spin);
  const k = Math.sqrt(1 - lean * lean);
  const down = scale(subtract(normal, scale(spin, lean)), -1 / k);
  const spinRate = scale(cross(at(pose, TURN_RATE), spin), perMm);
  const leanRate = dot(normal, spinRate);
  // dm = ((dl s + l ds) − m dk)/k, with l = n·s and dk = −l dl/k.
  const turning = add(scale(spin, leanRate), scale(spinRate, lean));
  const downRate = scale(subtract(turning, scale(down, (-lean * leanRate) / k)), 1 / k);
  return {
    spin,
    contact: add(at(pose, WHEEL), scale(down, linkage.loadedRadius)),
    rate: add(scale(at(pose, WHEEL_RATE), perMm), scale(downRate, linkage.loadedRadius)),
  };
}

const mirrored = ([x, y, z]: Vec): Vec => [x, -y, z];

/**
 * Both corners of an axle in heave, roll and steer, on one ground plane.
 *
 * @param right the right corner given as a left one, by its mirror image
 * @throws InputError `out-of-range`, path `roll` (or `heave` without roll, or `rack`), when a corner's links do not reach that far
 */
export function axleAt(left: Linkage, right: Linkage, position: AxlePosition = {}): AxleState {
  const { heave = 0, roll = 0, rack = 0 } = position;
  checkNumbers({ heave, roll, rack });
  const radians = roll / DEGREES;
  // The road in the body's axes: its normal leans the other way. Seen from the right corner's mirror image, the other way again.
  const normal: Vec = [0, Math.sin(radians), Math.cos(radians)];
  const mirrorNormal = mirrored(normal);
  const pose = new Float64Array(POSE_SIZE);
  const reachLeft = findReach(left, rack);
  const reachRight = findReach(right, -rack);
  const beyond = (path: string, value: number) => new InputError([{ code: 'out-of-range', path, value }]);
  if (Number.isNaN(reachLeft.bump) || Number.isNaN(reachRight.bump)) throw beyond('rack', rack);

  const sides = (difference: number): [Side, Side] | undefined => {
    pose[RACK] = rack;
    pose[ARM_ANGLE] = left.home;
    const one = sideAt(pose, left, reachLeft, heave + difference, normal);
    pose[RACK] = -rack;
    pose[ARM_ANGLE] = right.home;
    const other = one && sideAt(pose, right, reachRight, heave - difference, mirrorNormal);
    return one && other && [one, other];
  };

  // Both contact centres at one height over the road: one root in how far the travels differ.
  let difference = 0;
  for (let i = 0; i < 50; i++) {
    const found = sides(difference);
    if (!found) throw roll === 0 ? beyond('heave', heave) : beyond('roll', roll);
    const [one, other] = found;
    const error = dot(normal, one.contact) - dot(mirrorNormal, other.contact);
    if (Math.abs(error) < 1e-10) break;
    difference -= error / (dot(normal, one.rate) + dot(mirrorNormal, other.rate));
  }
  const [one, other] = sides(difference)!;
  return {
    left: wheelOf(one, heave + difference, normal, false),
    right: wheelOf(other, heave - difference, mirrorNormal, true),
    ...centreOf(one, other, normal),
  };
}

function wheelOf({ spin, contact }: Side, travel: number, normal: Vec, isRight: boolean): AxleWheel {
  const toe = Math.atan2(spin[0], spin[1]) * DEGREES;
  return {
    travel,
    camber: Math.atan2(-spin[2], spin[1]) * DEGREES,
    toe,
    steer: isRight ? toe : -toe,
    inclination: Math.asin(-dot(spin, normal)) * DEGREES,
    contact: isRight ? mirrored(contact) : contact,
  };
}

/** The body turns about the point where the two normals to the contact centres' paths in the body meet. */
function centreOf(
  one: Side,
  other: Side,
  normal: Vec,
): Pick<AxleState, 'track' | 'rollCentreHeight' | 'rollCentreOffset'> {
  const along: Vec = [0, normal[2], -normal[1]];
  const [a, b] = [one.contact, mirrored(other.contact)];
  const [da, db] = [one.rate, mirrored(other.rate)];
  // In the road's own axes, across (v) and up (w): slope of each normal = −dv/dw of its path.
  const [va, vb] = [dot(along, a), dot(along, b)];
  const slopeA = -dot(along, da) / dot(normal, da);
  const slopeB = -dot(along, db) / dot(normal, db);
  // Level arms: both normals lie on the road, and the body turns about any point of it.
  const offset = slopeA === slopeB ? (va + vb) / 2 : (slopeA * va - slopeB * vb) / (slopeA - slopeB);
  return { track: va - vb, rollCentreHeight: slopeA * (offset - va), rollCentreOffset: offset };
}
