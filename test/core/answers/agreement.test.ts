import { describe, expect, it } from 'vitest';
import { agreement } from '../../../core/answers/agreement.js';
import { predict } from '../../../core/answers/from-source.js';
import { predictionOf } from '../../../core/answers/prediction-of.js';
import { curveOf } from '../../../core/curve/curve.js';
import { solveSource } from '../../../core/curve-sources/solve-source.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { learntSourceOf } from '../../../core/document/learnt-in-use.js';
import { EXAMPLE_PARTS } from '../../../core/document/linked-sets.js';
import { predictInUse } from '../../../core/document/predict-in-use.js';
import { type Prediction, predictionFor, withPrediction } from '../../../core/document/predictions.js';
import type { Reading } from '../../../core/readings/reading.js';
import { normal, randomNumbers } from '../driveway/random-car.js';

const [LOWERED] = EXAMPLE_PARTS;
const { car } = predictInUse(EMPTY_CAR);
const answer = predict({ source: learntSourceOf(car)!, parts: LOWERED!.parts!, drop: 25 });
const PREDICTION = predictionOf(answer, LOWERED!, car, { made: '2026-11-30', version: '0.1.0' });

/** What a gauge would read on the example car with the joint on: two passes, up and down, each with a zero of its own, and its scatter. */
const FITTED = ((): Reading[] => {
  const random = randomNumbers(7);
  const of = { kind: 'corner', corner: EXAMPLE_CORNER } as const;
  const camber = curveOf(solveSource({ kind: 'parts', of, parts: LOWERED!.parts! }).camber);
  return (['up', 'down'] as const).flatMap((going, p) =>
    Array.from({ length: 20 }, (_, i): Reading => {
      const travel = -30 + 5 * (going === 'up' ? i : 19 - i);
      return { travel, value: camber.value(travel) + 0.02 * normal(random) + 0.1 * p, pass: `Pass ${p + 1}`, going };
    }),
  );
})();

/** Invented: what was predicted itself, with noise and a zero of its own each pass. */
function readingsOf({ start, step, change }: Prediction, noise: () => number): Reading[] {
  return ['1', '2'].flatMap((pass, p) =>
    change.map((value, i) => ({ travel: start + i * step, value: value + 0.03 * noise() + 0.4 * p - 1, pass })),
  );
}

describe('predictionOf', () => {
  it('keeps the curve as it was predicted: nothing where the car stands, the answer over the bump that was asked', () => {
    const { start, step, change, plusMinus, drop, over } = PREDICTION;
    const at = (travel: number) => (travel - start) / step;
    expect([change[at(drop)], plusMinus[at(drop)]]).toEqual([0, 0]);
    expect(change[at(drop + over)]).toBeCloseTo(answer.predicted.value, 3);
    expect(plusMinus[at(drop + over)]).toBeCloseTo(answer.predicted.plusMinus!, 3);
    expect([PREDICTION.readings, PREDICTION.passes, PREDICTION.from]).toEqual([52, 3, 'points']);
  });

  it('is found again by its parts, whatever their set is called, and not by others', () => {
    const kept = withPrediction(EMPTY_CAR, PREDICTION);
    expect(predictionFor(kept, { ...LOWERED!, name: 'Mine' }, 'camber')).toBe(PREDICTION);
    expect(predictionFor(kept, EXAMPLE_PARTS[1]!, 'camber')).toBe(undefined);
    expect(predictionFor(kept, LOWERED!, 'toe')).toBe(undefined);
  });
});

describe('agreement', () => {
  it('finds the example car’s lower joint where it was predicted', () => {
    const found = agreement({ prediction: PREDICTION, readings: FITTED });
    expect(found.chance).toBeGreaterThan(0.01);
    expect(found.inside / found.readings).toBeGreaterThan(0.8);
    expect(Math.abs(found.change!.difference.value)).toBeLessThan(found.change!.difference.plusMinus!);
  });

  it('has nothing to say of the zero of a pass', () => {
    const other = FITTED.map((one) => ({ ...one, value: one.value + (one.pass === 'Pass 1' ? 0.7 : -0.3) }));
    const [first, second] = [FITTED, other].map((readings) => agreement({ prediction: PREDICTION, readings }));
    expect(second!.chiSquare).toBeCloseTo(first!.chiSquare, 2);
    expect(second!.inside).toBe(first!.inside);
  });

  it('finds parts out that do a quarter more than was predicted', () => {
    const readings = FITTED.map((one) => ({ ...one, value: 1.25 * one.value }));
    const { change, chance, inside, readings: count } = agreement({ prediction: PREDICTION, readings });
    expect(Math.abs(change!.difference.value)).toBeGreaterThan(change!.difference.plusMinus!);
    expect(inside / count).toBeLessThan(0.8);
    expect(chance).toBeLessThan(0.2);
  });

  it('has a chi-square of its degrees of freedom where nothing but noise is wrong', () => {
    const random = randomNumbers(411);
    const runs = Array.from({ length: 60 }, () =>
      agreement({ prediction: PREDICTION, readings: readingsOf(PREDICTION, () => normal(random)) }),
    );
    const mean = runs.reduce((sum, { chiSquare, dof }) => sum + chiSquare / dof, 0) / runs.length;
    // The scatter of few readings is taken no smaller than a gauge's: with as many, it is a little too wide.
    expect(mean).toBeGreaterThan(0.6);
    expect(mean).toBeLessThan(1.1);
  });

  it('counts travels from stock height, wherever the readings have their zero', () => {
    const shifted = FITTED.map((one) => ({ ...one, travel: one.travel - 25 }));
    const found = agreement({ prediction: PREDICTION, readings: shifted, zeroAt: 25 });
    expect(found.chiSquare).toBeCloseTo(agreement({ prediction: PREDICTION, readings: FITTED }).chiSquare, 0);
  });

  it('refuses readings where nothing was predicted', () => {
    const far = FITTED.map((one) => ({ ...one, travel: one.travel + 400 }));
    expect(() => agreement({ prediction: PREDICTION, readings: far })).toThrow(/too-few/);
  });
});
