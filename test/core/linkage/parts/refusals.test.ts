import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../../core/linkage/build-linkage.js';
import * as parts from '../../../../core/linkage/parts/index.js';
import { InputError } from '../../../../core/quantity/problem.js';
import { referenceCorner } from '../reference-corner.js';
import { wishboneCorner } from '../wishbone-corner.js';

const strut = buildLinkage(referenceCorner);
const wishbone = buildLinkage(wishboneCorner);

/** The problems it is refused with, as "code path"; none when it is not. Any other error is passed on. */
function refused(make: () => unknown): string[] {
  try {
    make();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    structuredClone(error.problems); // they have to cross the worker's boundary
    return error.problems.map(({ code, path }) => `${code} ${path}`);
  }
  return [];
}

// What a script without types may pass.
const {
  armLonger,
  ballJointExtended,
  ballJointMoved,
  boltAxis,
  camberAndToeSet,
  innerPivotsRaised,
  knuckleBoltsTurned,
  rackRaised,
  spinAxisTurned,
  tieRodEndRaised,
  tieRodLonger,
  toeReset,
  topMountMoved,
  wheelOffset,
} = parts as unknown as Record<string, (...anything: unknown[]) => (linkage: unknown) => unknown>;

const NUMBERS: [string, (x: unknown) => unknown][] = [
  ['arm.mm', (mm) => armLonger!({ mm })],
  ['ballJoint.mm', (mm) => ballJointExtended!({ mm })],
  ['ballJoint.vector.0', (x) => ballJointMoved!({ vector: [x, 0, 0] })],
  ['ballJoint.vector.2', (z) => ballJointMoved!({ vector: [0, 0, z] })],
  ['ballJoint.stud.1', (y) => ballJointExtended!({ mm: 1, stud: [0, y, 0] })],
  ['innerPivots.front', (front) => innerPivotsRaised!({ front, rear: 0 })],
  ['innerPivots.rear', (rear) => innerPivotsRaised!({ front: 0, rear })],
  ['topMount.vector.1', (y) => topMountMoved!({ vector: [0, y, 0] })],
  ['knuckleBolts.degrees', (degrees) => knuckleBoltsTurned!({ degrees, otherBolt: [0, 0, 0] })],
  ['knuckleBolts.otherBolt.0', (x) => knuckleBoltsTurned!({ degrees: 1, otherBolt: [x, 0, 0] })],
  ['knuckleBolts.axis.2', (z) => knuckleBoltsTurned!({ degrees: 1, otherBolt: [0, 0, 0], axis: [1, 0, z] })],
  ['spinAxis.camber', (camber) => spinAxisTurned!({ camber })],
  ['spinAxis.toe', (toe) => spinAxisTurned!({ camber: 0, toe: toe === undefined ? null : toe })],
  ['wheelOffset.mm', (mm) => wheelOffset!({ mm })],
  ['tieRodEnd.mm', (mm) => tieRodEndRaised!({ mm })],
  ['rack.mm', (mm) => rackRaised!({ mm })],
  ['tieRod.mm', (mm) => tieRodLonger!({ mm })],
  ['toe', (toe) => toeReset!(strut, toe)],
  ['camber', (camber) => camberAndToeSet!(strut, { camber, toe: 0 }, (mm: unknown) => armLonger!({ mm }))],
];

describe.each(NUMBERS)('%s', (path, make) => {
  it.each<[unknown, string]>([
    [Number.NaN, 'not-finite'],
    [Number.NEGATIVE_INFINITY, 'not-finite'],
    ['5', 'not-a-number'],
    [() => 5, 'not-a-number'],
    [{}, 'not-a-number'],
    [undefined, 'missing'],
    [null, 'missing'],
  ])('that is %s is refused', (value, code) => {
    expect(refused(() => make(value))).toEqual([`${code} ${path}`]);
  });
});

describe('what a part is asked for', () => {
  it.each<[string, ((options?: unknown) => unknown) | undefined]>([
    ['arm', armLonger],
    ['innerPivots', innerPivotsRaised],
    ['ballJoint', ballJointMoved],
    ['ballJoint', ballJointExtended],
    ['topMount', topMountMoved],
    ['knuckleBolts', knuckleBoltsTurned],
    ['spinAxis', spinAxisTurned],
    ['wheelOffset', wheelOffset],
    ['tieRodEnd', tieRodEndRaised],
    ['rack', rackRaised],
    ['tieRod', tieRodLonger],
  ])('is a record (%s)', (path, make) => {
    expect(refused(() => make!())).toEqual([`missing ${path}`]);
    expect(refused(() => make!(null))).toEqual([`missing ${path}`]);
    expect(refused(() => make!(5))).toEqual([`wrong-shape ${path}`]);
  });

  it.each<[string, () => unknown, string[]]>([
    ['no vector', () => topMountMoved!({}), ['missing topMount.vector']],
    ['two coordinates', () => topMountMoved!({ vector: [1, 2] }), ['wrong-shape topMount.vector']],
    ['a text for a vector', () => ballJointMoved!({ vector: '1,2,3' }), ['wrong-shape ballJoint.vector']],
    [
      'several bad numbers, all of them',
      () => ballJointMoved!({ vector: [Number.NaN, '1', undefined] }),
      ['not-finite ballJoint.vector.0', 'not-a-number ballJoint.vector.1', 'missing ballJoint.vector.2'],
    ],
    ['an arm of no car', () => armLonger!({ mm: 5, arm: 'middle' }), ['wrong-shape arm.arm']],
    ['its pivots', () => innerPivotsRaised!({ front: 1, rear: 1, arm: 0 }), ['wrong-shape innerPivots.arm']],
    ['a joint of no car', () => ballJointExtended!({ mm: 5, joint: 'Upper' }), ['wrong-shape ballJoint.joint']],
    [
      'the text "false"',
      () => ballJointExtended!({ mm: 5, correctTieRod: 'false' }),
      ['wrong-shape ballJoint.correctTieRod'],
    ],
    ['a stud of no length', () => ballJointExtended!({ mm: 5, stud: [0, 0, 0] }), ['no-direction ballJoint.stud']],
    ['no target', () => camberAndToeSet!(strut), ['missing target']],
    ['no part to adjust', () => camberAndToeSet!(strut, { camber: -1, toe: 0 }), ['wrong-shape adjust']],
    [
      'a bolt along the damper',
      () => boltAxis!(strut, [...strut.carrier.damperAxis!]),
      ['no-direction knuckleBolts.axis'],
    ],
    [
      'bolts turned by a right angle',
      () => knuckleBoltsTurned!({ degrees: -90, otherBolt: [0, 0, 0] }),
      ['out-of-range knuckleBolts.degrees'],
    ],
  ])('%s is refused', (_, make, expected) => {
    expect(refused(make)).toEqual(expected);
  });
});

describe('what a linkage cannot have', () => {
  it.each<[string, () => unknown, string]>([
    [
      'a strut’s upper joint',
      () => ballJointExtended!({ mm: 5, joint: 'upper' })(strut),
      'wrong-shape ballJoint.joint',
    ],
    ['a strut’s upper arm', () => armLonger!({ mm: 5, arm: 'upper' })(strut), 'wrong-shape arm.arm'],
    ['its pivots', () => innerPivotsRaised!({ front: 1, rear: 1, arm: 'upper' })(strut), 'wrong-shape innerPivots.arm'],
    ['a wishbone’s top mount', () => topMountMoved!({ vector: [0, 1, 0] })(wishbone), 'wrong-shape topMount'],
    [
      'a wishbone’s knuckle bolts',
      () => knuckleBoltsTurned!({ degrees: 1, otherBolt: [0, 0, 0] })(wishbone),
      'wrong-shape knuckleBolts',
    ],
    ['a bolt axis on a wishbone', () => boltAxis!(wishbone), 'wrong-shape knuckleBolts'],
    ['an arm that no longer reaches', () => armLonger!({ mm: -340 })(strut), 'cannot-close tieRod'],
    ['an arm through its own pivots', () => armLonger!({ mm: -472, arm: 'upper' })(wishbone), 'out-of-range arm.mm'],
    ['a tie rod of negative length', () => tieRodLonger!({ mm: -630 })(strut), 'out-of-range tieRod.mm'],
    ['a top mount below the ball joint', () => topMountMoved!({ vector: [0, 0, -700] })(strut), 'cannot-close strut'],
    ['a spin axis turned over the top', () => spinAxisTurned!({ camber: -100 })(strut), 'out-of-range spinAxis.camber'],
    ['or about', () => spinAxisTurned!({ camber: 0, toe: 200 })(strut), 'out-of-range spinAxis.toe'],
  ])('%s is refused by name', (_, make, expected) => {
    expect(refused(make)).toEqual([expected]);
  });

  it('says how far it would go', () => {
    const limitOf = (make: () => unknown) => {
      try {
        make();
      } catch (error) {
        return (error as InputError).problems[0]!.limit;
      }
      return undefined;
    };
    expect(limitOf(() => armLonger!({ mm: -400 })(strut))).toBeCloseTo(-strut.lengths.lowerArm.radius, 9);
    expect(limitOf(() => tieRodLonger!({ mm: -400 })(strut))).toBeCloseTo(-strut.lengths.tieRod, 9);
    expect(limitOf(() => spinAxisTurned!({ camber: -100 })(strut))).toBeCloseTo(-90 - referenceCorner.camber, 9);
  });
});
