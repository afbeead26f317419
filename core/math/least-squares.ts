import { triangularise } from './qr.js';
import { dot } from './sums.js';

/** Weighted residuals as functions of unknowns. */
export interface LeastSquaresProblem {
  /** At a place; undefined where it cannot be had. */
  residuals(at: Float64Array): Float64Array | undefined;
  /** The residuals' derivatives there: a column for each unknown. */
  derivatives(at: Float64Array): Float64Array[];
}

export interface LeastSquares {
  at: Float64Array;
  residuals: Float64Array;
  /** Of their squares. */
  sum: number;
  iterations: number;
  /** Whether the last step, or what a step could still gain, was nothing beside rounding, and the residuals tell every unknown there. */
  isConverged: boolean;
  /** R of the derivatives' QR decomposition at the end, column by column, unknowns × unknowns at least; see `triangularise`. */
  r: Float64Array[];
}

/** A step this small beside the unknowns, or a gain this small beside what is left, ends the search. */
const STEP = 1e-12;
const GAIN = 1e-11;
/** Of an unknown's own scale on the way: below it the residuals have gone flat, as far away from any minimum. */
const TOLD = 1e-9;
const FIRST_DAMPING = 1e-4;
const MOST_DAMPING = 1e16;

/**
 * Gauss and Newton's method, damped after Marquardt with each unknown in its own scale (Moré, Lecture Notes in Mathematics 630, 1978;
 * damping by what a step gained: Nielsen, IMM-REP-1999-05), by QR decomposition. What is known beforehand of an unknown is a residual more.
 *
 * @throws RangeError where there are no residuals at the start
 */
export function leastSquares(
  problem: LeastSquaresProblem,
  start: ArrayLike<number>,
  { mostIterations = 200 }: { mostIterations?: number } = {},
): LeastSquares {
  let at = Float64Array.from(start);
  const first = problem.residuals(at);
  if (!first?.every(Number.isFinite)) throw new RangeError('There are no residuals at the start.');
  let residuals = first;
  let sum = dot(residuals, residuals);
  const n = at.length;
  const scales = new Float64Array(n);
  let damping = FIRST_DAMPING;
  let growth = 2;
  for (let iterations = 0; ; iterations++) {
    const columns = problem.derivatives(at).map((column) => column.slice());
    columns.forEach((column, j) => {
      scales[j] = Math.max(scales[j]!, Math.sqrt(dot(column, column)));
    });
    const right = residuals.map((one) => -one);
    triangularise([...columns, right], n);
    const gain = Math.sqrt(dot(right.subarray(0, n), right.subarray(0, n)));
    const isTold = columns.every((column, j) => Math.abs(column[j]!) > TOLD * scales[j]!);
    const found = (isEnd: boolean): LeastSquares => {
      return { at, residuals, sum, iterations, isConverged: isEnd && isTold, r: columns };
    };
    if (gain <= GAIN * Math.sqrt(sum)) return polished(problem, found(true), right);
    if (iterations >= mostIterations) return found(false);
    for (;;) {
      const step = dampedStep(columns, right, scales, damping);
      const next = at.map((one, j) => one + step[j]!);
      if (isSmall(step, at, scales)) return polished(problem, found(true), right);
      const tried = problem.residuals(next);
      const left = tried ? dot(tried, tried) : Number.NaN;
      if (left < sum) {
        const expected = expectedGain(columns, right, step);
        const ratio = Math.min(1, (sum - left) / expected);
        damping *= Math.max(1 / 10, 1 - (2 * ratio - 1) ** 3);
        growth = 2;
        [at, residuals, sum] = [next, tried!, left];
        break;
      }
      damping = Math.max(damping, 1e-12) * growth;
      growth *= 2;
      if (!(damping < MOST_DAMPING)) return found(false);
    }
  }
}

/** The last step, undamped: what damping still held back is in the last digits. */
function polished(problem: LeastSquaresProblem, found: LeastSquares, right: Float64Array): LeastSquares {
  if (!found.r.every((column, j) => column[j] !== 0)) return found;
  const step = dampedStep(found.r, right, new Float64Array(found.at.length), 0);
  const at = found.at.map((one, j) => one + step[j]!);
  const residuals = problem.residuals(at);
  const sum = residuals ? dot(residuals, residuals) : Number.NaN;
  return sum <= found.sum * (1 + 1e-12) ? { ...found, at, residuals: residuals!, sum } : found;
}

/** (RᵀR + λD²) step = Rᵀz. */
function dampedStep(r: readonly Float64Array[], z: Float64Array, scales: Float64Array, damping: number): Float64Array {
  const n = scales.length;
  const root = Math.sqrt(damping);
  const columns = Array.from({ length: n }, (_, j) => {
    const column = new Float64Array(2 * n);
    column.set(r[j]!.subarray(0, n));
    column[n + j] = root * (scales[j]! || 1);
    return column;
  });
  const right = new Float64Array(2 * n);
  right.set(z.subarray(0, n));
  triangularise([...columns, right], n);
  const step = new Float64Array(n);
  for (let i = n - 1; i >= 0; i--) {
    let left = right[i]!;
    for (let j = i + 1; j < n; j++) left -= columns[j]![i]! * step[j]!;
    step[i] = left / columns[i]![i]!;
  }
  return step;
}

/** What a step takes off the sum of squares where the residuals are linear. */
function expectedGain(r: readonly Float64Array[], z: Float64Array, step: Float64Array): number {
  const n = step.length;
  let gain = 0;
  for (let i = 0; i < n; i++) {
    let moved = 0;
    for (let j = i; j < n; j++) moved += r[j]![i]! * step[j]!;
    gain += z[i]! ** 2 - (z[i]! - moved) ** 2;
  }
  return gain;
}

function isSmall(step: Float64Array, at: Float64Array, scales: Float64Array): boolean {
  const size = (of: Float64Array) => Math.hypot(...of.map((one, j) => one * (scales[j]! || 1)));
  return size(step) <= STEP * size(at);
}
