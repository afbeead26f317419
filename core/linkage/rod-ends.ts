import { add, cross, distance, dot, subtract, type Vec } from '../math/vector.js';
import { intoWorld, moveWithToeHeld } from './held-toe.js';
import type { Linkage } from './linkage.js';
import { ARM_ANGLE, BALL, POSE_SIZE, SPIN, TRAVEL, TURN_RATE, UPPER, WHEEL_RATE } from './pose.js';
import type { ToeAdjustment } from './toe-adjustment.js';
import { moveTo, openReach } from './travel.js';

const DEGREES = 180 / Math.PI;

/** Toe-in of the position in a pose, degrees. */
export const toeIn = (pose: Float64Array): number => Math.atan2(pose[SPIN]!, pose[SPIN + 1]!) * DEGREES;

/** d(toe)/d(travel) of the position in a pose, degrees per mm: of ds = ω × s. */
export function toeRateIn(pose: Float64Array): number {
  const [sx, sy, sz] = [pose[SPIN]!, pose[SPIN + 1]!, pose[SPIN + 2]!];
  const dx = pose[TURN_RATE + 1]! * sz - pose[TURN_RATE + 2]! * sy;
  const dy = pose[TURN_RATE + 2]! * sx - pose[TURN_RATE]! * sz;
  return ((sy * dx - sx * dy) / (sx * sx + sy * sy) / pose[WHEEL_RATE + 2]!) * DEGREES;
}

/**
 * The position at a travel, straight ahead, with toe as it stands.
 *
 * @returns undefined beyond reach
 */
export function standingAt(linkage: Linkage, travel: number): Float64Array | undefined {
  const pose = new Float64Array(POSE_SIZE);
  pose[ARM_ANGLE] = linkage.home;
  pose[TRAVEL] = travel;
  return moveTo(pose, linkage, linkage.reach) && pose[WHEEL_RATE + 2]! > 0 ? pose : undefined;
}

/**
 * The same position of the arm's ball joint turned to another toe by the rod, the wheel centre as high.
 *
 * @param toe degrees
 * @returns undefined where no rod leads to it
 */
export function setToToe(linkage: Linkage, standing: Float64Array, toe: number): Float64Array | undefined {
  const pose = standing.slice();
  return moveWithToeHeld(pose, linkage, toe / DEGREES) ? pose : undefined;
}

/**
 * The linkage with one end of its tie rod raised and toe set again by the rod's length. With travel and toe prescribed the carrier's
 * place does not depend on the rod, so its length is the distance of its two ends there; nothing is searched for. For positions
 * around `set` alone: its ends of reach are not looked for, and its home is `set`.
 *
 * @param set the position, straight ahead, in which toe is as it is to be set
 * @param amount mm, upward: in the knuckle's frame for the outer end, in the body's for the others
 * @param rack what the rack is then moved by, mm, positive towards the car's left
 * @returns undefined where the rod would have to pass through the steering axis to join: no turn of it leads there
 */
export function withRodEnd(
  linkage: Linkage,
  set: Float64Array,
  adjust: ToeAdjustment,
  amount: number,
  rack = 0,
): Linkage | undefined {
  const { solver, branch } = linkage;
  const up: Vec = [0, 0, amount];
  const tieOuter = adjust === 'outerEnd' ? add(solver.tieOuter, up) : solver.tieOuter;
  const inner = adjust === 'outerEnd' ? solver.tieInner : add(solver.tieInner, up);
  const ball: Vec = [set[BALL]!, set[BALL + 1]!, set[BALL + 2]!];
  const toOuter = intoWorld(set, tieOuter);
  const toInner = subtract(inner, ball);
  const steering = subtract([set[UPPER]!, set[UPPER + 1]!, set[UPPER + 2]!], ball);
  if (!(dot(cross(toInner, toOuter), steering) * branch.tieRod > 0)) return undefined;
  const home = set[ARM_ANGLE]!;
  const tieRod = distance(toOuter, toInner);
  return {
    ...linkage,
    solver: { ...solver, tieOuter, tieInner: add(inner, [0, rack, 0]), tieRod },
    home,
    reach: openReach(home),
  };
}

const pose = new Float64Array(POSE_SIZE);

/** A joint turns on as it came from one travel to the next; where it turns by far more, the position is another assembly. */
const MOST_OF_A_STEP = 8;
/** By how much the arm's angle may miss between two travels that are nearly one, radians. */
const ROUNDING = 1e-9;
/** A shorter step says nothing of how the next one bends. */
const SHORTEST_MM = 0.01;

/**
 * Toe over travels, walked outward from one of them, so that what is reached can be driven to.
 *
 * @param linkage whose home is at `travels[from]`, or close to it
 * @param travels mm, ascending
 * @param toe receives toe-in, degrees; NaN beyond where a link runs out or the wheel centre turns back
 * @param rate receives d(toe)/d(travel), degrees per mm
 * @returns whether all of them were reached
 */
export function toeOver(
  linkage: Linkage,
  travels: Float64Array,
  from: number,
  toe: Float64Array,
  rate?: Float64Array,
): boolean {
  let isWhole = true;
  for (const way of [-1, 1] as const) {
    let angle = linkage.home;
    let perMm = 0;
    // How that changes, so that the start lies on a parabola: one Newton step less.
    let bend = 0;
    let isLost = false;
    for (let i = from; i >= 0 && i < travels.length; i += way) {
      if (!isLost) {
        const by = i === from ? 0 : travels[i]! - travels[i - way]!;
        pose[ARM_ANGLE] = angle + by * (perMm + (by * bend) / 2);
        pose[TRAVEL] = travels[i]!;
        isLost = !moveTo(pose, linkage, linkage.reach) || !(pose[WHEEL_RATE + 2]! > 0);
        const turned = (pose[ARM_ANGLE]! - angle) * way;
        isLost ||= i !== from && !(turned > -ROUNDING && turned < MOST_OF_A_STEP * Math.abs(by * perMm) + ROUNDING);
        angle = pose[ARM_ANGLE]!;
        const next = 1 / pose[WHEEL_RATE + 2]!;
        bend = Math.abs(by) > SHORTEST_MM ? (next - perMm) / by : 0;
        perMm = next;
      }
      isWhole &&= !isLost;
      toe[i] = isLost ? Number.NaN : toeIn(pose);
      if (rate) rate[i] = isLost ? Number.NaN : toeRateIn(pose);
    }
  }
  return isWhole;
}
