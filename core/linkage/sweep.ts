import type { Linkage } from './linkage.js';
import {
  ARM_ANGLE,
  BALL,
  DAMPER_LENGTH,
  DAMPER_RATE,
  POSE_SIZE,
  RACK,
  SPIN,
  TRAVEL,
  TURN_RATE,
  UPPER,
  WHEEL,
  WHEEL_RATE,
} from './pose.js';
import { findReach, moveTo } from './travel.js';

const DEGREES = 180 / Math.PI;

/**
 * What a corner does over wheel travel, one entry a travel. mm and degrees, signs by ISO 8855 (camber positive top outward,
 * toe positive in, bump positive). A travel out of reach has reached 0 and NaN everywhere.
 */
export interface TravelSweep {
  reached: Uint8Array;
  travel: Float64Array;
  /** Projection atan2(−s_z, s_y) of the outboard spin axis s. */
  camber: Float64Array;
  /** Angle of the wheel plane to the road normal, asin(−s_z): what the tyre sees and a gauge on the hub reads. */
  inclination: Float64Array;
  /** atan2(s_x, s_y). */
  toe: Float64Array;
  /** d(camber)/d(travel), degrees per mm. */
  camberRate: Float64Array;
  /** d(toe)/d(travel), degrees per mm. */
  toeRate: Float64Array;
  /** Of the steering axis, side view, positive top rearward, relative to the body. */
  caster: Float64Array;
  /** Of the steering axis, front view, positive top inboard, relative to the body. */
  kingpin: Float64Array;
  /** At ground height, positive when the steering axis meets the ground inboard of the contact centre. */
  scrubRadius: Float64Array;
  /** At ground height, positive when the steering axis meets the ground ahead of the contact centre. */
  casterTrail: Float64Array;
  /** Contact centre from the car's centreline. */
  halfTrack: Float64Array;
  /** Of contact points tracked as the lowest point of the wheel, in symmetric heave, above the current ground. */
  rollCentreHeight: Float64Array;
  /** In the transverse plane through the wheel centre; ±Infinity while the carrier only translates in it. */
  instantCentreY: Float64Array;
  instantCentreZ: Float64Array;
  /** From the damper's lower point to its upper end. NaN for a wishbone without a damper, as is the ratio. */
  damperLength: Float64Array;
  /** −d(damper length)/d(travel), positive. */
  motionRatio: Float64Array;
}

/** Room for `count` travels. */
export function createTravelSweep(count: number): TravelSweep {
  const numbers = () => new Float64Array(count);
  return {
    reached: new Uint8Array(count),
    travel: numbers(),
    camber: numbers(),
    inclination: numbers(),
    toe: numbers(),
    camberRate: numbers(),
    toeRate: numbers(),
    caster: numbers(),
    kingpin: numbers(),
    scrubRadius: numbers(),
    casterTrail: numbers(),
    halfTrack: numbers(),
    rollCentreHeight: numbers(),
    instantCentreY: numbers(),
    instantCentreZ: numbers(),
    damperLength: numbers(),
    motionRatio: numbers(),
  };
}

export interface SweepOptions {
  /** Rack displacement, mm, positive towards the car's left. */
  rack?: number;
}

/** Moves the wheel to each travel (mm, any order) and reports everything. */
export function sweepTravel(linkage: Linkage, travels: ArrayLike<number>, options?: SweepOptions): TravelSweep {
  const out = createTravelSweep(travels.length);
  sweepTravelInto(out, linkage, travels, options);
  return out;
}

const pose = new Float64Array(POSE_SIZE);

/** As `sweepTravel`, into arrays the caller owns. Keeps nothing; objects are made only for a rack that is not in the middle. */
export function sweepTravelInto(
  out: TravelSweep,
  linkage: Linkage,
  travels: ArrayLike<number>,
  options?: SweepOptions,
): void {
  const rack = options?.rack ?? 0;
  const reach = rack === 0 ? linkage.reach : findReach(linkage, rack);
  pose[RACK] = rack;
  pose[ARM_ANGLE] = linkage.home;
  // The next start lies on the line through this position: one Newton step less.
  let angle = linkage.home;
  let lastTravel = Number.NaN;
  let anglePerMm = 0;
  for (let i = 0; i < travels.length; i++) {
    const travel = travels[i]!;
    pose[ARM_ANGLE] = !Number.isNaN(lastTravel) ? angle + (travel - lastTravel) * anglePerMm : angle;
    pose[TRAVEL] = travel;
    out.travel[i] = travel;
    if (!moveTo(pose, linkage, reach)) {
      leaveOut(out, i);
      continue;
    }
    angle = pose[ARM_ANGLE]!;
    lastTravel = travel;
    anglePerMm = 1 / pose[WHEEL_RATE + 2]!;
    out.reached[i] = 1;
    report(out, i, linkage.loadedRadius);
  }
}

function leaveOut(out: TravelSweep, i: number): void {
  out.reached[i] = 0;
  out.camber[i] = out.inclination[i] = out.toe[i] = out.camberRate[i] = out.toeRate[i] = Number.NaN;
  out.caster[i] = out.kingpin[i] = out.scrubRadius[i] = out.casterTrail[i] = out.halfTrack[i] = Number.NaN;
  out.rollCentreHeight[i] = out.instantCentreY[i] = out.instantCentreZ[i] = Number.NaN;
  out.damperLength[i] = out.motionRatio[i] = Number.NaN;
}

/** Angles and centres of the position in `pose`. */
function report(out: TravelSweep, i: number, radius: number): void {
  const sx = pose[SPIN]!;
  const sy = pose[SPIN + 1]!;
  const sz = pose[SPIN + 2]!;
  const ox = pose[TURN_RATE]!;
  const oy = pose[TURN_RATE + 1]!;
  const oz = pose[TURN_RATE + 2]!;
  const wx = pose[WHEEL]!;
  const wy = pose[WHEEL + 1]!;
  const wz = pose[WHEEL + 2]!;
  const vy = pose[WHEEL_RATE + 1]!;
  const vz = pose[WHEEL_RATE + 2]!;

  // ds = ω × s
  const dsx = oy * sz - oz * sy;
  const dsy = oz * sx - ox * sz;
  const dsz = ox * sy - oy * sx;
  out.camber[i] = Math.atan2(-sz, sy) * DEGREES;
  out.inclination[i] = Math.asin(-sz) * DEGREES;
  out.toe[i] = Math.atan2(sx, sy) * DEGREES;
  out.camberRate[i] = ((sz * dsy - sy * dsz) / (sy * sy + sz * sz) / vz) * DEGREES;
  out.toeRate[i] = ((sy * dsx - sx * dsy) / (sx * sx + sy * sy) / vz) * DEGREES;

  // Lowest point of the wheel: down the steepest direction m of its plane, m = −(z − s_z s)/√(1 − s_z²).
  const flat = Math.sqrt(1 - sz * sz);
  const mx = (sz * sx) / flat;
  const my = (sz * sy) / flat;
  const mz = -flat;
  const contactX = wx + radius * mx;
  const contactY = wy + radius * my;
  const contactZ = wz + radius * mz;
  // dm: with m = s_z s/flat (x, y) and −flat (z), and d(flat) = −s_z ds_z/flat.
  const dFlat = (-sz * dsz) / flat;
  const dmy = (dsz * sy + sz * dsy) / flat - (my * dFlat) / flat;
  const dContactY = vy + radius * dmy;
  const dContactZ = vz - radius * dFlat;
  out.halfTrack[i] = contactY;
  // Right side mirrored: the line from the contact point to its own instant centre cuts the centre plane here.
  out.rollCentreHeight[i] = (contactY * dContactY) / dContactZ;

  const bx = pose[BALL]!;
  const by = pose[BALL + 1]!;
  const bz = pose[BALL + 2]!;
  const ux = pose[UPPER]! - bx;
  const uy = pose[UPPER + 1]! - by;
  const uz = pose[UPPER + 2]! - bz;
  out.caster[i] = Math.atan2(-ux, uz) * DEGREES;
  out.kingpin[i] = Math.atan2(-uy, uz) * DEGREES;
  const down = (contactZ - bz) / uz;
  out.scrubRadius[i] = contactY - (by + down * uy);
  out.casterTrail[i] = bx + down * ux - contactX;

  // No velocity in the transverse plane: v_y = ω_x (z − z_W), v_z = −ω_x (y − y_W).
  out.instantCentreY[i] = wy - vz / ox;
  out.instantCentreZ[i] = wz + vy / ox;

  out.damperLength[i] = pose[DAMPER_LENGTH]!;
  out.motionRatio[i] = -pose[DAMPER_RATE]! / vz;
}
