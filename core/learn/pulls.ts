import { studentTQuantile } from '../math/student-t.js';
import type { Estimated } from './learn.js';

/**
 * What a deviation whose scatter is known by few readings is multiplied by to be as improbable as a normal one: exact at `limit`, by
 * Student's t.
 */
export const asOfMany = (limit: number, dof: number): number => limit / studentTQuantile(normalBelow(limit), dof);

/** Share of the normal law below `z` > 2: its continued fraction (Abramowitz and Stegun 26.2.14), relative error of the rest below 1e-6. */
function normalBelow(z: number): number {
  let fraction = z;
  for (let k = 40; k >= 1; k--) fraction = z + k / fraction;
  return 1 - Math.exp((-z * z) / 2) / (Math.sqrt(2 * Math.PI) * fraction);
}

/** Something that was measured, against what all the rest says of it. */
export interface Pull {
  /** Stable name of the measurement. */
  id: string;
  /** For people. */
  label: string;
  /** How far it is off, in standard uncertainties of that difference: what is left out says so, and it alone. */
  sigma: number;
}

/**
 * A pull beyond this is an accusation: of some 40 measurements and allowances of a clean set, one is as far off in about one set of 200
 * (bench `learn`). Those between are told as what pulls hardest, and accused of nothing.
 */
export const ACCUSED = 3.5;
/** Of one measurement among many, two are as far apart by chance once in twenty. */
const TOLD = 2;

/**
 * What pulls hardest: each measurement of the corner and each allowance left out in turn, by the covariance, against what the rest says.
 * Largest first; only those that are more than chance.
 */
export function pullsOf({ at, factor, passes, unknowns, sets }: Estimated): Pull[] {
  const ofFew = asOfMany(ACCUSED, Math.min(...sets.map(({ dof }) => dof)));
  const names = [...passes, ...unknowns.sources];
  return names
    .flatMap(({ id, label }, j): Pull[] => {
      // A zero says nothing of itself.
      if (id.includes('.zero.')) return [];
      const variance = factor.reduce((sum, column) => sum + column[j]! ** 2, 0);
      const left = 1 - variance;
      // What readings do not touch has nothing to be off from.
      return left > 1e-4 ? [{ id, label, sigma: (ofFew * at[j]!) / Math.sqrt(left) }] : [];
    })
    .filter(({ sigma }) => Math.abs(sigma) > TOLD)
    .sort((a, b) => Math.abs(b.sigma) - Math.abs(a.sigma));
}
