import { triangularise, upperInverse } from '../math/qr.js';
import type { PassOffset } from './curve-fit.js';
import { chebyshev, chebyshevPowers, type Rows, type Within, withinPasses } from './fit-rows.js';

/** Below this part of its length (root mean square), a column says nothing that those before it do not. */
const DEPENDENT = 1e-9;

/** All degrees in one decomposition: columns are nested, so degree d uses the first `extra` + d of them. */
export interface Model {
  rows: Rows;
  /** 1 where up and down can be told apart, and have the first column. */
  extra: number;
  /** Up/down if told, then Chebyshev's polynomials from the first on. */
  terms: Within[];
  value: Within;
  /** R, and the values' part in it. */
  r: Float64Array[];
  z: Float64Array;
  /** The highest degree that heights and passes can tell. */
  told: number;
}

/** A pass whose only height, or way, is its own adds nothing to the curve: its zero takes it all. */
export function decompose(rows: Rows, degrees: number): Model {
  const enough = (length: number) => Math.abs(length) > DEPENDENT * Math.sqrt(rows.n);
  const direction = withinPasses(rows.direction, rows);
  const extra = enough(Math.hypot(...direction.column)) ? 1 : 0;
  const terms = chebyshev(rows.x, degrees)
    .slice(1)
    .map((column) => withinPasses(column, rows));
  if (extra) terms.unshift(direction);
  const value = withinPasses(rows.value, rows);
  const r = [...terms, value].map(({ column }) => column.slice());
  const z = r.at(-1)!;
  const most = Math.min(terms.length, rows.n);
  triangularise(r, most);
  let told = 0;
  while (told + extra < most && enough(r[told + extra]![told + extra]!)) told++;
  return { rows, extra, terms, value, r, z, told };
}

export interface Solution {
  /** One for each term in use. */
  weights: Float64Array;
  /** Q, column by column. */
  q: Float64Array[];
  residuals: Float64Array;
  /** In powers of x, of the curve at the mean of all passes. */
  coefficients: Float64Array;
  /** Independent parts of their doubt. */
  parts: Float64Array[];
  upLessDown: { value: number; standardError: number };
  offsets: PassOffset[];
}

/** @param residualSd standard deviation of one reading, degrees */
export function solve({ rows, extra, terms, value, r, z }: Model, degree: number, residualSd: number): Solution {
  const used = extra + degree;
  const { passes } = rows;
  const inverse = upperInverse(r, used);
  const weights = blend(z, inverse);
  /** Independent parts of the weights' doubt. */
  const doubt = inverse.map((column) => column.map((part) => part * residualSd));
  const basis = terms.slice(0, used).map(({ column }) => column);
  const residuals = value.column.slice();
  blend(weights, basis).forEach((part, i) => {
    residuals[i]! -= part;
  });

  // Each term less its mean over the passes, so that the level is independent of the weights.
  const means = terms.slice(0, used).map((term) => mean(term.means));
  const powers = chebyshevPowers(degree);
  const shapes = means.map((middle, j) => {
    const shape = j < extra ? new Float64Array(degree + 1) : powers[j - extra + 1]!.slice();
    shape[0]! -= middle;
    return shape;
  });
  const coefficients = blend(weights, shapes);
  const level = mean(value.means);
  coefficients[0]! += level;
  /** Variance of the mean of all passes' zeros. */
  const shared = passes.reduce((sum, { count }) => sum + residualSd ** 2 / count, 0) / passes.length ** 2;
  const levelPart = new Float64Array(degree + 1).fill(Math.sqrt(shared), 0, 1);

  const away = means.map((middle, j) => terms[j]!.means.map((ofPass) => ofPass - middle));
  const drawn = blend(weights, away);
  const spread = doubt.map((column) => blend(column, away));
  const offsets = passes.map(({ name, count }, p) => {
    const own = ((1 - 2 / passes.length) * residualSd ** 2) / count;
    const variance = spread.reduce((sum, part) => sum + part[p]! ** 2, own + shared);
    return {
      pass: name,
      count,
      offset: value.means[p]! - level - drawn[p]!,
      // Rounding may carry that of a single pass below 0.
      standardError: Math.sqrt(Math.max(0, variance)),
    };
  });
  return {
    weights,
    q: inverse.map((column) => blend(column, basis)),
    residuals,
    coefficients,
    parts: [levelPart, ...doubt.map((column) => blend(column, shapes))],
    upLessDown: { value: weights[0]!, standardError: Math.hypot(...doubt.map((column) => column[0]!)) },
    offsets,
  };
}

/** Σ weights[j] · columns[j]. */
function blend(weights: ArrayLike<number>, columns: readonly Float64Array[]): Float64Array {
  const sum = new Float64Array(columns[0]!.length);
  columns.forEach((column, j) => {
    const weight = weights[j]!;
    for (let i = 0; i < sum.length; i++) sum[i]! += weight * column[i]!;
  });
  return sum;
}

function mean(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
