import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import type { CurveData } from '../../../core/curve/curve-data.js';
import { InputError } from '../../../core/quantity/problem.js';
import { plusMinus95 } from '../../../core/uncertainty/combine.js';
import type { Source } from '../../../core/uncertainty/estimate.js';

const SOURCES = [
  { id: 'fit.0', label: 'first coefficient', dof: 9 },
  { id: 'fit.1', label: 'second coefficient', dof: 9 },
];

/** Camber like a strut's: −0.5° at reference height, −0.01°/mm there, turning back near 50 mm. */
const strut = (t: number) => -0.5 - 0.01 * t + 1e-4 * t * t;
const strutSlope = (t: number) => -0.01 + 2e-4 * t;

function sampled(
  travel: number[],
  value: (t: number) => number,
  slope: (t: number) => number,
  parts: ((t: number) => number)[] = [],
): CurveData & { kind: 'sampled' } {
  return {
    kind: 'sampled',
    quantity: 'camber',
    domain: [travel[0]!, travel.at(-1)!],
    sources: parts.map((_, i) => ({ id: `s${i}`, label: `s${i}`, dof: Infinity })),
    travel: Float64Array.from(travel),
    value: Float64Array.from(travel, value),
    slope: Float64Array.from(travel, slope),
    parts: Float64Array.from(travel.flatMap((t) => parts.map((part) => part(t)))),
  };
}

const KNOTS = [-40, -17, 0, 3, 20, 60];

describe('a polynomial curve', () => {
  // GUM, JCGM 100:2008, H.3: correction of a thermometer, a straight line about 20 °C, predicted at 30 °C. Source in the file.
  const gum = JSON.parse(readFileSync(new URL('../../reference/gum_h3_thermometer.json', import.meta.url), 'utf8'));
  const digits = Object.fromEntries(Object.entries(gum.computed_40_digit).map(([key, text]) => [key, Number(text)]));
  const {
    y1,
    y2,
    u_y1,
    u_y2,
    r,
    b30,
    u_b30,
    b24,
    u_b24,
    u_b30_if_covariance_is_wrongly_ignored: wrong,
  } = digits as Record<string, number>;
  const line = (correlation: number) =>
    curveFrom({
      kind: 'polynomial',
      quantity: 'camber',
      domain: [15, 35],
      measured: [21.521, 26.511],
      sources: SOURCES,
      centre: 20,
      scale: 1,
      coefficients: Float64Array.of(y1!, y2!),
      factor: Float64Array.of(u_y1!, 0, correlation * u_y2!, u_y2! * Math.sqrt(1 - correlation ** 2)),
    });

  it('predicts the correction of the thermometer and its uncertainty at 30 °C', () => {
    const curve = line(r!);
    expect(curve.value(30)).toBeCloseTo(b30!, 12);
    expect(curve.standardError(30)).toBeCloseTo(u_b30!, 10);
    expect(curve.value(24)).toBeCloseTo(b24!, 12);
    expect(curve.standardError(24)).toBeCloseTo(u_b24!, 10);
    // As printed.
    expect(curve.value(30).toFixed(4)).toBe(gum.published.b_at_30_degC.toFixed(4));
    expect(curve.standardError(30).toFixed(4)).toBe(gum.published.u_b_at_30_degC.toFixed(4));
    // dof 9, two-sided 95 %: 2.262, NIST/SEMATECH e-Handbook 1.3.6.7.2
    expect(plusMinus95(curve.estimate(30), curve.data.sources) / u_b30!).toBeCloseTo(2.262, 3);
  });

  it('would be far off without the covariance of its coefficients', () => {
    expect(line(0).standardError(30)).toBeCloseTo(wrong!, 10);
    expect(line(r!).standardError(30)).toBeLessThan(0.6 * wrong!);
  });

  it('has a change whose doubt is that of the slope alone, and none at all over no distance', () => {
    const curve = line(r!);
    expect(curve.changeStandardError(30, 22)).toBeCloseTo(8 * u_y2!, 12);
    expect(curve.change(30, 22)).toBeCloseTo(8 * y2!, 12);
    expect(curve.slopeEstimate(28).value).toBe(y2);
    expect(curve.change(23.7, 23.7)).toBe(0);
    expect(curve.changeStandardError(23.7, 23.7)).toBe(0);
    expect(Math.hypot(...curve.changeEstimate(23.7, 23.7).parts)).toBe(0);
  });

  // GUM H.3.6: a common offset of all readings, the file's systematic variant.
  it('takes an uncertain level into its values, not into slope or changes', () => {
    const { u_common_offset_degC: level, u_y1_combined_degC: combined } = gum.systematic_variant_H_3_6;
    const { data } = line(r!);
    const zero = { id: 'zero', label: 'common offset', dof: Infinity };
    const curve = curveFrom({ ...data, sources: [...SOURCES, zero], effects: Float64Array.of(level, 0) } as CurveData);
    expect(curve.standardError(20)).toBeCloseTo(Number(combined), 12);
    expect(Math.hypot(...curve.slopeEstimate(20).parts)).toBeCloseTo(u_y2!, 12);
    expect(curve.changeEstimate(30, 22).parts[2]).toBe(0);
    expect(curve.changeStandardError(30, 22)).toBeCloseTo(8 * u_y2!, 12);
    const withEffects = (sources: Source[], ...effects: number[]) =>
      curveFrom({ ...data, sources, effects: Float64Array.from(effects) } as CurveData);
    expect(() => withEffects(SOURCES, level, 0)).toThrow('effects');
    expect(() => withEffects([...SOURCES, zero], NaN, 0)).toThrow('effects.0');
    expect(() => withEffects([...SOURCES, zero, zero], level, 0)).toThrow('effects');
  });

  it('gives the same however it is centred and scaled', () => {
    const plain = curveFrom({
      kind: 'polynomial',
      quantity: 'camber',
      domain: [-40, 60],
      sources: [],
      centre: 0,
      scale: 1,
      coefficients: Float64Array.of(-0.5, -0.01, 1e-4),
      factor: new Float64Array(),
    });
    const moved = curveFrom({
      kind: 'polynomial',
      quantity: 'camber',
      domain: [-40, 60],
      sources: [],
      centre: 10,
      scale: -50,
      coefficients: Float64Array.of(strut(10), -50 * strutSlope(10), 2500 * 1e-4),
      factor: new Float64Array(),
    });
    for (const t of [-40, 0, 10, 33.3, 60]) {
      expect(plain.value(t)).toBeCloseTo(strut(t), 13);
      expect(moved.value(t)).toBeCloseTo(strut(t), 13);
      expect(plain.slope(t)).toBeCloseTo(strutSlope(t), 13);
      expect(moved.slope(t)).toBeCloseTo(strutSlope(t), 13);
    }
    expect(plain.standardError(5)).toBe(0);
    expect(plain.estimate(5).parts).toHaveLength(0);
  });
});

describe('a sampled curve', () => {
  const cubic = (t: number) => 0.2 - 0.03 * t + 2e-4 * t ** 2 + 5e-6 * t ** 3;
  const cubicSlope = (t: number) => -0.03 + 4e-4 * t + 15e-6 * t ** 2;

  // A cubic is its own Hermite interpolant (any textbook of numerical analysis).
  it('reproduces a cubic and its slope, and the samples exactly', () => {
    const curve = curveFrom(sampled(KNOTS, cubic, cubicSlope));
    fc.assert(
      fc.property(fc.double({ min: -40, max: 60, noNaN: true }), (t) => {
        expect(curve.value(t)).toBeCloseTo(cubic(t), 12);
        expect(curve.slope(t)).toBeCloseTo(cubicSlope(t), 12);
      }),
      { seed: 11 },
    );
    for (const t of KNOTS) expect([curve.value(t), curve.slope(t)]).toEqual([cubic(t), cubicSlope(t)]);
  });

  it('gives the same answer whatever was asked before', () => {
    const curve = curveFrom(sampled(KNOTS, cubic, cubicSlope));
    const fresh = (t: number) => curveFrom(curve.data).value(t);
    for (const t of [59, -39, 0, 20, 19.999, 3, 60, -40]) expect(curve.value(t)).toBe(fresh(t));
  });

  it('interpolates doubt linearly, keeps its sign, and gives the slope its doubt by the cell', () => {
    const curve = curveFrom(sampled(KNOTS, cubic, cubicSlope, [(t) => 0.01 - 0.001 * t, () => -0.02]));
    expect(Array.from(curve.estimate(7).parts)).toEqual([expect.closeTo(0.003, 14), expect.closeTo(-0.02, 14)]);
    expect(curve.standardError(7)).toBeCloseTo(Math.hypot(0.003, 0.02), 14);
    for (const t of [-40, 0, 7, 60]) {
      expect(Array.from(curve.slopeEstimate(t).parts)).toEqual([expect.closeTo(-0.001, 14), expect.closeTo(0, 14)]);
    }
    // What is the same at both heights cancels.
    expect(curve.changeStandardError(30, -10)).toBeCloseTo(0.04, 14);
  });

  it('never changes from a height to itself, with no doubt about it', () => {
    const curve = curveFrom(sampled(KNOTS, cubic, cubicSlope, [(t) => Math.sin(t), (t) => t / 7]));
    fc.assert(
      fc.property(fc.double({ min: -40, max: 60, noNaN: true }), (t) => {
        expect(curve.change(t, t)).toBe(0);
        expect(curve.changeStandardError(t, t)).toBe(0);
        expect(curve.changeEstimate(t, t).value).toBe(0);
      }),
      { seed: 12 },
    );
  });
});

describe('outside its domain', () => {
  const curve = curveFrom(sampled(KNOTS, strut, strutSlope, [() => 0.01]));
  it.each([-40.000001, 60.000001, NaN, Infinity])('a curve knows nothing: %d', (t) => {
    for (const answer of [
      curve.value(t),
      curve.slope(t),
      curve.standardError(t),
      curve.estimate(t).value,
      curve.estimate(t).parts[0],
      curve.slopeEstimate(t).value,
      curve.slopeEstimate(t).parts[0],
      curve.change(t, 0),
      curve.change(0, t),
      curve.change(t, t),
      curve.changeStandardError(t, 0),
      curve.changeStandardError(0, t),
      curve.changeEstimate(t, 0).parts[0],
    ]) {
      expect(answer).toBeNaN();
    }
  });

  it('rounding at the ends is forgiven', () => {
    expect(curve.value(60 + 5e-10)).toBe(curve.value(60));
    expect(curve.value(-40 - 5e-10)).toBe(curve.value(-40));
  });

  it('even when the samples go further', () => {
    const cut = curveFrom({ ...sampled(KNOTS, strut, strutSlope), domain: [-10, 40] });
    expect(cut.value(50)).toBeNaN();
    expect(cut.value(40)).toBeCloseTo(strut(40), 12);
  });
});

describe('data that make no curve', () => {
  const good = () => sampled(KNOTS, strut, strutSlope, [() => 0.01]);
  const paths = (data: unknown) => {
    try {
      curveFrom(data as CurveData);
    } catch (error) {
      if (error instanceof InputError) return error.problems.map(({ code, path }) => `${code} ${path}`);
      throw error;
    }
    throw new Error('was accepted');
  };
  const line = {
    kind: 'polynomial',
    quantity: 'toe',
    domain: [-40, 60],
    sources: SOURCES,
    centre: 0,
    scale: 1,
    coefficients: Float64Array.of(1, 2),
    factor: new Float64Array(4),
  };

  it('are refused with the place of everything wrong', () => {
    const shuffled = good();
    shuffled.travel[2] = -20;
    shuffled.travel[4] = 3;
    expect(paths(shuffled)).toEqual(['out-of-range travel.2', 'out-of-range travel.4']);
    const holes = good();
    holes.value[1] = NaN;
    holes.slope[3] = Infinity;
    holes.parts[5] = NaN;
    expect(paths(holes)).toEqual(['not-finite value.1', 'not-finite slope.3', 'not-finite parts.5']);
    expect(paths({ ...good(), slope: new Float64Array(5), parts: new Float64Array(7) })).toEqual([
      'wrong-shape slope',
      'wrong-shape parts',
    ]);
    expect(paths({ ...good(), domain: [-41, 60.1] })).toEqual(['out-of-range domain.0', 'out-of-range domain.1']);
    expect(paths({ ...good(), domain: [10, 10] })).toEqual(['out-of-range domain.1']);
    expect(paths({ ...good(), domain: [NaN, 10] })).toEqual(['not-finite domain.0']);
    expect(paths({ ...good(), measured: [1] })).toEqual(['wrong-shape measured']);
    expect(paths({ ...good(), value: undefined })).toEqual(['wrong-shape value']);
    expect(paths(sampled([0], strut, strutSlope))).toContain('out-of-range domain.1');
    expect(paths({ ...good(), kind: 'spline' })).toEqual(['wrong-shape kind']);
    expect(paths({ ...good(), sources: undefined })).toEqual(['wrong-shape sources']);
  });

  it('also of a polynomial', () => {
    expect(() => curveFrom(line as unknown as CurveData)).not.toThrow();
    expect(paths({ ...line, factor: new Float64Array(3) })).toEqual(['wrong-shape factor']);
    expect(paths({ ...line, sources: [] })).toEqual(['wrong-shape sources']);
    expect(paths({ ...line, scale: 0, centre: NaN })).toEqual(['not-finite centre.0', 'out-of-range scale']);
    expect(paths({ ...line, coefficients: Float64Array.of(1, NaN) })).toEqual(['not-finite coefficients.1']);
    expect(paths({ ...line, coefficients: new Float64Array(), factor: new Float64Array() })).toContain(
      'missing coefficients',
    );
    expect(paths({ ...line, coefficients: undefined })).toContain('wrong-shape coefficients');
  });

  it('survive the crossing to another thread and back', () => {
    const data = good();
    expect(curveFrom(structuredClone(data)).value(7)).toBe(curveFrom(data).value(7));
  });
});
