import type { Estimated } from './learn.js';

/** Something that was measured, against what all the rest says of it. */
export interface Pull {
  id: string;
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
export function pullsOf({ at, factor, passes, unknowns }: Estimated): Pull[] {
  const names = [...passes, ...unknowns.sources];
  return names
    .flatMap(({ id, label }, j): Pull[] => {
      // A zero says nothing of itself.
      if (id.includes('.zero.')) return [];
      const variance = factor.reduce((sum, column) => sum + column[j]! ** 2, 0);
      const left = 1 - variance;
      // What readings do not touch has nothing to be off from.
      return left > 1e-4 ? [{ id, label, sigma: at[j]! / Math.sqrt(left) }] : [];
    })
    .filter(({ sigma }) => Math.abs(sigma) > TOLD)
    .sort((a, b) => Math.abs(b.sigma) - Math.abs(a.sigma));
}
