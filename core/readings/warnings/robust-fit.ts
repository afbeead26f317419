import type { Reading } from '../reading.js';
import { LIMITS } from './data-warning.js';

/** A reading as it is judged: `group` shares one zero. */
export interface Row {
  travel: number;
  value: number;
  group: number;
  /** +½ going up, −½ going down; 0 where that cannot be told from the zeros. */
  direction: number;
}

/** What a set of rows makes of any row. */
export interface WeightedFit {
  /** Standard deviation of the rows about it, degrees. NaN without degrees of freedom. */
  sd: number;
  dof: number;
  /** Row less model, degrees. */
  residual(row: Row): number;
  /** Variance of the model at the row, in squares of `sd`. Infinity where its group has no row. */
  leverage(row: Row): number;
  /** Zero of a group, degrees. */
  offset(group: number): number;
}

/** How the model is written: powers of (travel − centre)/half. */
export interface Shape {
  degree: number;
  centre: number;
  half: number;
  hasDirection: boolean;
  /** Less scatter than this is not believed, degrees. */
  least: number;
}

export const passOf = ({ pass = '' }: Reading): string => pass;
export const passNames = (readings: readonly Reading[]): string[] => [...new Set(readings.map(passOf))];

/** Readings by pass; up and down where some pass has both. */
export function rowsOf(readings: readonly Reading[]): Row[] {
  const names = passNames(readings);
  const isBoth = names.some((name) => {
    const ways = new Set(readings.filter((reading) => passOf(reading) === name).map(({ going }) => going));
    return ways.has('up') && ways.has('down');
  });
  const half = { up: 0.5, down: -0.5 };
  return readings.map((reading) => ({
    travel: reading.travel,
    value: reading.value,
    group: names.indexOf(passOf(reading)),
    direction: isBoth && reading.going ? half[reading.going] : 0,
  }));
}

/** By rank, without a mean between two: enough for limits. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN;
}
export const median = (values: readonly number[]): number => quantile(values, 0.5);

/** Enough powers to follow a linkage (a quartic does over 120 mm), no more than half the heights allow; one row far out does not set the scale. */
export function shapeOf(rows: readonly Row[], most = 4): Shape {
  const step = stepOf(rows.map(({ value }) => value));
  const travels = rows.map(({ travel }) => travel);
  const centre = median(travels);
  const heights = new Set(travels.map(Math.round)).size;
  return {
    degree: Math.max(Math.min(most, Math.floor(heights / 2) - 1), Math.min(1, heights - 1)),
    centre,
    half: Math.max(quantile(travels, 0.9) - centre, centre - quantile(travels, 0.1), 1e-9),
    hasDirection: rows.some(({ direction }) => direction),
    least: Math.max(LIMITS.leastScatter, 0.4 * step),
  };
}

/** The coarse step, degrees, of which all values are multiples; 0 where they are read more finely. */
export const stepOf = (values: readonly number[]): number =>
  LIMITS.coarseSteps.find((size) =>
    values.every((value) => Math.abs(value / size - Math.round(value / size)) < 1e-6),
  ) ?? 0;

/**
 * Weighted least squares of *value = curve + zero of the group (± half of up less down)*. The zeros are taken out by subtracting each
 * group's means (Frisch and Waugh, Econometrica 1, 1933), so that what is left to solve is as small as the curve.
 */
export function weightedFit(
  rows: readonly Row[],
  { degree, centre, half, hasDirection }: Shape,
  weights?: ArrayLike<number>,
): WeightedFit {
  const size = degree + (hasDirection ? 1 : 0);
  const basis = ({ travel, direction }: Row, out: Float64Array) => {
    const x = (travel - centre) / half;
    for (let k = 0, power = 1; k < degree; k++) out[k] = power *= x;
    if (hasDirection) out[degree] = direction;
    return out;
  };
  const weightOf = (i: number) => (weights ? weights[i]! : 1);
  /** By group: weight, mean value, means of the basis. */
  const groups: { weight: number; value: number; basis: Float64Array }[] = [];
  const z = new Float64Array(size);
  const count = rows.length;
  for (let i = 0; i < count; i++) {
    const row = rows[i]!;
    groups[row.group] ??= { weight: 0, value: 0, basis: new Float64Array(size) };
    const group = groups[row.group]!;
    const weight = weightOf(i);
    if (!weight) continue;
    group.weight += weight;
    const share = weight / group.weight;
    basis(row, z);
    group.value += share * (row.value - group.value);
    for (let k = 0; k < size; k++) group.basis[k]! += share * (z[k]! - group.basis[k]!);
  }
  const less = (row: Row) => {
    basis(row, z);
    const means = groups[row.group]?.basis;
    if (means) for (let k = 0; k < size; k++) z[k]! -= means[k]!;
    return z;
  };
  // Normal equations of numbers near 1, at most four powers: half the digits are plenty for a judgement.
  const matrix = Array.from({ length: size }, () => new Float64Array(size));
  const right = new Float64Array(size);
  let kept = 0;
  let squares = 0;
  for (let i = 0; i < count; i++) {
    const row = rows[i]!;
    const weight = weightOf(i);
    if (!weight) continue;
    kept++;
    less(row);
    const y = row.value - groups[row.group]!.value;
    squares += weight * y * y;
    for (let k = 0; k < size; k++) {
      const share = weight * z[k]!;
      const line = matrix[k]!;
      right[k]! += share * y;
      for (let j = 0; j <= k; j++) line[j]! += share * z[j]!;
    }
  }
  // Cholesky in place; what cannot be told gets an infinite pivot, hence a share of zero.
  let rank = 0;
  for (let k = 0; k < size; k++) {
    const whole = matrix[k]![k]!;
    for (let j = 0; j <= k; j++) {
      let sum = matrix[k]![j]!;
      for (let m = 0; m < j; m++) sum -= matrix[k]![m]! * matrix[j]![m]!;
      matrix[k]![j] = j < k ? sum / matrix[j]![j]! : sum > 1e-9 * whole ? Math.sqrt(sum) : Infinity;
    }
    if (matrix[k]![k]! < Infinity) rank++;
  }
  const forward = (vector: Float64Array) => {
    for (let k = 0; k < size; k++) {
      let sum = vector[k]!;
      for (let m = 0; m < k; m++) sum -= matrix[k]![m]! * vector[m]!;
      vector[k] = sum / matrix[k]![k]!;
    }
    return vector;
  };
  const beta = forward(right);
  for (const part of beta) squares -= part * part;
  for (let k = size - 1; k >= 0; k--) {
    let sum = beta[k]!;
    for (let m = k + 1; m < size; m++) if (matrix[m]![m]! < Infinity) sum -= matrix[m]![k]! * beta[m]!;
    beta[k] = sum / matrix[k]![k]!;
  }
  const dot = (vector: Float64Array) => {
    let sum = 0;
    for (let k = 0; k < size; k++) sum += vector[k]! * beta[k]!;
    return sum;
  };
  const residual = (row: Row) => row.value - (groups[row.group]?.value ?? NaN) - dot(less(row));
  const dof = kept - rank - groups.filter((group) => group?.weight).length;
  return {
    sd: dof > 0 ? Math.sqrt(Math.max(squares, 0) / dof) : NaN,
    dof,
    residual,
    leverage: (row) => {
      const weight = groups[row.group]?.weight;
      return weight ? forward(less(row)).reduce((sum, one) => sum + one * one, 1 / weight) : Infinity;
    },
    offset: (group) => (groups[group] ? groups[group].value - dot(groups[group].basis) : NaN),
  };
}

/** By least absolute residuals, which a few wild rows do not pull: reweighted least squares. `scatter` is the robust standard deviation. */
export function robustFit(rows: readonly Row[], shape: Shape) {
  const { least } = shape;
  let made = weightedFit(rows, shape);
  const { dof } = made;
  let residuals = rows.map(made.residual);
  let cost = Infinity;
  // A block of wild rows lets go slowly; clean rows are done in a few turns.
  for (let turn = 0; turn < 40; turn++) {
    const now = residuals.reduce((sum, one) => sum + Math.abs(one), 0);
    if (now > 0.997 * cost) break;
    cost = now;
    made = weightedFit(
      rows,
      shape,
      residuals.map((one) => 1 / Math.max(Math.abs(one), least / 4)),
    );
    residuals = rows.map(made.residual);
  }
  // As many rows as the model has numbers lie on it: the median is of the others. 1.4826: median to standard deviation, normal law.
  const sizes = Float64Array.from(residuals, Math.abs).sort();
  const others = sizes.subarray(rows.length - Math.max(dof, 1));
  return { residuals, cost, scatter: Math.max(1.4826 * others[others.length >> 1]!, least) };
}
