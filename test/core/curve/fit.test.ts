import fc from 'fast-check';
import MultivariateLinearRegression from 'ml-regression-multivariate-linear';
import { describe, expect, it } from 'vitest';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import { fitCurve } from '../../../core/curve/fit.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import type { Reading } from '../../../core/readings/reading.js';
import { effectiveDof, plusMinus95 } from '../../../core/uncertainty/combine.js';
import { normal, randomNumbers } from '../driveway/random-car.js';
import { averaged } from './fit-coverage.js';

const strut = (t: number) => -0.6 - 0.016 * t + 1.2e-4 * t * t;

/** Three passes up and down with gaps, zeros, play and scatter. */
function someReadings(seed: number, passes = 3): Reading[] {
  const random = randomNumbers(seed);
  return Array.from({ length: passes }, (_, p) => p).flatMap((p) => {
    const zero = 0.1 * normal(random);
    return Array.from({ length: 30 }, (_, i): Reading => {
      const travel = -40 + 6 * (i % 15);
      const going = i < 15 ? 'up' : 'down';
      const value = strut(travel) + zero + (going === 'up' ? 0.02 : -0.02) + 0.03 * normal(random);
      return { travel, value, pass: `Pass ${p + 1}`, going };
    }).filter(() => random() > 0.2);
  });
}

/* ml-regression-multivariate-linear: normal equations solved by singular values, the passes as columns that sum to zero. */
describe('a fit beside a regression library, on the same readings', () => {
  const readings = someReadings(1);
  const names = ['Pass 1', 'Pass 2', 'Pass 3'];
  const UNIT = 40;

  it.each([1, 2, 3, 5])('has its coefficients, offsets, difference and standard errors (degree %i)', (degree) => {
    const fit = fitCurve(readings, { degree, plain: true });
    const powers = Array.from({ length: degree }, (_, k) => k + 1);
    const design = readings.map(({ travel, pass, going }) => [
      ...powers.map((k) => (travel / UNIT) ** k),
      ...[0, 1].map((p) => Number(pass === names[p]) - Number(pass === names[2])),
      going === 'up' ? 0.5 : -0.5,
    ]);
    const other = new MultivariateLinearRegression(
      design,
      readings.map(({ value }) => [value]),
    );
    const weight = (i: number) => other.weights[i]![0]!;
    const intercept = degree + 3;
    const close = (found: number, expected: number) => expect(found).toBeCloseTo(expected, 9);
    [intercept, ...powers.map((k) => k - 1)].forEach((column, k) => {
      close(fit.powerCoefficients[k]! * UNIT ** k, weight(column));
      close(fit.coefficientSd[k]! * UNIT ** k, other.stdErrors[column]!);
    });
    close(fit.residualSd, other.stdError);
    close(fit.upLessDown!.value, weight(degree + 2));
    close(fit.upLessDown!.standardError, other.stdErrors[degree + 2]!);
    const [first, second, third] = fit.passOffsets;
    close(first!.offset, weight(degree));
    close(second!.offset, weight(degree + 1));
    close(first!.standardError, other.stdErrors[degree]!);
    close(second!.standardError, other.stdErrors[degree + 1]!);
    close(first!.offset + second!.offset + third!.offset, 0);
    const covariance = (i: number, j: number) => other.stdErrorMatrix.get(degree + i, degree + j);
    close(third!.standardError, Math.sqrt(covariance(0, 0) + 2 * covariance(0, 1) + covariance(1, 1)));
    readings.forEach(({ value }, i) => {
      close(fit.residuals[i]!, value - other.predict(design[i]!)[0]!);
    });

    // A change of height, with the library's covariance.
    const curve = curveFrom(fit.curve);
    const step = powers.map((k) => (30 / UNIT) ** k - (-10 / UNIT) ** k);
    let variance = 0;
    for (const i of powers)
      for (const j of powers) variance += step[i - 1]! * step[j - 1]! * other.stdErrorMatrix.get(i - 1, j - 1);
    close(
      curve.change(30, -10),
      step.reduce((sum, by, k) => sum + by * weight(k), 0),
    );
    close(curve.changeStandardError(30, -10), Math.sqrt(variance));
  });

  it('has R² and adjusted R² by their definitions', () => {
    const fit = fitCurve(readings, { degree: 3, plain: true });
    const mean = readings.reduce((sum, { value }) => sum + value, 0) / readings.length;
    const total = readings.reduce((sum, { value }) => sum + (value - mean) ** 2, 0);
    const left = fit.residuals.reduce((sum, residual) => sum + residual ** 2, 0);
    expect(fit.dof).toBe(readings.length - 3 - 1 - 3);
    expect(fit.rSquared).toBeCloseTo(1 - left / total, 12);
    expect(fit.adjustedRSquared).toBeCloseTo(1 - left / fit.dof / (total / (readings.length - 1)), 12);
    expect(fit.candidates[2]).toMatchObject({ degree: 3, dof: fit.dof, adjustedRSquared: fit.adjustedRSquared });
  });

  // Definition: error of the prediction from all other readings ÷ its standard error (Belsley, Kuh and Welsch 1980, 2.1).
  it('has residuals studentised by a fit without the reading', () => {
    const one = readings.filter(({ pass }) => pass === 'Pass 1').map(({ travel, value }) => ({ travel, value }));
    const { studentised } = fitCurve(one, { degree: 2, plain: true });
    const heights = one.map(({ travel }) => travel).sort((a, b) => a - b);
    // Without an end reading the rest says nothing of its height.
    const isInside = (t: number) => t > heights[1]! && t < heights.at(-2)!;
    const inside = one.flatMap(({ travel }, i) => (isInside(travel) ? [i] : []));
    expect(inside.length).toBeGreaterThan(10);
    for (const i of inside) {
      const without = fitCurve(
        one.filter((_, k) => k !== i),
        { degree: 2, plain: true },
      );
      const curve = curveFrom(without.curve);
      const { travel, value } = one[i]!;
      const expected = (value - curve.value(travel)) / Math.hypot(without.residualSd, curve.standardError(travel));
      expect(studentised[i]).toBeCloseTo(expected, 9);
    }
  });
});

describe('the zeros of passes', () => {
  it('leave the curve alone where passes are incomplete, while averaging bends it', () => {
    const all = Array.from({ length: 17 }, (_, i) => -40 + 5 * i);
    const readings = [
      ...all.map((travel) => ({ travel, value: strut(travel) - 0.2, pass: 'whole' })),
      ...all.filter((t) => t > 5).map((travel) => ({ travel, value: strut(travel) + 0.2, pass: 'bump only' })),
    ];
    const truth = strut(25) - strut(0);
    expect(curveFrom(fitCurve(readings).curve).change(25, 0)).toBeCloseTo(truth, 12);
    expect(Math.abs(curveFrom(averaged(readings).curve).change(25, 0) - truth)).toBeGreaterThan(0.1);
  });

  it('count in the doubt of a value, with their own few degrees of freedom, and not at all in that of a change', () => {
    const fit = fitCurve(someReadings(2), { plain: true });
    const { sources } = fit.curve;
    const curve = curveFrom(fit.curve);
    const scatter = Math.sqrt(fit.passOffsets.reduce((sum, { offset }) => sum + offset ** 2, 0) / 2);
    const value = curve.estimate(10);
    expect(value.parts.at(-1)).toBeCloseTo(scatter / Math.sqrt(3), 12);
    expect(sources.at(-1)).toMatchObject({ id: 'zero', dof: 2 });
    expect(effectiveDof(value, sources)).toBeLessThan(3);
    const change = curve.changeEstimate(10, -20);
    expect(change.parts.at(-1)).toBe(0);
    expect(effectiveDof(change, sources)).toBeCloseTo(fit.dof, 9);
    const none = curve.changeEstimate(10, 10);
    expect([none.value, plusMinus95(none, sources)]).toEqual([0, 0]);
  });

  it('are not known from one pass', () => {
    const fit = fitCurve(someReadings(3, 1));
    expect(fit.passOffsets).toEqual([]);
    expect(fit.curve.sources.map(({ id }) => id)).not.toContain('zero');
  });

  it('lie in order of their names, readings without a name in the pass of no name', () => {
    const readings = someReadings(4).map(({ pass, ...rest }) => (pass === 'Pass 2' ? rest : { ...rest, pass: pass! }));
    expect(fitCurve(readings).passOffsets.map(({ pass }) => pass)).toEqual(['', 'Pass 1', 'Pass 3']);
  });
});

describe('up against down', () => {
  it('is told from passes that go both ways', () => {
    const { value, standardError } = fitCurve(someReadings(5)).upLessDown!;
    expect(Math.abs(value - 0.04)).toBeLessThan(3 * standardError);
    expect(standardError).toBeLessThan(0.01);
  });

  it('is not told where each pass goes one way: its zero may be the reason', () => {
    expect(fitCurve(EXAMPLE_READINGS).upLessDown).toBeUndefined();
  });

  it('is not told from one way alone', () => {
    const up = someReadings(6).filter(({ going }, i) => going === 'up' || i % 7 > 0);
    const marked = up.map(({ going, ...rest }) => (going === 'up' ? { ...rest, going } : rest));
    expect(fitCurve(marked).upLessDown).toBeUndefined();
  });
});

describe('repeatability', () => {
  // Two-way analysis of variance without interaction, from its textbook formula.
  it('is the scatter of passes about their heights, their zeros taken off', () => {
    const random = randomNumbers(9);
    const heights = [-30, -10, 0, 20, 45];
    const table = [0.1, -0.2, 0.05, 0].map((zero) => heights.map((t) => strut(t) + zero + 0.05 * normal(random)));
    const readings = table.flatMap((row, p) =>
      row.map((value, i) => ({ travel: heights[i]!, value, pass: `Pass ${p}` })),
    );
    const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    const grand = mean(table.flat());
    const columns = heights.map((_, i) => mean(table.map((row) => row[i]!)));
    let squares = 0;
    for (const row of table) {
      for (const [i, value] of row.entries()) squares += (value - mean(row) - columns[i]! + grand) ** 2;
    }
    const { sd, dof } = fitCurve(readings, { degree: 3 }).repeatability!;
    expect(dof).toBe(12);
    expect(sd).toBeCloseTo(Math.sqrt(squares / 12), 12);
  });

  it('is absent where nothing was repeated', () => {
    const once = EXAMPLE_READINGS.filter(({ pass }) => pass === 'Pass 1');
    expect(fitCurve(once).repeatability).toBeUndefined();
    const onceInAll = EXAMPLE_READINGS.map((reading, i) => ({ ...reading, travel: reading.travel + 0.01 * i }));
    expect(fitCurve(onceInAll).repeatability).toBeUndefined();
  });
});

/** The drift, which passes that go up and down in turn tell. */
const EXTRAS = 1;

describe('outliers', () => {
  it('are none in honest readings', () => {
    expect(fitCurve(EXAMPLE_READINGS).strangers).toEqual([]);
  });

  it.each([3, 20, 48])('hold a reading whose sign was lost, and no other (reading %i)', (index) => {
    const readings = EXAMPLE_READINGS.map((r, i) => (i === index ? { ...r, value: -r.value } : r));
    const fit = fitCurve(readings);
    expect(fit.strangers).toEqual([index]);
    // Told, not removed.
    expect(fit.residuals).toHaveLength(readings.length);
    expect(fit.dof).toBe(readings.length - 3 - EXTRAS - fit.degree);
  });

  it('are found together, though they hide one another', () => {
    const lost = [0, 1, 30, 48];
    const readings = EXAMPLE_READINGS.map((r, i) => (lost.includes(i) ? { ...r, value: -r.value - 0.1 } : r));
    const fit = fitCurve(readings);
    expect(fit.strangers).toEqual(lost);
  });

  it('are a tenth of all readings at most', () => {
    const random = randomNumbers(3);
    const readings = someReadings(8).map((r) =>
      random() < 0.25 ? { ...r, value: r.value + 3 * (random() - 0.5) } : r,
    );
    expect(fitCurve(readings).strangers.length).toBeLessThanOrEqual(readings.length / 10 + 1);
  });

  it('cannot be told of a reading that alone decides its pass', () => {
    const { studentised, strangers } = fitCurve([...EXAMPLE_READINGS, { travel: 10, value: 9, pass: 'alone' }]);
    expect(studentised.at(-1)).toBeNaN();
    expect(strangers).toEqual([]);
  });
});

describe('what comes in another way', () => {
  const series = fc.tuple(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 1, max: 4 }));
  const seeded = { seed: 11, numRuns: 40, endOnFailure: true };

  it('is the same, bit for bit, in any order', () => {
    fc.assert(
      fc.property(series, fc.integer(), ([seed, passes], by) => {
        const readings = someReadings(seed, passes);
        const random = randomNumbers(by);
        const order = readings
          .map((_, i) => ({ i, key: random() }))
          .sort((a, b) => a.key - b.key)
          .map(({ i }) => i);
        const { residuals, studentised, strangers, drift, ...rest } = fitCurve(readings);
        const shuffled = fitCurve(order.map((i) => readings[i]!));
        expect(shuffled).toMatchObject(rest);
        expect(shuffled.drift).toEqual(
          drift && { ...drift, ofReading: Float64Array.from(order, (i) => drift.ofReading[i]!) },
        );
        expect(shuffled.residuals).toEqual(Float64Array.from(order, (i) => residuals[i]!));
        expect(shuffled.studentised).toEqual(Float64Array.from(order, (i) => studentised[i]!));
        expect(shuffled.strangers.map((i) => order[i]!).sort((a, b) => a - b)).toEqual(strangers);
      }),
      seeded,
    );
  });

  it('is the same, bit for bit, by way of inches', () => {
    fc.assert(
      fc.property(series, ([seed, passes]) => {
        const readings = someReadings(seed, passes).map((r, i) => ({ ...r, travel: (10 * r.travel + (i % 3)) / 10 }));
        const back = readings.map((reading) => ({ ...reading, travel: (reading.travel / 25.4) * 25.4 }));
        expect(fitCurve(back)).toEqual(fitCurve(readings));
      }),
      seeded,
    );
  });

  it('has the same changes where the zero of one pass is another', () => {
    fc.assert(
      fc.property(series, fc.double({ min: -5, max: 5, noNaN: true }), ([seed, passes], by) => {
        const readings = someReadings(seed, passes);
        const moved = readings.map((r) => (r.pass === 'Pass 1' ? { ...r, value: r.value + by } : r));
        const [a, b] = [readings, moved].map((list) => curveFrom(fitCurve(list, { degree: 3 }).curve));
        expect(b!.change(25, -5)).toBeCloseTo(a!.change(25, -5), 12);
        expect(b!.changeStandardError(25, -5)).toBeCloseTo(a!.changeStandardError(25, -5), 12);
      }),
      seeded,
    );
  });

  it('scales with the values, and moves with the heights', () => {
    fc.assert(
      fc.property(
        series,
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.integer({ min: -300, max: 300 }),
        ([seed, passes], factor, by) => {
          const readings = someReadings(seed, passes);
          // Of the tape's scale and the gauge's drift the zero and the unit are their own.
          const doubts = { tapeScale: 0, drift: 0 };
          const fit = fitCurve(readings, doubts);
          const other = fitCurve(
            readings.map((r) => ({ ...r, travel: r.travel + by, value: factor * r.value })),
            doubts,
          );
          expect(other.degree).toBe(fit.degree);
          expect(other.strangers).toEqual(fit.strangers);
          expect(other.residualSd / factor).toBeCloseTo(fit.residualSd, 12);
          expect(other.rSquared).toBeCloseTo(fit.rSquared, 12);
          const [a, b] = [curveFrom(fit.curve), curveFrom(other.curve)];
          expect(b.value(by + 12) / factor).toBeCloseTo(a.value(12), 11);
          expect(b.standardError(by + 12) / factor).toBeCloseTo(a.standardError(12), 11);
        },
      ),
      seeded,
    );
  });
});
