import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCorner } from '../../../core/document/read-corner.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { type Corner, hardPointKeys, withHardPoint } from '../../../core/linkage/corner.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { InputError } from '../../../core/quantity/problem.js';
import { curvature, lengthsKept, noJumps, travelsHold } from './properties.js';
import { randomCorner } from './random-corner.js';
import { randomWishbone } from './random-wishbone.js';
import { referenceCorner } from './reference-corner.js';
import { wishboneCorner } from './wishbone-corner.js';

/* A few hundred of each here, and a third of a hundred walked for jumps; `npm run bench` runs thousands and tens of thousands. */
const RUNS = 400;
const JUMP_RUNS = 33;
/** Shrinking a corner of thirty numbers takes minutes and makes it no simpler. */
const seeded = (seed: number, numRuns: number): fc.Parameters<unknown> => ({ seed, numRuns, endOnFailure: true });

describe.each([
  ['struts', randomCorner as fc.Arbitrary<Corner>],
  ['double wishbones', randomWishbone as fc.Arbitrary<Corner>],
])('random %s', (_, corners) => {
  it.each([
    ['keep every length, and the carrier its shape, to the ends of reach', lengthsKept],
    ['are static at travel 0, independent of order, and end where they say', travelsHold],
  ])('%s', (_name, check) => {
    fc.assert(fc.property(corners, check), seeded(61, RUNS));
  });
  it('never jump from one assembly to the other, up to the ends of reach', () => {
    fc.assert(fc.property(corners, noJumps), seeded(62, JUMP_RUNS));
  });
});

describe('sign of the camber curve’s curvature (M. Ortiz, Chassis Newsletter, Sept. 2015)', () => {
  it('is negative for usual unequal-arm double wishbones', () => {
    fc.assert(
      fc.property(randomWishbone, (corner) => {
        expect(curvature(corner)).toBeLessThan(0);
      }),
      seeded(63, RUNS),
    );
  });
  it('is positive for the derived strut and negative for the derived wishbone', () => {
    expect(curvature(referenceCorner)).toBeGreaterThan(0);
    expect(curvature(wishboneCorner)).toBeLessThan(0);
  });
});

describe('hostile values', () => {
  const finish = (data: unknown) => {
    try {
      const corner = readCorner(data);
      const { reached, camber, toe, rollCentreHeight } = sweepTravel(buildLinkage(corner), [-40, 0, 40]);
      reached.forEach((is, i) => {
        if (is) for (const value of [camber[i], toe[i], rollCentreHeight[i]]) expect(Number.isFinite(value)).toBe(true);
      });
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      expect((error as InputError).field).toBeTruthy();
      expect((error as InputError).code).toBeTruthy();
    }
  };
  const exotic = fc.anything({
    withBigInt: true,
    withDate: true,
    withMap: true,
    withSet: true,
    withNullPrototype: true,
    withTypedArray: true,
    withSparseArray: true,
  });
  it('anything for a corner ends in an InputError', () => {
    fc.assert(fc.property(exotic, finish), seeded(64, RUNS));
  });
  it('anything for one value of a wishbone or strut, too', () => {
    const number = fc.oneof(
      exotic,
      fc.constantFrom(0, -0, 1e308, -1e308, 5e-324, Number.NaN, Number.POSITIVE_INFINITY, '12', '', null),
      fc.double({ min: -2000, max: 2000, noNaN: true }),
    );
    fc.assert(
      fc.property(
        fc.constantFrom<Corner>(referenceCorner, wishboneCorner),
        fc.nat(),
        fc.nat({ max: 2 }),
        number,
        (corner, pick, axis, value) => {
          const keys = hardPointKeys(corner);
          const key = keys[pick % keys.length]!;
          const [part, end] = key.split('.') as [keyof Corner, string | undefined];
          const built = (
            end === undefined ? corner[part] : (corner[part] as unknown as Record<string, unknown>)[end]
          ) as number[];
          const point = [...built];
          point[axis] = value as number;
          finish(withHardPoint(corner, key, point as never));
        },
      ),
      seeded(65, RUNS),
    );
  });
  it.each<[string, object, string[]]>([
    ['a wishbone without its upper arm', { ...wishboneCorner, upperArm: undefined }, ['missing upperArm']],
    [
      'a damper on nothing known',
      { ...wishboneCorner, damper: { top: [0, 520, 640], low: [0, 600, 205], on: 'hub' } },
      ['wrong-shape damper.on'],
    ],
    [
      'an upper ball joint below the lower one',
      { ...wishboneCorner, upperArm: { ...wishboneCorner.upperArm, ball: [-15, 690, 100] } },
      ['ends-swapped upperArm.ball'],
    ],
    [
      'upper pivots that make no axis',
      { ...wishboneCorner, upperArm: { ...wishboneCorner.upperArm, rear: [112, 450, 480] } },
      ['no-direction upperArm.rear'],
    ],
    ['a misspelt part', { ...wishboneCorner, strut: referenceCorner.strut }, ['wrong-shape strut']],
  ])('%s is named', (_, data, expected) => {
    try {
      readCorner(data);
      expect.unreachable();
    } catch (error) {
      expect((error as InputError).problems.map(({ code, path }) => `${code} ${path}`)).toEqual(expected);
    }
  });
});
