import { describe, expect, it } from 'vitest';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import { curveFromCoefficients } from '../../../core/curve/from-coefficients.js';
import { travelForChange } from '../../../core/curve/inverse.js';

/** −0.014 t + 0.0001 t²: turns at 70 mm, where it has changed by −0.49°. */
const curve = curveFrom(
  curveFromCoefficients({ quantity: 'camber', coefficients: [-0.6, -0.014, 1e-4], domain: [-60, 100] }),
);

describe('the travel for a change', () => {
  it('is the root of the curve, by the quadratic formula', () => {
    for (const change of [-0.1, -0.3, -0.48]) {
      const root = (0.014 - Math.sqrt(0.014 ** 2 + 4e-4 * change)) / 2e-4;
      expect(travelForChange(curve, change, 70)).toBeCloseTo(root, 9);
    }
    expect(travelForChange(curve, 0, 70)).toBe(0);
  });
  it('goes the other way as well', () => {
    const travel = travelForChange(curve, 0.2, -60)!;
    expect(travel).toBeLessThan(0);
    expect(curve.change(travel, 0)).toBeCloseTo(0.2, 12);
  });
  it('is undefined for a change that is not reached', () => {
    expect(travelForChange(curve, -0.5, 70)).toBeUndefined();
    expect(travelForChange(curve, 0.1, 70)).toBeUndefined();
  });
});
