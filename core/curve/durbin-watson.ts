import { dot } from '../math/sums.js';

/**
 * A fit whose residuals are looked at: orthonormal columns of its model beside the passes' means, of length n, and the readings of
 * each pass next to each other in time, in one run or several.
 */
export interface Residuals {
  q: readonly Float64Array[];
  passes: readonly (readonly (readonly number[])[])[];
}

/** Σ of the squared differences of neighbours ÷ Σ of squares (Durbin and Watson, Biometrika 37, 1950): 2 without correlation, less with it. */
export function durbinWatson(residuals: ArrayLike<number>, runs: readonly (readonly number[])[]): number {
  let [differences, squares] = [0, 0];
  for (const run of runs) {
    run.forEach((at, k) => {
      squares += residuals[at]! ** 2;
      if (k > 0) differences += (residuals[at]! - residuals[run[k - 1]!]!) ** 2;
    });
  }
  return differences / squares;
}

/** Of the inversion, in asinh of standard deviations: p is right to 1e-6 from three degrees of freedom on. */
const STEP = 0.25;
const MOST_STEPS = 400;
const NEGLIGIBLE = 1e-7;
/** Standard deviations from its mean at which nothing is left of a distribution that reaches so far. */
const FAR = 9;
const FIXED = 1e-9;

/**
 * The chance that independent normal scatter makes neighbours go together as much as was found, or more: P(d ≤ found), exact for this
 * very model, as the bounds in tables are not for passes with zeros of their own. NaN where the model leaves no statistic but one.
 *
 * d ≤ found means zᵀM(A − found)Mz ≤ 0 for standard normal z, M = I − WWᵀ. The distribution of such a form is got from its
 * characteristic function by Imhof's inversion (Biometrika 48, 1961), and that not from eigenvalues but from
 * det(I − 2ζM(A − d)M) = det(T) det(WᵀT⁻¹W), T = I − 2ζ(A − d), where T is tridiagonal: so it costs no more than a few fits.
 */
export function durbinWatsonChance(found: number, { q, passes }: Residuals): number {
  const { mean, variance } = moments(found, { q, passes });
  // With so few readings a pass that they always have the same statistic.
  if (!(variance > FIXED)) return Number.NaN;
  const scale = 1 / Math.sqrt(variance);
  const off = Math.abs(mean) * scale;
  if (off > FAR) return mean < 0 ? 1 : 0;
  // The further off, the faster the integrand turns.
  const step = STEP / Math.max(1, off);
  // At 0 the integrand is half the mean; the step there counts half.
  let sum = (mean * scale) / 2;
  let turns = 0;
  let before = 0;
  for (let k = 1; k <= MOST_STEPS; k++) {
    const t = Math.sinh(k * step);
    const { size, phase } = characteristic(t * scale, found, { q, passes });
    // The square root has two branches: the phase goes on without a jump.
    let whole = phase + turns * Math.PI;
    while (whole - before > Math.PI / 2) {
      whole -= Math.PI;
      turns--;
    }
    while (before - whole > Math.PI / 2) {
      whole += Math.PI;
      turns++;
    }
    before = whole;
    const part = (size * Math.sin(whole) * Math.cosh(k * step)) / t;
    sum += part;
    if (size * Math.cosh(k * step) < NEGLIGIBLE * t) break;
  }
  return Math.min(1, Math.max(0, 0.5 - (step * sum) / Math.PI));
}

/** Mean and variance of zᵀM(A − d)Mz: tr(MB), 2 tr(MBMB). */
function moments(d: number, { q, passes }: Residuals): { mean: number; variance: number } {
  const columns = q.map((column) => times(column, d, passes));
  let [mean, square] = [0, 0];
  for (const runs of passes) {
    const count = runs.reduce((sum, { length }) => sum + length, 0);
    const ones = runs.map((run) =>
      run.map((_, k) => diagonal(run, k) - d - (k > 0 ? 1 : 0) - (k < run.length - 1 ? 1 : 0)),
    );
    for (const run of runs) {
      run.forEach((_, k) => {
        mean += diagonal(run, k) - d;
        square += (diagonal(run, k) - d) ** 2 + (k > 0 ? 2 : 0);
      });
    }
    const all = ones.flat();
    const own = all.reduce((sum, one) => sum + one, 0) / count;
    mean -= own;
    square += own * own - (2 * all.reduce((sum, one) => sum + one * one, 0)) / count;
    for (const column of columns) {
      const sum = runs.flat().reduce((total, i) => total + column[i]!, 0);
      square += (2 * sum * sum) / count;
    }
  }
  q.forEach((column, j) => {
    mean -= dot(column, columns[j]!);
    square -= 2 * dot(columns[j]!, columns[j]!);
    q.forEach((other) => {
      square += dot(other, columns[j]!) ** 2;
    });
  });
  return { mean, variance: 2 * square };
}

/** Of the matrix A of differences in a run: its ends have one neighbour, a reading alone none. */
const diagonal = (run: readonly number[], k: number): number => (k > 0 ? 1 : 0) + (k < run.length - 1 ? 1 : 0);

/** (A − d)·v. */
function times(v: Float64Array, d: number, passes: Residuals['passes']): Float64Array {
  const out = new Float64Array(v.length);
  for (const run of passes.flat()) {
    run.forEach((at, k) => {
      out[at] =
        (diagonal(run, k) - d) * v[at]! -
        (k > 0 ? v[run[k - 1]!]! : 0) -
        (run[k + 1] !== undefined ? v[run[k + 1]!]! : 0);
    });
  }
  return out;
}

/**
 * det(I − 2itM(A − d)M)^(−1/2) as its size and phase, the phase up to half turns. T = LDLᵀ run by run; each pass's mean is taken out
 * of WᵀT⁻¹W where the pass ends.
 */
function characteristic(t: number, d: number, { q, passes }: Residuals): { size: number; phase: number } {
  const m = q.length;
  // Complex numbers as pairs. The matrix of the columns of q; of one pass: its mean with them, and with itself.
  const matrix = new Float64Array(2 * m * m);
  const mixed = new Float64Array(2 * m);
  const y = new Float64Array(2 * (m + 1));
  let [logSize, angle] = [0, 0];
  const count = (re: number, im: number) => {
    logSize += Math.log(re * re + im * im) / 2;
    angle += Math.atan2(im, re);
  };
  for (const runs of passes) {
    const size = runs.reduce((sum, { length }) => sum + length, 0);
    const unit = 1 / Math.sqrt(size);
    mixed.fill(0);
    let [ownRe, ownIm] = [0, 0];
    for (const run of runs) {
      let [pivotRe, pivotIm] = [1, 0];
      for (const [k, at] of run.entries()) {
        // The neighbours' entry of T is 2it; its diagonal 1 + 2it(d − a).
        const step = k > 0 ? 2 * t : 0;
        const norm = pivotRe * pivotRe + pivotIm * pivotIm;
        // l = 2it / pivot
        const [lRe, lIm] = [(step * pivotIm) / norm, (step * pivotRe) / norm];
        for (let j = 0; j <= m; j++) {
          const [re, im] = k > 0 ? [y[2 * j]!, y[2 * j + 1]!] : [0, 0];
          const value = j < m ? q[j]![at]! : unit;
          y[2 * j] = value - (lRe * re - lIm * im);
          y[2 * j + 1] = -(lRe * im + lIm * re);
        }
        // pivot = 1 + 2it(d − a) − l · 2it
        pivotRe = 1 + lIm * step;
        pivotIm = 2 * t * (d - diagonal(run, k)) - lRe * step;
        count(pivotRe, pivotIm);
        const over = pivotRe * pivotRe + pivotIm * pivotIm;
        for (let j = 0; j <= m; j++) {
          const re = (y[2 * j]! * pivotRe + y[2 * j + 1]! * pivotIm) / over;
          const im = (y[2 * j + 1]! * pivotRe - y[2 * j]! * pivotIm) / over;
          if (j === m) {
            ownRe += re * y[2 * m]! - im * y[2 * m + 1]!;
            ownIm += re * y[2 * m + 1]! + im * y[2 * m]!;
            continue;
          }
          mixed[2 * j]! += re * y[2 * m]! - im * y[2 * m + 1]!;
          mixed[2 * j + 1]! += re * y[2 * m + 1]! + im * y[2 * m]!;
          for (let i = 0; i <= j; i++) {
            matrix[2 * (j * m + i)]! += re * y[2 * i]! - im * y[2 * i + 1]!;
            matrix[2 * (j * m + i) + 1]! += re * y[2 * i + 1]! + im * y[2 * i]!;
          }
        }
      }
    }
    count(ownRe, ownIm);
    takeOut(matrix, m, m, mixed, ownRe, ownIm);
  }
  for (let k = m - 1; k >= 0; k--) {
    const [re, im] = [matrix[2 * (k * m + k)]!, matrix[2 * (k * m + k) + 1]!];
    count(re, im);
    takeOut(matrix, m, k, matrix.slice(2 * k * m, 2 * (k + 1) * m), re, im);
  }
  return { size: Math.exp(-logSize / 2), phase: -angle / 2 };
}

/** Subtracts row · rowᵀ / pivot from the leading block of a symmetric matrix, of which the lower half is kept. */
function takeOut(matrix: Float64Array, m: number, block: number, row: Float64Array, re: number, im: number): void {
  const over = re * re + im * im;
  for (let j = 0; j < block; j++) {
    const [a, b] = [row[2 * j]!, row[2 * j + 1]!];
    const [x, y] = [(a * re + b * im) / over, (b * re - a * im) / over];
    for (let i = 0; i <= j; i++) {
      matrix[2 * (j * m + i)]! -= x * row[2 * i]! - y * row[2 * i + 1]!;
      matrix[2 * (j * m + i) + 1]! -= x * row[2 * i + 1]! + y * row[2 * i]!;
    }
  }
}
