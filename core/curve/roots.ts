import { derivative, horner } from './polynomial.js';

export interface SignChange {
  at: number;
  /** From negative to positive. */
  rising: boolean;
}

/** Below this part of the largest value met, a function counts as zero: rounding, not a sign. */
const NOISE = 1e-13;

/**
 * Where a continuous function changes sign, to the last digit. It must be monotone between neighbouring `points` (ascending).
 * A zero that is only touched is no change of sign.
 */
export function signChanges(f: (x: number) => number, points: readonly number[]): SignChange[] {
  const values = points.map(f);
  const noise = NOISE * values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  const found: SignChange[] = [];
  let before: number | undefined;
  let zero: number | undefined;
  let sign = 0;
  points.forEach((x, i) => {
    if (Math.abs(values[i]!) <= noise) {
      zero ??= x;
      return;
    }
    const here = Math.sign(values[i]!);
    if (before !== undefined && here !== sign) found.push({ at: zero ?? bisect(f, before, x, sign), rising: here > 0 });
    before = x;
    sign = here;
    zero = undefined;
  });
  return found;
}

/** Halves the interval until no number is left inside. */
function bisect(f: (x: number) => number, low: number, high: number, signAtLow: number): number {
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return middle;
    const value = f(middle);
    if (value === 0) return middle;
    if (Math.sign(value) === signAtLow) low = middle;
    else high = middle;
  }
}

/** Where Σ coefficients[k]·xᵏ changes sign between low and high: the derivative's roots part it into monotone stretches. */
export function polynomialSignChanges(coefficients: ArrayLike<number>, low: number, high: number): number[] {
  if (coefficients.length < 2) return [];
  const points = [low, ...polynomialSignChanges(derivative(coefficients), low, high), high];
  return signChanges((x) => horner(coefficients, x), points).map(({ at }) => at);
}
