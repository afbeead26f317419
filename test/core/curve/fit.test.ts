import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { curveFrom } from '../../../core/curve/curve.js';
import { fitCurve } from '../../../core/curve/fit.js';
import { InputError } from '../../../core/quantity/problem.js';
import { inchesFromMm, mmFromInches } from '../../../core/quantity/units.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import type { Reading } from '../../../core/readings/reading.js';
import { independentRegression } from '../../reference/independent-regression.js';
import { normal, randomNumbers } from '../driveway/random-car.js';
import { OVER_MM, SEEDS, study, takenReadings } from './fit-coverage.js';

/** A cubic, three passes with a zero each; the second lacks its upper half. */
function incompletePasses(seed: number, sd = 0.02): Reading[] {
  const random = randomNumbers(seed);
  return [0.1, -0.15, 0.05].flatMap((zero, i) => {
    const found: Reading[] = [];
    for (let travel = -40; travel <= (i === 1 ? 5 : 60); travel += 5) {
      found.push({ travel, value: truth(travel) + zero + sd * normal(random), pass: `P${i}` });
    }
    return found;
  });
}
const truth = (t: number) => -0.6 - 0.014 * t + 1.1e-4 * t * t + 2e-7 * t ** 3;
const problemsOf = (work: () => unknown) => {
  try {
    work();
  } catch (error) {
    if (error instanceof InputError) return error.problems.map(({ code, path }) => `${code} ${path}`);
    throw error;
  }
  return [];
};

describe('fitCurve', () => {
  test.each([1, 2, 3, 4])(
    'agrees with a general-purpose regression library at degree %i: change, doubt, residual',
    (degree) => {
      const readings = incompletePasses(5);
      const fit = fitCurve(readings, { degree });
      const other = independentRegression(readings, degree);
      const curve = curveFrom(fit.curve);
      expect(fit.dof).toBe(other.dof);
      expect(fit.residualSd).toBeCloseTo(other.residualSd, 12);
      expect(fit.rSquared).toBeCloseTo(other.rSquared, 12);
      for (const over of [-30, 10, 25, 50]) {
        const { value, standardError } = other.change(over, 0);
        expect(curve.change(over, 0)).toBeCloseTo(value, 11);
        expect(curve.changeStandardError(over, 0)).toBeCloseTo(standardError, 11);
      }
    },
  );

  it('keeps apart what passes’ zeros and the curve do, where a plain mean does not', () => {
    const exact = incompletePasses(1, 0);
    const curve = curveFrom(fitCurve(exact, { degree: 3 }).curve);
    const heights = [...new Set(exact.map(({ travel }) => travel))];
    const means = heights.map((travel) => {
      const values = exact.filter((one) => one.travel === travel).map(({ value }) => value);
      return { travel, value: values.reduce((sum, one) => sum + one, 0) / values.length };
    });
    const averaged = curveFrom(fitCurve(means, { degree: 3 }).curve);
    const change = truth(50) - truth(0);
    expect(curve.change(50, 0)).toBeCloseTo(change, 10);
    expect(Math.abs(averaged.change(50, 0) - change)).toBeGreaterThan(0.05);
  });

  it('gives each pass its zero to the mean of all, and puts that scatter into the level and not into changes', () => {
    const fit = fitCurve(incompletePasses(2, 1e-6), { degree: 3 });
    expect(fit.passOffsets.map(({ pass, count, offset }) => [pass, count, Number(offset.toFixed(4))])).toEqual([
      ['P0', 21, 0.1],
      ['P1', 10, -0.15],
      ['P2', 21, 0.05],
    ]);
    const curve = curveFrom(fit.curve);
    // SD of 0.1, −0.15, 0.05 over √3.
    expect(fit.zeroSd).toBeCloseTo(0.13229 / Math.sqrt(3), 4);
    expect(curve.standardError(10)).toBeCloseTo(fit.zeroSd, 6);
    expect(curve.changeStandardError(50, 0)).toBeLessThan(1e-5);
    expect(curve.changeEstimate(20, 20).parts.every((part) => part === 0)).toBe(true);
  });

  it('tells up from down where one pass goes both ways, and says nothing where it cannot', () => {
    const both: Reading[] = (['up', 'down'] as const).flatMap((going) =>
      Array.from({ length: 15 }, (_, i) => ({
        travel: i * 5 - 30,
        value: truth(i * 5 - 30) + (going === 'up' ? 0.03 : -0.03) + (i % 2 ? 0.001 : -0.001),
        pass: 'P',
        going,
      })),
    );
    const fit = fitCurve(both, { degree: 3 });
    expect(fit.upLessDown!.value).toBeCloseTo(0.06, 6);
    expect(fit.residualSd).toBeLessThan(0.0012);
    expect(fitCurve(EXAMPLE_READINGS).upLessDown).toBe(undefined);
  });

  it('flags a reading that does not belong and keeps it in', () => {
    const readings = incompletePasses(3);
    readings[7] = { ...readings[7]!, value: -readings[7]!.value };
    const fit = fitCurve(readings);
    expect(fit.strangers).toEqual([7]);
    expect(fit.residuals).toHaveLength(readings.length);
    expect(fitCurve(incompletePasses(3)).strangers).toEqual([]);
  });

  it('takes the scatter of repeated heights as repeatability, the zeros of their passes off', () => {
    const fit = fitCurve(incompletePasses(11, 0.02), { degree: 3 });
    expect(fit.repeatability!.sd).toBeGreaterThan(0.014);
    expect(fit.repeatability!.sd).toBeLessThan(0.026);
    expect(fitCurve(EXAMPLE_READINGS.filter(({ pass }) => pass === 'Pass 1')).repeatability).toBe(undefined);
  });

  it('names everything that keeps it from fitting, at once', () => {
    const good = { travel: 0, value: 1 };
    expect(problemsOf(() => fitCurve('x' as never))).toEqual(['wrong-shape readings']);
    expect(
      problemsOf(() => fitCurve([good, { travel: Number.NaN, value: '1' } as never, {} as never], { degree: 0 })),
    ).toEqual([
      'out-of-range degree',
      'not-finite readings.1.travel',
      'not-a-number readings.1.value',
      'missing readings.2.travel',
      'missing readings.2.value',
    ]);
    expect(problemsOf(() => fitCurve([]))).toEqual(['too-few readings']);
    expect(problemsOf(() => fitCurve([good, good, good]))).toEqual(['too-few readings']);
    expect(problemsOf(() => fitCurve([good, { travel: 5, value: 1 }], { degree: 1 }))).toEqual(['too-few readings']);
    const four = [0, 5, 10, 15].map((travel) => ({ travel, value: travel % 2 }));
    expect(problemsOf(() => fitCurve(four, { degree: 4 }))).toEqual(['too-few readings']);
    expect(problemsOf(() => fitCurve(four, { degree: 3 }))).toEqual(['out-of-range degree']);
    expect(fitCurve(four, { degree: 2 }).dof).toBe(1);
  });

  it('draws nothing outside the readings', () => {
    const { curve } = fitCurve(incompletePasses(4));
    expect(curve.domain).toEqual([-40, 60]);
    expect(curveFrom(curve).value(60.1)).toBeNaN();
  });

  const anyReadings = fc
    .record({ seed: fc.integer({ min: 1, max: 1e6 }), order: fc.infiniteStream(fc.nat()) })
    .map(({ seed, order }) => {
      const { readings } = takenReadings(randomNumbers(seed));
      const keys = readings.map(() => order.next().value as number);
      const shuffled = readings.map((_, i) => i).sort((a, b) => keys[a]! - keys[b]! || a - b);
      return { readings, shuffled };
    });

  it('does not depend on the order of readings, not in the last bit', () => {
    fc.assert(
      fc.property(anyReadings, ({ readings, shuffled }) => {
        const fit = fitCurve(readings);
        const other = fitCurve(shuffled.map((i) => readings[i]!));
        expect(other.curve).toEqual(fit.curve);
        expect(other.passOffsets).toEqual(fit.passOffsets);
        expect([...other.residuals]).toEqual(shuffled.map((i) => fit.residuals[i]!));
      }),
      { numRuns: 30, endOnFailure: true },
    );
  });

  it('takes a shift of one pass as that pass’s zero: the curve’s changes stay', () => {
    fc.assert(
      fc.property(anyReadings, fc.double({ min: -2, max: 2, noNaN: true }), ({ readings }, shift) => {
        const degree = 3;
        const moved = readings.map((one) => (one.pass === '1' ? { ...one, value: one.value + shift } : one));
        const [before, after] = [readings, moved].map((some) => curveFrom(fitCurve(some, { degree }).curve));
        expect(after!.change(20, -10)).toBeCloseTo(before!.change(20, -10), 10);
        expect(after!.changeStandardError(20, -10)).toBeCloseTo(before!.changeStandardError(20, -10), 10);
      }),
      { numRuns: 30, endOnFailure: true },
    );
  });

  it('is the same for readings that went through inches and back', () => {
    fc.assert(
      fc.property(anyReadings, ({ readings }) => {
        const back = readings.map((one) => ({ ...one, travel: mmFromInches(inchesFromMm(one.travel)) }));
        expect(curveFrom(fitCurve(back).curve).change(25, 0)).toBeCloseTo(
          curveFrom(fitCurve(readings).curve).change(25, 0),
          10,
        );
      }),
      { numRuns: 20, endOnFailure: true },
    );
  });
});

describe('the 95 % band of a change, of readings taken on random linkages', () => {
  test.each(SEEDS)('holds the truth in 93 to 97 of 100, seed %i', (seed) => {
    const { covered } = study(seed, 600);
    OVER_MM.forEach((_, i) => {
      // 600 cars: a standard error of 0.9 %.
      expect(covered[i]).toBeGreaterThan(0.93);
      expect(covered[i]).toBeLessThan(0.975);
    });
  });

  it('is a quarter narrower than that of plain means, which carry the passes’ zeros along', () => {
    const [fitted, averaged] = [study(1, 300, { degree: 3 }), study(1, 300, { degree: 3 }, true)];
    expect(averaged.plusMinus[0]! / fitted.plusMinus[0]!).toBeGreaterThan(1.2);
    expect(averaged.covered[1]).toBeLessThan(fitted.covered[1]!);
  });
});
