import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { curveFrom } from '../../../core/curve/curve.js';
import { fitCurve } from '../../../core/curve/fit.js';
import { solveLower, solveUpper, triangularise } from '../../../core/math/qr.js';

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../reference/${name}.json`, import.meta.url), 'utf8'));

/*
 * NIST Statistical Reference Datasets, linear least squares (https://www.itl.nist.gov/div898/strd/), certified to 15 digits; how
 * the copies were read and checked stands in the file.
 */
const { datasets } = read('nist_strd_linear');

/** Digits that agree. */
const digits = (found: number, certified: string): number =>
  -Math.log10(Math.max(Math.abs(found / Number(certified) - 1), 1e-16));

/** The least digits asked of coefficients, and of their standard deviations; 0: certified as exactly 0. */
const ASKED: Record<string, [coefficients: number, deviations: number]> = {
  norris: [12, 12],
  pontius: [11, 12],
  filip: [11, 11],
  wampler1: [9, 0],
  wampler2: [12, 0],
  wampler3: [9, 12],
  wampler4: [9, 12],
  // Residuals of 2.4e7 stand on coefficients of 1: 7 digits are what 16-digit numbers allow (NIST itself grades it "higher").
  wampler5: [7, 12],
};

describe('the fit agrees with NIST’s certified values', () => {
  test.each(Object.entries(ASKED))('%s', (name, [coefficients, deviations]) => {
    const { x, y, certified } = datasets[name];
    const degree = certified.coefficients.length - 1;
    const fit = fitCurve(
      x.map((travel: number, i: number) => ({ travel, value: y[i] })),
      { degree },
    );
    certified.coefficients.forEach((value: string, power: number) => {
      expect(digits(fit.powerCoefficients[power]!, value)).toBeGreaterThan(coefficients);
      const sd = fit.coefficientSd[power]!;
      if (deviations > 0) expect(digits(sd, certified.coefficient_sd[power])).toBeGreaterThan(deviations);
      else expect(sd).toBeLessThan(1e-7);
    });
    expect(fit.dof).toBe(certified.residual_df);
    if (deviations > 0) {
      expect(digits(fit.residualSd, certified.residual_sd)).toBeGreaterThan(9);
      expect(digits(fit.rSquared, certified.r_squared)).toBeGreaterThan(9);
    }
  });

  // Through the origin and with several predictors: no curve, but the same decomposition under it.
  test.each(['noint1', 'noint2', 'longley'])('%s, by the decomposition itself', (name) => {
    const { x, y, certified } = datasets[name];
    const rows: number[][] = x.map((one: number | number[]) => (Array.isArray(one) ? [1, ...one] : [one]));
    const columns = rows[0]!.map((_, j) => Float64Array.from(rows, (row) => row[j]!));
    const turned = Float64Array.from(y as number[]);
    const kept = triangularise(columns, turned);
    expect(kept).toHaveLength(columns.length);
    const b = solveUpper(columns, turned);
    const p = columns.length;
    const rest = turned.slice(p).reduce((sum, one) => sum + one * one, 0);
    const s = Math.sqrt(rest / (rows.length - p));
    certified.coefficients.forEach((value: string, k: number) => {
      expect(digits(b[k]!, value)).toBeGreaterThan(9);
      const unit = Float64Array.from(columns, (_, i) => (i === k ? 1 : 0));
      expect(digits(s * Math.hypot(...solveLower(columns, unit)), certified.coefficient_sd[k])).toBeGreaterThan(9);
    });
  });
});

describe('the fit agrees with the thermometer of GUM H.3 (JCGM 100:2008)', () => {
  const gum = read('gum_h3_thermometer');
  const exact = Object.fromEntries(
    Object.entries(gum.computed_40_digit as Record<string, string>).map(([key, value]) => [key, Number(value)]),
  ) as Record<string, number>;
  const readings = gum.t_degC.map((t: number, i: number) => ({ travel: t - gum.t0_degC, value: gum.b_degC[i] }));
  const fit = fitCurve(readings, { degree: 1 });
  const curve = curveFrom(fit.curve);
  const at = (t: number) => t - gum.t0_degC;

  it('in intercept, slope and their standard uncertainties', () => {
    expect([...fit.powerCoefficients]).toEqual([expect.closeTo(exact.y1!, 12), expect.closeTo(exact.y2!, 13)]);
    expect([...fit.coefficientSd]).toEqual([expect.closeTo(exact.u_y1!, 12), expect.closeTo(exact.u_y2!, 13)]);
    expect(fit.residualSd).toBeCloseTo(exact.s!, 12);
    expect(fit.dof).toBe(gum.published.dof);
  });

  it('in the correction at 24 °C and its uncertainty, which the covariance makes small', () => {
    expect(curve.value(at(24))).toBeCloseTo(exact.b24!, 11);
    expect(curve.standardError(at(24))).toBeCloseTo(exact.u_b24!, 11);
    // Forgetting it: u² = u(y1)² + (t − t0)²·u(y2)².
    const forgotten = Math.hypot(exact.u_y1!, 4 * exact.u_y2!);
    expect(curve.standardError(at(24)) / forgotten).toBeLessThan(0.3);
  });

  it('and says nothing at 30 °C, where nothing was read', () => {
    expect(curve.value(at(30))).toBeNaN();
    // The published figure is an extrapolation: only a test asks for it.
    const wider = curveFrom({ ...fit.curve, domain: [at(20), at(30)] });
    expect(wider.value(at(30))).toBeCloseTo(exact.b30!, 11);
    expect(wider.standardError(at(30))).toBeCloseTo(exact.u_b30!, 11);
    expect(wider.standardError(at(30)) / exact.u_b30_if_covariance_is_wrongly_ignored!).toBeLessThan(0.6);
  });

  it('in a difference of two temperatures, whose common zero cancels', () => {
    const [t, t0] = [at(26), at(22)];
    expect(curve.changeStandardError(t, t0)).toBeCloseTo(4 * exact.u_y2!, 11);
    expect(curve.changeEstimate(t, t)).toEqual({ value: 0, parts: new Float64Array(2) });
  });
});
