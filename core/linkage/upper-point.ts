import { BALL, BALL_RATE, CLOSED, type Closing, STRUT_RAN_OUT, UPPER, UPPER_ARM_RAN_OUT } from './pose-layout.js';
import type { Solver } from './solver.js';

/** The steering axis in the carrier (m) and what the carrier's constraint at its upper end asks of the velocities. */
export const upper = new Float64Array(13);
export const M = 0;
/** Axis that the carrier's upper point cannot move across: the damper's for a strut, the steering axis for a wishbone; in the carrier. */
export const GUIDE = 3;
/** Velocity of the upper point on the body's side, per radian. */
export const UPPER_RATE = 6;
/** Strut: place of the top mount along the damper's axis. */
export const SLIDE = 9;
/** Wishbone: the upper arm's cosine and sine, and its rate per radian of the lower arm. */
export const COSINE = 10;
export const SINE = 11;
export const ARM_RATE = 12;

/** Strut: the top mount stays; the damper's axis through it is found in the carrier. */
export function placeTopMount(pose: Float64Array, { top, damperFoot: p, damperAxis: d }: Solver): Closing {
  const vx = top[0] - pose[BALL]!;
  const vy = top[1] - pose[BALL + 1]!;
  const vz = top[2] - pose[BALL + 2]!;
  const vv = vx * vx + vy * vy + vz * vz;
  const slideSquared = vv - (p[0] * p[0] + p[1] * p[1] + p[2] * p[2]);
  if (!(slideSquared > 0)) return STRUT_RAN_OUT;
  const slide = Math.sqrt(slideSquared);
  const inverseV = 1 / Math.sqrt(vv);
  upper[M] = (p[0] + slide * d[0]) * inverseV;
  upper[M + 1] = (p[1] + slide * d[1]) * inverseV;
  upper[M + 2] = (p[2] + slide * d[2]) * inverseV;
  upper[GUIDE] = d[0];
  upper[GUIDE + 1] = d[1];
  upper[GUIDE + 2] = d[2];
  upper[UPPER_RATE] = upper[UPPER_RATE + 1] = upper[UPPER_RATE + 2] = 0;
  upper[SLIDE] = slide;
  pose[UPPER] = top[0];
  pose[UPPER + 1] = top[1];
  pose[UPPER + 2] = top[2];
  return CLOSED;
}

/** Wishbone: the upper ball joint on its circle, at its distance from the lower one. */
export function placeUpperBall(pose: Float64Array, solver: Solver, branch: 1 | -1): Closing {
  const { centre: c, out: u, up: w, radius } = solver.upper!;
  const gx = pose[BALL]! - c[0];
  const gy = pose[BALL + 1]! - c[1];
  const gz = pose[BALL + 2]! - c[2];
  // |g|² + r² − 2 r (cos φ g·u + sin φ g·w) = D²
  const a = gx * u[0] + gy * u[1] + gz * u[2];
  const b = gx * w[0] + gy * w[1] + gz * w[2];
  const k =
    (gx * gx + gy * gy + gz * gz + radius * radius - solver.kingpinLength * solver.kingpinLength) / (2 * radius);
  const size = a * a + b * b;
  const discriminant = size - k * k;
  if (!(discriminant > 0)) return UPPER_ARM_RAN_OUT;
  const root = branch * Math.sqrt(discriminant);
  const cosine = (a * k - b * root) / size;
  const sine = (b * k + a * root) / size;
  const x = radius * (cosine * u[0] + sine * w[0]);
  const y = radius * (cosine * u[1] + sine * w[1]);
  const z = radius * (cosine * u[2] + sine * w[2]);
  pose[UPPER] = c[0] + x;
  pose[UPPER + 1] = c[1] + y;
  pose[UPPER + 2] = c[2] + z;
  // Both joints keep their distance: (v_U − v_B) · (U − B) = 0 gives the upper arm's rate.
  const tx = radius * (cosine * w[0] - sine * u[0]);
  const ty = radius * (cosine * w[1] - sine * u[1]);
  const tz = radius * (cosine * w[2] - sine * u[2]);
  const vx = x - gx;
  const vy = y - gy;
  const vz = z - gz;
  const rate =
    (pose[BALL_RATE]! * vx + pose[BALL_RATE + 1]! * vy + pose[BALL_RATE + 2]! * vz) / (tx * vx + ty * vy + tz * vz);
  upper[UPPER_RATE] = rate * tx;
  upper[UPPER_RATE + 1] = rate * ty;
  upper[UPPER_RATE + 2] = rate * tz;
  upper[ARM_RATE] = rate;
  upper[COSINE] = cosine;
  upper[SINE] = sine;
  const m = solver.kingpin;
  upper[M] = upper[GUIDE] = m[0];
  upper[M + 1] = upper[GUIDE + 1] = m[1];
  upper[M + 2] = upper[GUIDE + 2] = m[2];
  return CLOSED;
}
