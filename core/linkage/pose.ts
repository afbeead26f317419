import type { Linkage } from './linkage.js';

/**
 * Where everything is in one position, and how it moves per radian of arm angle. One flat array, so that the sweep allocates
 * nothing; offsets below, three numbers a vector, mm and radians.
 */
export const BALL = 0;
/** Second point of the steering axis: top mount of a strut. */
export const UPPER = 3;
export const LOW = 6;
export const TIE_OUTER = 9;
export const WHEEL = 12;
/** Outboard unit spin axis. */
export const SPIN = 15;
/** Velocity of the ball joint per radian of arm angle. */
export const BALL_RATE = 18;
/** Angular velocity of the carrier per radian of arm angle. */
export const TURN_RATE = 21;
/** Velocity of the wheel centre per radian of arm angle. */
export const WHEEL_RATE = 24;
/** d(damper length)/d(arm angle), mm per radian. */
export const DAMPER_RATE = 27;
export const DAMPER_LENGTH = 28;
export const POSE_SIZE = 29;

/** The position exists. */
export const CLOSED = 0;
/** The ball joint is too near to the top mount for the damper's axis to pass through it. */
export const STRUT_RAN_OUT = 1;
/** The tie rod is too long or too short to join. */
export const TIE_ROD_RAN_OUT = 2;
export type Closing = typeof CLOSED | typeof STRUT_RAN_OUT | typeof TIE_ROD_RAN_OUT;

/**
 * The strut's position at an arm angle, in closed form.
 *
 * 1. The ball joint B runs on a circle about the arm's pivot axis.
 * 2. The damper's axis is a line fixed to the carrier, at the constant vector p from B (p ⟂ axis d). It passes through the top
 *    mount T, so |T − B|² = |p|² + s², which gives the position s of T along it.
 * 3. The carrier vector v = p + s d must lie on V = T − B. What is left is one turn about V. The outer tie rod end is at a
 *    fixed distance ρ from that line and at a fixed place along it; with x the direction from the line towards the inner end,
 *    the rod's length gives cos δ, and the assembly (`branch`) the sign of sin δ.
 * 4. Velocities: the carrier's point at T may move along d only, and the rod keeps its length. Three linear equations for the
 *    angular velocity, solved by Cramer's rule.
 *
 * Derivation: constraint equations of a strut (arm revolute to the body and spherical to the carrier, damper axis through the
 * spherical top mount, tie rod), solved by hand; no published source.
 *
 * @param out POSE_SIZE numbers; positions are valid only when CLOSED is returned.
 * @param angle arm angle, radians, 0 at reference, positive raises the ball joint.
 * @param rackMm rack displacement, positive towards the car's left.
 */
export function poseAt(out: Float64Array, linkage: Linkage, angle: number, rackMm: number): Closing {
  const { body, carrier, lengths } = linkage;
  const u = linkage.armOut;
  const w = linkage.armUp;
  const c = body.armCentre;
  const cosine = Math.cos(angle) * lengths.arm;
  const sine = Math.sin(angle) * lengths.arm;
  const bx = c[0] + u[0] * cosine + w[0] * sine;
  const by = c[1] + u[1] * cosine + w[1] * sine;
  const bz = c[2] + u[2] * cosine + w[2] * sine;
  // Its velocity per radian: arm axis × radius.
  const vbx = w[0] * cosine - u[0] * sine;
  const vby = w[1] * cosine - u[1] * sine;
  const vbz = w[2] * cosine - u[2] * sine;

  const p = carrier.damperFoot;
  const d0 = carrier.damperAxis;
  const t = body.top;
  const vx = t[0] - bx;
  const vy = t[1] - by;
  const vz = t[2] - bz;
  const vv = vx * vx + vy * vy + vz * vz;
  const slideSquared = vv - (p[0] * p[0] + p[1] * p[1] + p[2] * p[2]);
  if (!(slideSquared > 0)) return STRUT_RAN_OUT;
  const slide = Math.sqrt(slideSquared);
  const inverseV = 1 / Math.sqrt(vv);
  // Steering axis: n in the world, m in the carrier's frame.
  const nx = vx * inverseV;
  const ny = vy * inverseV;
  const nz = vz * inverseV;
  const mx = (p[0] + slide * d0[0]) * inverseV;
  const my = (p[1] + slide * d0[1]) * inverseV;
  const mz = (p[2] + slide * d0[2]) * inverseV;

  // Outer tie rod end in the carrier: along m, and ρ away from it in direction e.
  const o = carrier.tieOuter;
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
  const inner = body.tieInner;
  const gx = inner[0] - bx;
  const gy = inner[1] + rackMm - by;
  const gz = inner[2] - bz;
  const gAlong = gx * nx + gy * ny + gz * nz;
  let xx = gx - gAlong * nx;
  let xy = gy - gAlong * ny;
  let xz = gz - gAlong * nz;
  const gAway = Math.sqrt(xx * xx + xy * xy + xz * xz);
  xx /= gAway;
  xy /= gAway;
  xz /= gAway;
  const yx = ny * xz - nz * xy;
  const yy = nz * xx - nx * xz;
  const yz = nx * xy - ny * xx;
  const rise = along - gAlong;
  const rod = lengths.tieRod;
  const cosSpin = (rho * rho + gAway * gAway + rise * rise - rod * rod) / (2 * rho * gAway);
  const discriminant = 1 - cosSpin * cosSpin;
  if (!(discriminant > 0)) return TIE_ROD_RAN_OUT;
  const sinSpin = linkage.branch * Math.sqrt(discriminant);
  // The carrier's triad (m, e, f) lies on the world's (n, E, F).
  const Ex = cosSpin * xx + sinSpin * yx;
  const Ey = cosSpin * xy + sinSpin * yy;
  const Ez = cosSpin * xz + sinSpin * yz;
  const Fx = ny * Ez - nz * Ey;
  const Fy = nz * Ex - nx * Ez;
  const Fz = nx * Ey - ny * Ex;

  const h = carrier.wheelCentre;
  let i = h[0] * mx + h[1] * my + h[2] * mz;
  let j = h[0] * ex + h[1] * ey + h[2] * ez;
  let k = h[0] * fx + h[1] * fy + h[2] * fz;
  const rwx = i * nx + j * Ex + k * Fx;
  const rwy = i * ny + j * Ey + k * Fy;
  const rwz = i * nz + j * Ez + k * Fz;
  const s = carrier.spin;
  i = s[0] * mx + s[1] * my + s[2] * mz;
  j = s[0] * ex + s[1] * ey + s[2] * ez;
  k = s[0] * fx + s[1] * fy + s[2] * fz;
  out[SPIN] = i * nx + j * Ex + k * Fx;
  out[SPIN + 1] = i * ny + j * Ey + k * Fy;
  out[SPIN + 2] = i * nz + j * Ez + k * Fz;
  i = d0[0] * mx + d0[1] * my + d0[2] * mz;
  j = d0[0] * ex + d0[1] * ey + d0[2] * ez;
  k = d0[0] * fx + d0[1] * fy + d0[2] * fz;
  const dx = i * nx + j * Ex + k * Fx;
  const dy = i * ny + j * Ey + k * Fy;
  const dz = i * nz + j * Ez + k * Fz;
  const damperLength = slide - carrier.low;
  const rox = along * nx + rho * Ex;
  const roy = along * ny + rho * Ey;
  const roz = along * nz + rho * Ez;

  // Angular velocity ω. The carrier at T moves along d only: (v_B + ω × V) · q = 0 for two vectors q across d.
  // They are d × (an axis that is not near d), and d × that.
  const upright = dz * dz > 0.5 ? 1 : 0;
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
  const b1 = -(vbx * q1x + vby * q1y + vbz * q1z);
  const b2 = -(vbx * q2x + vby * q2y + vbz * q2z);
  const b3 = -(vbx * lx + vby * ly + vbz * lz);
  const c23x = r2y * r3z - r2z * r3y;
  const c23y = r2z * r3x - r2x * r3z;
  const c23z = r2x * r3y - r2y * r3x;
  const inverse = 1 / (r1x * c23x + r1y * c23y + r1z * c23z);
  const ox = (b1 * c23x + b2 * (r3y * r1z - r3z * r1y) + b3 * (r1y * r2z - r1z * r2y)) * inverse;
  const oy = (b1 * c23y + b2 * (r3z * r1x - r3x * r1z) + b3 * (r1z * r2x - r1x * r2z)) * inverse;
  const oz = (b1 * c23z + b2 * (r3x * r1y - r3y * r1x) + b3 * (r1x * r2y - r1y * r2x)) * inverse;

  out[BALL] = bx;
  out[BALL + 1] = by;
  out[BALL + 2] = bz;
  out[UPPER] = t[0];
  out[UPPER + 1] = t[1];
  out[UPPER + 2] = t[2];
  out[LOW] = t[0] - damperLength * dx;
  out[LOW + 1] = t[1] - damperLength * dy;
  out[LOW + 2] = t[2] - damperLength * dz;
  out[TIE_OUTER] = bx + rox;
  out[TIE_OUTER + 1] = by + roy;
  out[TIE_OUTER + 2] = bz + roz;
  out[WHEEL] = bx + rwx;
  out[WHEEL + 1] = by + rwy;
  out[WHEEL + 2] = bz + rwz;
  out[BALL_RATE] = vbx;
  out[BALL_RATE + 1] = vby;
  out[BALL_RATE + 2] = vbz;
  out[TURN_RATE] = ox;
  out[TURN_RATE + 1] = oy;
  out[TURN_RATE + 2] = oz;
  out[WHEEL_RATE] = vbx + oy * rwz - oz * rwy;
  out[WHEEL_RATE + 1] = vby + oz * rwx - ox * rwz;
  out[WHEEL_RATE + 2] = vbz + ox * rwy - oy * rwx;
  // s² = |V|² − |p|²  ⇒  s ds = V · dV = −V · v_B.
  out[DAMPER_RATE] = -(vx * vbx + vy * vby + vz * vbz) / slide;
  out[DAMPER_LENGTH] = damperLength;
  return CLOSED;
}
