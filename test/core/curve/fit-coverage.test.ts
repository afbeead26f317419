import { describe, expect, it } from 'vitest';
import { randomNumbers } from '../driveway/random-car.js';
import { coverage, METHODS, SEEDS } from './fit-coverage.js';
import { CELLS } from './noise-cells.js';
import { randomSeries } from './noisy-series.js';

/**
 * The full study, 1500 sets a cell, runs in the bench: `node test/bench/run.mjs fit`. Here so many a seed, three seeds together: the
 * standard error of a share is 1.6 %.
 */
const SERIES = 60;
const study = { seeds: SEEDS, series: SERIES };

describe('the 95 % band of a fitted camber change, over random three-dimensional linkages', () => {
  const asked = CELLS.filter(({ goal }) => goal !== 'beyond');
  it.each(asked.map((cell) => [cell.name, cell] as const))(
    '%s: holds the truth',
    (_, { goal, noise, options = {} }) => {
      const { covered } = coverage({ ...study, noise, options });
      for (const share of covered) {
        expect(share).toBeGreaterThanOrEqual(0.9);
        if (goal === 'stated') expect(share).toBeLessThanOrEqual(0.99);
      }
    },
  );

  it('holds the value at height 0 as well, and accuses hardly anything', () => {
    const { level, accused } = coverage({ ...study, noise: { layout: 'in turn' } });
    expect(level).toBeGreaterThan(0.9);
    expect(accused).toBeLessThan(0.03);
  });

  it.each([
    ['drift 0.1°, all up', 0.7],
    ['drift 0.1°, first height read again', 0.75],
    ['correlation 0.5', 0.84],
    ['every other pass 5 mm higher', 0.87],
    ['tape 3 % short, ±3 % declared, in turn', 0.85],
    ['zero height 1.5 mm off, in turn', 0.92],
  ])('%s: would not be held by the scatter alone', (name, most) => {
    const { noise } = CELLS.find((cell) => cell.name === name)!;
    expect(coverage({ ...study, noise, method: METHODS.plain }).covered[1]).toBeLessThan(most);
  });

  it('would not hold it with the degree that the criterion likes best', () => {
    expect(coverage({ ...study, method: METHODS['AICc alone'] }).covered[0]).toBeLessThan(0.91);
  });

  it('would not hold it with passes averaged height by height', () => {
    expect(coverage({ ...study, method: METHODS.averaged }).covered[1]).toBeLessThan(0.9);
  });
});

describe('the random series of the study', () => {
  it('are the same for the same seed, and incomplete', () => {
    const one = randomSeries(randomNumbers(8));
    expect(randomSeries(randomNumbers(8))).toEqual(one);
    const passes = new Set(one.readings.map(({ pass }) => pass)).size;
    const heights = new Set(one.readings.map(({ travel }) => travel)).size;
    expect(one.readings.length).toBeLessThan(passes * heights);
  });

  it('are of the same cars, whatever all readings have in common', () => {
    const plain = randomSeries(randomNumbers(3));
    expect(randomSeries(randomNumbers(3), { gaugeScale: 0.03, drift: 0.2 }).truth).toEqual(plain.truth);
  });
});
