import { describe, expect, it } from 'vitest';
import { curveFrom } from '../../../core/curve/curve.js';
import { fitCurve } from '../../../core/curve/fit.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import { rawMeans } from '../../../core/readings/raw-means.js';
import type { Reading } from '../../../core/readings/reading.js';

const TRAVELS = [-30, -20, -10, 0, 10, 20, 30, 40];
const ZEROS = [-0.2, 0.05, 0.15];
/** Invented: a quadratic, exactly, in three passes with zeros of their own. */
const exact = (travel: number) => -0.6 - 0.015 * travel + 0.0001 * travel ** 2;
const complete: Reading[] = ZEROS.flatMap((zero, p) =>
  TRAVELS.map((travel) => ({ travel, value: exact(travel) + zero, pass: `Pass ${p + 1}` })),
);
const lookAt = (readings: readonly Reading[]) => {
  const fit = fitCurve(readings, { degree: 2 });
  return { means: rawMeans(readings, fit), curve: curveFrom(fit.curve) };
};

describe('raw means', () => {
  it('agree with the curve in every change where every pass has every height', () => {
    const { means, curve } = lookAt(complete);
    expect(means.points.map(({ travel }) => travel)).toEqual(TRAVELS);
    expect(means.mostPull).toBe(0);
    expect(means.between).toBeUndefined();
    const [first] = means.points;
    for (const { travel, mean, count } of means.points) {
      expect(count).toBe(3);
      expect(mean - first!.mean).toBeCloseTo(curve.change(travel, first!.travel), 9);
    }
  });
  it('are pulled where a pass is missing, by the zero of that pass, and the curve is not', () => {
    // The first pass, 0.2° below the mean of the zeros, was broken off at +10 mm.
    const broken = complete.filter(({ pass, travel }) => pass !== 'Pass 1' || travel <= 10);
    const { means, curve } = lookAt(broken);
    expect(curve.change(40, 0)).toBeCloseTo(exact(40) - exact(0), 9);
    const at = (travel: number) => means.points.find((point) => point.travel === travel)!;
    // Mean of the zeros of the two that are left, less that of all three.
    const pull = (0.05 + 0.15) / 2 - (-0.2 + 0.05 + 0.15) / 3;
    expect(at(40).mean - at(0).mean - curve.change(40, 0)).toBeCloseTo(pull, 9);
    expect(at(40).pull - at(0).pull).toBeCloseTo(pull, 9);
    expect(at(40).lessCurve).toBeCloseTo(pull, 9);
    expect(means.mostPull).toBeCloseTo(pull, 9);
    expect(means.between![1]).toBeGreaterThan(10);
    expect(means.between![0]).toBeLessThanOrEqual(10);
  });
  it('of a height given in inches and of the same in mm are one', () => {
    const { means } = lookAt([...complete, { travel: (20 / 25.4) * 25.4 + 1e-12, value: exact(20), pass: 'Pass 1' }]);
    expect(means.points.map(({ travel }) => travel)).toEqual(TRAVELS);
  });
  it('of a single pass are never pulled', () => {
    expect(lookAt(complete.slice(0, TRAVELS.length)).means.mostPull).toBe(0);
  });
  it('of the example are pulled by a few hundredths of a degree', () => {
    const { mostPull } = lookAt(EXAMPLE_READINGS).means;
    expect(mostPull).toBeGreaterThan(0.02);
    expect(mostPull).toBeLessThan(0.15);
  });
});
