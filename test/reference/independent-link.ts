import type { Point } from './independent-strut.js';

/*
 * Where a point of a rigid link is when its ends have moved, to check the project's own against. Nothing is imported from core/,
 * and no formula is shared: no axis, no angle, no rotation matrix.
 *
 * The arm is a triangle of two pivots and a ball joint: a point of it keeps its coordinates along two of its sides and across
 * its plane. The rod is a line: a point off it is carried by the least turn, as two mirrors make it (a turn is two reflections:
 * H. S. M. Coxeter, Introduction to Geometry, 1961, section 7.1, from memory).
 */

const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const plus = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const times = (a: Point, k: number): Point => [a[0] * k, a[1] * k, a[2] * k];
const inner = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const outer = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Point): Point => times(a, 1 / Math.hypot(...a));

/** Coordinates of a point in the skew frame of a triangle: along two sides from its first corner, and across, mm. */
function inTriangle([a, b, c]: readonly [Point, Point, Point], point: Point): [number, number, number] {
  const [p, q] = [minus(b, a), minus(c, a)];
  const out = minus(point, a);
  // Two equations for the two sides.
  const [pp, pq, qq, op, oq] = [inner(p, p), inner(p, q), inner(q, q), inner(out, p), inner(out, q)];
  const whole = pp * qq - pq * pq;
  return [(op * qq - oq * pq) / whole, (oq * pp - op * pq) / whole, inner(out, unit(outer(p, q)))];
}

/** @param home where the triangle's corners are when the point is at `point` @param now where they have gone */
export function onTriangle(
  home: readonly [Point, Point, Point],
  now: readonly [Point, Point, Point],
  point: Point,
): Point {
  const [first, second, across] = inTriangle(home, point);
  const [a, b, c] = now;
  const [p, q] = [minus(b, a), minus(c, a)];
  return plus(a, plus(plus(times(p, first), times(q, second)), times(unit(outer(p, q)), across)));
}

/** Mirrored in the plane through the origin square to a unit vector. */
const mirrored = (v: Point, square: Point): Point => minus(v, times(square, 2 * inner(v, square)));

/** @param home the rod's inner and outer end when the point is at `point` @param now where they have gone */
export function onRod(home: readonly [Point, Point], now: readonly [Point, Point], point: Point): Point {
  const from = unit(minus(home[1], home[0]));
  const to = unit(minus(now[1], now[0]));
  const half = unit(plus(from, to));
  return plus(now[0], mirrored(mirrored(minus(point, home[0]), from), half));
}
