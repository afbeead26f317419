import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axisRange, niceStep, niceTicks } from '../../../components/chart/ticks.js';

describe('niceTicks', () => {
  it('gives round figures, ends included', () => {
    expect(niceTicks(-60, 90, 6)).toEqual([-60, -30, 0, 30, 60, 90]);
    expect(niceTicks(-1, 1, 5)).toEqual([-1, -0.5, 0, 0.5, 1]);
  });

  it('is round in the unit the reader sees: whole inches on an axis in mm', () => {
    expect(niceTicks(-60, 90, 8, 25.4)).toEqual([-50.8, -25.4, 0, 25.4, 50.8, expect.closeTo(76.2, 9)]);
  });

  it('never gives more than asked, nor any outside, and writes no −0', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -500, max: 500, noNaN: true }),
        fc.double({ min: 1e-3, max: 500, noNaN: true }),
        fc.integer({ min: 2, max: 12 }),
        (low, span, most) => {
          const ticks = niceTicks(low, low + span, most);
          expect(ticks.length).toBeLessThanOrEqual(most);
          for (const tick of ticks) {
            expect(tick).toBeGreaterThanOrEqual(low - span * 1e-6);
            expect(tick).toBeLessThanOrEqual(low + span * (1 + 1e-6));
            expect(Object.is(tick, -0)).toBe(false);
          }
        },
      ),
      { seed: 1 },
    );
  });
});

it('niceStep is the next of 1, 2, 3, 5 times a power of ten', () => {
  expect([0.1, 0.11, 0.21, 2.5, 3.1, 7, 10].map(niceStep)).toEqual(
    [0.1, 0.2, 0.3, 3, 5, 10, 10].map((step) => expect.closeTo(step, 12)),
  );
});

describe('axisRange', () => {
  it('holds what is drawn with a margin, for any extent', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (low, span) => {
          const [from, to] = axisRange([low, low + span], 6);
          expect(from).toBeLessThan(low);
          expect(to).toBeGreaterThan(low + span);
        },
      ),
      { seed: 1 },
    );
  });

  it('does not blow a flat curve up, and stands still while a value changes a little', () => {
    const [from, to] = axisRange([-0.5, -0.499], 5, 1, 0.2);
    expect(to - from).toBeGreaterThanOrEqual(0.2);
    expect(axisRange([-1.03, 0.92], 5)).toEqual(axisRange([-1.04, 0.93], 5));
  });

  it('gives a range where nothing is drawn at all', () => {
    const [from, to] = axisRange(undefined, 5);
    expect(to).toBeGreaterThan(from);
  });
});
