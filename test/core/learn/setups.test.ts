import { describe, expect, it } from 'vitest';
import { missed } from '../study-limits.js';
import { median } from './coverage.js';
import { isHeld, type Read, type SetupOutcome, setupStudy } from './setups.js';

const CARS = 4;
const of = (all: readonly SetupOutcome[], part: string, quantity: 'camber' | 'toe', mm: number) =>
  all.filter((one) => one.part === part && one.quantity === quantity && one.mm === mm);
const narrower = (all: readonly SetupOutcome[]) => median(all.map(({ before, plusMinus }) => before / plusMinus));

/** As many draws as cars: what is asked of one car is not independent. */
function notHeld(what: string, all: readonly SetupOutcome[]) {
  return missed([{ what, share: all.filter(isHeld).length / all.length, draws: CARS, least: 0.93 }], true);
}

const read = (...what: Read[]) => setupStudy(what, { seed: 7, cars: CARS });

describe('setups of one car share its body points', () => {
  const joint = read('joint');

  it('readings with a joint on, whose amount is known to its tolerance, narrow the stock corner and other parts on it', () => {
    for (const part of ['stock', 'joint', 'arm']) {
      for (const mm of [-25, 25]) {
        const own = of(joint, part, 'camber', mm);
        expect(notHeld(`${part} at ${mm} mm`, own)).toEqual([]);
        expect(narrower(own), `${part} at ${mm} mm`).toBeGreaterThan(2.5);
      }
    }
  });

  it('stock readings besides narrow it further, and a joint that is exact says more than one of a tolerance', () => {
    const both = read('stock', 'joint');
    for (const part of ['stock', 'arm']) {
      const own = of(both, part, 'camber', 25);
      expect(notHeld(part, own)).toEqual([]);
      expect(narrower(own)).toBeGreaterThan(1.05 * narrower(of(joint, part, 'camber', 25)));
    }
  });
});

describe('camber and toe', () => {
  it('readings of camber tell nothing of the tie rod: the toe is as open as the tape left it', () => {
    const camber = read('stock');
    for (const part of ['stock', 'joint']) {
      for (const mm of [-25, 25]) {
        const own = of(camber, part, 'toe', mm);
        expect(notHeld(`toe of ${part} at ${mm} mm`, own)).toEqual([]);
        expect(narrower(own), part).toBeLessThan(1.15);
        // Degrees: what a toe prediction without readings of toe carries.
        expect(median(own.map(({ plusMinus }) => plusMinus))).toBeGreaterThan(0.3);
      }
    }
  });

  it('readings of toe make it some ten times as narrow, of parts not yet on too', () => {
    const toe = read('stock', 'toe').filter(({ quantity }) => quantity === 'toe');
    expect(notHeld('toe', toe)).toEqual([]);
    expect(narrower(of(toe, 'stock', 'toe', 25))).toBeGreaterThan(12);
    expect(narrower(of(toe, 'arm', 'toe', 25))).toBeGreaterThan(10);
    // Of the joint how well its rod's end was matched is most of what is left.
    expect(narrower(of(toe, 'joint', 'toe', 25))).toBeGreaterThan(8);
  });
});
