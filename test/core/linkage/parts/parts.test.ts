import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../../core/linkage/build-linkage.js';
import type { Corner, Vector3 } from '../../../../core/linkage/corner.js';
import type { Linkage } from '../../../../core/linkage/linkage.js';
import { staticAngles, withParts } from '../../../../core/linkage/parts/index.js';
import { ARM_ANGLE, BALL, LOW, POSE_SIZE, poseAt, TIE_OUTER, UPPER, WHEEL } from '../../../../core/linkage/pose.js';
import { sweepTravel } from '../../../../core/linkage/sweep.js';
import { randomCorner, seeded } from '../random-corner.js';
import { randomWishbone } from '../random-wishbone.js';
import { type KindOfPart, kindsOn, opposite } from './kinds-of-part.js';

/* What holds for every part, on random corners of both kinds. */

const TRAVELS = [-50, -20, 0, 30, 60];

const mm = fc.double({ min: -15, max: 15, noNaN: true });
const amounts = fc.tuple(mm, mm, mm);

/** Every number of a linkage that a part could change, by its path. */
function numbersOf(value: unknown, path: string): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (!value || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([name, one]) => numbersOf(one, `${path}.${name}`));
}
const partsOf = ({ body, carrier, lengths, damperEnd }: Linkage) => [
  ...numbersOf(body, 'body'),
  ...numbersOf(carrier, 'carrier'),
  ...numbersOf(lengths, 'lengths'),
  ...numbersOf(damperEnd, 'damperEnd'),
];

function poseAtHome(linkage: Linkage): Float64Array {
  const pose = new Float64Array(POSE_SIZE);
  pose[ARM_ANGLE] = linkage.home;
  poseAt(pose, linkage);
  return pose;
}

function expectSameMotion(a: Linkage, b: Linkage, tolerance: number): void {
  const [one, other] = [sweepTravel(a, TRAVELS), sweepTravel(b, TRAVELS)];
  expect(one.reached).toEqual(other.reached);
  TRAVELS.forEach((_, i) => {
    if (!one.reached[i]) return;
    for (const name of ['camber', 'toe'] as const) {
      expect(Math.abs(one[name][i]! - other[name][i]!), name).toBeLessThan(tolerance);
    }
  });
}

function expectSame(a: Linkage, b: Linkage): void {
  const other = new Map(partsOf(b));
  for (const [path, x] of partsOf(a)) expect(Math.abs(x - other.get(path)!), path).toBeLessThan(1e-9);
  expect(Math.abs(a.home - b.home)).toBeLessThan(1e-9);
  expectSameMotion(a, b, 1e-9);
}

/** The corner that somebody would measure on the car with its parts on. */
function measured(linkage: Linkage): Corner {
  const pose = poseAtHome(linkage);
  const at = (offset: number): Vector3 => [pose[offset]!, pose[offset + 1]!, pose[offset + 2]!];
  const { body, loadedRadius } = linkage;
  const base = {
    wheelCentre: at(WHEEL),
    loadedRadius,
    ...staticAngles(linkage),
    lowerArm: { front: body.lowerFront, rear: body.lowerRear, ball: at(BALL) },
    tieRod: { inner: body.tieInner, outer: at(TIE_OUTER) },
  };
  return linkage.kind === 'strut'
    ? { kind: 'strut', ...base, strut: { top: at(UPPER), low: at(LOW) } }
    : { kind: 'wishbone', ...base, upperArm: { front: body.upperFront!, rear: body.upperRear!, ball: at(UPPER) } };
}

describe.each<{ kind: Linkage['kind']; corners: fc.Arbitrary<Corner> }>([
  { kind: 'strut', corners: randomCorner },
  { kind: 'wishbone', corners: randomWishbone },
])('on a random $kind', ({ kind, corners }) => {
  describe.each(kindsOn(kind))('$name', ({ make, changes }) => {
    const check = (seed: number, judge: (before: Linkage, by: readonly [number, number, number]) => void) =>
      fc.assert(
        fc.property(corners, amounts, (corner, by) => judge(buildLinkage(corner), by)),
        seeded(seed, 15),
      );

    it('and its opposite give the linkage back', () => {
      check(31, (before, by) => {
        expectSame(withParts(before, make(by, before), make(opposite(by), before)), before);
      });
    });

    it(`changes ${changes.join(' and ')} and nothing else`, () => {
      check(32, (before, by) => {
        const after = make(by, before)(before);
        const was = new Map(partsOf(before));
        const changed = partsOf(after).filter(([path, x]) => x !== was.get(path));
        const names = new Set(changed.map(([path]) => path.split('.').slice(0, 2).join('.')));
        expect([...names].filter((name) => !changes.includes(name))).toEqual([]);
        if (by.every((x) => Math.abs(x) > 1e-6)) expect([...names].toSorted()).toEqual(changes.toSorted());
        const { loadedRadius, wheelCentreZ, branch } = before;
        expect(after).toMatchObject({ kind, loadedRadius, wheelCentreZ, branch });
      });
    });

    it('leaves the wheel centre at its ride height', () => {
      check(33, (before, by) => {
        const after = make(by, before)(before);
        expect(Math.abs(poseAtHome(after)[WHEEL + 2]! - poseAtHome(before)[WHEEL + 2]!)).toBeLessThan(1e-9);
      });
    });

    it('makes a corner that moves like one measured with the part on', () => {
      check(34, (before, by) => {
        const after = make(by, before)(before);
        expectSameMotion(buildLinkage(measured(after)), after, 1e-7);
      });
    });
  });

  it('parts that act on different things can be put on in any order', () => {
    const kindsChanging = (group: string) =>
      fc.constantFrom(...kindsOn(kind).filter(({ changes }) => changes[0]!.startsWith(group)));
    const three = fc.tuple(kindsChanging('body'), kindsChanging('carrier'), kindsChanging('lengths'));
    fc.assert(
      fc.property(corners, three, amounts, amounts, amounts, (corner, kinds, ...by) => {
        const stock = buildLinkage(corner);
        const [a, b, c] = kinds.map(({ make }: KindOfPart, i) => make(by[i]!, stock)) as [never, never, never];
        const usual = withParts(stock, a, b, c);
        expectSame(withParts(stock, c, b, a), usual);
        expectSame(withParts(stock, b, c, a), usual);
      }),
      seeded(35, 60),
    );
  });
});
