import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../../core/linkage/build-linkage.js';
import {
  armLonger,
  ballJointExtended,
  camberAndToeSet,
  knuckleBoltsTurned,
  type Part,
  spinAxisTurned,
  staticAngles,
  toeReset,
  topMountMoved,
  withParts,
} from '../../../../core/linkage/parts/index.js';
import { sweepTravel } from '../../../../core/linkage/sweep.js';
import { InputError } from '../../../../core/quantity/problem.js';
import { randomCorner, seeded } from '../random-corner.js';
import { referenceCorner } from '../reference-corner.js';
import { wishboneCorner } from '../wishbone-corner.js';
import { BOLT } from './kinds-of-part.js';

const stock = buildLinkage(referenceCorner);
const mount = (mm: number): Part => topMountMoved({ vector: [0, mm, 0] });

const ADJUSTABLE: [string, (amount: number) => Part][] = [
  ['top mount moved sideways', mount],
  ['knuckle bolts', (degrees) => knuckleBoltsTurned({ degrees, otherBolt: BOLT })],
  ['spin axis', (camber) => spinAxisTurned({ camber })],
  ['longer lower arm', (mm) => armLonger({ mm })],
];

describe('toe', () => {
  it('is reset by the tie rod’s length, and by nothing else', () => {
    fc.assert(
      fc.property(randomCorner, fc.double({ min: -2, max: 2, noNaN: true }), (corner, toe) => {
        const changed = ballJointExtended({ mm: 20 })(buildLinkage(corner));
        const set = toeReset(changed, toe);
        expect(Math.abs(sweepTravel(set, [0]).toe[0]! - toe)).toBeLessThan(1e-9);
        expect(set.lengths.lowerArm).toEqual(changed.lengths.lowerArm);
        expect(set.carrier).toEqual(changed.carrier);
        expect(set.body).toEqual(changed.body);
      }),
      seeded(41, 60),
    );
  });
  it.each([-45, 80])(
    'of %d° is still met, although Newton’s first step leads to where the rod does not join',
    (toe) => {
      expect(staticAngles(toeReset(stock, toe)).toe).toBeCloseTo(toe, 9);
    },
  );
  it.each([-60, 91, 170])('of %d° is refused', (toe) => {
    expect(() => toeReset(stock, toe)).toThrow(expect.objectContaining({ code: 'out-of-range', field: 'toe' }));
  });
});

describe.each(ADJUSTABLE)('camber and toe set together by the %s', (_, adjust) => {
  it.each([-5, -2, 1])('to %d°, at ride height', (camber) => {
    const { linkage, amount } = camberAndToeSet(stock, { camber, toe: 0.05 }, adjust);
    const { camber: reached, toe, travel } = sweepTravel(linkage, [0]);
    expect([travel[0], linkage.wheelCentreZ]).toEqual([0, stock.wheelCentreZ]);
    expect(Math.abs(reached[0]! - camber)).toBeLessThan(1e-9);
    expect(Math.abs(toe[0]! - 0.05)).toBeLessThan(1e-9);
    // Part and tie rod, nothing else: the same linkage comes from the amount that is told.
    const again = toeReset(withParts(stock, adjust(amount)), 0.05);
    expect(Math.abs(staticAngles(again).camber - camber)).toBeLessThan(1e-8);
    expect(Math.abs(again.lengths.tieRod - linkage.lengths.tieRod)).toBeLessThan(1e-8);
  });
  it('to what they are already asks for no change', () => {
    const { amount } = camberAndToeSet(stock, staticAngles(stock), adjust);
    expect(Math.abs(amount)).toBeLessThan(1e-9);
  });
  it('on random struts', () => {
    const target = fc.record({
      camber: fc.double({ min: -4, max: 1, noNaN: true }),
      toe: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
    });
    fc.assert(
      fc.property(randomCorner, target, (corner, wanted) => {
        const now = staticAngles(camberAndToeSet(buildLinkage(corner), wanted, adjust).linkage);
        expect(Math.abs(now.camber - wanted.camber)).toBeLessThan(1e-9);
        expect(Math.abs(now.toe - wanted.toe)).toBeLessThan(1e-9);
      }),
      seeded(42, 40),
    );
  });
});

describe('a target', () => {
  it('is met on a wishbone by its upper arm', () => {
    const { linkage } = camberAndToeSet(buildLinkage(wishboneCorner), { camber: -3, toe: 0.1 }, (mm) =>
      armLonger({ mm, arm: 'upper' }),
    );
    expect(staticAngles(linkage).camber).toBeCloseTo(-3, 9);
  });
  it('is met by a part that for an amount of zero hands the linkage back as it is', () => {
    const adjust = (mm: number): Part => (mm === 0 ? (linkage) => linkage : mount(mm));
    expect(staticAngles(camberAndToeSet(stock, { camber: -2, toe: 0.3 }, adjust).linkage).toe).toBeCloseTo(0.3, 9);
  });
  it('is met where the arm alone would leave the tie rod short', () => {
    const { linkage, amount } = camberAndToeSet(stock, { camber: -8, toe: 0.1 }, (mm) => armLonger({ mm }));
    expect(staticAngles(linkage).camber).toBeCloseTo(-8, 9);
    expect(() => armLonger({ mm: amount })(stock)).toThrow(InputError);
  });

  const refusal = (camber: number, toe: number, adjust: (amount: number) => Part, linkage = stock) => {
    try {
      camberAndToeSet(linkage, { camber, toe }, adjust);
    } catch (error) {
      if (error instanceof InputError) return `${error.code} ${error.field}`;
      throw error;
    }
    return undefined;
  };
  it('of camber out of reach is named', () => {
    expect(refusal(-80, 0, mount)).toBe('out-of-range camber');
    expect(refusal(60, 0, (mm) => armLonger({ mm }))).toBe('out-of-range camber');
  });
  it('of camber is refused when the part changes none', () => {
    expect(refusal(-2, 0, () => (linkage) => linkage)).toBe('out-of-range camber');
  });
  it('of toe out of reach is named', () => {
    expect(refusal(-1, 120, mount)).toBe('out-of-range toe');
  });
  it('for a part that this corner does not have, or that is none, names the part', () => {
    expect(refusal(-2, 0, mount, buildLinkage(wishboneCorner))).toBe('wrong-shape topMount');
    expect(refusal(-2, 0, () => armLonger({ mm: Number.NaN }))).toBe('not-finite arm.mm');
  });
});
