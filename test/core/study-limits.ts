/**
 * What a statistical study holds about random cars, with the limit that all of its cases must keep. The bench draws all of them and
 * judges by the limit itself; `npm test` draws about a third by the same code and judges by the limit widened by the standard error
 * that a share has among so few, √(p (1 − p) ÷ n), p the limit (binomial law), times the normal law's one-sided 95 % quantile: a
 * study that lies on its limit fails in one of twenty draws. What is widened much by it is judged of all cells together as well.
 */
export interface Claim {
  what: string;
  /** Between 0 and 1. */
  share: number;
  /** Draws that are independent of one another: places or sets of readings, not the poses of one place. */
  draws: number;
  least?: number;
  most?: number;
}

/** 95 % quantile of the normal law (NIST/SEMATECH e-Handbook 1.3.6.7.1: 1.645). */
const ONE_SIDED_95 = 1.644854;

/** Of a share among so many independent draws, where it is `p` of all. */
export const standardError = (p: number, draws: number): number => Math.sqrt((p * (1 - p)) / draws);

/**
 * The claims that do not hold, each with its figures; none is what a test wants.
 *
 * @param isSample whether a part of the study was drawn; the bench draws all and says false
 */
export function missed(claims: readonly Claim[], isSample: boolean): string[] {
  return claims.flatMap(({ what, share, draws, least, most }) => {
    const slack = (limit: number) => (isSample ? ONE_SIDED_95 * standardError(limit, draws) : 0);
    const isIn =
      (least === undefined || share >= least - slack(least)) && (most === undefined || share <= most + slack(most));
    if (isIn) return [];
    const limits = [least, most].map((limit) => (limit === undefined ? '' : `${limit} (±${slack(limit).toFixed(3)})`));
    return [`${what}: ${share.toFixed(4)} of ${draws} is not within ${limits.join(' to ')}`];
  });
}

/** Several claims of the same kind as one, of all their draws together. They must have been drawn from seeds of their own. */
export function together(what: string, claims: readonly Claim[]): Claim {
  const draws = claims.reduce((sum, claim) => sum + claim.draws, 0);
  const share = claims.reduce((sum, claim) => sum + claim.share * claim.draws, 0) / draws;
  const { least, most } = claims[0]!;
  return { what, share, draws, ...(least !== undefined && { least }), ...(most !== undefined && { most }) };
}

/** Seeds of one cell among several, apart from those of all others: three for each. */
export const ownSeeds = (cell: number): number[] => [1, 2, 3].map((seed) => 3 * cell + seed);
