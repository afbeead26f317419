import { describe, expect, it } from 'vitest';
import { missed, ownSeeds, standardError, together } from './study-limits.js';

describe('the limits of a study', () => {
  it('standardError is that of the binomial law', () => {
    // By hand: 0.9 of 100 has √(0.9 × 0.1 ÷ 100) = 0.03.
    expect(standardError(0.9, 100)).toBeCloseTo(0.03, 12);
  });

  it('missed names what lies outside, by the limit itself for all of a study, and 1.645 standard errors wider for a sample', () => {
    const claim = { what: 'covered', draws: 100, least: 0.9, most: 0.95 };
    const at = (share: number, isSample: boolean) => missed([{ ...claim, share }], isSample).length;
    expect([0.899, 0.9, 0.95, 0.951].map((share) => at(share, false))).toEqual([1, 0, 0, 1]);
    // 1.645 × 0.03 = 0.0493; 1.645 × √(0.95 × 0.05 ÷ 100) = 0.0358.
    expect([0.85, 0.851, 0.985, 0.986].map((share) => at(share, true))).toEqual([1, 0, 0, 1]);
    expect(at(Number.NaN, true)).toBe(1);
  });

  it('together weighs each claim by its draws, and ownSeeds gives no cell the seed of another', () => {
    const cell = { what: 'cell', least: 0.9 };
    const both = [
      { ...cell, share: 0.8, draws: 10 },
      { ...cell, share: 1, draws: 30 },
    ];
    expect(together('both', both)).toEqual({ what: 'both', share: 0.95, draws: 40, least: 0.9 });
    expect(new Set([0, 1, 2].flatMap(ownSeeds)).size).toBe(9);
  });
});
