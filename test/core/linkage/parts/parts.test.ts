import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../../core/linkage/build-linkage.js';
import type { Linkage } from '../../../../core/linkage/linkage.js';
import {
  armLonger,
  ballJointExtended,
  ballJointMoved,
  innerPivotsRaised,
  knuckleBoltsTurned,
  type Part,
  rackRaised,
  spinAxisTurned,
  tieRodEndRaised,
  tieRodLonger,
  topMountMoved,
  wheelOffset,
  withParts,
} from '../../../../core/linkage/parts/index.js';
import { sweepTravel } from '../../../../core/linkage/sweep.js';
import { InputError } from '../../../../core/quantity/problem.js';
import { randomCorner, seeded } from '../random-corner.js';
import { referenceCorner } from '../reference-corner.js';
import { wishboneCorner } from '../wishbone-corner.js';

const mm = fc.double({ min: -15, max: 15, noNaN: true });
const vector = fc.tuple(mm, mm, mm);
const BOLT: [number, number, number] = [-10, -60, 90];

/** A part and its opposite, for a strut. */
const strutPairs: fc.Arbitrary<[Part, Part]> = fc.oneof(
  vector.map((v): [Part, Part] => [ballJointMoved({ vector: v }), ballJointMoved({ vector: [-v[0], -v[1], -v[2]] })]),
  mm.map((x): [Part, Part] => [
    ballJointExtended({ mm: x, correctTieRod: true }),
    ballJointExtended({ mm: -x, correctTieRod: true }),
  ]),
  mm.map((x): [Part, Part] => [armLonger({ mm: x }), armLonger({ mm: -x })]),
  fc
    .tuple(mm, mm)
    .map(([front, rear]): [Part, Part] => [
      innerPivotsRaised({ front, rear }),
      innerPivotsRaised({ front: -front, rear: -rear }),
    ]),
  vector.map((v): [Part, Part] => [topMountMoved({ vector: v }), topMountMoved({ vector: [-v[0], -v[1], -v[2]] })]),
  fc
    .double({ min: -3, max: 3, noNaN: true })
    .map((degrees): [Part, Part] => [
      knuckleBoltsTurned({ degrees, otherBolt: BOLT }),
      knuckleBoltsTurned({ degrees: -degrees, otherBolt: BOLT }),
    ]),
  fc
    .tuple(mm, mm)
    .map(([camber, toe]): [Part, Part] => [
      spinAxisTurned({ camber: camber / 5, toe: toe / 10 }),
      spinAxisTurned({ camber: -camber / 5, toe: -toe / 10 }),
    ]),
  mm.map((x): [Part, Part] => [tieRodEndRaised({ mm: x }), tieRodEndRaised({ mm: -x })]),
  mm.map((x): [Part, Part] => [rackRaised({ mm: x }), rackRaised({ mm: -x })]),
  mm.map((x): [Part, Part] => [tieRodLonger({ mm: x / 3 }), tieRodLonger({ mm: -x / 3 })]),
  mm.map((x): [Part, Part] => [wheelOffset({ mm: x }), wheelOffset({ mm: -x })]),
);

const TRAVELS = [-50, -20, 0, 30, 60];
const numbersOf = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : value && typeof value === 'object'
      ? Object.values(value).flatMap(numbersOf)
      : [];

function expectSame(a: Linkage, b: Linkage): void {
  for (const name of ['body', 'carrier', 'lengths', 'home'] as const) {
    const [one, other] = [numbersOf(a[name]), numbersOf(b[name])];
    one.forEach((x, i) => {
      expect(Math.abs(x - other[i]!), name).toBeLessThan(1e-9);
    });
  }
  const [one, other] = [sweepTravel(a, TRAVELS), sweepTravel(b, TRAVELS)];
  expect(one.reached).toEqual(other.reached);
  TRAVELS.forEach((_, i) => {
    if (!one.reached[i]) return;
    expect(Math.abs(one.camber[i]! - other.camber[i]!)).toBeLessThan(1e-9);
    expect(Math.abs(one.toe[i]! - other.toe[i]!)).toBeLessThan(1e-9);
  });
}

describe('parts on random struts', () => {
  it('a part and its opposite give the linkage back', () => {
    fc.assert(
      fc.property(randomCorner, strutPairs, (corner, [part, opposite]) => {
        const linkage = buildLinkage(corner);
        expectSame(withParts(linkage, part, opposite), linkage);
      }),
      seeded(31, 150),
    );
  });

  it('a ball joint part leaves every length alone, and the ride height', () => {
    fc.assert(
      fc.property(randomCorner, vector, fc.boolean(), (corner, v, correctTieRod) => {
        const before = buildLinkage(corner);
        const after = ballJointMoved({ vector: v, correctTieRod })(before);
        expect(after.lengths).toEqual(before.lengths);
        expect(after.body).toBe(before.body);
        const { travel, camber } = sweepTravel(after, [0]);
        expect(travel[0]).toBe(0);
        expect(camber[0]).not.toBeNaN();
        expect(after.wheelCentreZ).toBe(before.wheelCentreZ);
      }),
      seeded(32, 100),
    );
  });

  it('parts that act on different things can be put on in any order', () => {
    fc.assert(
      fc.property(randomCorner, mm, mm, mm, (corner, a, b, c) => {
        const linkage = buildLinkage(corner);
        const parts = [ballJointExtended({ mm: a }), topMountMoved({ vector: [0, b, 0] }), armLonger({ mm: c })];
        expectSame(withParts(linkage, ...parts), withParts(linkage, ...parts.toReversed()));
      }),
      seeded(33, 50),
    );
  });
});

describe('parts on a double wishbone', () => {
  const linkage = buildLinkage(wishboneCorner);
  it.each<[string, Part, Part]>([
    ['upper ball joint', ballJointExtended({ mm: 10, joint: 'upper' }), ballJointExtended({ mm: -10, joint: 'upper' })],
    ['longer upper arm', armLonger({ mm: 8, arm: 'upper' }), armLonger({ mm: -8, arm: 'upper' })],
    [
      'upper pivots raised',
      innerPivotsRaised({ front: 6, rear: 9, arm: 'upper' }),
      innerPivotsRaised({ front: -6, rear: -9, arm: 'upper' }),
    ],
  ])('%s and its opposite give the linkage back', (_, part, opposite) => {
    expect(sweepTravel(part(linkage), [0]).camber[0]).not.toBeCloseTo(wishboneCorner.camber, 3);
    expectSame(withParts(linkage, part, opposite), linkage);
  });
  it('has no top mount and no knuckle bolts', () => {
    for (const part of [topMountMoved({ vector: [0, 1, 0] }), knuckleBoltsTurned({ degrees: 1, otherBolt: BOLT })]) {
      expect(() => part(linkage)).toThrow(InputError);
    }
  });
});

describe('each part does what its name says, at ride height', () => {
  const linkage = buildLinkage(referenceCorner);
  const camber = (part: Part) => sweepTravel(part(linkage), [0]).camber[0]! - referenceCorner.camber;
  it('a top mount moved inboard, bolts turned inward, a longer arm and a spin axis turned all add negative camber', () => {
    expect(camber(topMountMoved({ vector: [0, -10, 0] }))).toBeLessThan(-0.5);
    expect(camber(knuckleBoltsTurned({ degrees: 1, otherBolt: BOLT }))).toBeLessThan(-0.5);
    expect(camber(armLonger({ mm: 10 }))).toBeLessThan(-0.5);
    expect(camber(spinAxisTurned({ camber: -1 }))).toBeCloseTo(-1, 9);
  });
  it('a wheel offset moves the contact outboard by as much, and camber by next to nothing', () => {
    const out = sweepTravel(wheelOffset({ mm: 15 })(linkage), [0]);
    const before = sweepTravel(linkage, [0]);
    expect(out.halfTrack[0]! - before.halfTrack[0]!).toBeCloseTo(15, 1);
    expect(out.scrubRadius[0]! - before.scrubRadius[0]!).toBeCloseTo(15, 1);
    expect(Math.abs(out.camber[0]! - before.camber[0]!)).toBeLessThan(0.02);
  });
});

describe('what is no part is refused by name', () => {
  const refused = (make: () => unknown) => {
    try {
      make();
    } catch (error) {
      if (error instanceof InputError) return error.problems.map(({ code, path }) => `${code} ${path}`);
      throw error;
    }
    return [];
  };
  it.each<[string, () => unknown, string[]]>([
    ['a vector with NaN', () => ballJointMoved({ vector: [0, Number.NaN, 1] }), ['not-finite ballJoint.vector.1']],
    ['no vector', () => topMountMoved({ vector: undefined as never }), ['missing topMount.vector']],
    ['two coordinates', () => topMountMoved({ vector: [1, 2] as never }), ['wrong-shape topMount.vector']],
    ['a text', () => armLonger({ mm: '5' as never }), ['not-a-number arm.mm']],
    [
      'two bad numbers',
      () => innerPivotsRaised({ front: Number.POSITIVE_INFINITY, rear: undefined as never }),
      ['not-finite innerPivots.front', 'missing innerPivots.rear'],
    ],
    [
      'a strut’s upper joint',
      () => ballJointExtended({ mm: 5, joint: 'upper' })(buildLinkage(referenceCorner)),
      ['wrong-shape ballJoint.joint'],
    ],
    [
      'an arm that no longer reaches',
      () => armLonger({ mm: -340 })(buildLinkage(referenceCorner)),
      ['cannot-close tieRod'],
    ],
  ])('%s', (_, make, expected) => {
    expect(refused(make)).toEqual(expected);
  });
});
