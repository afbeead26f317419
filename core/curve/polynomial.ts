import type { CurveData } from './curve-data.js';
import type { Shape } from './shape.js';

/** Σ coefficients[k] · xᵏ by Horner's rule. */
export function horner(coefficients: ArrayLike<number>, x: number): number {
  let sum = 0;
  for (let k = coefficients.length - 1; k >= 0; k--) sum = sum * x + coefficients[k]!;
  return sum;
}

/** The coefficients of the derivative. */
export const derivative = (coefficients: ArrayLike<number>): number[] =>
  Array.from(coefficients, (coefficient, k) => coefficient * k).slice(1);

/** A polynomial in x = (t − centre)/scale. With covariance L·Lᵀ, the variance of basisᵀ·coefficients is |Lᵀ·basis|²; each further source adds its own. */
export function polynomialShape(data: Extract<CurveData, { kind: 'polynomial' }>): Shape {
  const { coefficients, factor, centre, scale, effects = new Float64Array() } = data;
  const n = coefficients.length;
  const slopes = derivative(coefficients);
  const columns = Array.from({ length: factor.length && n }, (_, i) =>
    Array.from({ length: n }, (_, k) => (k < i ? 0 : factor[k * n + i]!)),
  );
  for (let from = 0; from < effects.length; from += n) columns.push(Array.from(effects.subarray(from, from + n)));
  const slopeColumns = columns.map(derivative);
  const x = (t: number) => (t - centre) / scale;
  return {
    value: (t) => horner(coefficients, x(t)),
    slope: (t) => horner(slopes, x(t)) / scale,
    parts: (t) => Float64Array.from(columns, (column) => horner(column, x(t))),
    slopeParts: (t) => Float64Array.from(slopeColumns, (column) => horner(column, x(t)) / scale),
  };
}
