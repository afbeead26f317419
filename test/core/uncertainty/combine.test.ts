import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  add,
  contributions,
  effectiveDof,
  plusMinus95,
  scale,
  standardUncertainty,
  subtract,
} from '../../../core/uncertainty/combine.js';
import type { Estimate, Source } from '../../../core/uncertainty/estimate.js';

const source = (id: string, dof = Infinity): Source => ({ id, label: id, dof });
const estimate = (value: number, ...parts: number[]): Estimate => ({ value, parts: Float64Array.from(parts) });
const part = fc.double({ min: -100, max: 100, noNaN: true });
const some = fc
  .integer({ min: 1, max: 8 })
  .chain((n) =>
    fc.tuple(fc.array(part, { minLength: n, maxLength: n }), fc.array(part, { minLength: n, maxLength: n })),
  );

describe('estimates', () => {
  it('lose what they share when they are subtracted: the difference of a thing and itself is exactly 0 ± 0', () => {
    fc.assert(
      fc.property(some, ([parts]) => {
        const self = estimate(3.7, ...parts);
        const zero = subtract(self, self);
        expect(zero.value).toBe(0);
        expect(standardUncertainty(zero)).toBe(0);
      }),
      { seed: 2 },
    );
  });

  // GUM, JCGM 100:2008, eq. 16 and F.1.2.3: u²(a ± b) = u²(a) + u²(b) ± 2 cov(a, b), with cov = Σ parts.
  it('combine by the law of propagation with covariance', () => {
    fc.assert(
      fc.property(some, ([p, q]) => {
        const a = estimate(1, ...p);
        const b = estimate(2, ...q);
        const covariance = p.reduce((sum, x, i) => sum + x * q[i]!, 0);
        const both = standardUncertainty(a) ** 2 + standardUncertainty(b) ** 2;
        expect(standardUncertainty(add(a, b)) ** 2).toBeCloseTo(both + 2 * covariance, 6);
        expect(standardUncertainty(subtract(a, b)) ** 2).toBeCloseTo(both - 2 * covariance, 6);
      }),
      { seed: 3 },
    );
  });

  it('scale value and doubt alike and keep their signs', () => {
    const half = scale(estimate(4, 3, -4), -0.5);
    expect(half).toEqual(estimate(-2, -1.5, 2));
    expect(standardUncertainty(half)).toBe(2.5);
  });

  it('refuse to meet over different sources', () => {
    expect(() => add(estimate(1, 1), estimate(1, 1, 2))).toThrow(RangeError);
  });
});

describe('effective degrees of freedom', () => {
  // GUM, JCGM 100:2008, G.4.1, example: relative u 0.25 %, 0.57 %, 0.82 % from 10, 5, 15 readings; u = 1.03 %, ν_eff = 19.0
  // (figures from memory; they agree with each other).
  it('are 19.0 in the example of the Guide', () => {
    const sources = [source('X1', 9), source('X2', 4), source('X3', 14)];
    const y = estimate(1, 0.25, 0.57, 0.82);
    expect(standardUncertainty(y)).toBeCloseTo(1.03, 2);
    expect(effectiveDof(y, sources)).toBeCloseTo(19.0, 1);
    // t quantile at 19: 2.093, NIST/SEMATECH e-Handbook 1.3.6.7.2
    expect(plusMinus95(y, sources) / standardUncertainty(y)).toBeCloseTo(2.093, 2);
  });

  // GUM, JCGM 100:2008, H.1.6: end gauge, u in nm 25, 9.7, 2.9, 16.6 with ν 18, 25.6, 50, 2; u = 32 nm; ν_eff = 16.7
  // (figures from memory; they agree with each other).
  it('are 16.7 for the end gauge', () => {
    const sources = [
      source('standard', 18),
      source('comparator', 25.6),
      source('expansion', 50),
      source('temperature', 2),
    ];
    const y = estimate(215, 25, 9.7, 2.9, 16.6);
    expect(standardUncertainty(y)).toBeCloseTo(31.7, 1);
    expect(Math.abs(effectiveDof(y, sources) - 16.7)).toBeLessThan(0.1);
  });

  // GUM H.3.4: a predicted correction from a straight line through 11 points keeps the 9 degrees of freedom of the fit.
  it('of one fit stay those of the fit however its doubt is spread over its coefficients', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0.01, max: 9, noNaN: true }), { minLength: 1, maxLength: 6 }), (parts) => {
        expect(
          effectiveDof(
            estimate(0, ...parts),
            parts.map((_, i) => source(`fit.${i}`, 9)),
          ),
        ).toBeCloseTo(9, 10);
      }),
      { seed: 4 },
    );
  });

  it('are infinite where everything was stated, and the ± is then 1.96 u', () => {
    const sources = [source('a'), source('b')];
    expect(effectiveDof(estimate(0, 3, 4), sources)).toBe(Infinity);
    expect(plusMinus95(estimate(0, 3, 4), sources)).toBeCloseTo(5 * 1.959963984540054, 12);
  });

  it('lie between the least of the sources and their sum', () => {
    const dof = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.tuple(fc.double({ min: 0.01, max: 9, noNaN: true }), dof), {
          minLength: 1,
          selector: ([, n]) => n,
        }),
        (given) => {
          const nu = effectiveDof(
            estimate(0, ...given.map(([p]) => p)),
            given.map(([, n], i) => source(`${i}`, n)),
          );
          const all = given.map(([, n]) => n);
          expect(nu).toBeGreaterThan(Math.min(...all) * (1 - 1e-12));
          expect(nu).toBeLessThan(all.reduce((a, b) => a + b, 0) * (1 + 1e-12));
        },
      ),
      { seed: 5 },
    );
  });
});

describe('plusMinus95', () => {
  it('is exactly zero without doubt, and NaN where the doubt is not known', () => {
    expect(plusMinus95(estimate(1), [])).toBe(0);
    expect(plusMinus95(estimate(1, 0), [source('a', 3)])).toBe(0);
    expect(plusMinus95(estimate(1, NaN), [source('a', 3)])).toBeNaN();
  });
});

describe('contributions', () => {
  it('are shares of the variance, largest first, summing to one', () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 12 }), (parts) => {
        const list = contributions(
          estimate(0, ...parts),
          parts.map((_, i) => source(`${i}`)),
        );
        fc.pre(parts.some((p) => Math.abs(p) > 1e-3));
        expect(list.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
        for (let i = 1; i < list.length; i++) expect(list[i]!.share).toBeLessThanOrEqual(list[i - 1]!.share);
      }),
      { seed: 6 },
    );
    expect(contributions(estimate(0, 3, -4), [source('a'), source('b')])).toEqual([
      { id: 'b', label: 'b', share: 0.64 },
      { id: 'a', label: 'a', share: 0.36 },
    ]);
  });

  it('can be grouped, so that a point counts once', () => {
    const sources = ['ball.y', 'drop', 'ball.z'].map((id) => source(id));
    const list = contributions(estimate(0, 2, 1, 2), sources, ({ id }) => {
      const point = id.split('.')[0]!;
      return { id: point, label: `the ${point}` };
    });
    expect(list.map(({ id, label }) => [id, label])).toEqual([
      ['ball', 'the ball'],
      ['drop', 'the drop'],
    ]);
    expect(list[0]!.share).toBeCloseTo(8 / 9, 14);
  });

  it('are none where there is no doubt', () => {
    expect(contributions(estimate(1, 0, 0), [source('a'), source('b')])).toEqual([]);
  });
});
