import type { Linkage } from './linkage.js';
import type { Solver } from './solver.js';

/**
 * Where everything is in one position, and how it moves per radian of the lower arm's angle. One flat array, so that a sweep
 * allocates nothing; offsets below, three numbers a vector, mm and radians. The first two are what a position is asked for.
 */
export const ARM_ANGLE = 0;
/** Rack displacement, mm, positive towards the car's left. */
export const RACK = 1;
export const BALL = 2;
/** Second point of the steering axis: top mount of a strut, upper ball joint of a wishbone. */
export const UPPER = 5;
/** The damper's lower end. */
export const LOW = 8;
export const TIE_OUTER = 11;
export const WHEEL = 14;
/** Outboard unit spin axis. */
export const SPIN = 17;
/** Velocity of the ball joint per radian of arm angle. */
export const BALL_RATE = 20;
/** Angular velocity of the carrier per radian of arm angle. */
export const TURN_RATE = 23;
/** Velocity of the wheel centre per radian of arm angle. */
export const WHEEL_RATE = 26;
/** d(damper length)/d(arm angle), mm per radian; NaN without a damper. */
export const DAMPER_RATE = 29;
export const DAMPER_LENGTH = 30;
/** The carrier's axes in the world: three rows of a rotation matrix, world = R · carrier. */
export const ROTATION = 31;
/** Asked of `moveTo`: wheel travel, mm. It stands here because a number passed as an argument would be put on the heap. */
export const TRAVEL = 40;
export const POSE_SIZE = 41;

/** The position exists. */
export const CLOSED = 0;
/** The ball joint is too near to the top mount for the damper's axis to pass through it. */
export const STRUT_RAN_OUT = 1;
/** The tie rod is too long or too short to join. */
export const TIE_ROD_RAN_OUT = 2;
/** The upper arm does not reach the carrier. */
export const UPPER_ARM_RAN_OUT = 3;
export type Closing = typeof CLOSED | typeof STRUT_RAN_OUT | typeof TIE_ROD_RAN_OUT | typeof UPPER_ARM_RAN_OUT;

/** The steering axis in the carrier (m) and what the carrier's constraint at its upper end asks of the velocities. */
const upper = new Float64Array(13);
const M = 0;
/** Axis that the carrier's upper point cannot move across: the damper's for a strut, the steering axis for a wishbone; in the carrier. */
const GUIDE = 3;
/** Velocity of the upper point on the body's side, per radian. */
const UPPER_RATE = 6;
/** Strut: place of the top mount along the damper's axis. */
const SLIDE = 9;
/** Wishbone: the upper arm's cosine and sine, and its rate per radian of the lower arm. */
const COSINE = 10;
const SINE = 11;
const ARM_RATE = 12;

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

/** Strut: the top mount stays; the damper's axis through it is found in the carrier. */
function placeTopMount(pose: Float64Array, { top, damperFoot: p, damperAxis: d }: Solver): Closing {
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
function placeUpperBall(pose: Float64Array, solver: Solver, branch: 1 | -1): Closing {
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

/** Wishbone: where its damper ends below, and how fast it shortens. */
function placeDamper(pose: Float64Array, solver: Solver): void {
  const { damper } = solver;
  if (!damper) {
    pose[LOW] = pose[LOW + 1] = pose[LOW + 2] = pose[DAMPER_LENGTH] = pose[DAMPER_RATE] = Number.NaN;
    return;
  }
  const { top, base, radius, rise, on } = damper;
  let vx: number;
  let vy: number;
  let vz: number;
  if (on === 'carrier') {
    const x = pose[ROTATION]! * base[0] + pose[ROTATION + 1]! * base[1] + pose[ROTATION + 2]! * base[2];
    const y = pose[ROTATION + 3]! * base[0] + pose[ROTATION + 4]! * base[1] + pose[ROTATION + 5]! * base[2];
    const z = pose[ROTATION + 6]! * base[0] + pose[ROTATION + 7]! * base[1] + pose[ROTATION + 8]! * base[2];
    pose[LOW] = pose[BALL]! + x;
    pose[LOW + 1] = pose[BALL + 1]! + y;
    pose[LOW + 2] = pose[BALL + 2]! + z;
    vx = pose[BALL_RATE]! + pose[TURN_RATE + 1]! * z - pose[TURN_RATE + 2]! * y;
    vy = pose[BALL_RATE + 1]! + pose[TURN_RATE + 2]! * x - pose[TURN_RATE]! * z;
    vz = pose[BALL_RATE + 2]! + pose[TURN_RATE]! * y - pose[TURN_RATE + 1]! * x;
  } else {
    const isLower = on === 'lowerArm';
    const { out, up } = isLower ? solver.lower : solver.upper!;
    const cosine = isLower ? Math.cos(pose[ARM_ANGLE]!) : upper[COSINE]!;
    const sine = isLower ? Math.sin(pose[ARM_ANGLE]!) : upper[SINE]!;
    const rate = isLower ? 1 : upper[ARM_RATE]!;
    const alongOut = radius * cosine - rise * sine;
    const alongUp = radius * sine + rise * cosine;
    pose[LOW] = base[0] + alongOut * out[0] + alongUp * up[0];
    pose[LOW + 1] = base[1] + alongOut * out[1] + alongUp * up[1];
    pose[LOW + 2] = base[2] + alongOut * out[2] + alongUp * up[2];
    vx = rate * (alongOut * up[0] - alongUp * out[0]);
    vy = rate * (alongOut * up[1] - alongUp * out[1]);
    vz = rate * (alongOut * up[2] - alongUp * out[2]);
  }
  const x = top[0] - pose[LOW]!;
  const y = top[1] - pose[LOW + 1]!;
  const z = top[2] - pose[LOW + 2]!;
  const length = Math.sqrt(x * x + y * y + z * z);
  pose[DAMPER_LENGTH] = length;
  pose[DAMPER_RATE] = -(x * vx + y * vy + z * vz) / length;
}
