import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import type { CurveData } from '../../../core/curve/curve-data.js';
import { turningPoints } from '../../../core/curve/extrema.js';
import { curveFromCoefficients } from '../../../core/curve/from-coefficients.js';

const polynomial = (coefficients: number[], domain: [number, number] = [-100, 100], standardUncertainties?: number[]) =>
  curveFrom(curveFromCoefficients({ coefficients, domain, ...(standardUncertainties && { standardUncertainties }) }));

/** Coefficients of c·Π(t − root), low power first. */
function fromRoots(roots: number[], c: number): number[] {
  let poly = [c];
  for (const root of roots) poly = [0, ...poly].map((above, k) => above - root * (poly[k] ?? 0));
  return poly;
}

const integral = (coefficients: number[]) => [0, ...coefficients.map((c, k) => c / (k + 1))];

function samples(
  value: (t: number) => number,
  slope: (t: number) => number,
  travel: number[],
  parts?: number[][],
): CurveData {
  return {
    kind: 'sampled',
    quantity: 'camber',
    domain: [travel[0]!, travel.at(-1)!],
    sources: (parts?.[0] ?? []).map((_, i) => ({ id: `s${i}`, label: `s${i}`, dof: Infinity })),
    travel: Float64Array.from(travel),
    value: Float64Array.from(travel, value),
    slope: Float64Array.from(travel, slope),
    parts: Float64Array.from((parts ?? []).flat()),
  };
}
const grid = (from: number, to: number, step: number) =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);

describe('turningPoints', () => {
  it('is where a parabola turns, with the doubt of its slope over its bend', () => {
    // t* = −b/(2c): δt = −δb/(2c) + b δc/(2c²), textbook calculus
    const [b, c, ub, uc] = [-0.01, 1e-4, 0.0005, 4e-6];
    const [point, ...others] = turningPoints(polynomial([-0.5, b, c], [-40, 80], [0.1, ub, uc]));
    expect(others).toEqual([]);
    expect(point).toMatchObject({ kind: 'minimum' });
    expect(point!.travel).toBeCloseTo(50, 9);
    expect(point!.value).toBeCloseTo(-0.75, 12);
    expect(Array.from(point!.travelEstimate.parts)).toEqual([
      expect.closeTo(0, 9),
      expect.closeTo(-ub / (2 * c), 6),
      expect.closeTo((b * uc) / (2 * c * c), 6),
    ]);
  });

  it('finds every root of the slope of a polynomial to 1e-9 mm, in order, alternating in kind', () => {
    const roots = fc
      .uniqueArray(fc.integer({ min: -19, max: 19 }), { minLength: 1, maxLength: 5 })
      .map((list) => list.map((n) => n * 5).sort((a, b) => a - b));
    fc.assert(
      fc.property(roots, fc.constantFrom(1, -1), (turns, sign) => {
        const found = turningPoints(polynomial(integral(fromRoots(turns, sign * 1e-4))));
        expect(found).toHaveLength(turns.length);
        found.forEach(({ travel, kind }, i) => {
          expect(Math.abs(travel - turns[i]!)).toBeLessThan(1e-9);
          const slopeAfter = sign * (-1) ** (turns.length - 1 - i);
          expect(kind).toBe(slopeAfter > 0 ? 'minimum' : 'maximum');
        });
      }),
      { seed: 13, numRuns: 300 },
    );
  });

  it('is not where the slope only touches zero, nor at an end, nor on a level line', () => {
    expect(turningPoints(polynomial(integral(fromRoots([7, 7], 1e-5))))).toEqual([]);
    expect(turningPoints(polynomial([0, 0, 1], [0, 10]))).toEqual([]);
    expect(turningPoints(polynomial([0, 0, 1], [-10, 0]))).toEqual([]);
    expect(turningPoints(polynomial([3]))).toEqual([]);
    expect(turningPoints(polynomial([3, 0, 0]))).toEqual([]);
    expect(turningPoints(polynomial([3, 1]))).toEqual([]);
  });

  it('finds the turns of a sampled sine between its samples and on them', () => {
    const w = Math.PI / 40;
    // Extrema of sin(w t): odd multiples of 20 mm; every 2.5 mm puts them on samples, every 3 mm mostly not.
    for (const step of [2.5, 3]) {
      const curve = curveFrom(
        samples(
          (t) => Math.sin(w * t),
          (t) => w * Math.cos(w * t),
          grid(-90, 90, step),
        ),
      );
      const found = turningPoints(curve);
      expect(found.map(({ kind }) => kind)).toEqual(['maximum', 'minimum', 'maximum', 'minimum']);
      found.forEach(({ travel }, i) => {
        expect(Math.abs(travel - (-60 + 40 * i))).toBeLessThan(2e-3);
        expect(Math.abs(curve.slope(travel))).toBeLessThan(1e-12);
      });
    }
  });

  it('counts a turn that falls on a sample once', () => {
    const curve = curveFrom(
      samples(
        (t) => t * t,
        (t) => 2 * t,
        [-10, -5, 0, 5, 10],
      ),
    );
    expect(turningPoints(curve).map(({ travel, kind }) => [travel, kind])).toEqual([[0, 'minimum']]);
  });

  it('sees two turns within one cell', () => {
    // t³ − 3t turns at ±1
    const curve = curveFrom(
      samples(
        (t) => t ** 3 - 3 * t,
        (t) => 3 * t * t - 3,
        [-4, 5],
      ),
    );
    const found = turningPoints(curve);
    expect(found.map(({ kind }) => kind)).toEqual(['maximum', 'minimum']);
    expect(found[0]!.travel).toBeCloseTo(-1, 9);
    expect(found[1]!.travel).toBeCloseTo(1, 9);
  });

  it('keeps to the domain', () => {
    const data = samples(
      (t) => t * t,
      (t) => 2 * t,
      grid(-10, 10, 1),
    );
    expect(turningPoints(curveFrom({ ...data, domain: [2, 8] }))).toEqual([]);
    expect(turningPoints(curveFrom({ ...data, domain: [-0.5, 8] }))).toHaveLength(1);
  });

  it('gives a sampled turn the doubt of its slope over its bend', () => {
    const travel = grid(0, 80, 5);
    // One source tilts the curve by 0.0005°/mm; the bend is 2e-4°/mm², so the turn moves by −2.5 mm.
    const data = samples(
      (t) => 1e-4 * (t - 42) ** 2,
      (t) => 2e-4 * (t - 42),
      travel,
      travel.map((t) => [0.0005 * t]),
    );
    const [point] = turningPoints(curveFrom(data));
    expect(point!.travel).toBeCloseTo(42, 9);
    expect(point!.travelEstimate.parts[0]).toBeCloseTo(-2.5, 6);
  });
});
