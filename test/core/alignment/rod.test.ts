import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rodByLever } from '../../../core/alignment/rod-by-lever.js';
import { turnsOf } from '../../../core/alignment/rod-thread.js';
import { problemsOf } from '../problems-of.js';
import { missed } from '../study-limits.js';
import { leverCases, leverFactors } from './lever-study.js';

const pathsOf = (run: () => unknown) => problemsOf(run).map(({ path, code }) => `${path} ${code}`);

describe('turnsOf', () => {
  it('moves a rod by its pitch a turn, and a sleeve with both threads by twice that (by hand: 3 mm at 1.5 mm)', () => {
    expect(turnsOf({ value: 3 }, { pitch: 1.5, thread: 'one' })).toEqual({ turns: 2, perTurn: 1.5 });
    expect(turnsOf({ value: -3, plusMinus: 0.6 }, { pitch: 1.5, thread: 'pair' })).toEqual({
      turns: -1,
      plusMinus: expect.closeTo(0.2, 12),
      perTurn: 3,
    });
  });

  it('names pitch and thread where they are missing or impossible', () => {
    expect(pathsOf(() => turnsOf({ value: 1 }, { pitch: 0.1, thread: 'two' as 'pair' }))).toEqual([
      'alignment.pitch out-of-range',
      'alignment.thread unknown-name',
    ]);
    expect(pathsOf(() => turnsOf({ value: 1 }, {} as never))).toEqual([
      'alignment.pitch missing',
      'alignment.thread missing',
    ]);
  });
});

describe('rodByLever', () => {
  const lever = { value: 120, plusMinus: 0 };
  const sure = (value: number) => ({ value, plusMinus: 0 });

  it('is the arc of the lever (by hand: 120 mm × 0.5° = 1.0472 mm), longer for toe-in behind the axle and shorter ahead of it', () => {
    expect(rodByLever({ toeChange: sure(0.5), lever, rack: 'behind' }).value).toBeCloseTo(1.047198, 6);
    expect(rodByLever({ toeChange: sure(0.5), lever, rack: 'ahead' }).value).toBeCloseTo(-1.047198, 6);
    expect(rodByLever({ toeChange: sure(-0.5), lever, rack: 'behind' }).value).toBeCloseTo(-1.047198, 6);
  });

  it('adds what gauge, tape and rule leave in quadrature (by hand, as shares of 1.0472 mm: 0.1, 0.05, 0.0115 × 1.96)', () => {
    const found = rodByLever({
      toeChange: { value: 0.5, plusMinus: 0.05 },
      lever: { value: 120, plusMinus: 6 },
      rack: 'behind',
    });
    expect(found.plusMinus).toBeCloseTo(1.047198 * Math.hypot(0.1, 0.05, 0.0115 * 1.959964), 6);
  });

  // Source: the exact linkages of random cars that nothing was fitted to (lever-study.ts).
  it('holds the exact length of random struts in its band as often as 95 % says, on seeds it was not drawn from', () => {
    for (const seed of [11, 12, 13]) {
      const cases = [...leverCases({ seed, cars: 150 })];
      const within = cases.filter(({ rack, lever: mm, longer, toeChange }) => {
        const { value, plusMinus } = rodByLever({ toeChange: sure(toeChange), lever: sure(mm), rack });
        return Math.abs(value - longer) <= plusMinus;
      });
      expect(
        missed([{ what: 'covered', share: within.length / cases.length, draws: cases.length, least: 0.93 }], true),
      ).toEqual([]);
    }
  });

  it('needs no factor of its own: random struts have the arc within a hundredth on average, behind as ahead', () => {
    const { behind, ahead } = leverFactors({ seed: 21, cars: 300 });
    for (const { mean, deviation } of [behind, ahead]) {
      expect(Math.abs(mean - 1)).toBeLessThan(0.008);
      expect(deviation).toBeLessThan(0.016);
    }
  });

  it('goes with toe, and names every field that is wrong', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 5, noNaN: true }), (toe) => {
        const { value } = rodByLever({ toeChange: sure(toe), lever, rack: 'behind' });
        expect(Math.sign(value) + 0).toBe(Math.sign(toe) + 0);
      }),
      { seed: 3 },
    );
    expect(
      pathsOf(() =>
        rodByLever({ toeChange: sure(Number.NaN), lever: { value: 12, plusMinus: -1 }, rack: 'left' as 'ahead' }),
      ),
    ).toEqual([
      'toeChange not-finite',
      'toe.lever out-of-range',
      'toe.lever.plusMinus out-of-range',
      'toe.rackSide unknown-name',
    ]);
  });
});
