import { Matrix, solve } from 'ml-matrix';
import { type IndependentCorner, independentStrutSweep, type Point } from './independent-strut.js';

/*
 * A second computation of a strut with parts on it, and of a lowered ball joint's break-even drop. Nothing is imported from core/.
 *
 * Method: with a point or direction of the carrier, a point of the body or the arm's reach changed and every other length as it was, the
 * corner is put together anew at the same height of its wheel centre: seven equations (the arm's two lengths, the top mount on the damper's line twice, the tie rod, the height, static toe)
 * in a rotation vector, a translation and the tie rod's length, by Newton's rule with a Jacobian by central differences and ml-matrix's
 * `solve`. Where the points then lie is a corner like any other, swept by independent-strut.ts. The break-even by bisection.
 */

export interface LoweredJoint {
  /** By how much the ball's centre is lower in the carrier, mm. */
  mm: number;
  /** Whether the tie rod's outer end goes down with it. */
  isTieRodCorrected: boolean;
}

const DEGREES = 180 / Math.PI;
const STEP = 1e-6;
const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const scaled = (a: Point, by: number): Point => [a[0] * by, a[1] * by, a[2] * by];
const plus = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const cross = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dot = (a: Point, b: Point) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const away = (a: Point, b: Point) => Math.hypot(...minus(a, b));
const unit = (a: Point): Point => {
  const size = Math.hypot(...a);
  return [a[0] / size, a[1] / size, a[2] / size];
};

/** Rodrigues' formula. */
function turned(v: Point, about: Point): Point {
  const angle = Math.hypot(...about);
  if (angle < 1e-12) return plus(v, cross(about, v));
  const axis = unit(about);
  const across = cross(axis, v);
  const along = dot(axis, v) * (1 - Math.cos(angle));
  return [0, 1, 2].map(
    (i) => v[i]! * Math.cos(angle) + across[i]! * Math.sin(angle) + axis[i]! * along,
  ) as unknown as Point;
}

/** What a part changes, mm and degrees: of the carrier, of the body, and the arm's reach away from its pivot axis. */
export interface IndependentChange {
  ballBy?: Point;
  outerBy?: Point;
  topBy?: Point;
  pivotsBy?: { front: Point; rear: Point };
  armLongerBy?: number;
  /** Degrees added to the spin axis's camber, top outward positive. */
  spinCamberBy?: number;
  /** Degrees by which the knuckle is turned on its damper, top of the wheel inboard, about a bolt: a point from the wheel centre. */
  knuckleTurnedBy?: { degrees: number; bolt: Point };
  /** Toe-in that is set by the rod, degrees; without it the corner's own. `kept`: the rod keeps its length. */
  toe?: number | 'kept';
}

const NOWHERE: Point = [0, 0, 0];

/** The corner with something changed, toe set again by the tie rod, its wheel centre as high as before. mm and degrees. */
export function withChange(corner: IndependentCorner, change: IndependentChange): IndependentCorner {
  const { lowerArm, strut, tieRod, wheelCentre } = corner;
  const { ballBy = NOWHERE, outerBy = NOWHERE, topBy = NOWHERE, pivotsBy, armLongerBy = 0 } = change;
  const { spinCamberBy = 0, knuckleTurnedBy, toe = corner.toe } = change;
  // Of the carrier, from the ball's new centre.
  const ball = plus(lowerArm.ball, ballBy);
  const hub = minus(wheelCentre, ball);
  const steer = minus(plus(tieRod.outer, outerBy), ball);
  const spin = unit([Math.tan(corner.toe / DEGREES), 1, -Math.tan((corner.camber + spinCamberBy) / DEGREES)]);
  // The knuckle turned on the damper is the damper's line turned the other way in the knuckle, about the x axis made square to it.
  const line = unit(minus(strut.top, strut.low));
  const square = unit(minus([1, 0, 0], scaled(line, line[0])));
  const back = scaled(square, -(knuckleTurnedBy?.degrees ?? 0) / DEGREES);
  const bolt = plus(wheelCentre, knuckleTurnedBy?.bolt ?? NOWHERE);
  const low = minus(plus(bolt, turned(minus(strut.low, bolt), back)), ball);
  const axis = turned(line, back);
  const across = unit(cross(axis, [1, 0, 0]));
  const along = cross(axis, across);
  const rod = away(tieRod.outer, tieRod.inner);
  // Of the body.
  const top = plus(strut.top, topBy);
  const front = plus(lowerArm.front, pivotsBy?.front ?? NOWHERE);
  const rear = plus(lowerArm.rear, pivotsBy?.rear ?? NOWHERE);
  // Of the arm: where its ball stands from the pivots it was made for.
  const pivots = unit(minus(lowerArm.front, lowerArm.rear));
  const toBall = minus(lowerArm.ball, lowerArm.rear);
  const out = unit(minus(toBall, scaled(pivots, dot(toBall, pivots))));
  const end = plus(lowerArm.ball, scaled(out, armLongerBy));
  const [frontLength, rearLength] = [away(end, lowerArm.front), away(end, lowerArm.rear)];

  const placed = (x: readonly number[]) => {
    const about: Point = [x[0]!, x[1]!, x[2]!];
    const at: Point = plus(lowerArm.ball, [x[3]!, x[4]!, x[5]!]);
    const put = (v: Point) => plus(at, turned(v, about));
    return { about, at, low: put(low), hub: put(hub), outer: put(steer), spin: turned(spin, about) };
  };
  const residuals = (x: readonly number[]): number[] => {
    const { about, at, low: lowAt, hub: hubAt, outer, spin: spun } = placed(x);
    const toTop = minus(top, lowAt);
    return [
      away(at, front) - frontLength,
      away(at, rear) - rearLength,
      dot(toTop, turned(across, about)),
      dot(toTop, turned(along, about)),
      away(outer, tieRod.inner) - rod - x[6]!,
      hubAt[2] - wheelCentre[2],
      // As a length of the others' order.
      toe === 'kept' ? x[6]! : 1000 * (Math.atan2(spun[0], spun[1]) - toe / DEGREES),
    ];
  };
  let x: number[] = [0, 0, 0, 0, 0, 0, 0];
  for (let i = 0; i < 30; i++) {
    const here = residuals(x);
    const jacobian = new Matrix(7, 7);
    for (let column = 0; column < 7; column++) {
      const [ahead, behind] = [STEP, -STEP].map((by) => residuals(x.map((v, j) => (j === column ? v + by : v))));
      for (let row = 0; row < 7; row++) jacobian.set(row, column, (ahead![row]! - behind![row]!) / (2 * STEP));
    }
    const step = solve(jacobian, Matrix.columnVector(here));
    x = x.map((v, j) => v - step.get(j, 0));
    if (step.to1DArray().every((by) => Math.abs(by) < 1e-9)) break;
  }
  const found = placed(x);
  return {
    ...corner,
    wheelCentre: found.hub,
    camber: Math.atan2(-found.spin[2], found.spin[1]) * DEGREES,
    toe: Math.atan2(found.spin[0], found.spin[1]) * DEGREES,
    lowerArm: { front, rear, ball: found.at },
    strut: { top, low: found.low },
    tieRod: { ...tieRod, outer: found.outer },
  };
}

/** The corner with the joint in it, toe set again by the tie rod, its wheel centre as high as before. mm and degrees. */
export function withLoweredJoint(corner: IndependentCorner, { mm, isTieRodCorrected }: LoweredJoint): IndependentCorner {
  const down: Point = [0, 0, -mm];
  return withChange(corner, { ballBy: down, ...(isTieRodCorrected && { outerBy: down }) });
}

/**
 * The first drop, mm, from which the joint adds no more camber over a bump than the standard one from stock height; NaN where it
 * is not between 0 and `most`.
 */
export function independentJointBreakEven(
  corner: IndependentCorner,
  joint: LoweredJoint,
  bumpMm: number,
  mostMm = 30,
): number {
  const added = (of: IndependentCorner, drop: number) => {
    const [from, to] = independentStrutSweep(of, [drop, drop + bumpMm]);
    return to!.camber - from!.camber;
  };
  const lowered = withLoweredJoint(corner, joint);
  const wanted = added(corner, 0);
  const difference = (drop: number) => added(lowered, drop) - wanted;
  let [low, high] = [0, mostMm];
  if (!(difference(low) < 0 && difference(high) > 0)) return Number.NaN;
  while (high - low > 1e-7) {
    const middle = (low + high) / 2;
    if (difference(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
