import { describe, expect, it } from 'vitest';
import { fTail } from '../../../core/math/f-tail.js';
import { studentTQuantile } from '../../../core/math/student-t.js';

describe('the upper tail of the F distribution', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.3, upper critical values of the F distribution: from memory, to the
  // three decimals of that table.
  it.each([
    [0.05, 1, 1, 161.448],
    [0.05, 3, 10, 3.708],
    [0.05, 5, 20, 2.711],
    [0.05, 10, 60, 1.993],
    [0.01, 3, 10, 6.552],
    [0.01, 1, 20, 8.096],
    [0.1, 5, 20, 2.158],
  ])('is %d beyond the critical value of %d and %d degrees of freedom, %d', (level, above, below, critical) => {
    expect(fTail(critical - 5e-4, above, below)).toBeGreaterThan(level);
    expect(fTail(critical + 5e-4, above, below)).toBeLessThan(level);
  });

  it('with two degrees of freedom above is (1 + 2 f/ν)^(−ν/2), which one integrates on paper', () => {
    for (const below of [1, 3, 8.5, 40, 400]) {
      for (const f of [1e-6, 0.3, 1, 7, 120]) {
        const exact = (1 + (2 * f) / below) ** (-below / 2);
        expect(fTail(f, 2, below) / exact).toBeCloseTo(1, 9);
      }
    }
  });

  it('of a square of Student’s t is both its tails', () => {
    for (const dof of [1, 2, 5, 17, 200]) {
      for (const p of [0.6, 0.9, 0.975, 0.999]) {
        expect(fTail(studentTQuantile(p, dof) ** 2, 1, dof)).toBeCloseTo(2 * (1 - p), 10);
      }
    }
  });

  it('is 1 at nothing, and of 1/f with the degrees exchanged the rest', () => {
    expect(fTail(0, 3, 9)).toBe(1);
    for (const f of [0.2, 1, 3.3]) expect(fTail(f, 4, 11) + fTail(1 / f, 11, 4)).toBeCloseTo(1, 12);
  });
});
