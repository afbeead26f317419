import type { Vector3 } from '../linkage/corner.js';
import type { Linkage, Reach } from '../linkage/linkage.js';
import { motionOf } from '../linkage/motion.js';
import { ARM_ANGLE, BALL, POSE_SIZE, RACK, SPIN, TIE_OUTER, TRAVEL, WHEEL } from '../linkage/pose.js';
import { findReach, moveTo } from '../linkage/travel.js';
import { DEG } from '../math/angle.js';
import { subtract, unit } from '../math/vector.js';
import { damperPathOf } from '../travel/damper-path.js';
import type { WheelMotion } from './wheel-motion.js';

/** Travels, mm, over which a wheel is moved, and how far apart; what lies in between, `between-samples.ts` tells. */
const LONGEST_DROOP_MM = -100;
const LONGEST_BUMP_MM = 130;
const STEP_MM = 2.5;
/** Rack positions from lock to lock, straight ahead among them. */
const RACKS = 21;
/** Where no rack goes further, mm. */
const LONGEST_RACK_MM = 120;

/** What a linkage tells of a motion. */
export type Moved = Omit<WheelMotion, 'from' | 'isUpright' | 'doubts'>;

/** Rack positions from lock to lock, and how far the links reach at each. */
export interface RackReaches {
  readonly rack: Float64Array;
  readonly reaches: readonly Reach[];
}

/** A rack position a step, those of both locks first. @param lock degrees; 0: straight ahead only */
export function* rackReaches(linkage: Linkage, lock: number): Generator<undefined, RackReaches> {
  if (!(lock > 0)) return { rack: Float64Array.of(0), reaches: [linkage.reach] };
  const left = rackAt(linkage, lock, 1);
  yield;
  const right = rackAt(linkage, lock, -1);
  yield;
  const rack = racksBetween(left, right);
  const reaches: Reach[] = [];
  for (const displacement of rack) {
    reaches.push(displacement === 0 ? linkage.reach : findReach(linkage, displacement));
    yield;
  }
  return { rack, reaches };
}

/** Travels over which a linkage's wheel is moved, mm. */
export const travelsOf = ({ reach }: Linkage): Float64Array =>
  travelsBetween(Math.max(LONGEST_DROOP_MM, reach.droop + 1), Math.min(LONGEST_BUMP_MM, reach.bump - 1));

/** A motion at rack positions that are known, one a step. @param travel mm */
export function* motionOver(
  linkage: Linkage,
  { rack, reaches }: RackReaches,
  travel = travelsOf(linkage),
): Generator<undefined, Moved> {
  const { reach, wheelCentreZ, body } = linkage;
  const pose = new Float64Array(POSE_SIZE);
  const vectors = () => new Float64Array(3 * travel.length * rack.length).fill(Number.NaN);
  const [centre, spin, tieOuter, ball] = [vectors(), vectors(), vectors(), vectors()];
  const toe = new Float64Array(rack.length);
  const origin = centreAt(linkage);
  for (const [j, displacement] of rack.entries()) {
    const own = reaches[j]!;
    pose[RACK] = displacement;
    pose[ARM_ANGLE] = linkage.home;
    travel.forEach((t, i) => {
      pose[TRAVEL] = t;
      if (!moveTo(pose, linkage, own)) return;
      const at = 3 * (i * rack.length + j);
      for (let axis = 0; axis < 3; axis++) {
        centre[at + axis] = pose[WHEEL + axis]! - origin[axis]!;
        spin[at + axis] = pose[SPIN + axis]!;
        tieOuter[at + axis] = pose[TIE_OUTER + axis]! - origin[axis]!;
        ball[at + axis] = pose[BALL + axis]! - origin[axis]!;
      }
    });
    toe[j] = toeAt(pose, linkage, displacement, own) ?? Number.NaN;
    if (rack.length > 1) yield;
  }
  const motion = motionOf(
    linkage,
    travel.filter((t) => t >= reach.droop && t <= reach.bump),
  );
  const damper = damperPathOf(motion);
  const from = (point: Vector3): Vector3 => [point[0] - origin[0], point[1] - origin[1], point[2] - wheelCentreZ];
  return {
    travel,
    rack,
    toe,
    centre,
    spin,
    joints: {
      tieOuter,
      ball,
      tieInner: from(body.tieInner),
      armPivot: from(motion.fixed.armPivot),
      armAxis: unit(subtract(body.lowerFront, body.lowerRear)),
    },
    ...(damper && { damper }),
    reach: { droop: reach.droop, bump: reach.bump },
  };
}

export function travelsBetween(low: number, high: number): Float64Array {
  const travels = [];
  for (let i = Math.ceil(low / STEP_MM); i * STEP_MM <= high; i++) travels.push(i * STEP_MM);
  if (travels[0] !== low) travels.unshift(low);
  if (travels.at(-1) !== high) travels.push(high);
  return Float64Array.from(travels);
}

/** So many each side of straight ahead. */
function racksBetween(left: number, right: number): Float64Array {
  const low = Math.min(left, right);
  const high = Math.max(left, right);
  const each = (RACKS - 1) / 2;
  return Float64Array.from({ length: RACKS }, (_, j) =>
    j < each ? (low * (each - j)) / each : (high * (j - each)) / each,
  );
}

function centreAt({ home, reach, ...linkage }: Linkage): Vector3 {
  const pose = new Float64Array(POSE_SIZE);
  pose[ARM_ANGLE] = home;
  moveTo(pose, { home, reach, ...linkage }, reach);
  return [pose[WHEEL]!, pose[WHEEL + 1]!, pose[WHEEL + 2]!];
}

/** Toe at reference height, degrees; undefined where the links do not reach. */
export function toeAt(pose: Float64Array, linkage: Linkage, rack: number, reach: Reach): number | undefined {
  pose[RACK] = rack;
  pose[ARM_ANGLE] = linkage.home;
  pose[TRAVEL] = 0;
  return moveTo(pose, linkage, reach) ? Math.atan2(pose[SPIN]!, pose[SPIN + 1]!) / DEG : undefined;
}

/** The rack position that steers the wheel by so much one way, or the last that the links reach. */
function rackAt(linkage: Linkage, lock: number, way: 1 | -1): number {
  const pose = new Float64Array(POSE_SIZE);
  const ahead = toeAt(pose, linkage, 0, linkage.reach) ?? 0;
  const steer = (rack: number) => {
    const toe = toeAt(pose, linkage, rack, findReach(linkage, rack));
    return toe === undefined ? undefined : Math.abs(toe - ahead);
  };
  let good = 0;
  let bad = way * LONGEST_RACK_MM;
  // Steer grows with the rack until the tie rod is in line with its arm: found by steps, then by halves.
  let least = 0;
  for (let rack = way * 4; Math.abs(rack) <= LONGEST_RACK_MM; rack += way * 4) {
    const here = steer(rack);
    if (here === undefined || here < least || here >= lock) {
      bad = rack;
      break;
    }
    least = here;
    good = rack;
  }
  for (let i = 0; i < 30; i++) {
    const middle = (good + bad) / 2;
    const here = steer(middle);
    if (here === undefined || here >= lock || here < least) bad = middle;
    else good = middle;
  }
  return good;
}
