import { add, cross, dot, length, scale, subtract, type Vec } from '../math/vector.js';
import type { Vector3 } from './corner.js';
import { holdToe, intoWorld, moveWithToeHeld } from './held-toe.js';
import type { Linkage } from './linkage.js';
import { ARM_ANGLE, BALL, BALL_RATE, POSE_SIZE, TIE_OUTER, TRAVEL, TURN_RATE, WHEEL_RATE } from './pose.js';

const UP: Vec = [0, 0, 1];
/** Turn of the arm for second derivatives, radians: truncation and rounding both below 1e-9. */
const STEP = 2e-3;

/**
 * How the tie rod's outer joint moves while the wheel does not steer at all, the rod imagined away: three numbers a travel, in the body's
 * frame. A joint raised in the knuckle by a moves as `outer` + a · `up`, and so do its derivatives.
 */
export interface HeldPath {
  /** Ascending, mm. */
  travel: Float64Array;
  /** Place of the joint, mm, and its first and second derivative by travel, 1 and 1/mm. */
  outer: Float64Array;
  outerRate: Float64Array;
  outerSecond: Float64Array;
  /** The knuckle's own upward direction, and its derivatives, 1/mm and 1/mm². */
  up: Float64Array;
  upRate: Float64Array;
  upSecond: Float64Array;
  /** How fast the knuckle turns about the car's x, radians per mm: one number a travel. 0: it only shifts in the transverse plane. */
  turn: Float64Array;
}

/** One travel of a `HeldPath`. */
export interface HeldPlace {
  outer: Vector3;
  outerRate: Vector3;
  outerSecond: Vector3;
  up: Vector3;
  upRate: Vector3;
  upSecond: Vector3;
  turn: number;
}

/** The rod with which a wheel does not steer itself, and how the one that is there differs from it. mm. */
export interface IdealRod {
  /** The outer joint. */
  outer: Vector3;
  /**
   * Where the inner joint would have to be, at its own x, so that the wheel does not steer to second order: where the outer joint's path
   * has its centre of curvature. Infinite where that path is straight as seen from there.
   */
  inner: Vector3;
  /** From there to the outer joint; negative where the centre lies outboard of the joint: no rod of this side is right then. Infinite where the path is straight. */
  length: number;
  /** Length of the rod that is there. */
  actual: number;
  /** By how much the rod is too short; negative: too long. Infinite where `length` is negative: no rod is long enough. */
  tooShort: number;
  /** By how much the inner joint lies too high of the line that the rod must lie on; negative: too low. The wheel's toe rate goes with it. */
  tooHigh: number;
  /** Where the rod's line must aim, seen from the front: the instant centre of the knuckle that does not steer, in the transverse plane through the outer joint. ±Infinity where it only shifts. */
  aim: { y: number; z: number };
}

/**
 * The path with toe held, over travels.
 *
 * @param set a position straight ahead, close to one of the travels
 * @param toe degrees, held
 * @param travels mm, ascending; where one is not reached, everything of it is NaN
 */
export function heldPath(linkage: Linkage, set: Float64Array, toe: number, travels: Float64Array): HeldPath {
  const vectors = () => new Float64Array(3 * travels.length).fill(Number.NaN);
  const path: HeldPath = {
    travel: travels.slice(),
    outer: vectors(),
    outerRate: vectors(),
    outerSecond: vectors(),
    up: vectors(),
    upRate: vectors(),
    upSecond: vectors(),
    turn: new Float64Array(travels.length).fill(Number.NaN),
  };
  const held = (toe * Math.PI) / 180;
  const pose = new Float64Array(POSE_SIZE);
  pose.set(set);
  const start = travels.reduce(
    (best, one, i) => (Math.abs(one - set[TRAVEL]!) < Math.abs(travels[best]! - set[TRAVEL]!) ? i : best),
    0,
  );
  for (const way of [-1, 1] as const) {
    pose[ARM_ANGLE] = set[ARM_ANGLE]!;
    for (let i = start; i >= 0 && i < travels.length; i += way) {
      pose[TRAVEL] = travels[i]!;
      if (!moveWithToeHeld(pose, linkage, held)) break;
      keep(path, i, pose, linkage, held);
    }
  }
  return path;
}

/** What moves with the knuckle, per mm of travel. */
function rates(pose: Float64Array): { outer: Vec; up: Vec } {
  const perMm = 1 / pose[WHEEL_RATE + 2]!;
  const turn = scale(at(pose, TURN_RATE), perMm);
  const arm = subtract(at(pose, TIE_OUTER), at(pose, BALL));
  return { outer: add(scale(at(pose, BALL_RATE), perMm), cross(turn, arm)), up: cross(turn, intoWorld(pose, UP)) };
}

const at = (from: Float64Array, offset: number): Vec => [from[offset]!, from[offset + 1]!, from[offset + 2]!];

function keep(path: HeldPath, i: number, pose: Float64Array, linkage: Linkage, toe: number): void {
  const perMm = 1 / pose[WHEEL_RATE + 2]!;
  const here = rates(pose);
  path.outer.set(at(pose, TIE_OUTER), 3 * i);
  path.up.set(intoWorld(pose, UP), 3 * i);
  path.outerRate.set(here.outer, 3 * i);
  path.upRate.set(here.up, 3 * i);
  path.turn[i] = pose[TURN_RATE]! * perMm;
  // d/d(travel) of the exact rates, by the five-point rule along the arm's angle: f' = (8 (f₁ − f₋₁) − (f₂ − f₋₂))/12h.
  const off = pose.slice();
  const around = [-2, -1, 1, 2].map((steps) => {
    off[ARM_ANGLE] = pose[ARM_ANGLE]! + steps * STEP;
    return holdToe(off, linkage, toe) ? rates(off) : undefined;
  });
  const [below2, below, above, above2] = around;
  if (!below2 || !below || !above || !above2) return;
  const second = (what: 'outer' | 'up') =>
    scale(
      subtract(scale(subtract(above[what], below[what]), 8), subtract(above2[what], below2[what])),
      perMm / (12 * STEP),
    );
  path.outerSecond.set(second('outer'), 3 * i);
  path.upSecond.set(second('up'), 3 * i);
}

/** A path at a travel, by straight lines between those it has. */
export function heldAt(path: HeldPath, travel: number): HeldPlace {
  const { length: count } = path.travel;
  const next = path.travel.findIndex((one) => one > travel);
  const i = Math.max(0, Math.min((next < 0 ? count : next) - 1, count - 2));
  const share = count === 1 ? 0 : (travel - path.travel[i]!) / (path.travel[i + 1]! - path.travel[i]!);
  const between = (of: Float64Array): Vec =>
    share === 0 ? at(of, 3 * i) : add(scale(at(of, 3 * i), 1 - share), scale(at(of, 3 * i + 3), share));
  return {
    outer: between(path.outer),
    outerRate: between(path.outerRate),
    outerSecond: between(path.outerSecond),
    up: between(path.up),
    upRate: between(path.upRate),
    upSecond: between(path.upSecond),
    turn: path.turn[i]! + (share && share * (path.turn[i + 1]! - path.turn[i]!)),
  };
}

/**
 * The rod that would not steer the wheel, at one place of its path. With P the outer joint and I the inner one, the rod keeps its length
 * to second order where (P − I) · P′ = 0 and P′ · P′ + (P − I) · P″ = 0: two lines in the transverse plane through I, which meet at the
 * centre of curvature (Euler and Savary's point for plane motion, worked out for space by hand).
 *
 * @param inner where the inner joint is, mm
 * @param raised by how much the outer joint is raised in the knuckle, mm
 */
export function idealRod(place: HeldPlace, inner: Vector3, raised = 0): IdealRod {
  const lifted = (of: Vec, by: Vec): Vec => add(of, scale(by, raised));
  const outer = lifted(place.outer, place.up);
  const rate = lifted(place.outerRate, place.upRate);
  const second = lifted(place.outerSecond, place.upSecond);
  const rod = subtract(outer, inner);
  // In y and z alone, as x stays: rate · (y, z) = first, second · (y, z) = bent.
  const first = -rod[0] * rate[0];
  const bent = -dot(rate, rate) - rod[0] * second[0];
  const determinant = rate[1] * second[2] - rate[2] * second[1];
  const across = (first * second[2] - bent * rate[2]) / determinant;
  const rise = (bent * rate[1] - first * second[1]) / determinant;
  const size = Math.hypot(rod[0], across, rise);
  const actual = length(rod);
  const isOutboard = across < 0 && size < Number.POSITIVE_INFINITY;
  return {
    outer,
    inner: [inner[0], outer[1] - across, outer[2] - rise],
    length: isOutboard ? -size : size,
    actual,
    tooShort: isOutboard ? Number.POSITIVE_INFINITY : size - actual,
    tooHigh: -dot(rod, rate) / rate[2],
    aim: { y: outer[1] - rate[2] / place.turn, z: outer[2] + rate[1] / place.turn },
  };
}
