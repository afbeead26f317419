import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { rackForSteer, steerAngle } from '../../../core/linkage/steer.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { InputError } from '../../../core/quantity/problem.js';
import { independentStrutSweep } from '../../reference/independent-strut.js';
import { randomCorner, seeded } from './random-corner.js';
import { referenceCorner } from './reference-corner.js';
import { wishboneCorner } from './wishbone-corner.js';

describe('the rack position for a wanted steer angle', () => {
  it.each([
    ['strut', buildLinkage(referenceCorner)],
    ['wishbone', buildLinkage(wishboneCorner)],
  ])('turns the wheel of a %s there, at lock and in between, at any travel', (_, linkage) => {
    for (const steer of [-35, -20, -5, -0.1, 0, 5, 30]) {
      for (const travel of [-30, 0, 40]) {
        const rack = rackForSteer(linkage, steer, { travel });
        const { toe, reached } = sweepTravel(linkage, [travel], { rack });
        expect(reached[0]).toBe(1);
        expect(-toe[0]!).toBeCloseTo(steer, 8);
      }
    }
  });
  it('agrees with an independent solver moved to that rack position', () => {
    const linkage = buildLinkage(referenceCorner);
    for (const steer of [-25, 10, 25]) {
      const rack = rackForSteer(linkage, steer);
      const pose = independentStrutSweep(referenceCorner, [0], { rack })[0]!;
      expect(-pose.toe).toBeCloseTo(steer, 6);
    }
  });
  it('a rack behind the axle steers right when it moves left: its tie rod pushes the wheel’s rear outward', () => {
    const linkage = buildLinkage(referenceCorner);
    expect(referenceCorner.tieRod.outer[0]).toBeLessThan(referenceCorner.wheelCentre[0]);
    expect(steerAngle(linkage, 20)).toBeLessThan(steerAngle(linkage, 0));
  });
  it('holds on random struts up to 20° either way', () => {
    fc.assert(
      fc.property(randomCorner, fc.double({ min: -20, max: 20, noNaN: true }), (corner, steer) => {
        const linkage = buildLinkage(corner);
        expect(steerAngle(linkage, rackForSteer(linkage, steer))).toBeCloseTo(steer, 8);
      }),
      seeded(51, 60),
    );
  });
  it('names an angle that the links do not reach, with the last one they do', () => {
    try {
      rackForSteer(buildLinkage(referenceCorner), 120);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      const [problem] = (error as InputError).problems;
      expect(problem).toMatchObject({ code: 'out-of-range', path: 'steer', value: 120 });
      expect(problem!.limit).toBeGreaterThan(30);
      expect(problem!.limit).toBeLessThan(120);
    }
  });
});
