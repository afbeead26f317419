import { add, cross, dot, scale, subtract, type Vec } from '../math/vector.js';
import { InputError } from '../quantity/problem.js';
import type { Vector3 } from './corner.js';
import type { Linkage, Reach } from './linkage.js';
import { checkNumbers } from './parts/part.js';
import { ARM_ANGLE, POSE_SIZE, RACK, SPIN, TRAVEL, TURN_RATE, WHEEL, WHEEL_RATE } from './pose.js';
import { findReach, moveTo, openReach } from './travel.js';

const DEGREES = 180 / Math.PI;

/** How the body stands over the road. */
export interface AxlePosition {
  /**
   * Net heave: mean wheel travel of the two corners, mm, bump positive. A roll axis is not asked for: with 3° of roll its height
   * changes camber to the road by at most hundredths of a degree.
   */
  heave?: number;
  /**
   * Suspension roll of the body over the road, degrees, ISO 8855: by the right hand about x, so positive lifts the left side and
   * lowers the right. The tyres' deflection adds to it.
   */
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
  /**
   * Where the body turns about at this instant, of the contact points tracked as the wheels' lowest points over the road as it
   * lies now: mm above the road, and along the road from below the body's origin, left positive. Rolled, it may lie
   * metres to the side; ±Infinity while the body only shifts.
   */
  rollCentreHeight: number;
  rollCentreOffset: number;
  /** Of the body's origin (centreline, on the ground as the hard points were given) over the road, mm. Falls in bump. */
  bodyHeight: number;
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

/** Less than this between the contact centres' heights over the road is rounding, mm. */
const LEVEL_MM = 1e-10;
const STILL_LEVEL_MM = 1e-7;
/** A path that leaves the vertical by less has its normal on the road. */
const LEVEL_SLOPE = 1e-12;

/**
 * Both corners of an axle in heave, roll and steer, on one ground plane. The corners may differ: without roll, what one wheel
 * then has more travel than the other is what brings both onto the road.
 *
 * @param right the right corner given as a left one, by its mirror image
 * @throws InputError `out-of-range` when a corner's links do not reach that far, with the last value they do reach as limit:
 *   path `rack` when they do not at zero heave and roll, `heave` when they do not without roll, else `roll`
 */
export function axleAt(left: Linkage, right: Linkage, position: AxlePosition = {}): AxleState {
  const { heave = 0, roll = 0, rack = 0 } = position;
  checkNumbers({ heave, roll, rack });
  const state = axleIfReached(left, right, { heave, roll, rack });
  if (state) return state;
  const path = culprit(left, right, { heave, rack });
  const reaches = (value: number): boolean => {
    const others = path === 'rack' ? { heave: 0, roll: 0 } : path === 'heave' ? { roll: 0, rack } : { heave, rack };
    return axleIfReached(left, right, { ...others, [path]: value }) !== undefined;
  };
  const value = { heave, roll, rack }[path];
  const limit = lastReached(reaches, value);
  throw new InputError([{ code: 'out-of-range', path, value, ...(limit !== undefined && { limit }) }]);
}

function culprit(left: Linkage, right: Linkage, { heave, rack }: { heave: number; rack: number }): keyof AxlePosition {
  if (rack !== 0 && !axleIfReached(left, right, { rack })) return 'rack';
  return axleIfReached(left, right, { heave, rack }) ? 'roll' : 'heave';
}

/** The last value on the way from 0 that is reached, by bisection; undefined when 0 is not. */
export function lastReached(reaches: (value: number) => boolean, beyond: number): number | undefined {
  if (!reaches(0)) return undefined;
  let [good, bad] = [0, beyond];
  for (let i = 0; i < 40; i++) {
    const middle = (good + bad) / 2;
    if (reaches(middle)) good = middle;
    else bad = middle;
  }
  return good;
}

/** Further than any wheel travels, mm. */
const FAR_MM = 1000;

/**
 * As `axleAt`, but undefined where the links do not reach, and the position's numbers are not checked.
 *
 * @param ends of reach with the rack aside: looked for, which costs more than all else; not looked for (`open`: a position just beyond them
 *   may pass, and one just within may be missed); or looked for only where the axle is not found without
 */
export function axleIfReached(
  left: Linkage,
  right: Linkage,
  { heave = 0, roll = 0, rack = 0 }: AxlePosition,
  ends: 'found' | 'open' | 'found-if-needed' = 'found',
): AxleState | undefined {
  const at = (isOpen: boolean) => stand(left, right, { heave, roll, rack }, isOpen);
  if (rack === 0 || ends === 'found') return at(false);
  return at(true) ?? (ends === 'open' ? undefined : at(false));
}

/** The axle in a position, or undefined where its links do not reach. */
function stand(
  left: Linkage,
  right: Linkage,
  { heave, roll, rack }: Required<AxlePosition>,
  isOpen: boolean,
): AxleState | undefined {
  // On its side there is no road under both wheels, and a full turn is not no roll.
  if (Math.abs(roll) >= 90) return undefined;
  const radians = roll / DEGREES;
  // The road in the body's axes: its normal leans the other way. Seen from the right corner's mirror image, the other way again.
  const normal: Vec = [0, Math.sin(radians), Math.cos(radians)];
  const mirrorNormal = mirrored(normal);
  const pose = new Float64Array(POSE_SIZE);
  const reachAt = (linkage: Linkage, own: number) =>
    own === 0 ? linkage.reach : isOpen ? openReach(linkage.home) : findReach(linkage, own);
  const reachLeft = reachAt(left, rack);
  const reachRight = reachAt(right, -rack);

  const sides = (difference: number): [Side, Side] | undefined => {
    pose[RACK] = rack;
    pose[ARM_ANGLE] = left.home;
    const one = sideAt(pose, left, reachLeft, heave + difference, normal);
    pose[RACK] = -rack;
    pose[ARM_ANGLE] = right.home;
    const other = one && sideAt(pose, right, reachRight, heave - difference, mirrorNormal);
    return one && other && [one, other];
  };

  // Both contact centres at one height over the road: one root in how far the travels differ, by Newton's rule inside the
  // bracket that both corners' reach leaves. Without a rack's reach the ends are NaN, and nothing is found.
  let low = Math.max(reachLeft.droop - heave, heave - reachRight.bump, -FAR_MM);
  let high = Math.min(reachLeft.bump - heave, heave - reachRight.droop, FAR_MM);
  let difference = low < 0 && high > 0 ? 0 : (low + high) / 2;
  for (let i = 0; i < 100; i++) {
    const found = sides(difference);
    if (!found) return undefined;
    const [one, other] = found;
    const error = dot(normal, one.contact) - dot(mirrorNormal, other.contact);
    if (error > 0) high = difference;
    else low = difference;
    const newton = difference - error / (dot(normal, one.rate) + dot(mirrorNormal, other.rate));
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    const isStuck = next === difference || next === low || next === high;
    if (Math.abs(error) < LEVEL_MM || (isStuck && Math.abs(error) < STILL_LEVEL_MM)) {
      return {
        left: wheelOf(one, heave + difference, normal, false),
        right: wheelOf(other, heave - difference, mirrorNormal, true),
        ...centreOf(one, other, normal),
        bodyHeight: -dot(normal, one.contact),
      };
    }
    // The bracket closed on one of its own ends: the root lies beyond the reach of a corner.
    if (isStuck) return undefined;
    difference = next;
  }
  return undefined;
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
  const isLevel = Math.abs(slopeA) < LEVEL_SLOPE && Math.abs(slopeB) < LEVEL_SLOPE;
  const offset = isLevel ? (va + vb) / 2 : (slopeA * va - slopeB * vb) / (slopeA - slopeB);
  return { track: va - vb, rollCentreHeight: slopeA * (offset - va), rollCentreOffset: offset };
}
