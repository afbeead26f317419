import { describe, expect, it } from 'vitest';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import { curveFromCoefficients } from '../../../core/curve/from-coefficients.js';
import { InputError } from '../../../core/quantity/problem.js';

const problems = (input: unknown) => {
  try {
    curveFromCoefficients(input as Parameters<typeof curveFromCoefficients>[0]);
  } catch (error) {
    if (error instanceof InputError) return error.problems.map(({ code, path }) => `${code} ${path}`);
    throw error;
  }
  throw new Error('was accepted');
};

describe('curveFromCoefficients', () => {
  it('takes the low power first, degrees and mm', () => {
    const curve = curveFrom(curveFromCoefficients({ coefficients: [-0.5, -0.01, 1e-4], domain: [-40, 60] }));
    expect(curve.quantity).toBe('camber');
    expect(curve.domain).toEqual([-40, 60]);
    expect(curve.value(30)).toBeCloseTo(-0.5 - 0.3 + 0.09, 14);
    expect(curve.slope(30)).toBeCloseTo(-0.01 + 0.006, 14);
    expect(curve.estimate(30).parts).toHaveLength(0);
  });

  // u² = Σ (t^k u_k)² for independent coefficients (GUM, JCGM 100:2008, eq. 10).
  it('takes the doubt of independent coefficients', () => {
    const data = curveFromCoefficients({
      coefficients: [1, 2, 3],
      domain: [-5, 5],
      quantity: 'toe',
      standardUncertainties: [0.1, 0.02, 0.003],
    });
    const curve = curveFrom(data);
    expect(data.quantity).toBe('toe');
    expect(curve.standardError(4)).toBeCloseTo(Math.hypot(0.1, 0.08, 0.048), 14);
    expect(curve.changeStandardError(4, 1)).toBeCloseTo(Math.hypot(0.06, 0.045), 14);
    expect(data.sources.map(({ id, dof }) => [id, dof])).toEqual([
      ['coefficients.0', Infinity],
      ['coefficients.1', Infinity],
      ['coefficients.2', Infinity],
    ]);
  });

  it('names everything that is wrong, at once', () => {
    expect(
      problems({ coefficients: [1, NaN, 'x'], domain: [10, -10], quantity: 'caster', standardUncertainties: [1, -1] }),
    ).toEqual([
      'not-finite coefficients.1',
      'not-a-number coefficients.2',
      'out-of-range domain.1',
      'wrong-shape quantity',
      'wrong-shape standardUncertainties',
      'out-of-range standardUncertainties.1',
    ]);
    expect(problems({})).toEqual(['missing coefficients', 'wrong-shape domain']);
    expect(problems({ coefficients: [], domain: [0, 1] })).toEqual(['missing coefficients']);
    expect(problems({ coefficients: 'abc', domain: '12' })).toEqual(['wrong-shape coefficients', 'wrong-shape domain']);
    expect(problems({ coefficients: [1], domain: [0, 1], standardUncertainties: 3 })).toEqual([
      'wrong-shape standardUncertainties',
    ]);
  });
});
