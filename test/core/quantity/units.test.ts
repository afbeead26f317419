import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { QUANTITIES } from '../../../core/quantity/quantities.js';
import { fromShown, METRIC, toShown, type UnitSystem } from '../../../core/quantity/units.js';

const INCH: UnitSystem = { length: 'in', angle: 'arcminutes' };

describe('units', () => {
  // International inch, 25.4 mm exactly; degree of 60 minutes: BIPM, The International System of Units, 9th ed., table 8 and NIST SP 811, B.8.
  it('convert by the exact factors', () => {
    expect(toShown(25.4, 'length', INCH)).toBe(1);
    expect(fromShown(2, 'length', INCH)).toBe(50.8);
    expect(toShown(-0.5, 'angle', INCH)).toBe(-30);
    expect(toShown(7, 'length', METRIC)).toBe(7);
  });

  it('show a rate over 10 mm, or over an inch', () => {
    expect(toShown(-0.01, 'angleRate', METRIC)).toBeCloseTo(-0.1, 15);
    expect(toShown(-0.01, 'angleRate', INCH)).toBeCloseTo(-0.01 * 25.4 * 60, 12);
  });

  it('come back from what is shown to what the API speaks', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        fc.constantFrom('length', 'angle', 'angleRate' as const),
        fc.record({ length: fc.constantFrom('mm', 'in'), angle: fc.constantFrom('degrees', 'arcminutes') }),
        (value, dimension, system) => {
          expect(fromShown(toShown(value, dimension, system), dimension, system)).toBeCloseTo(value, 10);
        },
      ),
      { seed: 8 },
    );
  });
});

describe('quantities', () => {
  it('are signed exactly where their range goes below zero', () => {
    for (const traits of Object.values(QUANTITIES)) {
      expect(traits.signed).toBe(traits.min < 0);
      expect(traits.min).toBeLessThan(traits.max);
    }
  });
});
