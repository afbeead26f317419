import { add, cross, dot, length, scale, subtract, unit, type Vec } from '../math/vector.js';
import type { Linkage } from './linkage.js';
import {
  ARM_ANGLE,
  BALL,
  BALL_RATE,
  CLOSED,
  ROTATION,
  SPIN,
  TIE_OUTER,
  TRAVEL,
  TURN_RATE,
  UPPER,
  WHEEL,
  WHEEL_RATE,
} from './pose-layout.js';
import { GUIDE, M, placeTopMount, placeUpperBall, UPPER_RATE, upper } from './upper-point.js';

const CONVERGED_MM = 1e-11;
const STILL_THERE_MM = 1e-7;
const MOST_STEPS = 40;

const vector = (from: Float64Array, at: number): Vec => [from[at]!, from[at + 1]!, from[at + 2]!];

/**
 * The position at an arm angle with the tie rod imagined away and toe held instead, in closed form, and how it moves.
 *
 * Arm and upper end place the steering axis as in `poseAt`. With n the axis, s∥ and s⊥ the spin axis along and across it, and δ the
 * carrier's turn about it, s = s∥ n + s⊥ (cos δ E + sin δ F). The wheel has toe τ where s · q = 0, q = (cos τ, −sin τ, 0):
 * A + B cos δ + C sin δ = 0 with A = s∥ n · q, B = s⊥ E · q, C = s⊥ F · q. Of the two roots the wheel points outboard at one. The
 * angular velocity as in `poseAt`, with (ω × s) · q = 0 in the rod's place.
 *
 * @param pose POSE_SIZE numbers: ARM_ANGLE is read, everything of the wheel carrier is written
 * @param toe radians, toe-in positive
 * @returns whether there is such a position
 */
export function holdToe(pose: Float64Array, { solver, branch }: Linkage, toe: number): boolean {
  const { lower } = solver;
  const [along, rise] = [Math.cos(pose[ARM_ANGLE]!) * lower.radius, Math.sin(pose[ARM_ANGLE]!) * lower.radius];
  const ball = add(lower.centre, add(scale(lower.out, along), scale(lower.up, rise)));
  const ballRate = subtract(scale(lower.up, along), scale(lower.out, rise));
  pose.set(ball, BALL);
  pose.set(ballRate, BALL_RATE);
  const closing = solver.upper ? placeUpperBall(pose, solver, branch.upperArm) : placeTopMount(pose, solver);
  if (closing !== CLOSED) return false;
  const steering = subtract(vector(pose, UPPER), ball);
  const n = unit(steering);
  const m = vector(upper, M);
  const spinAlong = dot(solver.spin, m);
  const spinAcross = subtract(solver.spin, scale(m, spinAlong));
  const size = length(spinAcross);
  const e = scale(spinAcross, 1 / size);
  const q: Vec = [Math.cos(toe), -Math.sin(toe), 0];
  const out: Vec = [Math.sin(toe), Math.cos(toe), 0];
  const e0 = unit(subtract(out, scale(n, dot(out, n))));
  const f0 = cross(n, e0);
  const [b, c] = [size * dot(e0, q), size * dot(f0, q)];
  const cosine = (-spinAlong * dot(n, q)) / Math.hypot(b, c);
  if (!(Math.abs(cosine) < 1)) return false;
  const [middle, half] = [Math.atan2(c, b), Math.acos(cosine)];
  const turned = (delta: number) => add(scale(e0, Math.cos(delta)), scale(f0, Math.sin(delta)));
  const [one, other] = [turned(middle + half), turned(middle - half)];
  const E = dot(one, out) > dot(other, out) ? one : other;

  const [f, F] = [cross(m, e), cross(n, E)];
  for (let row = 0; row < 3; row++) {
    pose.set(add(scale(m, n[row]!), add(scale(e, E[row]!), scale(f, F[row]!))), ROTATION + 3 * row);
  }
  const spin = add(scale(n, spinAlong), scale(E, size));
  const hub = intoWorld(pose, solver.wheelCentre);
  pose.set(spin, SPIN);
  pose.set(add(ball, hub), WHEEL);
  pose.set(add(ball, intoWorld(pose, solver.tieOuter)), TIE_OUTER);

  const guide = intoWorld(pose, vector(upper, GUIDE));
  const q1 = cross(guide, Math.abs(guide[2]) > 0.7 ? [0, 1, 0] : [0, 0, 1]);
  const q2 = cross(guide, q1);
  const slip = subtract(vector(upper, UPPER_RATE), ballRate);
  const [r1, r2, r3] = [cross(steering, q1), cross(steering, q2), cross(spin, q)];
  const inverse = 1 / dot(r1, cross(r2, r3));
  const turn = scale(add(scale(cross(r2, r3), dot(slip, q1)), scale(cross(r3, r1), dot(slip, q2))), inverse);
  pose.set(turn, TURN_RATE);
  pose.set(add(ballRate, cross(turn, hub)), WHEEL_RATE);
  return true;
}

/** Rv: a vector of the carrier in the world, by the rotation in a pose. */
export const intoWorld = (pose: Float64Array, v: Vec): Vec => [
  dot(vector(pose, ROTATION), v),
  dot(vector(pose, ROTATION + 3), v),
  dot(vector(pose, ROTATION + 6), v),
];

/**
 * Moves the wheel centre to the travel in `pose[TRAVEL]` with toe held, from the arm angle in `pose[ARM_ANGLE]` on, by Newton's rule; a
 * step to where nothing closes is halved.
 *
 * @param toe radians
 * @returns whether that travel was reached before the wheel centre turns back
 */
export function moveWithToeHeld(pose: Float64Array, linkage: Linkage, toe: number): boolean {
  const wanted = linkage.wheelCentreZ + pose[TRAVEL]!;
  let angle = pose[ARM_ANGLE]!;
  if (!holdToe(pose, linkage, toe)) return false;
  let error = pose[WHEEL + 2]! - wanted;
  for (let i = 0; i < MOST_STEPS && Math.abs(error) > CONVERGED_MM; i++) {
    const step = -error / pose[WHEEL_RATE + 2]!;
    let share = 1;
    do {
      pose[ARM_ANGLE] = angle + share * step;
      share /= 2;
    } while (!holdToe(pose, linkage, toe) && share > 1e-6);
    if (pose[ARM_ANGLE] === angle) break;
    angle = pose[ARM_ANGLE]!;
    error = pose[WHEEL + 2]! - wanted;
  }
  return Math.abs(error) < STILL_THERE_MM && pose[WHEEL_RATE + 2]! > 0;
}
