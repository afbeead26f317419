import { describe, expect, it } from 'vitest';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { HOW_SURE } from '../../../core/driveway/driveway.js';
import { six } from '../driveway/coverage.js';

describe('the example car as measured in the driveway', () => {
  const exact = { ...six(EXAMPLE_CORNER), track: 2 * EXAMPLE_CORNER.wheelCentre[1], camber: EXAMPLE_CORNER.camber };

  it('is the car of the hard points, to the millimetre and the half degree', () => {
    expect(Object.keys(EXAMPLE_DRIVEWAY).sort()).toEqual(Object.keys(exact).sort());
    for (const [key, value] of Object.entries(exact)) {
      const measured = EXAMPLE_DRIVEWAY[key as keyof typeof exact]!;
      expect(Math.abs(measured.value - value!)).toBeLessThanOrEqual(0.5);
      if (key !== 'camber') expect(measured.value * (key === 'damperLean' ? 2 : 1)).toSatisfy(Number.isInteger);
    }
  });

  it('is as sure as a tape and an angle gauge', () => {
    const { track, damperLean, armLength } = EXAMPLE_DRIVEWAY;
    expect([track, armLength].map((measured) => measured!.plusMinus)).toEqual([
      HOW_SURE.length.tape,
      HOW_SURE.length.tape,
    ]);
    expect(damperLean!.plusMinus).toBe(HOW_SURE.angle.gauge);
  });
});
