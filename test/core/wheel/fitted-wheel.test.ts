import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fittedWheel } from '../../../core/wheel/fitted-wheel.js';
import type { WheelSpec } from '../../../core/wheel/wheel.js';
import { specs } from './specs.js';

/** Invented. The formula's width on 7.5 in is 224.7 mm: see the published sizes in tyre-dimensions.test.ts. */
const WHEEL: WheelSpec = { size: '225/45R17', rimWidthInch: 7.5, offset: 45 };

const problemsOf = (spec: unknown, path?: string) => {
  try {
    fittedWheel(spec as WheelSpec, path);
  } catch (error) {
    return (error as { problems: { path: string; code: string }[] }).problems.map((p) => `${p.path}: ${p.code}`);
  }
  return [];
};

describe('edges, from the hub face, positive outboard', () => {
  it('lie half the section width either side of a plane that is inboard by the offset', () => {
    const { plane, outerEdge, innerEdge, ...w } = fittedWheel(WHEEL);
    expect(plane).toBe(-45);
    expect(outerEdge).toBeCloseTo(-45 + 112.35, 9);
    expect(innerEdge).toBeCloseTo(-45 - 112.35, 9);
    expect(w).toMatchObject({ spec: WHEEL, isMeasured: false, freeRadius: 634.5 / 2 });
    expect(w.sectionWidth).toBeCloseTo(224.7, 9);
    expect(w.largest.sectionWidth).toBeCloseTo(224.7 * 1.04, 9);
    expect(w.largest.freeRadius).toBeCloseTo((432 + 202.5 * 1.04) / 2, 9);
  });

  /** 8 mm of overall width: UN Regulation No. 30, from memory. */
  it('are 4 mm further out and in with a rib that protects the rim', () => {
    const [plain, ribbed] = [fittedWheel(WHEEL), fittedWheel({ ...WHEEL, rimProtector: true })];
    expect(ribbed.outerEdge - plain.outerEdge).toBeCloseTo(4, 9);
    expect(ribbed.innerEdge - plain.innerEdge).toBeCloseTo(-4, 9);
    expect(ribbed.sectionWidth).toBe(plain.sectionWidth);
  });

  /** 11 mm a lip: from memory, common practice. */
  it('are those of the rim’s lips where the tyre is narrower than the rim', () => {
    const { outerEdge, innerEdge } = fittedWheel({ ...WHEEL, rimWidthInch: 9, sectionWidth: 230 });
    expect(outerEdge).toBeCloseTo(-45 + 9 * 12.7 + 11, 9);
    expect(innerEdge).toBeCloseTo(-45 - 9 * 12.7 - 11, 9);
  });
});

describe('a measured section width', () => {
  it('takes the place of the formula, also of the most the standards allow', () => {
    const w = fittedWheel({ ...WHEEL, sectionWidth: 229 });
    expect(w).toMatchObject({ isMeasured: true, sectionWidth: 229, outerEdge: 69.5, largest: { sectionWidth: 229 } });
    expect(w.dimensions.sectionWidth).toBeCloseTo(224.7, 9);
  });

  it.each([9, 6.5])('is needed on a rim of %d in, which is not permitted for this tyre', (rimWidthInch) => {
    expect(problemsOf({ ...WHEEL, rimWidthInch })).toEqual(['sectionWidth: missing']);
    expect(problemsOf({ ...WHEEL, rimWidthInch }, 'after')).toEqual(['after.sectionWidth: missing']);
    expect(fittedWheel({ ...WHEEL, rimWidthInch, sectionWidth: 230 }).sectionWidth).toBe(230);
  });
});

describe('what is wrong', () => {
  it('is all named at once, after the path', () => {
    const all = { size: '225', rimWidthInch: 2, offset: 151, spacer: -1, sectionWidth: 99, treadWidth: 401 };
    expect(problemsOf({ ...all, shoulderRadius: NaN, rimProtector: 'no' }, 'after')).toEqual([
      'after.size: wrong-shape',
      'after.rimWidthInch: out-of-range',
      'after.offset: out-of-range',
      'after.spacer: out-of-range',
      'after.sectionWidth: out-of-range',
      'after.treadWidth: out-of-range',
      'after.shoulderRadius: not-finite',
      'after.rimProtector: wrong-shape',
    ]);
    expect(problemsOf({})).toEqual(['size: missing', 'rimWidthInch: missing', 'offset: missing']);
    expect(problemsOf({ ...WHEEL, rimWidthInch: 9, offset: '45' })).toEqual([
      'offset: not-a-number',
      'sectionWidth: missing',
    ]);
  });

  it.each([
    [undefined, 'wheel: missing'],
    [null, 'wheel: missing'],
    ['225/45R17', 'wheel: wrong-shape'],
  ])('%j is no wheel', (spec, problem) => {
    expect(problemsOf(spec)).toEqual([problem]);
  });

  it.each([
    ['offset', -100, 150],
    ['spacer', 0, 100],
    ['sectionWidth', 100, 400],
    ['treadWidth', 50, 400],
    ['shoulderRadius', 0, 100],
    ['rimWidthInch', 3, 16],
  ])('%s may be %d and %d, and nothing beyond', (key, least, most) => {
    const measured = { ...WHEEL, sectionWidth: 225 };
    for (const value of [least, most]) expect(problemsOf({ ...measured, [key]: value })).toEqual([]);
    for (const value of [least - 0.1, most + 0.1]) {
      expect(problemsOf({ ...measured, [key]: value })).toEqual([`${key}: out-of-range`]);
    }
  });
});

it('a spacer, and as much less offset, move plane and both edges outboard alike and change nothing else', () => {
  fc.assert(
    fc.property(specs, fc.double({ min: 0, max: 50, noNaN: true }), (spec, by) => {
      const { spacer = 0, offset } = spec;
      const before = fittedWheel(spec);
      for (const moved of [
        { ...spec, spacer: spacer + by },
        { ...spec, offset: offset - by },
      ]) {
        const after = fittedWheel(moved);
        for (const key of ['plane', 'outerEdge', 'innerEdge'] as const) {
          expect(after[key] - before[key]).toBeCloseTo(by, 9);
        }
        const still = { plane: 0, outerEdge: 0, innerEdge: 0, spec: 0 };
        expect({ ...after, ...still }).toEqual({ ...before, ...still });
      }
    }),
    { seed: 7, endOnFailure: true },
  );
});

it('a wider rim in the same place moves the edges apart, as far outboard as inboard', () => {
  fc.assert(
    fc.property(specs, (spec) => {
      const [low, high] = fittedWheel(spec).dimensions.permittedRimInch;
      const [narrow, wide] = [low, high].map((rimWidthInch) => fittedWheel({ ...spec, rimWidthInch }));
      const out = wide!.outerEdge - narrow!.outerEdge;
      expect(out).toBeGreaterThan(0);
      expect(narrow!.innerEdge - wide!.innerEdge).toBeCloseTo(out, 9);
    }),
    { seed: 7, endOnFailure: true },
  );
});
