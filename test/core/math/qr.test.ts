import fc from 'fast-check';
import { CholeskyDecomposition, Matrix, QrDecomposition } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { choleskyOfSum, triangularise, upperInverse } from '../../../core/math/qr.js';
import nist from '../../reference/nist_strd_linear.json' with { type: 'json' };
import { digits } from './digits.js';

/** Coefficients, their standard deviations and that of the residuals, from the decomposition alone. */
function leastSquares(design: readonly (readonly number[])[], y: readonly number[]) {
  const columns = [...design, y].map((column) => Float64Array.from(column));
  const n = design.length;
  triangularise(columns, n);
  const inverse = upperInverse(columns, n);
  const z = columns[n]!;
  const dof = y.length - n;
  const residualSd = Math.sqrt(z.slice(n).reduce((sum, part) => sum + part * part, 0) / dof);
  const row = (i: number) => inverse.map((column) => column[i]!);
  return {
    coefficients: design.map((_, i) => row(i).reduce((sum, part, j) => sum + part * z[j]!, 0)),
    sd: design.map((_, i) => residualSd * Math.hypot(...row(i))),
    residualSd,
  };
}

const random = fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 0, max: 8 })).chain(([n, more]) =>
  fc.array(fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: n + more, maxLength: n + more }), {
    minLength: n,
    maxLength: n,
  }),
);
const seeded = { seed: 5, numRuns: 200, endOnFailure: true };

describe('least squares by reflections', () => {
  // NIST Statistical Reference Datasets, linear regression; source lines in the file.
  it.each(['noint1', 'noint2'] as const)('gives the certified line through the origin of %s to 14 digits', (name) => {
    const { x, y, certified } = nist.datasets[name];
    const { coefficients, sd, residualSd } = leastSquares([x], y);
    expect(digits(coefficients, certified.coefficients)).toBeGreaterThan(14);
    expect(digits(sd, certified.coefficient_sd)).toBeGreaterThan(14);
    expect(digits([residualSd], [certified.residual_sd])).toBeGreaterThan(14);
  });

  // Its columns, as printed, agree to one part in 5e9: double precision leaves 16 − 10 and some more digits.
  it('gives the certified coefficients of longley, six unscaled predictors, to 11 digits', () => {
    const { x, y, certified } = nist.datasets.longley;
    const columns = [y.map(() => 1), ...x[0]!.map((_, k) => x.map((row) => row[k]!))];
    const { coefficients, sd, residualSd } = leastSquares(columns, y);
    expect(digits(coefficients, certified.coefficients)).toBeGreaterThan(11);
    expect(digits(sd, certified.coefficient_sd)).toBeGreaterThan(11);
    expect(digits([residualSd], [certified.residual_sd])).toBeGreaterThan(12);
  });

  // ml-matrix, QrDecomposition.
  it("agrees with another library's solution of random systems, and with every leading part of them", () => {
    fc.assert(
      fc.property(random, (design) => {
        const y = design[0]!.map((_, i) => ((i * 37) % 11) - 5);
        const all = [...design, y].map((column) => Float64Array.from(column));
        triangularise(all, design.length);
        for (let n = 1; n <= design.length; n++) {
          const part = new Matrix(design.slice(0, n)).transpose();
          const other = new QrDecomposition(part);
          if (!other.isFullRank() || Math.abs(all[n - 1]![n - 1]!) < 1) return;
          const expected = other.solve(Matrix.columnVector(y)).to1DArray();
          const inverse = upperInverse(all, n);
          expected.forEach((value, i) => {
            const found = inverse.reduce((sum, column, j) => sum + column[i]! * all.at(-1)![j]!, 0);
            expect(found).toBeCloseTo(value, 6);
          });
        }
      }),
      seeded,
    );
  });

  it('leaves a column of zeros as it is', () => {
    const columns = [new Float64Array(3), Float64Array.of(1, 2, 2)];
    triangularise(columns, 2);
    expect([...columns[0]!]).toEqual([0, 0, 0]);
    expect(Math.abs(columns[1]![0]!)).toBe(1);
    expect(Math.abs(columns[1]![1]!)).toBeCloseTo(Math.sqrt(8), 14);
  });
});

describe('the Cholesky factor of a sum', () => {
  const sumOf = (parts: readonly number[][]) => {
    const a = new Matrix(parts);
    return a.transpose().mmul(a);
  };

  // ml-matrix, CholeskyDecomposition, of the sum itself.
  it("agrees with another library's factor of the summed covariance", () => {
    fc.assert(
      fc.property(random, (columns) => {
        const n = columns.length;
        const parts = columns[0]!.map((_, i) => columns.map((column) => column[i]! / 100));
        const other = new CholeskyDecomposition(sumOf(parts));
        if (!other.isPositiveDefinite() || other.lowerTriangularMatrix.diagonal().some((d) => d < 0.1)) return;
        const expected = other.lowerTriangularMatrix.to1DArray();
        choleskyOfSum(parts, n).forEach((value, i) => {
          expect(value).toBeCloseTo(expected[i]!, 6);
        });
      }),
      seeded,
    );
  });

  it('does not fail for a covariance without full rank, where fewer parts than coefficients are given', () => {
    const factor = choleskyOfSum([[3, 4, 0]], 3);
    expect([...factor].map((value) => Math.round(value * 1e12) / 1e12 + 0)).toEqual([3, 0, 0, 4, 0, 0, 0, 0, 0]);
    expect([...choleskyOfSum([], 2)]).toEqual([0, 0, 0, 0]);
  });
});
