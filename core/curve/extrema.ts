import type { Estimate } from '../uncertainty/estimate.js';
import type { Curve } from './curve.js';
import type { CurveData } from './curve-data.js';
import { derivative } from './polynomial.js';
import { polynomialSignChanges, signChanges } from './roots.js';
import { hermite } from './sampled.js';

/** A travel at which the angle stops changing and turns back. */
export interface TurningPoint {
  /** mm. */
  travel: number;
  /** Degrees. */
  value: number;
  kind: 'minimum' | 'maximum';
  /** The travel with its doubt, mm, to first order: δt = −δslope / (d slope/dt). */
  travelEstimate: Estimate;
}

/** Width of the difference, mm, that gives d slope/dt. Cubics and their like are smooth on this scale. */
const DIFFERENCE_MM = 1e-3;

/** All turning points inside the domain, in order of travel. Ends of the domain and level stretches are none. */
export function turningPoints(curve: Curve): TurningPoint[] {
  const [low, high] = curve.domain;
  const points = [low, ...bends(curve.data).filter((t) => t > low && t < high), high];
  return signChanges(curve.slope, points).map(({ at, rising }) => {
    const before = Math.max(low, at - DIFFERENCE_MM);
    const after = Math.min(high, at + DIFFERENCE_MM);
    const curvature = (curve.slope(after) - curve.slope(before)) / (after - before);
    return {
      travel: at,
      value: curve.value(at),
      kind: rising ? 'minimum' : 'maximum',
      travelEstimate: { value: at, parts: curve.slopeEstimate(at).parts.map((part) => -part / curvature) },
    };
  });
}

/** Ascending travels between which the slope is monotone. */
function bends(data: CurveData): number[] {
  if (data.kind === 'polynomial') {
    const { centre, scale, domain } = data;
    const second = derivative(derivative(data.coefficients));
    const ends = domain.map((t) => (t - centre) / scale).sort((a, b) => a - b) as [number, number];
    return polynomialSignChanges(second, ...ends)
      .map((x) => centre + scale * x)
      .sort((a, b) => a - b);
  }
  const found: number[] = [];
  data.travel.forEach((start, i) => {
    found.push(start);
    const end = data.travel[i + 1];
    if (end === undefined) return;
    const { bend, twist } = hermite(data, i);
    const vertex = start - bend / twist;
    if (vertex > start && vertex < end) found.push(vertex);
  });
  return found;
}
