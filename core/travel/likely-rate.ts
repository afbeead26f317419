import type { Problem } from '../quantity/problem.js';
import { N_PER_MM_FROM } from '../quantity/units.js';
import type { AxleInRoll } from './axle-in-roll.js';

/** Ride frequencies, Hz, that springs on the road and on a club’s track have; outside them another unit is meant. Common practice, no source. */
const LEAST_HZ = 0.7;
const MOST_HZ = 3;

/**
 * A spring rate that makes no sense in N/mm with what it carries, and does in another unit.
 *
 * @param path of the axle in the request
 * @returns `looks-like-unit` with the unit as `names` and the rate in N/mm as `choices`; undefined where the rate makes sense, or does in no unit
 */
export function unlikelyRate(
  path: string,
  { springRate, motionRatio = 1, sprungMass }: Pick<AxleInRoll, 'springRate' | 'motionRatio' | 'sprungMass'>,
): Problem | undefined {
  const isLikely = (rate: number) => {
    const frequency = Math.sqrt((2000 * rate * motionRatio ** 2) / sprungMass) / (2 * Math.PI);
    return frequency >= LEAST_HZ && frequency <= MOST_HZ;
  };
  if (!(springRate > 0) || !(sprungMass > 0) || isLikely(springRate)) return undefined;
  const found = Object.entries(N_PER_MM_FROM).find(([, factor]) => isLikely(springRate * factor));
  if (!found) return undefined;
  const [unit, factor] = found;
  const choices = [Number((springRate * factor).toFixed(1))];
  return { code: 'looks-like-unit', path: `${path}.springRate`, value: springRate, names: [unit], choices };
}
