import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gapTo } from '../../../core/wheel/gaps.js';
import { tyreSection } from '../../../core/wheel/tyre-section.js';
import { independentGap, independentProfile } from '../../reference/independent-tyre-section.js';
import { evenly, SHAPE, shapes } from './gap-cases.js';

describe('the distance to a tyre on its rim', () => {
  it('is that of a search over the surface in space, inside negative, for any shape, pose and point', () => {
    let inside = 0;
    const points = fc.tuple(evenly(-0.7, 0.7), evenly(0, 1.15), evenly(0, 2 * Math.PI));
    fc.assert(
      fc.property(
        shapes,
        fc.tuple(evenly(-100, 100), evenly(-100, 100), evenly(-100, 100)),
        fc.tuple(evenly(-0.8, 0.8), evenly(0.5, 1), evenly(-0.3, 0.3)),
        evenly(-40, 40),
        fc.array(points, { minLength: 4, maxLength: 4 }),
        (shape, middle, way, shift, where) => {
          const size = Math.hypot(...way);
          const spin = [way[0] / size, way[1] / size, way[2] / size] as const;
          const centre = [0, 1, 2].map((i) => middle[i]! + shift * spin[i]!) as [number, number, number];
          const independent = independentGap({ centre, spin, shape });
          const envelope = { section: tyreSection(shape), shift };
          for (const [u, r, angle] of where) {
            // Not quite across the axis, and so anywhere.
            const point = [
              centre[0] + u * shape.sectionWidth * spin[0] + r * shape.freeRadius * Math.cos(angle),
              centre[1] + u * shape.sectionWidth * spin[1],
              centre[2] + r * shape.freeRadius * Math.sin(angle),
            ] as const;
            const gap = gapTo(envelope, { centre: middle, spin }, point);
            expect(Math.abs(gap - independent(point))).toBeLessThan(0.05);
            if (gap < 0) inside++;
          }
        },
      ),
      { seed: 11, numRuns: 120, endOnFailure: true },
    );
    expect(inside).toBeGreaterThan(60);
  });

  it('changes by no more than the point moves', () => {
    const point = fc.tuple(evenly(-200, 200), evenly(0, 450));
    fc.assert(
      fc.property(shapes, point, point, evenly(0, 0.2), (shape, a, b, share) => {
        const section = tyreSection(shape);
        const near = [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])] as const;
        const moved = Math.hypot(near[0] - a[0], near[1] - a[1]);
        expect(Math.abs(section.distance(...near) - section.distance(...a))).toBeLessThanOrEqual(moved + 1e-9);
      }),
      { seed: 12, numRuns: 3000, endOnFailure: true },
    );
  });

  it('changes by no more than each measure of the tyre, however narrow the rim', () => {
    const step = 0.01;
    const keys = ['sectionWidth', 'freeRadius', 'rimRadius', 'rimWidth', 'treadWidth', 'shoulderRadius'] as const;
    fc.assert(
      fc.property(shapes, fc.constantFrom(...keys), evenly(-200, 200), evenly(0, 450), (shape, key, u, r) => {
        if (shape[key] === undefined) return;
        const other = { ...shape, [key]: shape[key] + step };
        const change = tyreSection(other).distance(u, r) - tyreSection(shape).distance(u, r);
        expect(Math.abs(change)).toBeLessThan(2 * step);
      }),
      { seed: 13, numRuns: 5000, endOnFailure: true },
    );
    // Over every width a search may ask for on one rim.
    for (let width = 200; width < 320; width += step) {
      const [a, b] = [width, width + step].map((sectionWidth) =>
        tyreSection({ ...SHAPE, sectionWidth }).distance(130, 245),
      );
      expect(Math.abs(b! - a!)).toBeLessThan(2 * step);
    }
  });

  it('is how far one has gone from where two pieces meet, straight away from both', () => {
    fc.assert(
      fc.property(shapes, evenly(0, 40), (any, away) => {
        // Nothing that stands out further and may be nearer.
        const shape = { ...any, rimProtector: false, rimWidth: Math.min(any.rimWidth, any.sectionWidth - 22) };
        const section = tyreSection(shape);
        const [, shoulder, sidewall] = independentProfile(shape);
        for (const { at } of [shoulder!, sidewall!]) {
          const [[u, r], [u0, r0]] = [at(0), at(1e-6)];
          const [du, dr] = [r - r0, u0 - u].map((x) => x / Math.hypot(u - u0, r - r0));
          expect(Math.abs(section.distance(u + away * du!, r + away * dr!) - away)).toBeLessThan(0.001);
        }
      }),
      { seed: 16, numRuns: 2000, endOnFailure: true },
    );
  });

  it('is the same on both sides', () => {
    fc.assert(
      fc.property(shapes, evenly(0, 250), evenly(0, 450), (shape, u, r) => {
        const section = tyreSection(shape);
        expect(section.distance(-u, r)).toBe(section.distance(u, r));
      }),
      { seed: 14, endOnFailure: true },
    );
  });
});

describe('closed forms', () => {
  const section = tyreSection(SHAPE);
  const envelope = { section, shift: 0 };
  const upright = { centre: [0, 0, 0], spin: [0, 1, 0] } as const;
  const tread = (0.86 * 225) / 2;

  it('over the tread the gap is height less radius, over a plane as over a cylinder', () => {
    for (const y of [-tread + 0.1, -40, 0, 40, tread - 0.1]) {
      expect(gapTo(envelope, upright, [0, y, 352])).toBeCloseTo(352 - 320, 9);
      expect(gapTo(envelope, upright, [0, y, 317])).toBeCloseTo(317 - 320, 9);
      for (const angle of [0.3, 2, 4]) {
        expect(gapTo(envelope, upright, [333 * Math.cos(angle), y, 333 * Math.sin(angle)])).toBeCloseTo(13, 9);
      }
    }
    // The nearest point of a plane over the wheel is the one over its middle.
    const over = [-200, -50, 0, 50, 200].map((x) => gapTo(envelope, upright, [x, 0, 352]));
    expect(Math.min(...over)).toBeCloseTo(32, 9);
  });

  it('beside the bulge it is the lateral distance less half the section width, either side', () => {
    // Common practice: the tyre is widest half way between rim and tread.
    const bulge = (216 + 320) / 2;
    for (const angle of [0, 1, 2.5]) {
      for (const y of [112.5 + 25, -112.5 - 25]) {
        expect(gapTo(envelope, upright, [bulge * Math.cos(angle), y, bulge * Math.sin(angle)])).toBeCloseTo(25, 9);
      }
    }
    expect(section.bulge).toEqual({ u: 112.5, r: bulge });
  });

  it("beside the lip of a rim wider than its tyre it is the lip's, and under the barrel the barrel's", () => {
    const stretched = tyreSection({ ...SHAPE, sectionWidth: 200, rimWidth: 215 });
    const lip = 215 / 2 + 11;
    expect(stretched.halfWidth).toBe(lip);
    for (const r of [205, 216, 233]) expect(stretched.distance(lip + 6, r)).toBeCloseTo(6, 9);
    expect(stretched.distance(30, 201 - 40)).toBeCloseTo(40, 9);
    // Across the corner of the lip.
    expect(stretched.distance(lip + 3, 201 - 4)).toBeCloseTo(5, 9);
  });

  it('round the shoulder it is measured from the centre of its circle', () => {
    const shouldered = tyreSection({ ...SHAPE, treadWidth: 190, shoulderRadius: 9 });
    const away = (angle: number) => shouldered.distance(95 + 20 * Math.sin(angle), 311 + 20 * Math.cos(angle));
    for (const angle of [0, 0.3, 0.8]) expect(away(angle)).toBeCloseTo(11, 9);
  });
});

it('the outline runs along the profile, and reaches as wide and as high as the section says', () => {
  fc.assert(
    fc.property(shapes, (shape) => {
      const section = tyreSection(shape);
      const outline = section.outline();
      for (const [u, r] of outline) expect(Math.abs(section.distance(u, r))).toBeLessThan(1e-6);
      expect(Math.max(...outline.map(([u]) => u))).toBeLessThanOrEqual(section.halfWidth + 1e-9);
      expect(outline[0]).toEqual([0, shape.freeRadius]);
      expect(outline.at(-1)).toEqual([0, section.innerRadius]);
      const widest = independentProfile(shape).flatMap(({ at }) => [at(0)[0], at(1)[0]]);
      expect(section.halfWidth).toBeCloseTo(Math.max(...widest), 6);
    }),
    { seed: 15, numRuns: 1000, endOnFailure: true },
  );
});
