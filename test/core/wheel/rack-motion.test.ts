import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wheelMotion } from '../../../core/answers/from-source.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { Corner, WishboneCorner } from '../../../core/linkage/corner.js';
import type { Linkage } from '../../../core/linkage/linkage.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { finished } from '../../../core/math/finished.js';
import { motionOver, rackReaches } from '../../../core/wheel/rack-motion.js';
import { aheadOf, columnAt, indexAhead, type WheelMotion } from '../../../core/wheel/wheel-motion.js';
import { type IndependentPose, independentStrutSweep } from '../../reference/independent-strut.js';
import { randomCorner } from '../linkage/random-corner.js';
import { referenceCorner } from '../linkage/reference-corner.js';
import { wishboneCorner } from '../linkage/wishbone-corner.js';

const rackMotion = (linkage: Linkage, lock = 0) => finished(motionOver(linkage, finished(rackReaches(linkage, lock))));

const DEGREES = 180 / Math.PI;
type Moved = Pick<WheelMotion, 'travel' | 'rack' | 'centre' | 'spin' | 'toe'>;
const vector = ({ rack }: Moved, from: Float64Array, i: number, j: number) => [
  ...from.subarray(3 * (i * rack.length + j), 3 * (i * rack.length + j) + 3),
];
const camberOf = ([, y, z]: number[]) => Math.atan2(-z!, y!) * DEGREES;
const toeOf = ([x, y]: number[]) => Math.atan2(x!, y!) * DEGREES;

describe('the motion of hard points', () => {
  it("is the general solver's over travel and rack, joints included", () => {
    const corners = [referenceCorner, ...fc.sample(randomCorner, { seed: 31, numRuns: 3 })];
    for (const corner of corners) {
      const motion = rackMotion(buildLinkage(corner), 25);
      const wanted = [-40, -17.5, 0, 22.5, 45].map((t) => motion.travel.indexOf(t));
      for (const j of [0, 7, 10, 16, 20]) {
        const travels = wanted.map((i) => motion.travel[i]!);
        const poses: IndependentPose[] = independentStrutSweep(corner, travels, { rack: motion.rack[j]! });
        poses.forEach((pose, k) => {
          if (Number.isNaN(pose.camber)) return;
          const pairs: [Float64Array, readonly number[], number][] = [
            [motion.centre, pose.wheelCentre, 1],
            [motion.spin, pose.spin, 0],
            [motion.joints!.tieOuter, pose.tieOuter, 1],
            [motion.joints!.ball, pose.ball, 1],
          ];
          for (const [from, expected, isPoint] of pairs) {
            vector(motion, from, wanted[k]!, j).forEach((x, axis) => {
              const origin = isPoint * corner.wheelCentre[axis]!;
              expect(Math.abs(x - (expected[axis]! - origin))).toBeLessThan(1e-6);
            });
          }
        });
        expect(poses.filter(({ camber }) => !Number.isNaN(camber)).length).toBeGreaterThan(2);
      }
    }
  });

  it('ends at full lock to 0.01 degrees where the links get there, and never beyond it', () => {
    for (const lock of [5, 18, 32, 38]) {
      const { toe, rack } = rackMotion(buildLinkage(referenceCorner), lock);
      const ahead = toe[rack.indexOf(0)]!;
      expect([...rack]).toEqual([...rack].sort((a, b) => a - b));
      for (const end of [toe[0]!, toe.at(-1)!]) expect(Math.abs(Math.abs(end - ahead) - lock)).toBeLessThan(0.01);
      expect(Math.sign(toe[0]! - ahead)).toBe(-Math.sign(toe.at(-1)! - ahead));
    }
    fc.assert(
      fc.property(randomCorner, fc.integer({ min: 10, max: 55 }), (corner, lock) => {
        const { toe, rack } = rackMotion(buildLinkage(corner), lock);
        const steers = [...toe].map((x) => Math.abs(x - toe[rack.indexOf(0)]!));
        expect(steers.every((steer) => steer < lock + 0.01)).toBe(true);
      }),
      { seed: 32, numRuns: 15, endOnFailure: true },
    );
  });

  it("gives the general solver's toe at the ends of the rack", () => {
    const { toe, rack } = rackMotion(buildLinkage(referenceCorner), 30);
    for (const j of [0, 5, 20]) {
      expect(toe[j]).toBeCloseTo(independentStrutSweep(referenceCorner, [0], { rack: rack[j]! })[0]!.toe, 6);
    }
  });

  it('straight ahead has the camber and toe of a sweep, for either kind of corner', () => {
    for (const corner of [referenceCorner, wishboneCorner] as Corner[]) {
      const linkage = buildLinkage(corner);
      const motion = rackMotion(linkage, 20);
      const sweep = sweepTravel(linkage, motion.travel);
      motion.travel.forEach((_, i) => {
        const spin = vector(motion, motion.spin, i, motion.rack.indexOf(0));
        expect(camberOf(spin)).toBeCloseTo(sweep.camber[i]!, 9);
        expect(toeOf(spin)).toBeCloseTo(sweep.toe[i]!, 9);
      });
      for (const x of vector(motion, motion.centre, motion.travel.indexOf(0), motion.rack.indexOf(0))) {
        expect(Math.abs(x)).toBeLessThan(1e-9);
      }
    }
  });

  it('straight ahead is the same whatever the lock, and a column is what stands in it', () => {
    const source = { kind: 'corner', corner: referenceCorner } as const;
    const steered = wheelMotion({ source, lock: 30 });
    const straight = wheelMotion({ source });
    expect(aheadOf(steered)).toEqual(straight);
    expect(indexAhead(steered)).toBe(10);
    const last = columnAt(steered, steered.toe[20]!);
    expect(last.toe).toEqual(steered.toe.slice(20));
    expect(vector(last, last.centre, 30, 0)).toEqual(vector(steered, steered.centre, 30, 20));
    expect(vector(last, last.joints!.ball, 30, 0)).toEqual(vector(steered, steered.joints!.ball, 30, 20));
  });

  it('shortens the damper as the general solver says', () => {
    const { damper } = rackMotion(buildLinkage(referenceCorner));
    const at = [-40, 0, 50];
    const lengths = independentStrutSweep(referenceCorner, at).map(({ damperLength }) => damperLength);
    const short = at.map((t) => damper!.shortening[damper!.travel.indexOf(t)]!);
    expect(short[1]! - short[0]!).toBeCloseTo(lengths[0]! - lengths[1]!, 6);
    expect(short[2]! - short[1]!).toBeCloseTo(lengths[1]! - lengths[2]!, 6);
  });
});

it("shortens a wishbone's damper on any foot as a sweep says, and knows of none where there is none", () => {
  const { lowerArm, upperArm } = wishboneCorner;
  const feet = [
    { on: 'lowerArm', low: lowerArm.ball.map((x, i) => x + (i === 1 ? -90 : i === 2 ? 20 : 0)) },
    { on: 'upperArm', low: upperArm.ball.map((x, i) => x + (i === 1 ? -60 : i === 2 ? 20 : 0)) },
    { on: 'carrier', low: upperArm.ball.map((x, i) => x - (i === 1 ? 20 : i === 2 ? 100 : 0)) },
  ] as const;
  for (const { on, low } of feet) {
    const top = low.map((x, i) => x + [0, -60, 420][i]!);
    const corner = { ...wishboneCorner, damper: { top, low, on } } as unknown as WishboneCorner;
    const { damper, travel } = rackMotion(buildLinkage(corner));
    const { damperLength } = sweepTravel(buildLinkage(corner), travel);
    travel.forEach((_, i) => {
      expect(damper!.shortening[i]).toBeCloseTo(damperLength[0]! - damperLength[i]!, 9);
    });
  }
  expect(rackMotion(buildLinkage(wishboneCorner)).damper).toBeUndefined();
});

describe('the motion of a curve', () => {
  const source = { kind: 'coefficients', coefficients: [-0.8, -0.02, 1e-4], domain: [-70, 95] } as const;
  const motion = wheelMotion({
    source: { ...source, coefficients: [...source.coefficients], domain: [-70, 95] },
    sideways: -0.05,
  });

  it('has its camber at every travel, no toe, and goes sideways as said', () => {
    motion.travel.forEach((t, i) => {
      const spin = vector(motion, motion.spin, i, 0);
      expect(camberOf(spin)).toBeCloseTo(-0.8 - 0.02 * t + 1e-4 * t * t, 9);
      expect(spin[0]).toBe(0);
      const [x, y, z] = vector(motion, motion.centre, i, 0);
      expect([x, y! + 0.05 * t, z]).toEqual([0, 0, t]);
    });
    expect([motion.travel[0], motion.travel.at(-1)]).toEqual([-70, 95]);
    expect(motion.from).toBe('coefficients');
  });
});

describe('what is asked', () => {
  it('says that a driveway without camber was taken as upright', () => {
    const { camber: _, ...rest } = EXAMPLE_DRIVEWAY as unknown as Record<string, unknown>;
    expect(wheelMotion({ source: { kind: 'driveway', driveway: rest } }).isUpright).toBe(true);
    expect(wheelMotion({ source: { kind: 'driveway', driveway: rest } }).from).toBe('driveway');
  });

  it('is refused with all that is wrong at once', () => {
    const ask = () =>
      wheelMotion({ source: { kind: 'driveway', driveway: { ball: 1 } }, lock: 70, sideways: Number.NaN });
    expect(ask).toThrow(
      expect.objectContaining({
        problems: [
          { code: 'out-of-range', path: 'lock', value: 70, limit: 55 },
          { code: 'not-finite', path: 'sideways', value: Number.NaN },
          { code: 'wrong-shape', path: 'ball', value: 'ball' },
        ],
      }),
    );
  });
});
