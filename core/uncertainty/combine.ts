import { studentTQuantile } from '../math/student-t.js';
import type { Estimate, Source } from './estimate.js';

/** u(y): the root of the sum of squared parts, as the sources are independent (GUM, JCGM 100:2008, eq. 10). */
export function standardUncertainty(estimate: Estimate): number {
  let sum = 0;
  for (const part of estimate.parts) sum += part * part;
  return Math.sqrt(sum);
}

/** a + b over the same list of sources. Throws RangeError when the lists differ in length. */
export const add = (a: Estimate, b: Estimate): Estimate => combine(a, b, 1);

/** a − b over the same list of sources; what the two share cancels. Throws RangeError when the lists differ in length. */
export const subtract = (a: Estimate, b: Estimate): Estimate => combine(a, b, -1);

/** k · estimate; k is known without doubt. */
export const scale = (estimate: Estimate, k: number): Estimate => ({
  value: estimate.value * k,
  parts: estimate.parts.map((part) => part * k),
});

function combine(a: Estimate, b: Estimate, sign: number): Estimate {
  if (a.parts.length !== b.parts.length) throw new RangeError('Two estimates must list the same sources.');
  return { value: a.value + sign * b.value, parts: a.parts.map((part, i) => part + sign * b.parts[i]!) };
}

/**
 * Effective degrees of freedom by the Welch–Satterthwaite formula (GUM, JCGM 100:2008, eq. G.2b), not truncated to an integer.
 * The formula wants separate variance estimates. The coefficients of one fit share one residual variance, and with it their
 * degrees of freedom; so sources of equal finite dof count as one estimate. Where two separate fits happen to have equal dof
 * this errs to the safe side.
 * Infinity when no measured source contributes.
 */
export function effectiveDof(estimate: Estimate, sources: readonly Source[]): number {
  const byDof = new Map<number, number>();
  let total = 0;
  estimate.parts.forEach((part, i) => {
    const { dof } = sources[i]!;
    total += part * part;
    byDof.set(dof, (byDof.get(dof) ?? 0) + part * part);
  });
  let sum = 0;
  for (const [dof, variance] of byDof) if (variance > 0) sum += (variance / total) ** 2 / dof;
  return 1 / sum;
}

/** Half-width of the 95 % interval, in the unit of the estimate: t quantile at the effective degrees of freedom × u (GUM G.3.2). */
export function plusMinus95(estimate: Estimate, sources: readonly Source[]): number {
  const u = standardUncertainty(estimate);
  // Nothing to widen, or nothing known: u itself says so.
  return u > 0 && u < Infinity ? u * studentTQuantile(0.975, effectiveDof(estimate, sources)) : u;
}

/** How much one cause adds to the doubt. */
export interface Contribution {
  /** Stable name of the cause. */
  id: string;
  /** For people. */
  label: string;
  /** Its share of the variance, 0 to 1; all of them sum to 1. */
  share: number;
}

/**
 * What the doubt is made of, largest first. Empty when there is no doubt.
 *
 * @param groupOf puts sources together under one id and label, e.g. the three coordinates of a point
 */
export function contributions(
  estimate: Estimate,
  sources: readonly Source[],
  groupOf: (source: Source) => { id: string; label: string } = (source) => source,
): Contribution[] {
  const groups = new Map<string, Contribution>();
  const total = standardUncertainty(estimate) ** 2;
  if (!(total > 0)) return [];
  estimate.parts.forEach((part, i) => {
    const { id, label } = groupOf(sources[i]!);
    const group = groups.get(id) ?? { id, label, share: 0 };
    group.share += (part * part) / total;
    groups.set(id, group);
  });
  return [...groups.values()].sort((a, b) => b.share - a.share);
}
