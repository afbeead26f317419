import type { Linkage } from './linkage.js';
import {
  ARM_ANGLE,
  BALL,
  BALL_RATE,
  CLOSED,
  type Closing,
  DAMPER_LENGTH,
  DAMPER_RATE,
  LOW,
  RACK,
  ROTATION,
  SPIN,
  TIE_OUTER,
  TIE_ROD_RAN_OUT,
  TURN_RATE,
  UPPER,
  WHEEL,
  WHEEL_RATE,
} from './pose-layout.js';
import { GUIDE, M, placeTopMount, placeUpperBall, SLIDE, UPPER_RATE, upper } from './upper-point.js';
import { placeDamper } from './wishbone-damper.js';

export * from './pose-layout.js';

/**
 * The position at an arm angle, in closed form.
 *
 * 1. The lower ball joint B runs on a circle about its arm's pivot axis.
 * 2. The steering axis. Strut: the damper's axis is a line fixed to the carrier, at the constant vector p from B (p ⟂ axis d).
 *    It passes through the top mount T, so |T − B|² = |p|² + s², which gives the place s of T along it. Wishbone: the upper ball
 *    joint U is on its own circle at a fixed distance from B, A cos φ + B sin φ = C.
 * 3. The carrier's vector m along the steering axis lies on the world's n. What is left is one turn about n. The outer tie rod
 *    end is at a fixed distance ρ from that line and at a fixed place along it; with x the direction from the line towards the
 *    inner end, the rod's length gives cos δ, and the assembly (`branch`) the sign of sin δ.
 * 4. Velocities: the carrier's upper point moves along the damper's axis (strut) or with the upper arm (wishbone), and the rod
 *    keeps its length. Three linear equations for the angular velocity, solved by Cramer's rule.
 *
 * Derivation: constraint equations of the two suspensions, solved by hand; no published source.
 *
 * @param pose POSE_SIZE numbers; ARM_ANGLE and RACK are read, the rest is written and means something only when CLOSED is returned.
 */
export function poseAt(pose: Float64Array, linkage: Linkage): Closing {
  const { solver, branch } = linkage;
  const { lower } = solver;
  const cosine = Math.cos(pose[ARM_ANGLE]!) * lower.radius;
  const sine = Math.sin(pose[ARM_ANGLE]!) * lower.radius;
  const bx = lower.centre[0] + lower.out[0] * cosine + lower.up[0] * sine;
  const by = lower.centre[1] + lower.out[1] * cosine + lower.up[1] * sine;
  const bz = lower.centre[2] + lower.out[2] * cosine + lower.up[2] * sine;
  const vbx = lower.up[0] * cosine - lower.out[0] * sine;
  const vby = lower.up[1] * cosine - lower.out[1] * sine;
  const vbz = lower.up[2] * cosine - lower.out[2] * sine;
  pose[BALL] = bx;
  pose[BALL + 1] = by;
  pose[BALL + 2] = bz;
  pose[BALL_RATE] = vbx;
  pose[BALL_RATE + 1] = vby;
  pose[BALL_RATE + 2] = vbz;

  const closing = solver.upper ? placeUpperBall(pose, solver, branch.upperArm) : placeTopMount(pose, solver);
  if (closing !== CLOSED) return closing;
  const vx = pose[UPPER]! - bx;
  const vy = pose[UPPER + 1]! - by;
  const vz = pose[UPPER + 2]! - bz;
  const inverseV = 1 / Math.sqrt(vx * vx + vy * vy + vz * vz);
  const nx = vx * inverseV;
  const ny = vy * inverseV;
  const nz = vz * inverseV;
  const mx = upper[M]!;
  const my = upper[M + 1]!;
  const mz = upper[M + 2]!;

  // Outer tie rod end in the carrier: along m, and ρ away from it in direction e.
  const o = solver.tieOuter;
  const along = o[0] * mx + o[1] * my + o[2] * mz;
  let ex = o[0] - along * mx;
  let ey = o[1] - along * my;
  let ez = o[2] - along * mz;
  const rho = Math.sqrt(ex * ex + ey * ey + ez * ez);
  ex /= rho;
  ey /= rho;
  ez /= rho;
  const fx = my * ez - mz * ey;
  const fy = mz * ex - mx * ez;
  const fz = mx * ey - my * ex;

  // Inner end from the ball joint, split the same way in the world.
  const inner = solver.tieInner;
  const gx = inner[0] - bx;
  const gy = inner[1] + pose[RACK]! - by;
  const gz = inner[2] - bz;
  const gAlong = gx * nx + gy * ny + gz * nz;
  let xx = gx - gAlong * nx;
  let xy = gy - gAlong * ny;
  let xz = gz - gAlong * nz;
  const gAway = Math.sqrt(xx * xx + xy * xy + xz * xz);
  xx /= gAway;
  xy /= gAway;
  xz /= gAway;
  const rise = along - gAlong;
  const rod = solver.tieRod;
  const cosSpin = (rho * rho + gAway * gAway + rise * rise - rod * rod) / (2 * rho * gAway);
  const discriminant = 1 - cosSpin * cosSpin;
  if (!(discriminant > 0)) return TIE_ROD_RAN_OUT;
  const sinSpin = branch.tieRod * Math.sqrt(discriminant);
  // The carrier's triad (m, e, f) lies on the world's (n, E, F).
  const Ex = cosSpin * xx + sinSpin * (ny * xz - nz * xy);
  const Ey = cosSpin * xy + sinSpin * (nz * xx - nx * xz);
  const Ez = cosSpin * xz + sinSpin * (nx * xy - ny * xx);
  const Fx = ny * Ez - nz * Ey;
  const Fy = nz * Ex - nx * Ez;
  const Fz = nx * Ey - ny * Ex;
  const r00 = nx * mx + Ex * ex + Fx * fx;
  const r01 = nx * my + Ex * ey + Fx * fy;
  const r02 = nx * mz + Ex * ez + Fx * fz;
  const r10 = ny * mx + Ey * ex + Fy * fx;
  const r11 = ny * my + Ey * ey + Fy * fy;
  const r12 = ny * mz + Ey * ez + Fy * fz;
  const r20 = nz * mx + Ez * ex + Fz * fx;
  const r21 = nz * my + Ez * ey + Fz * fy;
  const r22 = nz * mz + Ez * ez + Fz * fz;
  pose[ROTATION] = r00;
  pose[ROTATION + 1] = r01;
  pose[ROTATION + 2] = r02;
  pose[ROTATION + 3] = r10;
  pose[ROTATION + 4] = r11;
  pose[ROTATION + 5] = r12;
  pose[ROTATION + 6] = r20;
  pose[ROTATION + 7] = r21;
  pose[ROTATION + 8] = r22;

  const h = solver.wheelCentre;
  const rwx = r00 * h[0] + r01 * h[1] + r02 * h[2];
  const rwy = r10 * h[0] + r11 * h[1] + r12 * h[2];
  const rwz = r20 * h[0] + r21 * h[1] + r22 * h[2];
  pose[WHEEL] = bx + rwx;
  pose[WHEEL + 1] = by + rwy;
  pose[WHEEL + 2] = bz + rwz;
  const s = solver.spin;
  pose[SPIN] = r00 * s[0] + r01 * s[1] + r02 * s[2];
  pose[SPIN + 1] = r10 * s[0] + r11 * s[1] + r12 * s[2];
  pose[SPIN + 2] = r20 * s[0] + r21 * s[1] + r22 * s[2];
  const rox = along * nx + rho * Ex;
  const roy = along * ny + rho * Ey;
  const roz = along * nz + rho * Ez;
  pose[TIE_OUTER] = bx + rox;
  pose[TIE_OUTER + 1] = by + roy;
  pose[TIE_OUTER + 2] = bz + roz;
  const ax = upper[GUIDE]!;
  const ay = upper[GUIDE + 1]!;
  const az = upper[GUIDE + 2]!;
  const dx = r00 * ax + r01 * ay + r02 * az;
  const dy = r10 * ax + r11 * ay + r12 * az;
  const dz = r20 * ax + r21 * ay + r22 * az;

  // Angular velocity ω: (v_B + ω × V − v_upper) · q = 0 for two vectors q across the guiding axis d. They are d × (an axis that
  // is not near d), and d × that.
  const upright = dz * dz > 0.5;
  const q1x = upright ? dz : 0;
  const q1y = upright ? 0 : dz;
  const q1z = upright ? -dx : -dy;
  const q2x = dy * q1z - dz * q1y;
  const q2y = dz * q1x - dx * q1z;
  const q2z = dx * q1y - dy * q1x;
  const r1x = vy * q1z - vz * q1y;
  const r1y = vz * q1x - vx * q1z;
  const r1z = vx * q1y - vy * q1x;
  const r2x = vy * q2z - vz * q2y;
  const r2y = vz * q2x - vx * q2z;
  const r2z = vx * q2y - vy * q2x;
  const lx = rox - gx;
  const ly = roy - gy;
  const lz = roz - gz;
  const r3x = roy * lz - roz * ly;
  const r3y = roz * lx - rox * lz;
  const r3z = rox * ly - roy * lx;
  const wx = upper[UPPER_RATE]! - vbx;
  const wy = upper[UPPER_RATE + 1]! - vby;
  const wz = upper[UPPER_RATE + 2]! - vbz;
  const b1 = wx * q1x + wy * q1y + wz * q1z;
  const b2 = wx * q2x + wy * q2y + wz * q2z;
  const b3 = -(vbx * lx + vby * ly + vbz * lz);
  const c23x = r2y * r3z - r2z * r3y;
  const c23y = r2z * r3x - r2x * r3z;
  const c23z = r2x * r3y - r2y * r3x;
  const inverse = 1 / (r1x * c23x + r1y * c23y + r1z * c23z);
  const ox = (b1 * c23x + b2 * (r3y * r1z - r3z * r1y) + b3 * (r1y * r2z - r1z * r2y)) * inverse;
  const oy = (b1 * c23y + b2 * (r3z * r1x - r3x * r1z) + b3 * (r1z * r2x - r1x * r2z)) * inverse;
  const oz = (b1 * c23z + b2 * (r3x * r1y - r3y * r1x) + b3 * (r1x * r2y - r1y * r2x)) * inverse;
  pose[TURN_RATE] = ox;
  pose[TURN_RATE + 1] = oy;
  pose[TURN_RATE + 2] = oz;
  pose[WHEEL_RATE] = vbx + oy * rwz - oz * rwy;
  pose[WHEEL_RATE + 1] = vby + oz * rwx - ox * rwz;
  pose[WHEEL_RATE + 2] = vbz + ox * rwy - oy * rwx;

  if (solver.upper) {
    placeDamper(pose, solver);
  } else {
    const length = upper[SLIDE]! - solver.damperLow;
    pose[LOW] = pose[UPPER]! - length * dx;
    pose[LOW + 1] = pose[UPPER + 1]! - length * dy;
    pose[LOW + 2] = pose[UPPER + 2]! - length * dz;
    pose[DAMPER_LENGTH] = length;
    // s² = |V|² − |p|²  ⇒  s ds = V · dV = −V · v_B.
    pose[DAMPER_RATE] = -(vx * vbx + vy * vby + vz * vbz) / upper[SLIDE]!;
  }
  return CLOSED;
}
