import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { type Corner, type StrutCorner, type Vector3, withHardPoint } from '../../../core/linkage/corner.js';
import { type HeldPath, heldAt, heldPath, idealRod } from '../../../core/linkage/ideal-rod.js';
import type { Linkage } from '../../../core/linkage/linkage.js';
import { motionOf } from '../../../core/linkage/motion.js';
import { standingAt, toeIn } from '../../../core/linkage/rod-ends.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { toeCorrection } from '../../../core/linkage/toe-correction.js';
import { PLANAR_RODS, PLANAR_STRUT, PLANAR_TRAVELS } from '../../reference/planar-bump-steer.js';
import { randomCorner, seeded } from './random-corner.js';
import { randomWishbone } from './random-wishbone.js';
import { referenceCorner } from './reference-corner.js';
import { withToeSet } from './toe-brute-force.js';
import { wishboneCorner } from './wishbone-corner.js';

/** How far behind the axle the rod of the plane strut lies: a steering arm it must have, and in the plane nothing changes with it. mm */
const BEHIND = -140;
const at = (x: number, [y, z]: readonly [number, number]): Vector3 => [x, y, z];

const planar = ([y, z]: readonly [number, number]): StrutCorner => {
  const { pivot, ball, top, wheelCentre, outer } = PLANAR_STRUT;
  return {
    kind: 'strut',
    wheelCentre: at(0, wheelCentre),
    loadedRadius: 300,
    camber: -1,
    toe: 0,
    lowerArm: { front: at(150, pivot), rear: at(-150, pivot), ball: at(0, ball) },
    // The axis goes through the ball joint: a tenth of the way up it.
    strut: { top: at(0, top), low: [0, ball[0] + (top[0] - ball[0]) / 10, ball[1] + (top[1] - ball[1]) / 10] },
    tieRod: { inner: [BEHIND, y, z], outer: at(BEHIND, outer) },
  };
};

const pathOf = (linkage: Linkage, travels: ArrayLike<number>): HeldPath => {
  const set = standingAt(linkage, 0)!;
  return heldPath(linkage, set, toeIn(set), Float64Array.from(travels));
};
const rodAt = (linkage: Linkage, travel = 0) =>
  idealRod(heldAt(pathOf(linkage, [travel - 1, travel, travel + 1]), travel), linkage.body.tieInner);

describe('the ideal rod of a plane strut', () => {
  const rods = PLANAR_RODS.map((rod) => [rod.name, rod] as const);
  const [ideal, short, shorter, raised, lowered] = PLANAR_RODS;

  it('reaches from the outer joint to the centre of curvature of its path, and aims at the instant centre', () => {
    const found = rodAt(buildLinkage(planar(short!.inner)));
    const { centreOfCurvature, radius, instantCentre } = PLANAR_STRUT;
    expect(found.inner[0]).toBe(BEHIND);
    expect(found.inner[1]).toBeCloseTo(centreOfCurvature[0], 6);
    expect(found.inner[2]).toBeCloseTo(centreOfCurvature[1], 6);
    expect(found.length).toBeCloseTo(radius, 6);
    // The file's own figures, which rest on differences.
    expect(found.inner[1]).toBeCloseTo(ideal!.inner[0], 4);
    expect(found.length).toBeCloseTo(ideal!.length, 4);
    expect(found.aim.y).toBeCloseTo(instantCentre[0], 6);
    expect(found.aim.z).toBeCloseTo(instantCentre[1], 6);
  });

  it.each(rods)('%s: its ends come apart over travel as derived in the plane', (_, rod) => {
    const { outer } = pathOf(buildLinkage(planar(rod.inner)), PLANAR_TRAVELS);
    PLANAR_TRAVELS.forEach((_, i) => {
      const apart = Math.hypot(outer[3 * i + 1]! - rod.inner[0], outer[3 * i + 2]! - rod.inner[1]) - rod.length;
      expect(apart).toBeCloseTo(rod.misfit[i]!, 5);
    });
  });

  it('tells a rod too short, whose misfit has the same sign both ways, from one too high or low, whose misfit changes its sign', () => {
    const linkage = (rod: typeof ideal) => buildLinkage(planar(rod!.inner));
    expect(rodAt(linkage(short)).tooShort).toBeCloseTo(0.1 * ideal!.length, 4);
    expect(rodAt(linkage(short)).tooHigh).toBeCloseTo(0, 5);
    expect(rodAt(linkage(shorter)).tooShort).toBeCloseTo(ideal!.length - 300, 4);
    for (const [rod, high] of [
      [raised, 10],
      [lowered, -10],
    ] as const) {
      expect(rodAt(linkage(rod)).tooHigh).toBeCloseTo(high, 4);
      expect(Math.abs(rodAt(linkage(rod)).tooShort)).toBeLessThan(0.5);
    }
    // And so the wheel steers: a short rod one way in bump and in droop, a high one both ways.
    const changes = (rod: typeof ideal) => {
      const { toe } = sweepTravel(linkage(rod), [-40, 0, 40]);
      return [toe[0]! - toe[1]!, toe[2]! - toe[1]!] as const;
    };
    for (const rod of [short, shorter]) expect(Math.sign(changes(rod)[0])).toBe(Math.sign(changes(rod)[1]));
    for (const rod of [raised, lowered]) expect(Math.sign(changes(rod)[0])).toBe(-Math.sign(changes(rod)[1]));
  });

  it('with a rod of nine tenths leaves what no amount takes away', () => {
    const [tooShort, right] = [short, ideal].map((rod) => toeCorrection(buildLinkage(planar(rod!.inner))));
    // The misfit of one sign over the steering arm, atan(0.22 mm ÷ 140 mm) = 0.09°: from −40 to 40 mm both ways, so it cannot be tilted away.
    const left = (Math.atan(0.22 / -BEHIND) * 180) / Math.PI;
    expect(tooShort!.minimax.after).toBeGreaterThan(0.8 * left);
    expect(tooShort!.minimax.after).toBeLessThan(1.2 * left);
    expect(right!.minimax.after).toBeLessThan(0.2 * left);
    expect(Math.abs(tooShort!.slope!.amount)).toBeLessThan(0.01);
  });
});

describe('the ideal rod in space', () => {
  const cars = fc.oneof(randomCorner, randomWishbone);
  /** The corner with its inner joint elsewhere. */
  const withInner = (corner: Corner, inner: Vector3) => buildLinkage(withHardPoint(corner, 'tieRod.inner', inner));

  it('does not steer a wheel to second order: what is left goes with the cube of travel', () => {
    fc.assert(
      fc.property(cars, (corner) => {
        const found = rodAt(buildLinkage(corner));
        // One that is to be built, inboard of the joint and neither endless nor a stub.
        fc.pre(found.length > 150 && found.length < 1500);
        const { toe, toeRate } = sweepTravel(withInner(corner, found.inner), [-2, -1, 0, 1, 2]);
        expect(toeRate[2]).toBeCloseTo(0, 8);
        const bend = toe[1]! - 2 * toe[2]! + toe[3]!;
        // What a third derivative leaves in a second difference; a rod 10 % short has 1e-4 degrees here.
        expect(Math.abs(bend)).toBeLessThan(2e-6);
        const short = [0, 1, 2].map((axis) => 0.9 * found.inner[axis]! + 0.1 * found.outer[axis]!);
        const { toe: steered } = sweepTravel(withInner(corner, short as unknown as Vector3), [-1, 0, 1]);
        expect(Math.abs(steered[0]! - 2 * steered[1]! + steered[2]!)).toBeGreaterThan(10 * Math.abs(bend));
      }),
      seeded(1811, 60),
    );
  });

  it('says how high the inner joint is of the line that does not steer: lowered by that much, toe stands still', () => {
    fc.assert(
      fc.property(cars, fc.double({ min: -30, max: 30, noNaN: true }), (corner, travel) => {
        const linkage = buildLinkage(corner);
        const set = standingAt(linkage, travel)!;
        const path = heldPath(linkage, set, toeIn(set), Float64Array.of(travel));
        const { tooHigh } = idealRod(heldAt(path, travel), linkage.body.tieInner);
        fc.pre(Math.abs(tooHigh) < 30);
        const { slope } = toeCorrection(linkage, { at: travel, adjust: 'innerEnd', window: [-1, 1] });
        expect(slope!.amount).toBeCloseTo(-tooHigh, 6);
      }),
      seeded(1812, 40),
    );
  });

  it('moves a raised outer joint with the knuckle, so that a raised one is judged without the solver', () => {
    const { slope } = toeCorrection(buildLinkage(referenceCorner));
    const linkage = buildLinkage(referenceCorner);
    const place = heldAt(pathOf(linkage, [-1, 0, 1]), 0);
    expect(idealRod(place, linkage.body.tieInner, slope!.amount).tooHigh).toBeCloseTo(0, 8);
    expect(idealRod(place, linkage.body.tieInner, slope!.amount + 1).tooHigh).toBeLessThan(-0.5);
  });

  it('has a path whose derivatives are its own differences, at every travel', () => {
    const H = 0.05;
    for (const corner of [referenceCorner, wishboneCorner]) {
      const linkage = buildLinkage(corner);
      for (const travel of [-50, 0, 45]) {
        const path = pathOf(linkage, [travel - H, travel, travel + H]);
        for (let axis = 0; axis < 3; axis++) {
          for (const [of, rate, second] of [
            [path.outer, path.outerRate, path.outerSecond],
            [path.up, path.upRate, path.upSecond],
          ] as const) {
            expect(rate[3 + axis]!).toBeCloseTo((of[6 + axis]! - of[axis]!) / (2 * H), 6);
            expect(second[3 + axis]!).toBeCloseTo((rate[6 + axis]! - rate[axis]!) / (2 * H), 8);
          }
        }
        // A direction stays as long as it is.
        expect(Math.hypot(...path.up.subarray(3, 6))).toBeCloseTo(1, 12);
      }
    }
  });

  it('holds toe: the joint is where a rod that is set to that toe at that travel has it', () => {
    for (const corner of [referenceCorner, wishboneCorner]) {
      const linkage = buildLinkage(corner);
      const { outer } = pathOf(linkage, [-40, 0, 50]);
      [-40, 0, 50].forEach((at, i) => {
        const asked = { at, window: [-1, 1], toe: corner.toe, adjust: 'outerEnd', range: [0, 0] } as const;
        const { tieOuter } = motionOf(withToeSet(linkage, asked, 0)!.linkage, Float64Array.of(at));
        for (let axis = 0; axis < 3; axis++) expect(outer[3 * i + axis]!).toBeCloseTo(tieOuter[axis]!, 6);
      });
    }
  });

  it('leaves NaN where the links do not reach, and says endless where the path is straight', () => {
    const { outer } = pathOf(buildLinkage(referenceCorner), [0, 40, 900]);
    expect(outer[3]).not.toBeNaN();
    expect(outer[6]).toBeNaN();
    const straight = idealRod(
      {
        outer: [0, 600, 250],
        outerRate: [0, -0.1, 1],
        outerSecond: [0, 0, 0],
        up: [0, 0, 1],
        upRate: [0, 0, 0],
        upSecond: [0, 0, 0],
        turn: 0,
      },
      [0, 300, 240],
    );
    expect(straight.length).toBe(Number.POSITIVE_INFINITY);
    expect(straight.tooShort).toBe(Number.POSITIVE_INFINITY);
    expect(Math.abs(straight.aim.y)).toBe(Number.POSITIVE_INFINITY);
    expect(straight.tooHigh).toBeCloseTo(20, 9);
    // A centre on the wheel's side: no rod from the rack is long enough.
    const outboard = idealRod(
      {
        ...straight,
        ...{
          outerRate: [0, 0, 1],
          outerSecond: [0, 0.002, 0],
          up: [0, 0, 1],
          upRate: [0, 0, 0],
          upSecond: [0, 0, 0],
          turn: 0,
        },
      },
      [0, 300, 250],
    );
    expect(outboard.length).toBeCloseTo(-500, 9);
    expect(outboard.tooShort).toBe(Number.POSITIVE_INFINITY);
  });
});
