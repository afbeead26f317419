import { describe, expect, it } from 'vitest';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import { fitCurve } from '../../../core/curve/fit.js';
import { plusMinus95 } from '../../../core/uncertainty/combine.js';
import gum from '../../reference/gum_h3_thermometer.json' with { type: 'json' };
import nist from '../../reference/nist_strd_linear.json' with { type: 'json' };
import { digits } from '../math/digits.js';

const readings = (x: readonly number[], y: readonly number[]) => x.map((travel, i) => ({ travel, value: y[i]! }));

/*
 * NIST Statistical Reference Datasets, linear regression: certified to 15 digits; source lines in the file. Digits that must be right
 * in the worst coefficient, in the worst of their standard deviations, and in residual SD and R².
 *
 * Wampler's coefficients are 1 while the values reach 3e6 (5: 2.5e7, nearly all of it scatter). One rounding of a value, 1.1e-16 of
 * it, moves the constant by 3e-10 (3e-9): 9 digits (8.5) are all that double precision holds of them. Their standard deviations have
 * no such bound.
 */
describe.each([
  ['norris', 13, 13, 13],
  ['pontius', 12, 13, 13],
  ['filip', 9, 13, 13],
  ['wampler1', 9, undefined, undefined],
  ['wampler2', 12, undefined, undefined],
  ['wampler3', 9, 13, 13],
  ['wampler4', 9, 13, 13],
  ['wampler5', 8.5, 13, 12],
] as const)('%s', (name, forCoefficients, forSd, forFit) => {
  const { x, y, certified } = nist.datasets[name];
  const degree = certified.coefficients.length - 1;
  const fit = fitCurve(readings(x, y), { degree });

  it('has its certified coefficients', () => {
    expect(digits(fit.powerCoefficients, certified.coefficients)).toBeGreaterThan(forCoefficients);
    expect(fit.dof).toBe(certified.residual_df);
  });

  it('has their certified standard deviations, residual SD and R²', () => {
    if (forSd) {
      expect(digits(fit.coefficientSd, certified.coefficient_sd)).toBeGreaterThan(forSd);
      const found = [fit.residualSd, fit.rSquared];
      expect(digits(found, [certified.residual_sd, certified.r_squared])).toBeGreaterThan(forFit);
    } else {
      // The values lie on the polynomial: what is left is their rounding.
      expect(fit.residualSd).toBeLessThan(1e-14 * Math.max(...y));
      for (const sd of fit.coefficientSd) expect(sd).toBeLessThan(1e-9);
      expect(fit.rSquared).toBe(1);
    }
  });
});

describe('values that lie on a polynomial', () => {
  it('accuse no reading for its rounding', () => {
    const { x, y } = nist.datasets.wampler1;
    expect(fitCurve(readings(x, y), { degree: 5 }).strangers).toEqual([]);
  });
});

/*
 * GUM, JCGM 100:2008, annex H.3: a thermometer's correction as a straight line about 20 °C. Source lines in the file. The names of
 * travel and value stand for temperature and correction.
 */
describe('the thermometer of the GUM', () => {
  const about20 = gum.t_degC.map((t) => t - gum.t0_degC);
  const fit = fitCurve(readings(about20, gum.b_degC), { degree: 1, plain: true });
  const exact = gum.computed_40_digit;

  it('has the published line and its standard uncertainties', () => {
    expect(digits(fit.powerCoefficients, [exact.y1, exact.y2])).toBeGreaterThan(11);
    expect(digits(fit.coefficientSd, [exact.u_y1, exact.u_y2])).toBeGreaterThan(10);
    expect(digits([fit.residualSd], [exact.s])).toBeGreaterThan(11);
    expect(fit.dof).toBe(gum.published.dof);
  });

  it('has the published covariance: the curve at 24 °C, and, stretched for this test alone, at 30 °C', () => {
    const curve = curveFrom({ ...fit.curve, domain: [0, 12] });
    expect(digits([curve.value(4), curve.standardError(4)], [exact.b24, exact.u_b24])).toBeGreaterThan(11);
    expect(digits([curve.value(10), curve.standardError(10)], [exact.b30, exact.u_b30])).toBeGreaterThan(10);
    // NIST/SEMATECH e-Handbook 1.3.6.7.2, 9 degrees of freedom: 2.262.
    expect(plusMinus95(curve.estimate(10), fit.curve.sources)).toBeCloseTo(2.262 * Number(exact.u_b30), 5);
  });

  it('is not that of coefficients taken as independent', () => {
    const [u1, u2] = fit.coefficientSd as unknown as [number, number];
    const forgotten = Math.hypot(u1, 10 * u2);
    expect(digits([forgotten], [exact.u_b30_if_covariance_is_wrongly_ignored])).toBeGreaterThan(10);
    expect(forgotten).toBeGreaterThan(1.7 * curveFrom({ ...fit.curve, domain: [0, 12] }).standardError(10));
  });

  it('says nothing of 30 °C, which was not measured', () => {
    const curve = curveFrom(fit.curve);
    expect(curve.value(10)).toBeNaN();
    expect(curve.standardError(10)).toBeNaN();
  });
});
