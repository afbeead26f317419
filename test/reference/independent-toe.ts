import { Matrix, solve } from 'ml-matrix';
import { type IndependentCorner, independentStrutSweep, type Point } from './independent-strut.js';

/*
 * A second computation of a strut's bump steer with one end of the tie rod raised, and of the amount that flattens it. Nothing is
 * imported from core/.
 *
 * Method: the strut is moved to ride height by independent-strut.ts, and where its points then lie is a corner like any other. There
 * the knuckle's upward direction is told by how three of its points have turned. Raised ends and a toe to be set are put on by a free
 * rigid body held by six equations (the arm's two lengths, the top mount on the damper's line twice, the height, toe), Newton's rule
 * with a Jacobian by central differences and ml-matrix's `solve`; the rod is as long as its ends then are apart. The corner is swept by
 * independent-strut.ts, the peak-to-peak change taken of samples, the best amount found by thirds.
 */

const DEGREES = 180 / Math.PI;
const STEP = 1e-6;
const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const plus = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const by = (a: Point, k: number): Point => [a[0] * k, a[1] * k, a[2] * k];
const inner = (a: Point, b: Point) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const outer = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const size = (a: Point) => Math.hypot(a[0], a[1], a[2]);
const unit = (a: Point) => by(a, 1 / size(a));

export interface RaisedEnds {
  /** Travel of the ride height, mm. */
  at: number;
  /** Set there straight ahead, degrees; as it stands where left out. */
  toe?: number;
  /** Which end goes up, and by how much, mm: the outer one in the knuckle, the inner one in the body. */
  end: 'outer' | 'inner';
  amount: number;
  /** The corner before a part turned its knuckle: upward is told by it. */
  asBuilt?: IndependentCorner;
}

/** Three directions of a knuckle, from its damper, steering arm and wheel centre, which no ball joint moves. */
function triad(low: Point, tieOuter: Point, wheelCentre: Point): [Point, Point, Point] {
  const first = unit(minus(tieOuter, low));
  const third = unit(outer(first, minus(wheelCentre, low)));
  return [first, outer(third, first), third];
}

/**
 * The corner at ride height, the raised end and the toe set on it: its travel 0 is the ride height. mm and degrees.
 */
export function atRideHeight(corner: IndependentCorner, ends: RaisedEnds): IndependentCorner {
  const { at, toe, end, amount, asBuilt = corner } = ends;
  const [pose] = independentStrutSweep(corner, [at]);
  const { ball, low, tieOuter, wheelCentre, spin } = pose!;
  const was = triad(asBuilt.strut.low, asBuilt.tieRod.outer, asBuilt.wheelCentre);
  const is = triad(low, tieOuter, wheelCentre);
  // Upward as built, in the knuckle as it stands now.
  const up = was.reduce<Point>((sum, axis, i) => plus(sum, by(is[i]!, axis[2])), [0, 0, 0]);
  const raised = end === 'outer' ? plus(tieOuter, by(up, amount)) : tieOuter;
  const standing: IndependentCorner = {
    ...corner,
    wheelCentre,
    camber: pose!.camber,
    toe: pose!.toe,
    lowerArm: { ...corner.lowerArm, ball },
    strut: { ...corner.strut, low },
    tieRod: {
      inner: end === 'inner' ? plus(corner.tieRod.inner, [0, 0, amount]) : corner.tieRod.inner,
      outer: raised,
    },
  };
  return toe === undefined ? standing : turnedTo(standing, spin, toe);
}

/** Rodrigues' formula. */
function turned(v: Point, about: Point): Point {
  const angle = size(about);
  if (angle < 1e-12) return plus(v, outer(about, v));
  const axis = by(about, 1 / angle);
  return plus(
    plus(by(v, Math.cos(angle)), by(outer(axis, v), Math.sin(angle))),
    by(axis, inner(axis, v) * (1 - Math.cos(angle))),
  );
}

/** The corner turned to another toe by its rod, the wheel centre as high. */
function turnedTo(corner: IndependentCorner, spin: Point, toe: number): IndependentCorner {
  const { lowerArm, strut, tieRod, wheelCentre } = corner;
  const from = (point: Point) => minus(point, lowerArm.ball);
  const along = unit(minus(strut.top, strut.low));
  const across = unit(outer(along, [1, 0, 0]));
  const third = outer(along, across);
  const placed = (x: readonly number[]) => {
    const about: Point = [x[0]!, x[1]!, x[2]!];
    const ball = plus(lowerArm.ball, [x[3]!, x[4]!, x[5]!]);
    const put = (point: Point) => plus(ball, turned(from(point), about));
    return { about, ball, low: put(strut.low), outer: put(tieRod.outer), hub: put(wheelCentre), spin: turned(spin, about) };
  };
  const residuals = (x: readonly number[]) => {
    const { about, ball, low, hub, spin: spun } = placed(x);
    const toTop = minus(strut.top, low);
    return [
      size(minus(ball, lowerArm.front)) - size(minus(lowerArm.ball, lowerArm.front)),
      size(minus(ball, lowerArm.rear)) - size(minus(lowerArm.ball, lowerArm.rear)),
      inner(toTop, turned(across, about)),
      inner(toTop, turned(third, about)),
      hub[2] - wheelCentre[2],
      // As a length of the others' order.
      1000 * (Math.atan2(spun[0], spun[1]) - toe / DEGREES),
    ];
  };
  let x = [0, 0, 0, 0, 0, 0];
  for (let i = 0; i < 30; i++) {
    const jacobian = new Matrix(6, 6);
    for (let column = 0; column < 6; column++) {
      const [ahead, behind] = [STEP, -STEP].map((off) => residuals(x.map((v, j) => (j === column ? v + off : v))));
      for (let row = 0; row < 6; row++) jacobian.set(row, column, (ahead![row]! - behind![row]!) / (2 * STEP));
    }
    const step = solve(jacobian, Matrix.columnVector(residuals(x)));
    x = x.map((v, j) => v - step.get(j, 0));
    if (step.to1DArray().every((off) => Math.abs(off) < 1e-9)) break;
  }
  const found = placed(x);
  return {
    ...corner,
    wheelCentre: found.hub,
    camber: Math.atan2(-found.spin[2], found.spin[1]) * DEGREES,
    toe: Math.atan2(found.spin[0], found.spin[1]) * DEGREES,
    lowerArm: { ...lowerArm, ball: found.ball },
    strut: { ...strut, low: found.low },
    tieRod: { ...tieRod, outer: found.outer },
  };
}

/** Toe over travels from ride height, degrees. */
export function independentToe(
  corner: IndependentCorner,
  ends: RaisedEnds,
  travels: ArrayLike<number>,
  rack = 0,
): number[] {
  return independentStrutSweep(atRideHeight(corner, ends), travels, { rack }).map(({ toe }) => toe);
}

/** Of so many samples of the window. */
export function independentSpread(
  corner: IndependentCorner,
  ends: RaisedEnds,
  [low, high]: readonly [number, number],
  rack = 0,
  count = 65,
): number {
  const travels = Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));
  const toe = independentToe(corner, ends, travels, rack);
  return Math.max(...toe) - Math.min(...toe);
}

/** Toe rate at ride height by a central difference, degrees per mm. */
export function independentToeRate(corner: IndependentCorner, ends: RaisedEnds, rack = 0): number {
  const [below, above] = independentToe(corner, ends, [-0.1, 0.1], rack);
  return (above! - below!) / 0.2;
}

/** The amount between two at which the toe rate at ride height is zero, by bisection. */
export function independentFlatAmount(
  corner: IndependentCorner,
  ends: Omit<RaisedEnds, 'amount'>,
  [from, to]: readonly [number, number],
  rack = 0,
): number {
  const rate = (amount: number) => independentToeRate(corner, { ...ends, amount }, rack);
  let [low, high] = [from, to];
  const sign = Math.sign(rate(low));
  if (sign === Math.sign(rate(high))) return Number.NaN;
  while (high - low > 1e-5) {
    const middle = (low + high) / 2;
    if (Math.sign(rate(middle)) === sign) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The amount between two with the least peak-to-peak change, and that change: a grid of 1 mm, then by thirds. */
export function independentBestAmount(
  corner: IndependentCorner,
  ends: Omit<RaisedEnds, 'amount'>,
  window: readonly [number, number],
  [from, to]: readonly [number, number],
  rack = 0,
): { amount: number; spread: number } {
  const spread = (amount: number, count: number) => independentSpread(corner, { ...ends, amount }, window, rack, count);
  let best = from;
  let least = Number.POSITIVE_INFINITY;
  for (let amount = from; amount <= to; amount++) {
    const here = spread(amount, 17);
    if (here < least) [best, least] = [amount, here];
  }
  let [low, high] = [Math.max(from, best - 1), Math.min(to, best + 1)];
  while (high - low > 1e-3) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (spread(a, 33) < spread(b, 33)) high = b;
    else low = a;
  }
  const amount = (low + high) / 2;
  return { amount, spread: spread(amount, 65) };
}
