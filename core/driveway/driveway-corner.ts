import type { StrutCorner, StrutPointKey, Vector3 } from '../linkage/corner.js';
import { DEG } from '../math/angle.js';
import type { AssumableKey, Driveway, DrivewayKey } from './driveway.js';

/** Half of the pivots' distance, and how far behind the arm the tie rod lies, mm. Neither changes anything. */
const HALF_BASE_MM = 130;

/** y and z, mm. */
type Flat = readonly [y: number, z: number];
type Five = Record<'pivot' | 'ball' | 'top' | 'low' | 'wheel', Flat>;

/**
 * The plane strut that was measured, as hard points of a left corner: every point at x = 0, the arm's pivot axis parallel to x,
 * the tie rod a copy of the arm behind it, so that bump steer is exactly zero. With λ the damper's lean, o the ball joint's
 * offset and H the top mount's height over the ball joint B:
 *
 *     pivot   y_B − √(L² − (z_B − z_P)²)         low    foot of B on the damper's axis: B − o (cos λ, sin λ)
 *     top     y_B − H tan λ − o/cos λ            λ from kingpin κ: λ = κ − asin(o cos κ / H), from H tan κ = H tan λ + o/cos λ
 *
 * Toe is 0, and so is camber where it was not measured. The wheel's own lean is left out of the track (some mm).
 */
export function drivewayCorner(driveway: Driveway): StrutCorner {
  const { pivot, ball, top, low, wheel } = five(driveway);
  const at = ([y, z]: Flat, x = 0): Vector3 => [x, y, z];
  return {
    kind: 'strut',
    wheelCentre: at(wheel),
    loadedRadius: wheel[1],
    camber: driveway.camber?.value ?? 0,
    toe: 0,
    lowerArm: { front: at(pivot, HALF_BASE_MM), rear: at(pivot, -HALF_BASE_MM), ball: at(ball) },
    strut: { top: at(top), low: at(low) },
    tieRod: { inner: at(pivot, -HALF_BASE_MM), outer: at(ball, -HALF_BASE_MM) },
  };
}

function numbers({ taken, kingpin }: Driveway) {
  const { armLength, pivotHeight, ballHeight, topHeight, ballOffset, damperLean } = taken;
  const rise = ballHeight.value - pivotHeight.value;
  const length = armLength.value;
  const height = topHeight.value - ballHeight.value;
  const offset = ballOffset.value;
  const inclination = (kingpin?.value ?? 0) * DEG;
  const sine = (offset * Math.cos(inclination)) / height;
  const lean = kingpin ? inclination - Math.asin(sine) : damperLean.value * DEG;
  return {
    rise,
    length,
    reach: Math.sqrt(length * length - rise * rise),
    height,
    offset,
    inclination,
    sine,
    cos: Math.cos(lean),
    sin: Math.sin(lean),
  };
}

function five(driveway: Driveway): Five {
  const { taken } = driveway;
  const { reach, height, offset, cos, sin } = numbers(driveway);
  const wheel = taken.track.value / 2;
  const y = wheel - taken.hubOffset.value;
  const z = taken.ballHeight.value;
  return {
    pivot: [y - reach, taken.pivotHeight.value],
    ball: [y, z],
    top: [y - (height * sin + offset) / cos, taken.topHeight.value],
    low: [y - offset * cos, z - offset * sin],
    wheel: [wheel, taken.wheelCentreHeight.value],
  };
}

/** A point's displacement per mm or degree of a measurement. */
export type PointDerivatives = Partial<Record<StrutPointKey, Vector3>>;

/**
 * Exact derivatives of the points of `drivewayCorner` with respect to each measurement it reads, all others held: mm per mm,
 * mm per degree for an angle. Static camber moves no point.
 */
export function drivewayDerivatives(driveway: Driveway): Partial<Record<DrivewayKey, PointDerivatives>> {
  const { rise, length, reach, height, offset, inclination, sine, cos, sin } = numbers(driveway);
  // Per radian of the lean.
  const topTurn = -(height + offset * sin) / (cos * cos);
  const moved = (by: Partial<Five>, lean = 0): PointDerivatives => {
    const { pivot, ball, wheel } = by;
    const point = ([y, z]: Flat = [0, 0]): Vector3 => [0, y, z];
    const [topY, topZ] = by.top ?? [0, 0];
    const [lowY, lowZ] = by.low ?? [0, 0];
    return {
      'lowerArm.front': point(pivot),
      'lowerArm.rear': point(pivot),
      'tieRod.inner': point(pivot),
      'lowerArm.ball': point(ball),
      'tieRod.outer': point(ball),
      'strut.top': [0, topY + lean * topTurn, topZ],
      'strut.low': [0, lowY + lean * offset * sin, lowZ - lean * offset * cos],
      wheelCentre: point(wheel),
    };
  };
  // How the lean follows when the kingpin inclination is what was read.
  const { kingpin } = driveway;
  const root = height * Math.sqrt(1 - sine * sine);
  const leanOfHeight = kingpin ? sine / root : 0;
  const leanOfOffset = kingpin ? -Math.cos(inclination) / root : 0;
  const aside: Flat = [-1, 0];
  const half: Flat = [0.5, 0];
  const up: Flat = [0, 1];
  const along = sin / cos;
  const derivatives: Record<Exclude<AssumableKey, 'damperLean'>, PointDerivatives> = {
    armLength: moved({ pivot: [-length / reach, 0] }),
    pivotHeight: moved({ pivot: [-rise / reach, 1] }),
    ballHeight: moved({ pivot: [rise / reach, 0], ball: up, top: [along, 0], low: up }, -leanOfHeight),
    wheelCentreHeight: moved({ wheel: up }),
    topHeight: moved({ top: [-along, 1] }, leanOfHeight),
    ballOffset: moved({ top: [-1 / cos, 0], low: [-cos, -sin] }, leanOfOffset),
    hubOffset: moved({ pivot: aside, ball: aside, top: aside, low: aside }),
    track: moved({ pivot: half, ball: half, top: half, low: half, wheel: half }),
  };
  return kingpin
    ? { ...derivatives, kingpin: moved({}, DEG * (1 + (offset * Math.sin(inclination)) / root)) }
    : { ...derivatives, damperLean: moved({}, DEG) };
}
