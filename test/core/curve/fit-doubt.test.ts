import { describe, expect, it } from 'vitest';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import { fitCurve } from '../../../core/curve/fit.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import type { Reading } from '../../../core/readings/reading.js';
import { effectiveDof, standardUncertainty } from '../../../core/uncertainty/combine.js';
import { changeOf, combined, independentDoubt } from '../../reference/independent-doubt.js';
import { randomNumbers } from '../driveway/random-car.js';
import { type Noise, randomSeries } from './noisy-series.js';

/* Beside dense matrices of a general-purpose library: test/reference/independent-doubt.ts. */

function compared(readings: readonly Reading[], degree: number): void {
  const fit = fitCurve(readings, { degree });
  const other = independentDoubt(readings, degree, { hasDrift: fit.drift !== undefined });
  expect(fit.scatter.correlation).toBeCloseTo(other.correlation, 3);
  if (other.drift !== undefined) expect(fit.drift!.value).toBeCloseTo(other.drift, 8);
  const curve = curveFrom(fit.curve);
  const [low, high] = curve.domain;
  for (const [to, from] of [
    [high, low],
    [low + 0.7 * (high - low), low + 0.3 * (high - low)],
    [high, high - 10],
  ] as const) {
    const change = curve.changeEstimate(to, from);
    const expected = changeOf(other, to, from);
    const { u, dof } = combined(expected);
    expect(change.value).toBeCloseTo(expected.value, 8);
    // The correlation is solved to four decimals.
    expect(standardUncertainty(change) / u).toBeCloseTo(1, 3);
    expect(effectiveDof(change, fit.curve.sources) / dof).toBeCloseTo(1, 2);
  }
}

/** Of fits in which friction at the turns, or in a loop, is asked for, the other calculation knows nothing. */
const isPlainModel = (readings: readonly Reading[], degree: number): boolean => {
  const { dof, drift, passOffsets, upLessDown } = fitCurve(readings, { degree });
  const passes = Math.max(1, passOffsets.length);
  return dof === readings.length - degree - passes - Number(drift !== undefined) - Number(upLessDown !== undefined);
};

describe('the doubt of a fit beside dense matrices', () => {
  it('is the same for the example', () => {
    for (const degree of [2, 3, 4]) compared(EXAMPLE_READINGS, degree);
    compared(
      EXAMPLE_READINGS.filter(({ pass }) => pass === 'Pass 1'),
      3,
    );
  });

  it.each([
    ['independent scatter', {}],
    ['scatter that goes together', { correlation: 0.6 }],
    ['passes that run apart', { passHeight: (pass: number) => 8 * (pass % 2) }],
    ['passes up and down in turn, drifting', { layout: 'in turn', drift: 0.2, correlation: 0.4 }],
    ['passes there and back, drifting', { layout: 'there and back', drift: 0.1 }],
    ['passes whose first height is read again', { layout: 'return', drift: 0.2 }],
  ] as [string, Noise][])('is the same for random sets: %s', (_, noise) => {
    const random = randomNumbers(17);
    let count = 0;
    while (count < 12) {
      const { readings } = randomSeries(random, noise);
      const degree = 2 + (count % 3);
      const passes = new Set(readings.map(({ pass }) => pass)).size;
      if (readings.length < passes + degree + 6 || readings.length > 120 || !isPlainModel(readings, degree)) continue;
      compared(readings, degree);
      count++;
    }
  });
});
