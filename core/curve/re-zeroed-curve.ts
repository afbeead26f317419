import type { CurveData } from './curve-data.js';

/** A curve counted from another height: `by` mm further up. */
export function reZeroedCurve(curve: CurveData, by: number): CurveData {
  const moved = ([low, high]: readonly [number, number]): [number, number] => [low + by, high + by];
  const domains = { domain: moved(curve.domain), ...(curve.measured && { measured: moved(curve.measured) }) };
  return curve.kind === 'polynomial'
    ? { ...curve, ...domains, centre: curve.centre + by }
    : { ...curve, ...domains, travel: curve.travel.map((travel) => travel + by) };
}
