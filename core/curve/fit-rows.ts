import type { Reading } from '../readings/reading.js';
import { type ReadingOrder, readingOrder, withWays } from './reading-order.js';

/** Readings in an order of their own, so that the order given changes nothing, not even a rounding. */
export interface Rows {
  n: number;
  /** Where each row was in what was given. */
  order: number[];
  /** mm; what unit conversions change in the last digits is taken off again. */
  travel: Float64Array;
  /** Travel laid on −1 to 1. */
  x: Float64Array;
  value: Float64Array;
  /** ½ going up, −½ going down, 0 where nothing is said. All 0 unless both were taken. */
  direction: Float64Array;
  /** Index of each row's pass. */
  passOf: number[];
  passes: { name: string; count: number }[];
  /** Toe of two figures over a base, all of it: read with dials or a tape. */
  isOfPairs: boolean;
  /** In time, as far as that is known. */
  taken: ReadingOrder;
  low: number;
  high: number;
  centre: number;
  scale: number;
  /** The largest value's size. */
  size: number;
  /** Sum of squares about the plain mean. */
  squares: number;
}

/** A millionth of a µm: no decimal that anybody writes is changed, and what was turned into inches and back is itself again. */
const snap = (travel: number) => (Math.abs(travel) < 4e6 ? Math.round(travel * 1e9) / 1e9 + 0 : travel);

const compare = (a: number | string, b: number | string) => (a < b ? -1 : a > b ? 1 : 0);

/** @param isInOrder the readings of each pass stand in the order in which they were taken */
export function arrange(given: readonly Reading[], isInOrder: boolean): Rows {
  const readings = isInOrder ? withWays(given) : given;
  const isBoth = ['up', 'down'].every((way) => readings.some(({ going }) => going === way));
  const list = readings
    .map(({ travel, value, pass = '', going, again = false }, index) => ({
      index,
      travel: snap(travel),
      value,
      pass,
      going,
      again,
      time: isInOrder ? index : undefined,
      direction: isBoth && going ? (going === 'up' ? 0.5 : -0.5) : 0,
    }))
    .sort(
      (a, b) =>
        compare(a.pass, b.pass) ||
        a.travel - b.travel ||
        a.value - b.value ||
        a.direction - b.direction ||
        Number(a.again) - Number(b.again),
    );
  const passes: Rows['passes'] = [];
  const passOf = list.map(({ pass }) => {
    if (passes.at(-1)?.name !== pass) passes.push({ name: pass, count: 0 });
    passes.at(-1)!.count++;
    return passes.length - 1;
  });
  const mean = list.reduce((sum, { value }) => sum + value, 0) / list.length;
  const of = (key: 'travel' | 'value' | 'direction') => Float64Array.from(list, (row) => row[key]);
  const travel = of('travel');
  const low = travel.reduce((a, b) => Math.min(a, b), Infinity);
  const high = travel.reduce((a, b) => Math.max(a, b), -Infinity);
  const centre = (low + high) / 2;
  const scale = (high - low) / 2 || 1;
  return {
    n: list.length,
    order: list.map(({ index }) => index),
    travel,
    x: travel.map((t) => (t - centre) / scale),
    value: of('value'),
    direction: of('direction'),
    passOf,
    passes,
    isOfPairs: given.length > 0 && given.every(({ pair }) => pair !== undefined),
    taken: readingOrder(list, rowsByPass(passOf, passes.length)),
    low,
    high,
    centre,
    scale,
    size: list.reduce((most, { value }) => Math.max(most, Math.abs(value)), 0),
    squares: list.reduce((sum, { value }) => sum + (value - mean) ** 2, 0),
  };
}

function rowsByPass(passOf: readonly number[], count: number): number[][] {
  const rows = Array.from({ length: count }, (): number[] => []);
  passOf.forEach((pass, i) => {
    rows[pass]!.push(i);
  });
  return rows;
}

/** Heights in the pass that has most of them. */
export const mostHeights = ({ passes, passOf, travel }: Rows): number =>
  Math.max(0, ...passes.map((_, p) => new Set(travel.filter((_, i) => passOf[i] === p)).size));

/**
 * Chebyshev's polynomials T₀ … T_degree by their recurrence: nearly orthogonal over readings spread evenly. Of what, say T₀ = 1, T₁ = x
 * and how to multiply by x.
 */
function recur(degree: number, one: Float64Array, x: Float64Array, timesX: (of: Float64Array) => Float64Array) {
  const all = [one, x];
  for (let k = 2; k <= degree; k++) all.push(timesX(all[k - 1]!).map((by, i) => 2 * by - all[k - 2]![i]!));
  return all;
}

/** At each x. */
export const chebyshev = (x: Float64Array, degree: number): Float64Array[] =>
  recur(
    degree,
    x.map(() => 1),
    x,
    (column) => column.map((value, i) => value * x[i]!),
  );

/** As powers of x, low power first, all of one length. */
export function chebyshevPowers(degree: number): Float64Array[] {
  const power = (k: number) => new Float64Array(degree + 1).fill(1, k, k + 1);
  return recur(degree, power(0), power(1), (shape) => shape.map((_, i) => shape[i - 1] ?? 0));
}

/** Coefficients of powers of (t − centre)/scale as those of powers of t. */
export function shifted(coefficients: ArrayLike<number>, centre: number, scale: number): Float64Array {
  const sum = new Float64Array(coefficients.length);
  for (let k = coefficients.length - 1; k >= 0; k--) {
    for (let i = sum.length - 1; i >= 0; i--) sum[i] = ((sum[i - 1] ?? 0) - centre * sum[i]!) / scale;
    sum[0]! += coefficients[k]!;
  }
  return sum;
}

/** A column by what it is in each pass on average, and the rest. */
export interface Within {
  column: Float64Array;
  means: Float64Array;
}

/** What a column is in each pass on average. */
export function passMeans(column: Float64Array, { passOf, passes }: Rows): Float64Array {
  const means = new Float64Array(passes.length);
  column.forEach((value, i) => {
    means[passOf[i]!]! += value / passes[passOf[i]!]!.count;
  });
  return means;
}

/** Least squares of columns less their pass means are those with an offset for each pass (Frisch and Waugh, Econometrica 1, 1933). */
export function withinPasses(column: Float64Array, rows: Rows): Within {
  const means = passMeans(column, rows);
  return { column: column.map((value, i) => value - means[rows.passOf[i]!]!), means };
}
