import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AxlePosition, axleAt } from '../../../core/linkage/axle.js';
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
    expect(axle.bodyHeight).toBeCloseTo(expected.bodyHeight, 6);
    // Central differences there; and a centre that is metres away, as two nearly parallel lines make it, to a share of its distance.
    const [across, up] = expected.rollCentre;
    const tolerance = 1e-3 + 1e-5 * Math.hypot(across, up);
    expect(Math.abs(axle.rollCentreOffset - across)).toBeLessThan(tolerance);
    expect(Math.abs(axle.rollCentreHeight - up)).toBeLessThan(tolerance);
  });

  it('over random struts', () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(randomCorner, between(-20, 20), between(-3, 3), between(-20, 20), (corner, heave, roll, rack) => {
        const linkage = buildLinkage(corner);
        const axle = axleAt(linkage, linkage, { heave, roll, rack });
        const expected = independentAxle(corner, heave, roll, rack);
        expect(axle.left.travel).toBeCloseTo(expected.travelLeft, 6);
        expect(axle.left.inclination).toBeCloseTo(expected.inclinationLeft, 7);
        expect(axle.right.inclination).toBeCloseTo(expected.inclinationRight, 7);
        expect(axle.bodyHeight).toBeCloseTo(expected.bodyHeight, 6);
      }),
      seeded(42, 25),
    );
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
    const { rollCentreHeight, rollCentreOffset } = axleAt(linkage, linkage);
    expect(rollCentreHeight).toBeCloseTo(0, 9);
    expect(rollCentreOffset).toBeCloseTo(0, 9);
  });

  // Arms of length L that fall outward: sin θ₀ = −30/300. At a travel t, L sin θ = L sin θ₀ + t, and the upright wheel's lowest
  // point has gone L (cos θ − cos θ₀) outward and t up.
  const LENGTH = 300;
  const [sine, cosine] = [-0.1, Math.sqrt(1 - 0.1 ** 2)];
  const outer = 400 + LENGTH * cosine;
  const fallingLinkage = buildLinkage({
    ...parallel,
    lowerArm: { front: [150, 400, 230], rear: [-150, 400, 230], ball: [0, outer, 200] },
    upperArm: { front: [120, 390, 450], rear: [-120, 390, 450], ball: [0, outer - 10, 420] },
    tieRod: { inner: [-140, 395, 290], outer: [-140, outer - 5, 260] },
  });
  const [hubY, hubZ] = [parallel.wheelCentre[1], parallel.wheelCentre[2]];
  const halfTrackAt = (travel: number) => hubY + LENGTH * (Math.sqrt(1 - (sine + travel / LENGTH) ** 2) - cosine);
  it.each([
    [0, 0],
    [0, 2],
    [25, -3],
    [-30, 4],
  ])(
    'contact centres go L (cos θ − cos θ₀) outward, and both lie on the road: heave %d mm, roll %d°',
    (heave, roll) => {
      const { left, right, bodyHeight } = axleAt(fallingLinkage, fallingLinkage, { heave, roll });
      expect(left.contact[1]).toBeCloseTo(halfTrackAt(left.travel), 8);
      expect(right.contact[1]).toBeCloseTo(-halfTrackAt(right.travel), 8);
      expect((left.travel + right.travel) / 2).toBeCloseTo(heave, 9);
      const radians = (roll * Math.PI) / 180;
      // Heights over the road of a line through the body's origin that is rolled the other way.
      const heightOf = (y: number, travel: number) =>
        y * Math.sin(radians) + (hubZ + travel - parallel.loadedRadius) * Math.cos(radians);
      const [a, b] = [
        heightOf(halfTrackAt(left.travel), left.travel),
        heightOf(-halfTrackAt(right.travel), right.travel),
      ];
      expect(a).toBeCloseTo(b, 8);
      expect(bodyHeight).toBeCloseTo(-a, 8);
    },
  );
  it('falling arms have their roll centre where the line through the contact centre along them meets the centre plane', () => {
    expect(axleAt(fallingLinkage, fallingLinkage).rollCentreHeight).toBeCloseTo((hubY * -sine) / cosine, 7);
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
  it.each([
    ['strut', strut],
    ['wishbone', buildLinkage(wishboneCorner)],
  ])('with 3° of roll the height of a roll axis matters by hundredths of a degree on a %s', (_, linkage) => {
    const rest = axleAt(linkage, linkage).bodyHeight;
    const radians = (3 * Math.PI) / 180;
    const leanAt = (heave: number) => {
      const { left, right } = axleAt(linkage, linkage, { roll: 3, heave });
      return [left.inclination, right.inclination];
    };
    // The net heave at which a point of the body that far over the road stays at its height, by the secant rule.
    const heaveAbout = (axisMm: number) => {
      const rise = (heave: number) =>
        axleAt(linkage, linkage, { roll: 3, heave }).bodyHeight - rest + axisMm * (Math.cos(radians) - 1);
      let [before, now] = [0, 1];
      for (let i = 0; i < 20 && Math.abs(rise(now)) > 1e-9; i++) {
        [before, now] = [now, now - (rise(now) * (now - before)) / (rise(now) - rise(before))];
      }
      expect(rise(now)).toBeCloseTo(0, 8);
      return now;
    };
    const net = leanAt(0);
    const differences = [0, 100, 300, 600].flatMap((axisMm) =>
      leanAt(heaveAbout(axisMm)).map((lean, side) => Math.abs(lean - net[side]!)),
    );
    const most = Math.max(...differences);
    expect(most).toBeGreaterThan(0.01);
    expect(most).toBeLessThan(0.03);
  });
  it('a little roll moves the wheels in proportion: as the corner’s own rates say', () => {
    fc.assert(
      fc.property(randomCorner, (corner) => {
        const linkage = buildLinkage(corner);
        const roll = 0.01;
        const radians = (roll * Math.PI) / 180;
        const { halfTrack, inclination } = sweepTravel(linkage, [0, -0.1, 0.1]);
        const rate = (inclination[2]! - inclination[1]!) / 0.2;
        const [one, twice, none] = [roll, 2 * roll, 0].map((angle) => axleAt(linkage, linkage, { roll: angle }).left);
        // The lowest point of a wheel under camber c rises by a little less or more than the hub: R sin c times its rate.
        const lean = (inclination[0]! * Math.PI) / 180;
        const contactRate = 1 + corner.loadedRadius * Math.sin(lean) * ((rate * Math.PI) / 180);
        const travel = (-halfTrack[0]! * radians) / contactRate;
        expect(one!.travel / travel).toBeCloseTo(1, 3);
        const toe = (corner.toe * Math.PI) / 180;
        // n · s changes by s_y: the road leans under a wheel by the roll about the car's axis.
        const change = -roll * Math.cos(toe) + travel * rate;
        expect(Math.abs(one!.inclination - none!.inclination - change)).toBeLessThan(1e-5);
        expect(Math.abs(twice!.inclination - 2 * one!.inclination + none!.inclination)).toBeLessThan(1e-5);
      }),
      seeded(43, 60),
    );
  });
  it('without roll, corners that differ are both on the road by unequal travels', () => {
    const [a, b] = fc.sample(randomCorner, { seed: 44, numRuns: 2 });
    const { left, right, bodyHeight } = axleAt(buildLinkage(a!), buildLinkage(b!), { heave: 10 });
    expect(left.contact[2]).toBeCloseTo(right.contact[2], 9);
    expect((left.travel + right.travel) / 2).toBeCloseTo(10, 9);
    expect(Math.abs(left.travel - right.travel)).toBeGreaterThan(1);
    expect(bodyHeight).toBeCloseTo(-left.contact[2], 9);
  });
  it('the body falls by as much as the wheels rise', () => {
    const rest = axleAt(strut, strut).bodyHeight;
    // Not quite: the lowest point of a wheel moves with its camber.
    expect(axleAt(strut, strut, { heave: 30 }).bodyHeight - rest).toBeCloseTo(-30, 0);
  });
});

describe('what cannot be is refused by name', () => {
  const problemOf = (position: AxlePosition) => {
    try {
      axleAt(strut, strut, position);
    } catch (error) {
      if (error instanceof InputError) return error.problems[0]!;
      throw error;
    }
    throw new Error('Nothing was refused.');
  };
  const refused = (position: AxlePosition) => `${problemOf(position).code} ${problemOf(position).path}`;
  const limitOf = (position: AxlePosition) => problemOf(position).limit!;
  it.each([
    [{ heave: 900 }, 'out-of-range heave'],
    [{ heave: 900, roll: 1 }, 'out-of-range heave'],
    [{ roll: 60 }, 'out-of-range roll'],
    [{ roll: 360 }, 'out-of-range roll'],
    [{ roll: 3, heave: -330 }, 'out-of-range roll'],
    [{ rack: 400 }, 'out-of-range rack'],
    [{ rack: 400, roll: 60, heave: 900 }, 'out-of-range rack'],
    [{ roll: Number.NaN }, 'not-finite roll'],
    [{ rack: 'x' as never }, 'not-a-number rack'],
  ])('%j', (position, expected) => {
    expect(refused(position)).toBe(expected);
  });
  it.each([
    ['heave', 900, {}],
    ['heave', -900, { rack: 20 }],
    ['roll', 60, { heave: 30 }],
    ['roll', -60, { heave: 30 }],
    ['rack', 400, {}],
    ['rack', -400, {}],
  ])('with the last %s it does reach on the way to %d as limit, %j', (path, value, others: AxlePosition) => {
    const limit = limitOf({ ...others, [path]: value });
    expect(Math.sign(limit)).toBe(Math.sign(value));
    expect(Math.abs(limit)).toBeLessThan(Math.abs(value));
    expect(() => axleAt(strut, strut, { ...others, [path]: limit * (1 - 1e-6) })).not.toThrow();
    expect(() => axleAt(strut, strut, { ...others, [path]: limit * (1 + 1e-6) })).toThrow(InputError);
  });
  it('heave without roll ends where the corner’s own reach ends', () => {
    expect(limitOf({ heave: 900 })).toBeCloseTo(strut.reach.bump, 6);
    expect(limitOf({ heave: -900 })).toBeCloseTo(strut.reach.droop, 6);
  });
});
