import { curveFrom } from '../curve/curve.js';
import type { CurveData } from '../curve/curve-data.js';
import type { SolvedSource } from './camber-source.js';

/**
 * The same source counted from another height: a car measured as it stands, already lowered, is on its curve where the drop has
 * put it. The curve itself does not change.
 *
 * @param measuredAt travel from stock height to where it was measured, mm, positive in bump (lowered)
 */
export function reZeroed(solved: SolvedSource, measuredAt: number): SolvedSource {
  if (measuredAt === 0) return solved;
  const { motion, reach } = solved;
  return {
    ...solved,
    curve: reZeroedCurve(solved.curve, measuredAt),
    ...(motion && { motion: { ...motion, travel: motion.travel.map((travel) => travel + measuredAt) } }),
    ...(reach && { reach: { ...reach, droop: reach.droop + measuredAt, bump: reach.bump + measuredAt } }),
  };
}

/** A curve counted from another height: `by` mm further up. */
export function reZeroedCurve(curve: CurveData, by: number): CurveData {
  const moved = ([low, high]: readonly [number, number]): [number, number] => [low + by, high + by];
  const domains = { domain: moved(curve.domain), ...(curve.measured && { measured: moved(curve.measured) }) };
  return curve.kind === 'polynomial'
    ? { ...curve, ...domains, centre: curve.centre + by }
    : { ...curve, ...domains, travel: curve.travel.map((travel) => travel + by) };
}

/**
 * A static camber that was read on a car that stood lower than where its links were measured: the whole curve moves up or down
 * until it is right there. Of sampled curves only: a curve that was fitted to readings has its own camber.
 *
 * @param lower mm
 */
export function withCamberReadAt(solved: SolvedSource, lower: number): SolvedSource {
  const { curve } = solved;
  if (lower === 0 || curve.kind !== 'sampled') return solved;
  return { ...solved, curve: shifted(curve, -curveFrom(curve).change(Math.min(lower, curve.domain[1]), 0)) };
}

/** Where nobody said what the camber is, the curve says what it changes from reference height: there it is 0. */
export function withChangesOnly(solved: SolvedSource): SolvedSource {
  const { curve, driveway } = solved;
  if (!driveway || driveway.camber || curve.kind !== 'sampled') return solved;
  return { ...solved, curve: shifted(curve, -curveFrom(curve).value(0)) };
}

const shifted = (curve: CurveData & { kind: 'sampled' }, by: number): CurveData => ({
  ...curve,
  value: curve.value.map((camber) => camber + by),
});
