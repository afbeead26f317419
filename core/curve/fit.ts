import { solveLower, solveUpper, triangularise } from '../math/qr.js';
import { studentTQuantile } from '../math/student-t.js';
import { InputError } from '../quantity/problem.js';
import type { Reading, ReadingQuantity } from '../readings/reading.js';
import { fitProblems } from './check-readings.js';
import type { CurveFit, PassOffset } from './curve-fit.js';
import { chooseDegree, MOST_DEGREE, tried } from './degree.js';
import { designOf, legendreRows, unscaled } from './design.js';

export interface FitOptions {
  /** 1 to 10; `auto` (default): by the evidence, see `chooseDegree`. */
  degree?: number | 'auto';
  /** The highest that `auto` tries. Default 6. */
  maxDegree?: number;
  /** Default camber. */
  quantity?: ReadingQuantity;
}

/** A reading that does not belong would come by chance in one of a hundred sets of readings, not of readings. */
const STRANGE = 0.01;

/**
 * Fits readings by ordinary least squares: value = curve(travel) + offset of the pass ± half the difference between the ways.
 * Householder QR on Legendre polynomials of the scaled travel; one decomposition serves all degrees. Standard formulas
 * (Draper and Smith, Applied Regression Analysis; from memory): s² = RSS/ν, cov = s²(XᵀX)⁻¹, externally studentised residuals,
 * those flagged by Bonferroni's bound.
 *
 * Passes differ in their zero, and a pass that is not complete pulls a plain mean to its own: so the offsets are fitted, not
 * averaged away. What cannot be told apart (up and down, where each pass went one way) is left out.
 *
 * @throws InputError with every problem: numbers that are none, too few heights, a degree that they do not support.
 */
export function fitCurve(readings: readonly Reading[], options: FitOptions = {}): CurveFit {
  const problems = fitProblems(readings, options);
  if (problems.length > 0) throw new InputError(problems);
  const { degree: wanted = 'auto', maxDegree = MOST_DEGREE, quantity = 'camber' } = options;
  const heights = new Set(readings.map(({ travel }) => travel)).size;
  const most =
    wanted === 'auto' ? Math.min(maxDegree, heights - 1) : Math.max(wanted, Math.min(maxDegree, heights - 1));
  const design = designOf(readings, most);
  const { columns, kinds, value, centre, scale, order, passes } = design;
  const original = columns.map((column) => column.slice());
  const turned = value.slice();
  const kept = triangularise(columns, turned);
  const n = value.length;
  const nuisance = kept.filter((index) => kinds[index] !== 'power').length;
  const powers = kept.length - nuisance;

  /** Residual sum of squares with the first `count` columns. */
  const restOf = (count: number) => {
    let sum = 0;
    for (let i = count; i < n; i++) sum += turned[i]! * turned[i]!;
    return sum;
  };
  let mean = 0;
  for (const one of value) mean += one / n;
  let total = 0;
  for (const one of value) total += (one - mean) ** 2;

  const candidates = Array.from({ length: powers }, (_, i) =>
    tried(i + 1, n, nuisance + i + 1, restOf(nuisance + i + 1), total),
  );
  const degree = wanted === 'auto' ? chooseDegree(candidates, heights) : wanted;
  const p = nuisance + degree;
  const dof = n - p;
  if (powers < degree || dof < 1) {
    const limit = powers < degree ? powers : Math.max(1, degree - (1 - dof));
    throw new InputError([
      wanted === 'auto' || n - nuisance - 1 < 1
        ? { code: 'too-few', path: 'readings', value: n, limit: nuisance + 2 }
        : { code: 'out-of-range', path: 'degree', value: degree, limit },
    ]);
  }
  const triangle = kept.slice(0, p).map((index) => columns[index]!);
  const b = solveUpper(triangle, turned);
  const s = Math.sqrt(restOf(p) / dof);

  /** Standard uncertainty of a combination of the fitted numbers: s·|R⁻ᵀ·c|. */
  const uncertain = (weights: ArrayLike<number>) => s * Math.hypot(...solveLower(triangle, weights));
  const at = (kind: (typeof kinds)[number]) =>
    kept.slice(0, p).flatMap((index, i) => (kinds[index] === kind ? [i] : []));
  const unit = (where: Record<number, number>) => Float64Array.from({ length: p }, (_, i) => where[i] ?? 0);

  // From Legendre to powers of (t − centre)/scale: coefficient k = Σ weights[k][i]·b[i].
  const rows = legendreRows(degree);
  const curveAt = [...at('constant'), ...at('power')];
  const weights = Array.from({ length: degree + 1 }, (_, k) =>
    unit(Object.fromEntries(curveAt.map((i, row) => [i, rows[row]![k] ?? 0]))),
  );
  const dot = (c: Float64Array) => c.reduce((sum, weight, i) => sum + weight * b[i]!, 0);
  const coefficients = Float64Array.from(weights, dot);
  const powersOfT = Array.from({ length: degree + 1 }, (_, k) =>
    unscaled(
      weights.map((_, i) => (i === k ? 1 : 0)),
      centre,
      scale,
    ),
  );
  const inPowers = Array.from({ length: degree + 1 }, (_, power) =>
    unit(
      Object.fromEntries(
        curveAt.map((i) => [i, weights.reduce((sum, row, k) => sum + powersOfT[k]![power]! * row[i]!, 0)]),
      ),
    ),
  );

  const passOffsets = offsetsOf(passes, readings, at('pass'), b, unit, uncertain);
  const zeroSd =
    passOffsets.length > 1 ? spread(passOffsets.map(({ offset }) => offset)) / Math.sqrt(passes.length) : 0;
  const [way] = at('going');
  const { residuals, studentised } = residualsOf(original, kept.slice(0, p), triangle, value, b, s, dof, order);
  const limit = dof > 1 ? studentTQuantile(1 - STRANGE / (2 * n), dof - 1) : Number.POSITIVE_INFINITY;
  const repeatability = repeatabilityOf(readings, residuals, passes.length + (way === undefined ? 0 : 1));
  const { factor, constantDof } = factorOf(
    weights.map((row) => solveLower(triangle, row).map((part) => s * part)),
    zeroSd,
    dof,
    passes.length - 1,
  );
  const rSquared = total > 0 ? 1 - restOf(p) / total : Number.NaN;
  return {
    degree,
    powerCoefficients: unscaled(coefficients, centre, scale),
    coefficientSd: Float64Array.from(inPowers, uncertain),
    rSquared,
    adjustedRSquared: 1 - ((1 - rSquared) * (n - 1)) / dof,
    residualSd: s,
    dof,
    zeroSd,
    passOffsets,
    ...(repeatability && { repeatability }),
    ...(way !== undefined && { upLessDown: { value: b[way]!, standardError: uncertain(unit({ [way]: 1 })) } }),
    candidates,
    residuals,
    studentised,
    strangers: [...studentised.keys()].filter((i) => Math.abs(studentised[i]!) > limit),
    curve: {
      kind: 'polynomial',
      quantity,
      domain: [centre - scale, centre + scale],
      centre,
      scale,
      coefficients,
      factor,
      sources: weights.map((_, k) => ({
        id: `fit.${k}`,
        label: 'the readings',
        dof: k === 0 ? constantDof : dof,
      })),
    },
  };
}

const spread = (values: number[]): number => {
  const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
  return Math.sqrt(values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (values.length - 1));
};

function offsetsOf(
  passes: string[],
  readings: readonly Reading[],
  at: number[],
  b: Float64Array,
  unit: (where: Record<number, number>) => Float64Array,
  uncertain: (weights: Float64Array) => number,
): PassOffset[] {
  if (at.length === 0) return [];
  return passes.map((pass, i) => {
    const own = at[i];
    const where = own === undefined ? Object.fromEntries(at.map((one) => [one, -1])) : { [own]: 1 };
    const weights = unit(where);
    return {
      pass,
      count: readings.filter((reading) => (reading.pass ?? '') === pass).length,
      offset: weights.reduce((sum, weight, k) => sum + weight * b[k]!, 0),
      standardError: uncertain(weights),
    };
  });
}

function residualsOf(
  columns: Float64Array[],
  kept: number[],
  triangle: Float64Array[],
  value: Float64Array,
  b: Float64Array,
  s: number,
  dof: number,
  order: number[],
) {
  const residuals = new Float64Array(order.length);
  const studentised = new Float64Array(order.length);
  const row = new Float64Array(kept.length);
  order.forEach((index, i) => {
    let left = value[i]!;
    kept.forEach((column, k) => {
      row[k] = columns[column]![i]!;
      left -= row[k]! * b[k]!;
    });
    // The leverage is |R⁻ᵀ·row|².
    const free = 1 - solveLower(triangle, row).reduce((sum, part) => sum + part * part, 0);
    const others = (s * s * dof - (left * left) / free) / (dof - 1);
    residuals[index] = left;
    studentised[index] = free > 1e-9 && others > 0 && dof > 1 ? left / Math.sqrt(others * free) : Number.NaN;
  });
  return { residuals, studentised };
}

/** Of readings at one height, the passes' offsets taken off: pooled about the means of their heights. */
function repeatabilityOf(readings: readonly Reading[], residuals: Float64Array, fitted: number) {
  const groups = new Map<number, number[]>();
  readings.forEach(({ travel }, i) => {
    const group = groups.get(travel) ?? [];
    group.push(residuals[i]!);
    groups.set(travel, group);
  });
  let sum = 0;
  // The offsets but one were fitted to the same readings.
  let dof = 1 - fitted;
  for (const group of groups.values()) {
    const mean = group.reduce((all, one) => all + one, 0) / group.length;
    for (const one of group) sum += (one - mean) ** 2;
    dof += group.length - 1;
  }
  return dof > 0 ? { sd: Math.sqrt(sum / dof), dof } : undefined;
}

/**
 * A square root of the coefficients' covariance with the constant's own doubt in the first column alone: there the passes' common
 * zero is added, and a change does not see it. By QR from the last coefficient up, so no covariance is formed.
 *
 * @param parts row by row, coefficients × anything: parts·partsᵀ is the covariance
 */
function factorOf(parts: Float64Array[], zeroSd: number, dof: number, zeroDof: number) {
  const n = parts.length;
  const reversed = parts.map((row) => row.slice()).reverse();
  const rows = reversed[0]!.length;
  const square = reversed.map((row) => Float64Array.from({ length: Math.max(rows, n) }, (_, i) => row[i] ?? 0));
  const kept = triangularise(square, new Float64Array(Math.max(rows, n)));
  const factor = new Float64Array(n * n);
  // Column j of the triangle is coefficient n − 1 − j over its sources, the last of which is its own.
  square.forEach((column, j) => {
    kept.forEach((_, i) => {
      if (i <= j) factor[(n - 1 - j) * n + (n - 1 - i)] = column[i]!;
    });
  });
  const fitted = factor[0]! ** 2;
  const zero = zeroSd ** 2;
  factor[0] = Math.sqrt(fitted + zero);
  const constantDof = zero > 0 ? (fitted + zero) ** 2 / (fitted ** 2 / dof + zero ** 2 / zeroDof) : dof;
  return { factor, constantDof };
}
