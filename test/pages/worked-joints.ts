import { quantile } from '../bench/in-turn.mjs';
import { jointStudy, TIE_RODS, type TieRod } from '../core/curve/joint-study.js';

/*
 * What the pages say of random invented struts with a lowered joint: the study's own cars, all of them, solved again by core/. That
 * core/ solves them rightly is shown car by car in test/core/curve/joint-study.test.ts, by a solver that shares nothing with it.
 */

const studied = new Map<TieRod, readonly number[]>();
/** mm, ascending. Some seconds each, so only once. */
function drops(tieRod: TieRod): readonly number[] {
  const known = studied.get(tieRod) ?? jointStudy({ tieRod }).drops;
  studied.set(tieRod, known);
  return known;
}

/** By data-name: the median, and the ends between which 95 of 100 lie. */
export const workedJoints = (): Record<string, { unit: string; value: () => number }> =>
  Object.fromEntries(
    TIE_RODS.flatMap((tieRod) =>
      (
        [
          ['', 0.5],
          ['-low', 0.025],
          ['-high', 0.975],
        ] as const
      ).map(([end, share]) => [`joint-${tieRod}${end}`, { unit: 'mm', value: () => quantile(drops(tieRod), share) }]),
    ),
  );
