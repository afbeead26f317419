import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { effectiveCount, lagOne } from '../../../core/curve/correlation.js';
import { durbinWatson, durbinWatsonChance } from '../../../core/curve/durbin-watson.js';
import misra from '../../reference/nist_strd_misra1a.json' with { type: 'json' };
import lag1 from '../../reference/nist_strd_univariate_lag1.json' with { type: 'json' };
import { normal, randomNumbers } from '../driveway/random-car.js';

const rowsOf = (name: string) =>
  readFileSync(new URL(`../../reference/${name}`, import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .filter((line) => /^\d/.test(line))
    .map((line) => line.split(',').map(Number));
const oneRun = (n: number) => [Array.from({ length: n }, (_, i) => i)];

describe('correlation of neighbours', () => {
  // NIST StRD, univariate: certified to 15 digits; source in the file. NumAcc1 is exact.
  it.each(Object.entries(lag1.datasets))('has the certified lag-1 coefficient of %s', (_, { y, lag1: certified }) => {
    const mean = y.reduce((sum, one) => sum + one, 0) / y.length;
    const about = Float64Array.from(y, (one) => one - mean);
    expect(Math.abs(lagOne(about, oneRun(y.length)) / Number(certified) - 1)).toBeLessThan(1e-8);
  });

  // Derived beside them about the mean; source in the file.
  it('has the Durbin–Watson statistic of the same data', () => {
    for (const data of [lag1.datasets.lew, lag1.datasets.lottery, lag1.datasets.mavro, lag1.datasets.michelson]) {
      const mean = data.y.reduce((sum, one) => sum + one, 0) / data.y.length;
      const d = durbinWatson(
        data.y.map((one) => one - mean),
        oneRun(data.y.length),
      );
      expect(Math.abs(d / data.durbinWatson_about_mean_rederived - 1)).toBeLessThan(1e-8);
    }
  });

  // The bound dL for 14 values and one regressor is 1.045: correlated beyond doubt. Source in the file.
  it('has the statistic of the residuals of NIST’s Misra1a', () => {
    const [b1, b2] = misra.certified.map(Number) as [number, number];
    const residuals = misra.y.map((y, i) => y - b1 * (1 - Math.exp(-b2 * misra.x[i]!)));
    expect(durbinWatson(residuals, oneRun(misra.n))).toBeCloseTo(misra.durbin_watson_in_file_order, 7);
  });

  // Exact variance of a mean of equally spaced values of which each goes on from the one before; source in the file.
  it('leaves so many independent readings, by the exact sum', () => {
    for (const [n, rho, factor, count] of rowsOf('ar1_effective_n.csv')) {
      expect(effectiveCount([n!], rho!)).toBeCloseTo(count!, 8);
      expect(n! / effectiveCount([n!], rho!)).toBeCloseTo(factor!, 10);
    }
  });
});

/** Eigenvectors of the matrix of differences: with them as regressors the statistic is distributed as at one of its bounds. */
const cosine = (n: number, k: number) =>
  Float64Array.from({ length: n }, (_, i) => Math.sqrt(2 / n) * Math.cos((Math.PI * k * (i + 0.5)) / n));

describe('the chance of a Durbin–Watson statistic', () => {
  // 5 % points of the bounds (Savin and White 1977), to five decimals: reached by the smoothest and by the roughest regressors.
  it('is 5 % at all tabled bounds, reached by the models that reach them', () => {
    const rows = rowsOf('durbin_watson_bounds_5pct.csv');
    expect(rows.length).toBeGreaterThan(100);
    for (const [n, k, low, high] of rows as [number, number, number, number][]) {
      const passes = [oneRun(n)];
      const rough = Array.from({ length: k - 1 }, (_, j) => cosine(n, n - 1 - j));
      const smooth = Array.from({ length: k - 1 }, (_, j) => cosine(n, j + 1));
      expect(durbinWatsonChance(low, { q: rough, passes })).toBeCloseTo(0.05, 5);
      expect(durbinWatsonChance(high, { q: smooth, passes })).toBeCloseTo(0.05, 5);
    }
  });

  it('counts a zero for each pass, and runs that are not joined, as simulation does', () => {
    const [first, second, third]: [number[], number[], number[]] = [
      [0, 1, 2, 3, 4],
      [5, 6, 7, 8],
      [9, 10, 11, 12, 13],
    ];
    const passes = [[first, second], [third]];
    const runs = [first, second, third];
    const about = (v: Float64Array) => {
      for (const pass of passes) {
        const rows = pass.flat();
        const mean = rows.reduce((sum, i) => sum + v[i]!, 0) / rows.length;
        for (const i of rows) v[i]! -= mean;
      }
      return v;
    };
    const column = about(Float64Array.from({ length: 14 }, (_, i) => i % 5));
    const length = Math.hypot(...column);
    const q = column.map((one) => one / length);
    const random = randomNumbers(5);
    const drawn = Array.from({ length: 20_000 }, () => {
      const z = about(Float64Array.from({ length: 14 }, () => normal(random)));
      const share = z.reduce((sum, one, i) => sum + one * q[i]!, 0);
      return durbinWatson(
        z.map((one, i) => one - share * q[i]!),
        runs,
      );
    });
    for (const d of [1.2, 1.7, 2.4]) {
      const share = drawn.filter((one) => one <= d).length / drawn.length;
      // Three standard errors.
      const within = 3 * Math.sqrt((share * (1 - share)) / drawn.length);
      expect(Math.abs(durbinWatsonChance(d, { q: [q], passes }) - share)).toBeLessThan(within);
    }
  });

  it('grows from 0 to 1, far out as well, for few readings and for many', () => {
    for (const n of [6, 20, 150, 1000]) {
      const model = { q: [1, 2, 3].map((k) => cosine(n, k)), passes: [oneRun(n)] };
      const chances = Array.from({ length: 41 }, (_, i) => durbinWatsonChance(0.001 + 0.1 * i, model));
      chances.slice(1).forEach((chance, i) => {
        expect(chance).toBeGreaterThanOrEqual(chances[i]! - 1e-6);
      });
      expect([chances[0], chances.at(-1)]).toEqual([expect.closeTo(0, 5), expect.closeTo(1, 5)]);
    }
  });
});
