import { cholesky } from '../math/qr.js';
import { correlated } from './correlation.js';
import type { PassOffset } from './curve-fit.js';
import { blend, type Model, type Solution } from './fit-model.js';
import { passMeans } from './fit-rows.js';
import type { Scatter } from './scatter.js';

/** What the scatter of the readings leaves open. */
export interface FitDoubt {
  /** Independent parts of the doubt of the curve's coefficients, in powers of x. */
  parts: Float64Array[];
  /** Standard uncertainty of each weight, by term in use. */
  weightErrors: Float64Array;
  offsets: PassOffset[];
}

/**
 * Least squares with equal weights stay as they are; their doubt is that of scatter in which neighbours go together:
 * Cov(w) = R⁻¹ Qᵀ V Q R⁻ᵀ with V the scatter's covariance (White, Econometrica 48, 1980, for a V that is known).
 */
export function doubtOf(
  { rows, extra, degree }: { rows: Model['rows']; extra: number; degree: number },
  { inverse, q, shapes, away, offsets }: Solution,
  { correlation, variance }: Pick<Scatter, 'correlation' | 'variance'>,
): FitDoubt {
  const { passes, taken } = rows;
  const count = passes.length;
  const far = q.map((column) => correlated(column, taken.runs, correlation));
  /** Covariances, per variance of a reading: of the model's coordinates, of those with pass means, of pass means. */
  const ofMeans = far.map((column) => passMeans(column, rows));
  const ofMean = passMeans(correlated(new Float64Array(rows.n).fill(1), taken.runs, correlation), rows).map(
    (sum, p) => sum / passes[p]!.count,
  );
  const level = ofMean.reduce((sum, one) => sum + one, 0) / count ** 2;
  const toLevel = ofMeans.map((means) => means.reduce((sum, one) => sum + one, 0) / count);
  const size = q.length + 1;
  const matrix = Array.from({ length: size }, (_, j) =>
    Float64Array.from({ length: size }, (_, k) => {
      if (j === size - 1 || k === size - 1) return variance * (j === k ? level : toLevel[Math.min(j, k)]!);
      let sum = 0;
      for (let i = 0; i < rows.n; i++) sum += q[j]![i]! * far[k]![i]!;
      return variance * sum;
    }),
  );
  const factor = cholesky(matrix);
  const columns = inverse.map((column) => blend(column, shapes));
  columns.push(new Float64Array(degree + 1).fill(1, 0, 1));
  const part = (k: number) => factor.map((row) => row[k]!);
  const weightErrors = new Float64Array(extra + degree);
  const parts = factor.map((_, k) => {
    const shares = part(k);
    blend(shares.slice(0, -1), inverse).forEach((weight, j) => {
      weightErrors[j]! += weight ** 2;
    });
    return blend(shares, columns);
  });
  return {
    parts,
    weightErrors: weightErrors.map(Math.sqrt),
    offsets: passes.map(({ name, count: readings }, p) => {
      const drawn = inverse.map((column) => blend(column, away)[p]!);
      let sum = (1 - 2 / count) * ofMean[p]! + level;
      drawn.forEach((one, j) => {
        sum += 2 * one * (toLevel[j]! - ofMeans[j]![p]!);
        drawn.forEach((other, k) => {
          sum += (one * other * matrix[j]![k]!) / variance;
        });
      });
      // Rounding may carry that of a single pass below 0.
      const standardError = Math.sqrt(Math.max(0, variance * sum));
      return { pass: name, count: readings, offset: offsets[p]!, standardError };
    }),
  };
}
