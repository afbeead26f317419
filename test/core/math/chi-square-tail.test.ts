import { describe, expect, it } from 'vitest';
import { chiSquareTail } from '../../../core/math/chi-square-tail.js';

/** Upper-tail critical values of the chi-square distribution: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4 (from memory). */
const CRITICAL: readonly (readonly [dof: number, chance: number, value: number])[] = [
  [1, 0.05, 3.841],
  [1, 0.01, 6.635],
  [2, 0.1, 4.605],
  [5, 0.025, 12.833],
  [10, 0.05, 18.307],
  [10, 0.95, 3.94],
  [30, 0.01, 50.892],
  [50, 0.99, 29.707],
  [100, 0.05, 124.342],
];

describe('chiSquareTail', () => {
  it.each(CRITICAL)('of %i degrees of freedom gives the handbook’s %f at its critical value', (dof, chance, value) => {
    expect(chiSquareTail(value, dof)).toBeCloseTo(chance, 4);
  });

  it('of two degrees of freedom is an exponential', () => {
    for (const value of [0.01, 1, 3, 20, 80]) expect(chiSquareTail(value, 2) / Math.exp(-value / 2)).toBeCloseTo(1, 10);
  });

  it('falls from 1 to 0', () => {
    expect([chiSquareTail(0, 7), chiSquareTail(2000, 7)]).toEqual([1, 0]);
  });
});
