import { describe, expect, it } from 'vitest';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import { type FitOptions, fitCurve } from '../../../core/curve/fit.js';
import { InputError } from '../../../core/quantity/problem.js';
import { MOST_READINGS, type Reading } from '../../../core/readings/reading.js';

const line = (heights: readonly number[], pass?: string): Reading[] =>
  heights.map((travel, i) => ({ travel, value: -0.01 * travel + 0.01 * (i % 2), ...(pass && { pass }) }));

function problemsOf(readings: unknown, options?: unknown) {
  try {
    fitCurve(readings as Reading[], options as FitOptions);
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  throw new Error('Nothing was thrown.');
}

describe('what cannot be fitted is refused, with its place', () => {
  it('names every wrong field at once', () => {
    const readings = [
      { travel: 0, value: NaN },
      { travel: '5', value: 1 },
      null,
      { value: 1, travel: Infinity, pass: 3, going: 'left' },
      { travel: 1e300, value: -1e10 },
      {},
    ];
    expect(problemsOf(readings, { degree: 2.5, maxDegree: 11, quantity: 'caster' })).toEqual([
      { code: 'wrong-shape', path: 'quantity', value: 'caster' },
      { code: 'wrong-shape', path: 'degree', value: 2.5 },
      { code: 'out-of-range', path: 'maxDegree', value: 11, limit: 10 },
      { code: 'not-finite', path: 'readings.0.value', value: NaN },
      { code: 'not-a-number', path: 'readings.1.travel', value: '5' },
      { code: 'wrong-shape', path: 'readings.2', value: null },
      { code: 'not-finite', path: 'readings.3.travel', value: Infinity },
      { code: 'wrong-shape', path: 'readings.3.pass', value: 3 },
      { code: 'wrong-shape', path: 'readings.3.going', value: 'left' },
      { code: 'out-of-range', path: 'readings.4.travel', value: 1e300, limit: 1e9 },
      { code: 'out-of-range', path: 'readings.4.value', value: -1e10, limit: -1e9 },
      { code: 'missing', path: 'readings.5.travel', value: undefined },
      { code: 'missing', path: 'readings.5.value', value: undefined },
    ]);
  });

  it.each([
    ['no list', undefined, { code: 'wrong-shape', path: 'readings', value: undefined }],
    ['a hole', Object.assign(line([0, 5, 10]), { length: 4 }), { code: 'wrong-shape', path: 'readings.3' }],
    ['none', [], { code: 'too-few', path: 'readings', value: 0, limit: 3 }],
    ['two', line([0, 10]), { code: 'too-few', path: 'readings', value: 2, limit: 3 }],
    ['two passes of two', [...line([0, 10], 'a'), ...line([0], 'b')], { path: 'readings', value: 3, limit: 4 }],
    [
      'more than are taken',
      line(Array.from({ length: MOST_READINGS + 1 }, (_, i) => i)),
      { code: 'out-of-range', path: 'readings', value: MOST_READINGS + 1, limit: MOST_READINGS },
    ],
    ['one height', line([7, 7, 7, 7, 7]), { path: 'readings', value: 1, limit: 2, other: 'travel' }],
    [
      'a height for each pass',
      [...line([0, 0, 0], 'a'), ...line([9, 9, 9], 'b')],
      { code: 'too-few', path: 'readings', value: 1, limit: 2, other: 'travel' },
    ],
  ])('%s', (_, readings, expected) => {
    const problems = problemsOf(readings);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject(expected);
  });

  it('a degree that heights, or readings, do not tell, with the highest that they do', () => {
    const heights = [0, 10, 20];
    const refused = (readings: Reading[], degree: number) => problemsOf(readings, { degree });
    expect(refused(line([...heights, ...heights, ...heights]), 3)).toEqual([
      { code: 'out-of-range', path: 'degree', value: 3, limit: 2 },
    ]);
    // Nothing would be left to judge it by.
    expect(refused(line(heights), 2)).toEqual([{ code: 'out-of-range', path: 'degree', value: 2, limit: 1 }]);
    for (const degree of [0, -1, NaN])
      expect(refused(line(heights), degree)[0]).toMatchObject({ path: 'degree', limit: 1 });
  });

  it('passes without a height in common are joined by the curve, as far as they can be', () => {
    const value = (t: number) => 0.02 * t + 1e-3 * t * t;
    const of = (heights: number[], zero: number, pass: string) =>
      heights.map((travel) => ({ travel, value: value(travel) + zero, pass }));
    // Three heights and two heights: two curvatures' worth of slopes, so a cubic at most.
    const readings = [...of([-30, -20, -10, -10], 0.1, 'droop'), ...of([10, 20, 20], -0.1, 'bump')];
    const fit = fitCurve(readings, { degree: 2 });
    expect(curveFrom(fit.curve).change(20, -30)).toBeCloseTo(value(20) - value(-30), 12);
    expect(fit.candidates.map(({ degree }) => degree)).toEqual([1, 2, 3]);
    expect(problemsOf(readings, { degree: 4 })).toMatchObject([{ path: 'degree', limit: 3 }]);
  });
});

describe('the degrees that are tried', () => {
  const readings = line(Array.from({ length: 40 }, (_, i) => 2 * i - 40));

  it('end at six, or where it is said, and reach what is asked', () => {
    const last = (options: FitOptions) => fitCurve(readings, options).candidates.at(-1)!.degree;
    expect(last({})).toBe(6);
    expect(last({ maxDegree: 3 })).toBe(3);
    expect(last({ degree: 8 })).toBe(8);
    expect(fitCurve(readings, { maxDegree: 1 }).degree).toBe(1);
    expect(fitCurve(readings, { degree: 5, maxDegree: 2 }).degree).toBe(5);
  });

  it('end in a choice one above the least criterion', () => {
    for (const count of [20, 90]) {
      const { candidates, degree } = fitCurve(line(Array.from({ length: count }, (_, i) => i)));
      const best = candidates.reduce((a, b) => (b.criterion < a.criterion ? b : a));
      expect(degree).toBe(best.degree + 1);
    }
  });

  it('have AICc by its formula for criterion', () => {
    const fit = fitCurve(readings);
    const { dof, residualSd, criterion } = fit.candidates[1]!;
    const k = 4;
    // Hurvich and Tsai 1989, up to a constant: n ln(RSS/n) + 2k + 2k(k + 1)/(n − k − 1); k counts the variance.
    const n = readings.length;
    expect(criterion).toBeCloseTo(
      n * Math.log((residualSd ** 2 * dof) / n) + 2 * k + (2 * k * (k + 1)) / (n - k - 1),
      9,
    );
  });

  it('have no criterion where too few readings are left, and the curve still a band', () => {
    const fit = fitCurve(line([0, 10, 20, 30]));
    expect(fit.candidates.map(({ criterion }) => criterion)).toEqual([NaN, NaN]);
    expect(curveFrom(fit.curve).standardError(10)).toBeGreaterThan(0);
  });

  it('give values without any scatter, even zeros, as they are', () => {
    const zeros = fitCurve(readings.map(({ travel }) => ({ travel, value: 0 })));
    expect(curveFrom(zeros.curve).value(3)).toBe(0);
    expect(zeros.residualSd).toBe(0);
    expect(zeros.rSquared).toBeNaN();
    expect(zeros.strangers).toEqual([]);
  });
});
