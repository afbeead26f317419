import { dot } from '../math/sums.js';

/** Readings next to each other in time, run by run, as indexes; a run lies inside one pass. */
export type Runs = readonly (readonly number[])[];

/** R·v, the scatter's correlation matrix times a vector: it falls by `rho` from each reading of a run to the next. */
export function correlated(v: Float64Array, runs: Runs, rho: number): Float64Array {
  const out = v.slice();
  if (rho === 0) return out;
  for (const run of runs) {
    for (let k = 1, sum = 0; k < run.length; k++) {
      sum = rho * (sum + v[run[k - 1]!]!);
      out[run[k]!]! += sum;
    }
    for (let k = run.length - 2, sum = 0; k >= 0; k--) {
      sum = rho * (sum + v[run[k + 1]!]!);
      out[run[k]!]! += sum;
    }
  }
  return out;
}

/** A·v, half the sum of each reading's neighbours: vᵀAv is the sum of the products of neighbours. */
export function neighbours(v: Float64Array, runs: Runs): Float64Array {
  const out = new Float64Array(v.length);
  for (const run of runs) {
    for (let k = 1; k < run.length; k++) {
      out[run[k]!]! += v[run[k - 1]!]! / 2;
      out[run[k - 1]!]! += v[run[k]!]! / 2;
    }
  }
  return out;
}

/** Σ of products of neighbours ÷ Σ of squares, of values about their mean: the first autocorrelation, as NIST certifies it. */
export const lagOne = (v: Float64Array, runs: Runs): number => dot(v, neighbours(v, runs)) / dot(v, v);

/** Σ over all pairs of a run of so many readings of rho^distance. */
function pairSum(count: number, rho: number): number {
  let sum = count;
  for (let k = 1, power = rho; k < count && Math.abs(power) > 1e-17; k++, power *= rho) sum += 2 * (count - k) * power;
  return sum;
}

/**
 * How many independent readings tell a mean as well as runs of so many each, in which they follow each other with correlation `rho`:
 * the exact sum, as the rule n (1 − ρ)/(1 + ρ) is far off for few.
 */
export function effectiveCount(counts: readonly number[], rho: number): number {
  let [all, pairs] = [0, 0];
  for (const count of counts) {
    all += count;
    pairs += pairSum(count, rho);
  }
  return all ** 2 / pairs;
}

/** The fit's hat matrix: orthonormal columns of the model, and the passes' means, which are zero outside their pass. */
export interface Hat {
  q: readonly Float64Array[];
  passOf: readonly number[];
  counts: readonly number[];
}

/** By column of `q` and pass: sums over a pass, divided so that they are products with its unit column. */
const passSums = (v: Float64Array, { passOf, counts }: Hat): Float64Array => {
  const sums = new Float64Array(counts.length);
  v.forEach((value, i) => {
    sums[passOf[i]!]! += value;
  });
  return sums.map((sum, p) => sum / Math.sqrt(counts[p]!));
};

/**
 * What is expected of the residuals of scatter with correlation `rho`, per variance of one reading: of their squares, and of the
 * products of neighbours. tr(MR) and tr(AMRM) with M = I − WWᵀ, W the columns of the hat.
 */
export function expected(
  hat: Hat,
  runs: Runs,
  rho: number,
  near = hat.q.map((column) => neighbours(column, runs)),
): { squares: number; products: number } {
  const { q, passOf, counts } = hat;
  const n = passOf.length;
  const { far, ones } = correlatedColumns(hat, runs, rho);
  const onesNear = neighbours(new Float64Array(n).fill(1), runs);
  const bySide = (v: readonly Float64Array[]) => v.map((column) => passSums(column, hat));
  const [farSums, nearSums] = [bySide(far), bySide(near)];
  // A run lies inside one pass, so R and A times a pass's unit column stay in it.
  const farOnes = counts.map(() => 0);
  const nearOnes = counts.map(() => 0);
  const both = counts.map(() => 0);
  passOf.forEach((p, i) => {
    farOnes[p]! += ones[i]! / counts[p]!;
    nearOnes[p]! += onesNear[i]! / counts[p]!;
    both[p]! += (ones[i]! * onesNear[i]!) / counts[p]!;
  });
  let squares = n;
  let products = 0;
  for (const run of runs) products += (run.length - 1) * rho;
  q.forEach((column, j) => {
    squares -= dot(column, far[j]!);
    products -= 2 * dot(near[j]!, far[j]!);
    q.forEach((other, k) => {
      products += dot(column, near[k]!) * dot(other, far[j]!);
    });
    counts.forEach((_, p) => {
      products += 2 * nearSums[j]![p]! * farSums[j]![p]!;
    });
  });
  counts.forEach((_, p) => {
    squares -= farOnes[p]!;
    products += nearOnes[p]! * farOnes[p]! - 2 * both[p]!;
  });
  return { squares, products };
}

/** R times the hat matrix's columns, and times a column of ones. */
function correlatedColumns({ q, passOf }: Hat, runs: Runs, rho: number): { far: Float64Array[]; ones: Float64Array } {
  return {
    far: q.map((column) => correlated(column, runs, rho)),
    ones: correlated(new Float64Array(passOf.length).fill(1), runs, rho),
  };
}

/** tr(MRMR): what the doubt of the variance goes by. */
export function squaredTrace(hat: Hat, runs: Runs, rho: number): number {
  const { q, passOf, counts } = hat;
  const { far, ones } = correlatedColumns(hat, runs, rho);
  const farSums = far.map((column) => passSums(column, hat));
  let sum = 0;
  for (const run of runs) sum += pairSum(run.length, rho * rho);
  q.forEach((_, j) => {
    sum -= 2 * dot(far[j]!, far[j]!);
    q.forEach((other, k) => {
      sum += dot(q[j]!, far[k]!) * dot(other, far[j]!);
    });
    for (const one of farSums[j]!) sum += 2 * one * one;
  });
  const squares = counts.map(() => 0);
  const means = counts.map(() => 0);
  passOf.forEach((p, i) => {
    squares[p]! += ones[i]! ** 2 / counts[p]!;
    means[p]! += ones[i]! / counts[p]!;
  });
  counts.forEach((_, p) => {
    sum += means[p]! ** 2 - 2 * squares[p]!;
  });
  return sum;
}
