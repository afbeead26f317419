import type { Curve } from './curve.js';
import { signChanges } from './roots.js';

/**
 * The travel at which an angle has changed by so much since travel 0.
 *
 * @param change degrees
 * @param to mm; the curve must run one way only from 0 to there
 * @returns mm between 0 and `to`; undefined when the change is not reached there
 */
export function travelForChange(curve: Curve, change: number, to: number): number | undefined {
  if (change === 0) return 0;
  const ends = to < 0 ? [to, 0] : [0, to];
  const missing = (travel: number) => curve.change(travel, 0) - change;
  return signChanges(missing, ends)[0]?.at ?? (Math.abs(missing(to)) < 1e-12 ? to : undefined);
}
