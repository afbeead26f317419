import fc from 'fast-check';
import { expect, it } from 'vitest';
import { compareWheels } from '../../../core/wheel/compare-wheels.js';
import { fittedWheel } from '../../../core/wheel/fitted-wheel.js';
import type { WheelSpec } from '../../../core/wheel/wheel.js';
import { specs } from './specs.js';

/** Invented; the sizes' figures by UN Regulation No. 30 are in test/reference/tyre_dimensions.csv. */
const BEFORE: WheelSpec = { size: '205/55R16 91V', rimWidthInch: 6.5, offset: 45 };
const AFTER: WheelSpec = { size: '225/40R18 88W', rimWidthInch: 8, offset: 38, spacer: 3 };

it('every difference is after less before, outboard positive, worked by hand', () => {
  const c = compareWheels(BEFORE, AFTER);
  // 229.78 − 213.64 mm wide; 637 − 631.5 mm across; planes at 3 − 38 and −45 mm.
  expect(c.sectionWidth).toBeCloseTo(16.14, 9);
  expect(c.freeDiameter).toBeCloseTo(5.5, 9);
  expect(c.rideHeight).toBeCloseTo(2.75, 9);
  expect(c.plane).toBe(10);
  expect(c.outerEdge).toBeCloseTo(10 + 8.07, 9);
  expect(c.innerEdge).toBeCloseTo(10 - 8.07, 9);
  expect(c.gearing).toBeCloseTo(5.5 / 631.5, 12);
  expect(c.loadIndex).toBe(-3);
  expect(c.before).toEqual(fittedWheel(BEFORE));
  expect(c.after).toEqual(fittedWheel(AFTER));
});

it('compares load indices only where both are known', () => {
  expect(compareWheels(BEFORE, { ...AFTER, size: '225/40R18' })).not.toHaveProperty('loadIndex');
  expect(compareWheels({ ...BEFORE, size: '205/55R16' }, AFTER)).not.toHaveProperty('loadIndex');
});

it('names the problems of both at once', () => {
  const bad = [
    { ...BEFORE, offset: 500 },
    { ...AFTER, size: 'wide', rimWidthInch: 0 },
  ] as const;
  expect(() => compareWheels(...bad)).toThrow(
    expect.objectContaining({
      problems: [
        { code: 'out-of-range', path: 'before.offset', value: 500, limit: 150 },
        { code: 'wrong-shape', path: 'after.size', value: 'wide' },
        { code: 'out-of-range', path: 'after.rimWidthInch', value: 0, limit: 3 },
      ],
    }),
  );
  const missing = undefined as unknown as WheelSpec;
  expect(() => compareWheels(missing, AFTER)).toThrow(
    expect.objectContaining({ problems: [{ code: 'missing', path: 'before', value: undefined }] }),
  );
});

it('asks for the measured width of a stretched tyre, and for nothing else', () => {
  const stretched = { ...AFTER, rimWidthInch: 9.5 };
  expect(() => compareWheels(BEFORE, stretched)).toThrow(
    expect.objectContaining({ problems: [{ code: 'missing', path: 'after.sectionWidth', value: undefined }] }),
  );
  expect(compareWheels(BEFORE, { ...stretched, sectionWidth: 236 }).after.dimensions.fit).toBe('stretched');
});

it('swapping the two negates every difference and inverts the gearing', () => {
  fc.assert(
    fc.property(specs, specs, (one, other) => {
      const [there, back] = [compareWheels(one, other), compareWheels(other, one)];
      expect(back.before).toEqual(there.after);
      for (const key of ['sectionWidth', 'freeDiameter', 'outerEdge', 'innerEdge', 'plane', 'rideHeight'] as const) {
        expect(there[key] + back[key]).toBeCloseTo(0, 9);
      }
      expect((1 + there.gearing) * (1 + back.gearing)).toBeCloseTo(1, 12);
      expect('loadIndex' in there).toBe('loadIndex' in back);
      expect((there.loadIndex ?? 0) + (back.loadIndex ?? 0)).toBe(0);
    }),
    { seed: 7, endOnFailure: true },
  );
});

it('a wheel compared with itself differs in nothing', () => {
  fc.assert(
    fc.property(specs, (spec) => {
      const { before, after, ...differences } = compareWheels(spec, { ...spec });
      expect(after).toEqual(before);
      expect(Object.values(differences).every((difference) => difference === 0)).toBe(true);
    }),
    { seed: 7, endOnFailure: true },
  );
});
