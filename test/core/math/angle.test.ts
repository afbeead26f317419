import { describe, expect, it } from 'vitest';
import { acos, asin, DEG } from '../../../core/math/angle.js';

describe('inverse trigonometry', () => {
  it('takes a cosine that rounding carried past one as one', () => {
    expect(acos(1 + 2.3e-16 * 8)).toBe(0);
    expect(acos(-1 - 1e-15)).toBe(Math.PI);
    expect(asin(1 + 1e-15)).toBe(Math.PI / 2);
    expect(asin(-1 - 1e-15)).toBe(-Math.PI / 2);
  });

  it('says NaN where there is no angle, so that out of reach is not mistaken for straight', () => {
    for (const x of [1.001, -1.001, 2, NaN, Infinity]) {
      expect(acos(x)).toBeNaN();
      expect(asin(x)).toBeNaN();
    }
  });

  it('is the plain inverse inside', () => {
    expect(asin(0.5) / DEG).toBeCloseTo(30, 13);
    expect(acos(0.5) / DEG).toBeCloseTo(60, 13);
    expect(180 * DEG).toBe(Math.PI);
  });
});
