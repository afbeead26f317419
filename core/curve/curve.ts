import { standardUncertainty, subtract } from '../uncertainty/combine.js';
import type { Estimate } from '../uncertainty/estimate.js';
import type { CurveData } from './curve-data.js';
import { polynomialShape } from './polynomial.js';
import { sampledShape } from './sampled.js';

/** Travels this far outside the ends, mm, are rounding. */
export const END_TOLERANCE_MM = 1e-9;

/**
 * An angle over wheel travel. Travels in mm, bump positive; angles in degrees, slopes in degrees per mm. Outside the domain every
 * answer is NaN: a curve is never extended. Estimates are over `data.sources`; their parts are empty, and the standard
 * errors 0, where no doubt is known.
 */
export interface Curve {
  /** As plain data. */
  readonly data: CurveData;
  /** Of what it is. */
  readonly quantity: CurveData['quantity'];
  /** Between which travels it may be asked, mm. */
  readonly domain: readonly [number, number];
  /** Degrees at a travel in mm. */
  value(t: number): number;
  /** Degrees per mm at a travel in mm. */
  slope(t: number): number;
  /** Standard uncertainty of the value. */
  standardError(t: number): number;
  /** The value with its doubt. */
  estimate(t: number): Estimate;
  /** The slope with its doubt. */
  slopeEstimate(t: number): Estimate;
  /** value(t) − value(t0). */
  change(t: number, t0: number): number;
  /** The change with its doubt; what both heights share cancels, so at t = t0 it is exactly 0 ± 0. */
  changeEstimate(t: number, t0: number): Estimate;
  /** Standard uncertainty of the change. */
  changeStandardError(t: number, t0: number): number;
}

/** Gives a curve its methods back that was solved here; what comes from elsewhere goes through `curveFrom`, which checks it. */
export function curveOf(data: CurveData): Curve {
  const [low, high] = data.domain;
  const shape = data.kind === 'polynomial' ? polynomialShape(data) : sampledShape(data);

  /** The travel to evaluate at, NaN outside the domain. */
  const within = (t: number) =>
    t >= low - END_TOLERANCE_MM && t <= high + END_TOLERANCE_MM ? Math.min(Math.max(t, low), high) : NaN;
  const number = (of: (t: number) => number) => (t: number) => {
    const at = within(t);
    return Number.isNaN(at) ? NaN : of(at);
  };
  const parts = (of: (t: number) => Float64Array) => (t: number) => {
    const at = within(t);
    return Number.isNaN(at) ? of(low).fill(NaN) : of(at);
  };
  const estimator = (value: (t: number) => number, partsOf: (t: number) => Float64Array) => (t: number) => ({
    value: value(t),
    parts: partsOf(t),
  });

  const value = number(shape.value);
  const slope = number(shape.slope);
  const estimate = estimator(value, parts(shape.parts));
  const changeEstimate = (t: number, t0: number) => subtract(estimate(t), estimate(t0));
  return {
    data,
    quantity: data.quantity,
    domain: data.domain,
    value,
    slope,
    standardError: number((t) => standardUncertainty(estimate(t))),
    estimate,
    slopeEstimate: estimator(slope, parts(shape.slopeParts)),
    change: (t, t0) => value(t) - value(t0),
    changeEstimate,
    changeStandardError: (t, t0) =>
      Number.isNaN(within(t) + within(t0)) ? NaN : standardUncertainty(changeEstimate(t, t0)),
  };
}
