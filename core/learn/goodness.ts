import { fTail } from '../math/f-tail.js';
import type { Estimated } from './learn.js';

/** How well readings and corner go together. */
export interface Goodness {
  /** Sum of squares of readings, and of what the corner and the instruments had to give, over its degrees of freedom. */
  perDof: number;
  /** Degrees of freedom. */
  dof: number;
  /** The chance of one as large, where the corner is one that its ± allow and nothing else is wrong. */
  chance: number;
  /** How many times further apart readings and corner are than what is stated of both allows: about 1 where they go together. */
  apart: number;
}

/**
 * What the linkage leaves that a curve through the same readings does not, against the scatter about that curve (F test of lack of fit).
 * The curve has no idea of links, so it takes the place of replicates.
 */
export function goodnessOf({ sum, sets, passes }: Estimated): Goodness {
  const readings = sets.reduce((all, { rows }) => all + rows.n, 0);
  const free = passes.filter(({ id }) => id.includes('.zero.')).length;
  const dof = readings - free;
  const byCurve = sets.reduce((all, { fit, sd }) => all + fit.dof * (fit.residualSd / sd) ** 2, 0);
  const ofCurve = sets.reduce((all, { fit }) => all + fit.dof, 0);
  const lack = Math.max(0, sum - byCurve);
  const above = Math.max(1, dof - ofCurve);
  const scatter = Math.max(byCurve / ofCurve, 1e-12);
  const ratio = lack / above / Math.max(scatter, 1);
  return { perDof: sum / dof, dof, chance: fTail(ratio, above, ofCurve), apart: Math.sqrt(ratio) };
}
