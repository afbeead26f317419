import { triangularise, upperInverse } from '../math/qr.js';
import { dot, mean } from '../math/sums.js';
import { chebyshev, chebyshevPowers, type Rows, type Within, withinPasses } from './fit-rows.js';

/** Below this part of its length (root mean square), a column says nothing that those before it do not. */
const DEPENDENT = 1e-9;
/** Readings left over by passes and their difference up and down, below which drift and friction's shape are not asked of them. */
const ROOM = 8;

/** What may stand in the model beside the curve. */
export type Extra = 'direction' | 'drift' | 'loop' | 'turn';

/** All degrees in one decomposition: columns are nested, so degree d uses those of `extras` + d. */
export interface Model {
  rows: Rows;
  /** What has the first columns. */
  extras: Extra[];
  /** Those, then Chebyshev's polynomials from the first on. */
  terms: Within[];
  value: Within;
  /** R, and the values' part in it. */
  r: Float64Array[];
  z: Float64Array;
  /** The highest degree that heights and passes can tell. */
  told: number;
}

/**
 * A pass whose only height, or way, is its own adds nothing to the curve: its zero takes it all.
 *
 * @param wanted what is asked of the readings beside the curve, up against down apart, which is whenever both were taken
 */
export function decompose(rows: Rows, degrees: number, wanted: ReadonlySet<Extra>): Model {
  const enough = (length: number) => Math.abs(length) > DEPENDENT * Math.sqrt(rows.n);
  const extras: Extra[] = [];
  const terms: Within[] = [];
  const room = () => rows.n - rows.passes.length - extras.length >= ROOM;
  const add = (extra: Extra, column: Float64Array) => {
    const term = withinPasses(column, rows);
    const tried = [...terms, term].map((one) => one.column.slice());
    triangularise(tried, tried.length);
    if (!enough(tried.at(-1)![terms.length] ?? 0)) return;
    extras.push(extra);
    terms.push(term);
  };
  add('direction', rows.direction);
  const { progress: drift, loop, turn } = rows.taken;
  for (const [extra, column] of Object.entries({ drift, loop, turn }) as [Extra, Float64Array][]) {
    if (wanted.has(extra) && room()) add(extra, column);
  }
  terms.push(
    ...chebyshev(rows.x, degrees)
      .slice(1)
      .map((column) => withinPasses(column, rows)),
  );
  const value = withinPasses(rows.value, rows);
  const r = [...terms, value].map(({ column }) => column.slice());
  const z = r.at(-1)!;
  const most = Math.min(terms.length, rows.n);
  triangularise(r, most);
  let told = 0;
  while (told < most && enough(r[told]![told]!)) told++;
  return { rows, extras, terms, value, r, z, told: told - extras.length };
}

export interface Solution {
  /** One for each term in use. */
  weights: Float64Array;
  /** Columns of R⁻¹: each of the model's orthonormal coordinates in weights. */
  inverse: Float64Array[];
  /** Q, column by column. */
  q: Float64Array[];
  residuals: Float64Array;
  /** In powers of x, of the curve at the mean of all passes. */
  coefficients: Float64Array;
  /** Each term in powers of x, less its mean over the passes, so that the level is apart from the weights. */
  shapes: Float64Array[];
  /** By term and pass: its mean there less that of all passes. */
  away: Float64Array[];
  /** By pass: its zero less the mean of all passes, degrees. */
  offsets: Float64Array;
}

export function solve({ extras, terms, value, r, z }: Model, degree: number): Solution {
  const extra = extras.length;
  const used = extra + degree;
  const inverse = upperInverse(r, used);
  const weights = blend(z, inverse);
  const basis = terms.slice(0, used).map(({ column }) => column);
  const residuals = value.column.slice();
  blend(weights, basis).forEach((part, i) => {
    residuals[i]! -= part;
  });

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
  const away = means.map((middle, j) => terms[j]!.means.map((ofPass) => ofPass - middle));
  const drawn = blend(weights, away);
  return {
    weights,
    inverse,
    q: inverse.map((column) => blend(column, basis)),
    residuals,
    coefficients,
    shapes,
    away,
    offsets: value.means.map((ofPass, p) => ofPass - level - drawn[p]!),
  };
}

/** What a disturbance of the readings does to the curve's coefficients: degrees by reading in, powers of x out. */
export function disturbed({ rows }: Model, { inverse, q, shapes }: Solution, by: Float64Array): Float64Array {
  const { column, means } = withinPasses(by, rows);
  const coordinates = q.map((direction) => dot(direction, column));
  const moved = blend(blend(coordinates, inverse), shapes);
  moved[0]! += mean(means);
  return moved;
}

/** Σ weights[j] · columns[j]. */
export function blend(weights: ArrayLike<number>, columns: readonly Float64Array[]): Float64Array {
  const sum = new Float64Array(columns[0]?.length ?? 0);
  columns.forEach((column, j) => {
    const weight = weights[j]!;
    for (let i = 0; i < sum.length; i++) sum[i]! += weight * column[i]!;
  });
  return sum;
}
