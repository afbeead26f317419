import { Matrix, solve } from 'ml-matrix';

/*
 * A second computation of the same strut, to check and to time the project's own solver against. Nothing is imported from
 * core/, nothing is shared with it: no arm angle, no closed form, no analytic derivative.
 *
 * Method: the carrier is a free rigid body, moved from its reference position by a rotation vector (exponential map) and a
 * translation. Six equations hold it: the ball joint keeps its distance to both arm pivots (2), the top mount stays on the
 * carrier's damper line (2), the tie rod keeps its length (1), the wheel centre has risen by the travel (1). Newton's rule,
 * Jacobian by central differences, linear system by ml-matrix's `solve` (LU), started from the position at the travel before.
 * Stops when a step is below 1e-12 of the corner's size and of a radian.
 *
 * Source of the constraint set: the strut as usually modelled (arm: revolute to the body, spherical to the carrier; damper:
 * prismatic in the carrier, spherical at the top; see the introduction of Kodati et al. 2015). Angles and signs: ISO 8855.
 */

export type Point = readonly [number, number, number];

/** A left corner as plain JSON, mm and degrees. */
export interface IndependentCorner {
  wheelCentre: Point;
  loadedRadius: number;
  camber: number;
  toe: number;
  lowerArm: { front: Point; rear: Point; ball: Point };
  strut: { top: Point; low: Point };
  tieRod: { inner: Point; outer: Point };
}

export interface IndependentPose {
  /** mm, bump positive. */
  travel: number;
  /** Degrees, NaN everywhere when no position was found. */
  camber: number;
  toe: number;
  inclination: number;
  caster: number;
  kingpin: number;
  ball: Point;
  low: Point;
  tieOuter: Point;
  wheelCentre: Point;
  spin: Point;
  /** Lowest point of the wheel's circle. */
  contact: Point;
  /** From the damper's low point to the top mount, mm. */
  damperLength: number;
  /** Newton steps taken. */
  steps: number;
}

export const TOLERANCE = 1e-12;
const JACOBIAN_STEP = 1e-5;
const MOST_STEPS = 25;
/** A position that lies further from the last one than this (radians, sizes) is another assembly or nonsense. */
const FAR = 0.5;
/** Longest stride between two travels that follow each other in a sweep, mm. */
const STRIDE_MM = 5;

const DEGREES = 180 / Math.PI;
const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const times = (a: Point, k: number): Point => [a[0] * k, a[1] * k, a[2] * k];
const inner = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const outer = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const size = (a: Point): number => Math.hypot(a[0], a[1], a[2]);
const unit = (a: Point): Point => times(a, 1 / size(a));

/** A corner that remembers its position: every `solve` starts from the one before. */
export interface IndependentStrut {
  /** One Newton solution from the present position; false, and the position is kept, when it does not converge. */
  solve(travelMm: number, rackMm?: number): boolean;
  /** Back to the reference position. */
  reset(): void;
  pose(): IndependentPose;
  /** Camber and toe only, without building a pose: for timing. */
  angles(out: Float64Array): void;
}

/**
 * @param pivots where the arm's own pivot centres stand, if elsewhere than in the corner: every length stays that of the corner
 * @param rodLonger by how much the tie rod is longer than in the corner, mm
 */
export function independentStrut(
  corner: IndependentCorner,
  pivots: { front: Point; rear: Point } = corner.lowerArm,
  rodLonger = 0,
): IndependentStrut {
  const { lowerArm, strut, tieRod, wheelCentre } = corner;
  const origin = lowerArm.ball;
  const scale = size(minus(strut.top, origin));
  // Fixed to the carrier, from the ball joint, reference orientation.
  const low = minus(strut.low, origin);
  const steer = minus(tieRod.outer, origin);
  const hub = minus(wheelCentre, origin);
  const spin = unit([Math.tan(corner.toe / DEGREES), 1, -Math.tan(corner.camber / DEGREES)]);
  const axis = unit(minus(strut.top, strut.low));
  const across = unit(outer(axis, Math.abs(axis[0]) < 0.5 ? [1, 0, 0] : [0, 1, 0]));
  const along = outer(axis, across);
  const frontLength = size(minus(origin, lowerArm.front));
  const rearLength = size(minus(origin, lowerArm.rear));
  const rodLength = size(minus(tieRod.outer, tieRod.inner)) + rodLonger;

  /** Rotation vector (radians), translation of the ball joint (in units of `scale`). */
  let x = new Float64Array(6);
  let steps = 0;
  const turn = new Float64Array(9);
  const rotationOf = (v: Float64Array) => {
    const [rx, ry, rz] = [v[0]!, v[1]!, v[2]!];
    const squared = rx * rx + ry * ry + rz * rz;
    const angle = Math.sqrt(squared);
    // sin φ/φ and (1 − cos φ)/φ²; series near zero.
    const a = angle < 1e-4 ? 1 - squared / 6 : Math.sin(angle) / angle;
    const half = Math.sin(angle / 2);
    const b = angle < 1e-4 ? 0.5 - squared / 24 : (2 * half * half) / squared;
    turn[0] = 1 - b * (ry * ry + rz * rz);
    turn[1] = b * rx * ry - a * rz;
    turn[2] = b * rx * rz + a * ry;
    turn[3] = b * rx * ry + a * rz;
    turn[4] = 1 - b * (rx * rx + rz * rz);
    turn[5] = b * ry * rz - a * rx;
    turn[6] = b * rx * rz - a * ry;
    turn[7] = b * ry * rz + a * rx;
    turn[8] = 1 - b * (rx * rx + ry * ry);
  };
  const turned = (v: Point): Point => [
    turn[0]! * v[0] + turn[1]! * v[1] + turn[2]! * v[2],
    turn[3]! * v[0] + turn[4]! * v[1] + turn[5]! * v[2],
    turn[6]! * v[0] + turn[7]! * v[1] + turn[8]! * v[2],
  ];
  const away = (px: number, py: number, pz: number, q: Point) =>
    Math.sqrt((px - q[0]) ** 2 + (py - q[1]) ** 2 + (pz - q[2]) ** 2);

  /** The six equations, in units of `scale`. */
  const residuals = (out: Float64Array, v: Float64Array, travelMm: number, rackMm: number) => {
    rotationOf(v);
    const bx = origin[0] + v[3]! * scale;
    const by = origin[1] + v[4]! * scale;
    const bz = origin[2] + v[5]! * scale;
    const s = turned(low);
    const e = turned(across);
    const f = turned(along);
    const tx = strut.top[0] - bx - s[0];
    const ty = strut.top[1] - by - s[1];
    const tz = strut.top[2] - bz - s[2];
    const o = turned(steer);
    const h = turned(hub);
    out[0] = (away(bx, by, bz, pivots.front) - frontLength) / scale;
    out[1] = (away(bx, by, bz, pivots.rear) - rearLength) / scale;
    out[2] = (tx * e[0] + ty * e[1] + tz * e[2]) / scale;
    out[3] = (tx * f[0] + ty * f[1] + tz * f[2]) / scale;
    out[4] = (away(bx + o[0], by + o[1] - rackMm, bz + o[2], tieRod.inner) - rodLength) / scale;
    out[5] = (bz + h[2] - wheelCentre[2] - travelMm) / scale;
  };

  const here = new Float64Array(6);
  const ahead = new Float64Array(6);
  const behind = new Float64Array(6);
  const jacobian = new Matrix(6, 6);
  const wanted = new Matrix(6, 1);

  return {
    solve(travelMm, rackMm = 0) {
      const v = x.slice();
      for (steps = 1; steps <= MOST_STEPS; steps++) {
        residuals(here, v, travelMm, rackMm);
        for (let column = 0; column < 6; column++) {
          const kept = v[column]!;
          v[column] = kept + JACOBIAN_STEP;
          residuals(ahead, v, travelMm, rackMm);
          v[column] = kept - JACOBIAN_STEP;
          residuals(behind, v, travelMm, rackMm);
          v[column] = kept;
          for (let row = 0; row < 6; row++) {
            jacobian.set(row, column, (ahead[row]! - behind[row]!) / (2 * JACOBIAN_STEP));
          }
        }
        for (let row = 0; row < 6; row++) wanted.set(row, 0, -here[row]!);
        let step: Matrix;
        try {
          step = solve(jacobian, wanted);
        } catch {
          return false; // singular: at the very end of reach
        }
        let largest = 0;
        for (let i = 0; i < 6; i++) {
          const change = step.get(i, 0);
          v[i] = v[i]! + change;
          largest = Math.max(largest, Math.abs(change));
        }
        if (!(largest < 10)) return false;
        if (largest < TOLERANCE) {
          for (let i = 0; i < 6; i++) if (Math.abs(v[i]! - x[i]!) > FAR) return false;
          x = v;
          return true;
        }
      }
      return false;
    },
    reset() {
      x = new Float64Array(6);
    },
    angles(out) {
      rotationOf(x);
      const s = turned(spin);
      out[0] = Math.atan2(-s[2], s[1]) * DEGREES;
      out[1] = Math.atan2(s[0], s[1]) * DEGREES;
    },
    pose() {
      rotationOf(x);
      const ball: Point = [origin[0] + x[3]! * scale, origin[1] + x[4]! * scale, origin[2] + x[5]! * scale];
      const place = (v: Point): Point => minus(turned(v), times(ball, -1));
      const s = turned(spin);
      const hubNow = place(hub);
      // The lowest point of a circle about the hub, across the spin axis: straight down, less its part along the axis.
      const down = unit(minus([0, 0, -1], times(s, -s[2])));
      const up = minus(strut.top, ball);
      const lowNow = place(low);
      return {
        travel: hubNow[2] - wheelCentre[2],
        camber: Math.atan2(-s[2], s[1]) * DEGREES,
        toe: Math.atan2(s[0], s[1]) * DEGREES,
        inclination: 90 - Math.acos(-s[2]) * DEGREES,
        caster: Math.atan2(-up[0], up[2]) * DEGREES,
        kingpin: Math.atan2(-up[1], up[2]) * DEGREES,
        ball,
        low: lowNow,
        tieOuter: place(steer),
        wheelCentre: hubNow,
        spin: s,
        contact: minus(hubNow, times(down, -corner.loadedRadius)),
        damperLength: inner(minus(strut.top, lowNow), turned(axis)),
        steps,
      };
    },
  };
}

/**
 * Moves the wheel to each travel in the order given, from the reference position on, in strides of at most 5 mm, and reports
 * where everything is. NaN from `camber` and `toe` where no position was found.
 */
export function independentStrutSweep(
  corner: IndependentCorner,
  travels: ArrayLike<number>,
  options: { rack?: number } = {},
): IndependentPose[] {
  const strut = independentStrut(corner);
  const rack = options.rack ?? 0;
  for (let i = 1; i <= 20 && rack !== 0; i++) strut.solve(0, (rack * i) / 20);
  let at = 0;
  const walk = (to: number) => {
    const strides = Math.max(1, Math.ceil(Math.abs(to - at) / STRIDE_MM));
    const from = at;
    for (let i = 1; i <= strides; i++) {
      const next = i === strides ? to : from + ((to - from) * i) / strides;
      if (!strut.solve(next, rack)) return false;
      at = next;
    }
    return true;
  };
  return Array.from(travels, (travel) => {
    if (walk(travel)) return { ...strut.pose(), travel };
    return { ...strut.pose(), travel, camber: Number.NaN, toe: Number.NaN, inclination: Number.NaN };
  });
}

/** Camber at a drop, less static camber, degrees. Drop in mm, positive lowers the car. */
export function independentCamberChange(corner: IndependentCorner, dropMm: number): number {
  const [before, after] = independentStrutSweep(corner, [0, dropMm]);
  return after!.camber - before!.camber;
}

/** d(camber)/d(travel), degrees per mm, by a central difference. */
export function independentCamberRate(corner: IndependentCorner, travelMm: number, stepMm = 0.05): number {
  const [below, above] = independentStrutSweep(corner, [travelMm - stepMm, travelMm + stepMm]);
  return (above!.camber - below!.camber) / (2 * stepMm);
}

/**
 * The travel at which camber stops falling and turns back, by bisection on the central difference, and the camber change from
 * the reference position to there. Undefined when it does not happen between the two travels.
 */
export function independentReversal(
  corner: IndependentCorner,
  fromMm = 0,
  toMm = 120,
): { travel: number; change: number } | undefined {
  let low = fromMm;
  let high = Number.NaN;
  if (!(independentCamberRate(corner, low) < 0)) return undefined;
  for (let travel = fromMm + STRIDE_MM; travel <= toMm; travel += STRIDE_MM) {
    if (independentCamberRate(corner, travel) >= 0) {
      high = travel;
      break;
    }
    low = travel;
  }
  if (Number.isNaN(high)) return undefined;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (independentCamberRate(corner, middle) < 0) low = middle;
    else high = middle;
  }
  const travel = (low + high) / 2;
  return { travel, change: independentCamberChange(corner, travel) };
}
