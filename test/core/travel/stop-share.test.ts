import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { travelBudget } from '../../../core/travel/budget.js';
import { cornerUnderLoad } from '../../../core/travel/loads.js';
import type { TravelLimits } from '../../../core/travel/travel-limits.js';
import { randomNumbers } from '../driveway/random-car.js';

/*
 * How far a bump stop gives before it is solid. Common practice, no source: about half its length for foam, a third for rubber, two
 * thirds for soft foam; where nobody gives the share, it is drawn from anywhere between.
 */
const [LEAST, MOST] = [1 / 3, 2 / 3];
const solidOf = (limits: TravelLimits, drop = 20) => travelBudget({ path: undefined, limits, drop }).bump.solid!;

describe('where a stop is solid, its share not given', () => {
  const limits = { stopGap: 22, stopGapPlusMinus: 2, stopLength: 50, stopTrimmed: 8, motionRatio: 0.96 };

  it('has the ± of gap and share together, as a simulation of both gives it', () => {
    const random = randomNumbers(7);
    const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const { travel, plusMinus } = solidOf(limits);
    let [sum, squares, held] = [0, 0, 0];
    const count = 200_000;
    for (let i = 0; i < count; i++) {
      const gap = 22 + (2 / 1.96) * normal();
      const at = (gap + (LEAST + (MOST - LEAST) * random()) * (50 - 8)) / 0.96;
      sum += at;
      squares += at * at;
      if (Math.abs(at - travel) <= plusMinus!) held++;
    }
    const mean = sum / count;
    expect(Math.abs(mean - travel)).toBeLessThan(0.05);
    expect(Math.abs((1.96 * Math.sqrt(squares / count - mean * mean)) / plusMinus! - 1)).toBeLessThan(0.01);
    // A sum with a uniform part has no tails beyond it: 95 % and some more.
    expect(held / count).toBeGreaterThan(0.95);
    expect(held / count).toBeLessThan(1);
  });

  it('names the share first among what its ± is made of', () => {
    const { contributions } = solidOf(limits);
    expect(contributions!.map(({ id }) => id)).toEqual(['stopUsable', 'stopGap']);
    expect(contributions!.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(contributions![0]!.label).toMatch(/assumed/);
  });

  it('has that of the gap alone once the share is given, and none where nothing is in doubt', () => {
    expect(solidOf({ ...limits, stopUsable: 0.5 }).plusMinus).toBeCloseTo(2 / 0.96, 9);
    const { stopGapPlusMinus: _, ...sure } = limits;
    expect(solidOf({ ...sure, stopUsable: 0.5 })).not.toHaveProperty('plusMinus');
    expect(solidOf(sure).plusMinus).toBeCloseTo((1.959964 * (MOST - LEAST) * 42) / Math.sqrt(12) / 0.96, 4);
  });

  it('never adds to the first touch, nor to a limit that is no stop', () => {
    const { bump } = travelBudget({ path: undefined, limits: { ...limits, strokeBump: 30 }, drop: 0 });
    expect(bump.touch!.plusMinus).toBeCloseTo(2 / 0.96, 9);
    expect(bump.solid).toMatchObject({ governedBy: 'damper' });
    expect(bump.solid).not.toHaveProperty('plusMinus');
    expect(bump.limits.find(({ id }) => id === 'stop')!.plusMinus).toBeGreaterThan(8);
  });

  it('goes into how far a load stays short of solid', () => {
    const loads = { springRate: 28, cornerMass: 380, unsprungMass: 45, stopRate: 40 };
    const under = (more: TravelLimits) =>
      cornerUnderLoad({ path: undefined, limits: { ...limits, ...more }, drop: 0, loads });
    expect(under({}).shortOfSolidPlusMinus).toBe(solidOf(limits).plusMinus);
    expect(under({ stopUsable: 0.5 }).shortOfSolidPlusMinus).toBeCloseTo(2 / 0.96, 9);
  });

  it('grows with the stop and shrinks with what is cut off, at any motion ratio', () => {
    const mm = fc.double({ min: 20, max: 100, noNaN: true });
    fc.assert(
      fc.property(mm, mm, fc.double({ min: 0.3, max: 1.4, noNaN: true }), (a, b, motionRatio) => {
        const of = (stopLength: number) => solidOf({ stopGap: 10, stopLength, motionRatio }).plusMinus!;
        expect(of(a) / of(b)).toBeCloseTo(a / b, 9);
        expect(solidOf({ stopGap: 10, stopLength: a + b, stopTrimmed: b, motionRatio }).plusMinus).toBeCloseTo(
          of(a),
          9,
        );
      }),
      { seed: 5, endOnFailure: true },
    );
  });
});
