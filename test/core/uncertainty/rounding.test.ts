import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundByUncertainty, roundTo } from '../../../core/uncertainty/rounding.js';

describe('roundByUncertainty', () => {
  // From memory: Taylor, An Introduction to Error Analysis, 2nd ed., section 2.2: one significant figure, two when the first is 1.
  it.each([
    [9.82, 0.02385, 9.82, 0.02, 2],
    [6051.78, 30, 6050, 30, -1],
    [92.81, 0.3, 92.8, 0.3, 1],
    [92.81, 3, 93, 3, 0],
    [92.81, 30, 90, 30, -1],
    [1.237, 0.14, 1.24, 0.14, 2],
  ])('writes %d ± %d as %d ± %d', (value, plusMinus, shownValue, shownPlusMinus, decimals) => {
    expect(roundByUncertainty(value, plusMinus, 6)).toEqual({ value: shownValue, plusMinus: shownPlusMinus, decimals });
  });

  it.each([
    ['a ± that rounds up to a first digit of 2 has one digit', 0.0196, 0.02, 2],
    ['a ± that rounds up to 1 has two', 0.0096, 0.01, 3],
    ['a ± just below a power of ten has two', 0.0999, 0.1, 2],
  ])('%s', (_, plusMinus, shown, decimals) => {
    expect(roundByUncertainty(1, plusMinus, 6)).toMatchObject({ plusMinus: shown, decimals });
  });

  it('never goes finer than asked, and never calls a small doubt zero', () => {
    expect(roundByUncertainty(1.23456, 0.0004, 2)).toEqual({ value: 1.23, plusMinus: 0.01, decimals: 2 });
    expect(roundByUncertainty(1.23456, 0, 2)).toEqual({ value: 1.23, plusMinus: 0, decimals: 2 });
  });

  it('passes on a doubt that is not known', () => {
    expect(roundByUncertainty(1.236, NaN, 2)).toEqual({ value: 1.24, plusMinus: NaN, decimals: 2 });
    expect(roundByUncertainty(1.236, Infinity, 2)).toEqual({ value: 1.24, plusMinus: Infinity, decimals: 2 });
  });

  it('moves the value by at most half a unit of its place, the ± to within a third, and changes nothing the second time', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        fc.double({ min: -4, max: 4, noNaN: true }),
        (value, power) => {
          const plusMinus = 10 ** power;
          const once = roundByUncertainty(value, plusMinus, 9);
          const place = 10 ** -once.decimals;
          expect(Math.abs(once.value - value)).toBeLessThanOrEqual(place * 0.5000001);
          // worst case: 0.2499… to 0.2
          expect(Math.abs(once.plusMinus / plusMinus - 1)).toBeLessThan(0.2500001);
          const twice = roundByUncertainty(once.value, once.plusMinus, 9);
          expect(twice.decimals).toBe(once.decimals);
          expect(twice.value).toBeCloseTo(once.value, 9);
          expect(twice.plusMinus).toBeCloseTo(once.plusMinus, 9);
          expect([once.plusMinus / place < 19.5, once.plusMinus / place > 0.5]).toEqual([true, true]);
        },
      ),
      { seed: 7, numRuns: 1000 },
    );
  });
});

describe('roundTo', () => {
  it('rounds halves away from zero on both sides and never gives −0', () => {
    expect([roundTo(2.5, 0), roundTo(-2.5, 0), roundTo(15, -1), roundTo(-15, -1)]).toEqual([3, -3, 20, -20]);
    expect(Object.is(roundTo(-0.004, 2), 0)).toBe(true);
  });
});
