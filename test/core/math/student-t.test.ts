import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { studentTQuantile } from '../../../core/math/student-t.js';

const table = (name: string) =>
  readFileSync(new URL(`../../reference/${name}`, import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .filter((line) => !line.startsWith('#'))
    .slice(1)
    .map((line) => line.split(','));

const relative = (value: number, expected: number) => Math.abs(value / expected - 1);

describe('studentTQuantile', () => {
  // Published columns: NIST/SEMATECH e-Handbook 1.3.6.7.2 and 10 CFR 429 Subpart B Appendix A; computed ones to 40 digits, printed to 14.
  it('gives the published tables to their three decimals and the computed ones to 1e-12', () => {
    const levels = [0.9, 0.95, 0.975, 0.99, 0.995];
    let compared = 0;
    for (const row of table('student_t_quantiles.csv')) {
      levels.forEach((p, i) => {
        const t = studentTQuantile(p, Number(row[0]));
        expect(Math.abs(t - Number(row[1 + i])), `published, dof ${row[0]}, p ${p}`).toBeLessThanOrEqual(0.000501);
        expect(relative(t, Number(row[6 + i])), `computed, dof ${row[0]}, p ${p}`).toBeLessThan(1e-12);
        compared++;
      });
    }
    expect(compared).toBe(165);
  });

  // mpmath 1.3.0, 40 digits; see the file's first line.
  it('holds for degrees of freedom that are no integers, near the middle and far out', () => {
    for (const [dof, p, t] of table('student_t_real_dof.csv')) {
      expect(relative(studentTQuantile(Number(p), Number(dof)), Number(t)), `dof ${dof}, p ${p}`).toBeLessThan(1e-11);
    }
  });

  // Normal quantiles as printed in any table of the normal distribution (0.975: 1.959963984540054).
  it('is the normal quantile for infinite degrees of freedom, and near it for many', () => {
    expect(studentTQuantile(0.975, Infinity)).toBeCloseTo(1.959963984540054, 14);
    expect(studentTQuantile(0.995, Infinity)).toBeCloseTo(2.5758293035489, 12);
    // t − z → (z³ + z)/(4ν), Abramowitz and Stegun 26.7.5
    const z = 1.959963984540054;
    expect(studentTQuantile(0.975, 1e7) - z).toBeCloseTo((z ** 3 + z) / 4e7, 13);
  });

  it('matches the closed forms at 1 and 2 degrees of freedom, and mirrors about one half', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 0.49, noNaN: true }),
        fc.double({ min: 1, max: 1e6, noNaN: true }),
        (p, dof) => {
          // Textbook: Cauchy quantile −cot(πp); two degrees of freedom (2p − 1)/√(2p(1 − p)).
          expect(relative(studentTQuantile(p, 1), -1 / Math.tan(Math.PI * p))).toBeLessThan(1e-11);
          expect(relative(studentTQuantile(p, 2), (2 * p - 1) / Math.sqrt(2 * p * (1 - p)))).toBeLessThan(1e-11);
          const upper = studentTQuantile(1 - p, dof);
          expect(relative(-upper, studentTQuantile(1 - (1 - p), dof))).toBeLessThan(1e-14);
        },
      ),
      { seed: 1, numRuns: 200 },
    );
    expect(studentTQuantile(0.5, 3)).toBe(0);
  });

  it('stays finite at probabilities that floating point can barely hold', () => {
    expect(relative(studentTQuantile(1e-300, 1), -1e300 / Math.PI)).toBeLessThan(1e-11);
    expect(studentTQuantile(1e-300, Infinity)).toBeCloseTo(-37.0470963, 6); // scipy 1.17.1, norm.ppf
  });

  it('refuses what is no probability and no number of degrees of freedom', () => {
    for (const [p, dof] of [
      [0, 5],
      [1, 5],
      [-1, 5],
      [NaN, 5],
      [0.9, 0],
      [0.9, -2],
      [0.9, NaN],
    ] as const) {
      expect(() => studentTQuantile(p, dof)).toThrow(RangeError);
    }
  });
});
