import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { rackForSteer, steerAngle, steerRange } from '../../../core/linkage/steer.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { InputError } from '../../../core/quantity/problem.js';
import { independentStrutSweep } from '../../reference/independent-strut.js';
import { randomCorner, seeded } from './random-corner.js';
import { randomWishbone } from './random-wishbone.js';
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
  it('holds on random wishbones up to 20° either way, in bump and droop', () => {
    fc.assert(
      fc.property(
        randomWishbone,
        fc.double({ min: -20, max: 20, noNaN: true }),
        fc.integer({ min: -40, max: 40 }),
        (corner, steer, travel) => {
          const linkage = buildLinkage(corner);
          const rack = rackForSteer(linkage, steer, { travel });
          const { toe, reached } = sweepTravel(linkage, [travel], { rack });
          expect(reached[0]).toBe(1);
          expect(-toe[0]!).toBeCloseTo(steer, 8);
        },
      ),
      seeded(52, 60),
    );
  });
});

const problemOf = (run: () => unknown) => {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.problems[0]!;
    throw error;
  }
  throw new Error('Nothing was refused.');
};

describe('the angles that the links reach', () => {
  it.each([
    ['strut', buildLinkage(referenceCorner)],
    ['wishbone', buildLinkage(wishboneCorner)],
  ])('end where the tie rod of a %s runs out: a hair more rack has no position', (_, linkage) => {
    const { left, right, leftRack, rightRack } = steerRange(linkage);
    for (const [steer, rack] of [
      [left, leftRack],
      [right, rightRack],
    ] as const) {
      expect(steerAngle(linkage, rack)).toBe(steer);
      expect(steerAngle(linkage, rack + Math.sign(rack) * 1e-6)).toBeNaN();
    }
    expect(left).toBeGreaterThan(45);
    expect(right).toBeLessThan(-45);
  });
  it('are all to be had, to the last, and are the limit that is named beyond', () => {
    fc.assert(
      fc.property(fc.oneof(randomCorner, randomWishbone), fc.integer({ min: -30, max: 30 }), (corner, travel) => {
        const linkage = buildLinkage(corner);
        const { left, right } = steerRange(linkage, travel);
        for (const steer of [left, right, left - 0.5, right + 0.5]) {
          expect(steerAngle(linkage, rackForSteer(linkage, steer, { travel }), travel)).toBeCloseTo(steer, 8);
        }
        for (const [steer, limit] of [
          [left + 0.001, left],
          [right - 0.001, right],
        ] as const) {
          const problem = problemOf(() => rackForSteer(linkage, steer, { travel }));
          expect(problem).toEqual({ code: 'out-of-range', path: 'steer', value: steer, limit });
        }
      }),
      seeded(53, 8),
    );
  });
  it('of a travel out of reach are none: the end of reach is named', () => {
    const linkage = buildLinkage(referenceCorner);
    const { droop, bump } = linkage.reach;
    expect(problemOf(() => steerRange(linkage, 900))).toMatchObject({ path: 'travel', value: 900, limit: bump });
    expect(problemOf(() => rackForSteer(linkage, 5, { travel: -900 }))).toMatchObject({
      code: 'outside-domain',
      path: 'travel',
      limit: droop,
    });
  });
  it.each([Number.NaN, Number.POSITIVE_INFINITY])('refuses a steer angle of %d by name', (steer) => {
    expect(problemOf(() => rackForSteer(buildLinkage(referenceCorner), steer))).toMatchObject({
      code: 'not-finite',
      path: 'steer',
    });
  });
});
