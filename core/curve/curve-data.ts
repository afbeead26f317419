import type { Source } from '../uncertainty/estimate.js';

/** How an angle changes with wheel travel, as plain data. Angles in degrees, travel in mm from reference height, bump positive. */
export type CurveData = {
  /** Of what it is. */
  quantity: 'camber' | 'toe';
  /** Travels, mm, between which the curve may be asked. */
  domain: [number, number];
  /** Travels, mm, between which something was measured, where that is less. */
  measured?: [number, number];
  /** What its doubt is of. */
  sources: Source[];
} & (
  | {
      /** Coefficients of powers of travel, or samples. */
      kind: 'polynomial';
      /** value(t) = Σ coefficients[k] · ((t − centre)/scale)^k */
      centre: number;
      /** mm. */
      scale: number;
      /** Constant first, degrees. */
      coefficients: Float64Array;
      /** Lower triangular Cholesky factor of the coefficients' covariance, row by row, n × n; n = number of coefficients = its sources. Empty: no doubt known. */
      factor: Float64Array;
      /** What each further source, after those of the factor, does to the coefficients: sensitivity × standard uncertainty, row by row, further sources × n. Only with a factor. */
      effects?: Float64Array;
    }
  | {
      kind: 'sampled';
      /** Ascending, mm. Cubic Hermite between samples. */
      travel: Float64Array;
      /** Degrees. */
      value: Float64Array;
      /** d(value)/d(travel), degrees per mm. */
      slope: Float64Array;
      /** Row by row, samples × sources, degrees. Empty: no doubt known. */
      parts: Float64Array;
    }
);
