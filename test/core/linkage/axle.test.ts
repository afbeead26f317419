import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axleAt } from '../../../core/linkage/axle.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { WishboneCorner } from '../../../core/linkage/corner.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { InputError } from '../../../core/quantity/problem.js';
import { independentAxle } from '../../reference/independent-axle.js';
import { randomCorner, seeded } from './random-corner.js';
import { referenceCorner } from './reference-corner.js';
import { wishboneCorner } from './wishbone-corner.js';

const strut = buildLinkage(referenceCorner);

describe('an axle agrees with both wheels computed independently in one rolled frame', () => {
  it.each([
    [0, 0, 0],
    [0, 3, 0],
    [20, -2.5, 0],
    [-15, 1.5, 30],
    [10, 3, -45],
  ])('heave %d mm, roll %d°, rack %d mm', (heave, roll, rack) => {
    const axle = axleAt(strut, strut, { heave, roll, rack });
    const expected = independentAxle(referenceCorner, heave, roll, rack);
    expect(axle.left.travel).toBeCloseTo(expected.travelLeft, 6);
    expect(axle.right.travel).toBeCloseTo(expected.travelRight, 6);
    expect(axle.left.inclination).toBeCloseTo(expected.inclinationLeft, 7);
    expect(axle.right.inclination).toBeCloseTo(expected.inclinationRight, 7);
    expect(axle.track).toBeCloseTo(expected.left[0] - expected.right[0], 6);
  });
});

describe('equal parallel arms in a plane', () => {
  // Closed form: the wheels keep their camber to the body, so to the road they take over its roll whole.
  const parallel: WishboneCorner = {
    ...wishboneCorner,
    camber: 0,
    toe: 0,
    lowerArm: { front: [150, 400, 200], rear: [-150, 400, 200], ball: [0, 700, 200] },
    upperArm: { front: [120, 390, 420], rear: [-120, 390, 420], ball: [0, 690, 420] },
    tieRod: { inner: [-140, 395, 260], outer: [-140, 695, 260] },
  };
  const linkage = buildLinkage(parallel);
  it.each([1, 3, -2])('%d° of roll lean both wheels by as much, the outer one top outward', (roll) => {
    const { left, right } = axleAt(linkage, linkage, { roll });
    expect(left.camber).toBeCloseTo(0, 9);
    expect(left.inclination).toBeCloseTo(-roll, 9);
    expect(right.inclination).toBeCloseTo(roll, 9);
  });
  it('level arms have their roll centre on the road', () => {
    expect(axleAt(linkage, linkage).rollCentreHeight).toBeCloseTo(0, 9);
  });
});

describe('signs and symmetries', () => {
  it('without roll both sides are the corner at that travel, and the roll centre is the corner’s', () => {
    const { left, right, track, rollCentreHeight, rollCentreOffset } = axleAt(strut, strut, { heave: 25 });
    const sweep = sweepTravel(strut, [25]);
    for (const wheel of [left, right]) {
      expect(wheel.travel).toBeCloseTo(25, 9);
      expect(wheel.camber).toBeCloseTo(sweep.camber[0]!, 9);
      expect(wheel.toe).toBeCloseTo(sweep.toe[0]!, 9);
      expect(wheel.inclination).toBeCloseTo(sweep.inclination[0]!, 9);
    }
    expect(track).toBeCloseTo(2 * sweep.halfTrack[0]!, 9);
    expect(rollCentreHeight).toBeCloseTo(sweep.rollCentreHeight[0]!, 6);
    expect(rollCentreOffset).toBeCloseTo(0, 6);
  });
  it('positive roll puts the right wheel into bump, the left into droop', () => {
    const { left, right } = axleAt(strut, strut, { roll: 2 });
    expect(right.travel).toBeGreaterThan(15);
    expect(left.travel).toBeLessThan(-15);
    expect(right.contact[1]).toBeLessThan(0);
  });
  it('the rack to the left steers both wheels the same way', () => {
    const { left, right } = axleAt(strut, strut, { rack: 30 });
    expect(Math.sign(left.steer)).toBe(Math.sign(right.steer));
    expect(Math.abs(left.steer)).toBeGreaterThan(5);
  });
  it('the mirror image of a position is the position with sides, roll and rack reversed', () => {
    fc.assert(
      fc.property(
        randomCorner,
        randomCorner,
        fc.double({ min: -15, max: 15, noNaN: true }),
        fc.double({ min: -2, max: 2, noNaN: true }),
        fc.double({ min: -20, max: 20, noNaN: true }),
        (one, other, heave, roll, rack) => {
          const [a, b] = [buildLinkage(one), buildLinkage(other)];
          const state = axleAt(a, b, { heave, roll, rack });
          const image = axleAt(b, a, { heave, roll: -roll, rack: -rack });
          expect(state.left.camber).toBeCloseTo(image.right.camber, 8);
          expect(state.left.inclination).toBeCloseTo(image.right.inclination, 8);
          expect(state.right.travel).toBeCloseTo(image.left.travel, 7);
          expect(state.left.steer).toBeCloseTo(-image.right.steer, 8);
          expect(state.left.contact[1]).toBeCloseTo(-image.right.contact[1], 7);
        },
      ),
      seeded(41, 60),
    );
  });
  it('with 3° of roll the height of a roll axis matters by hundredths of a degree: net heave is what is asked for', () => {
    // An axis 100 mm higher or lower shifts net heave by what 3° of roll lift the middle of the axle: 100 (1 − cos 3°) mm.
    const shift = 100 * (1 - Math.cos((3 * Math.PI) / 180));
    const [low, high] = [-shift, shift].map((heave) => axleAt(strut, strut, { roll: 3, heave }).right.inclination);
    expect(Math.abs(low! - high!)).toBeLessThan(0.02);
  });
});

describe('what cannot be is refused by name', () => {
  const refused = (position: Parameters<typeof axleAt>[2]) => {
    try {
      axleAt(strut, strut, position);
    } catch (error) {
      if (error instanceof InputError) return `${error.code} ${error.field}`;
      throw error;
    }
    return undefined;
  };
  it.each([
    [{ heave: 900 }, 'out-of-range heave'],
    [{ roll: 60 }, 'out-of-range roll'],
    [{ rack: 400 }, 'out-of-range rack'],
    [{ roll: Number.NaN }, 'not-finite roll'],
    [{ rack: 'x' as never }, 'not-a-number rack'],
  ])('%j', (position, expected) => {
    expect(refused(position)).toBe(expected);
  });
});
