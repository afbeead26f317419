import { describe, expect, it } from 'vitest';
import { readCorner } from '../../../core/document/read-corner.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { Corner, StrutCorner, Vector3, WishboneCorner } from '../../../core/linkage/corner.js';
import { armLonger, tieRodLonger, topMountMoved } from '../../../core/linkage/parts/index.js';
import { InputError } from '../../../core/quantity/problem.js';
import { dot, less, size, type Triple, unit } from './carrier-frame.js';
import { referenceCorner } from './reference-corner.js';
import { wishboneCorner } from './wishbone-corner.js';

/** What is refused, by code and path. */
function refused(make: () => unknown): string[] {
  try {
    make();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return (error as InputError).problems.map(({ code, path }) => `${code} ${path}`);
  }
  return [];
}

const apart = (a: Vector3, b: Vector3) => size(less(a as Triple, b as Triple));
/** The point of the line through a and b that is nearest to p. */
function foot(p: Vector3, a: Vector3, b: Vector3): Vector3 {
  const axis = unit(less(b as Triple, a as Triple));
  const along = dot(less(p as Triple, a as Triple), axis);
  return a.map((value, k) => value + along * axis[k]!) as unknown as Vector3;
}
const fromLine = (p: Vector3, a: Vector3, b: Vector3) => apart(p, foot(p, a, b));

/** Each is shown by a triangle that cannot be drawn: one side longer than the other two together. */
describe('links that cannot be joined are refused by the one that does not reach', () => {
  it('strut: a top mount nearer to the ball joint than the damper’s axis passes it', () => {
    const { lowerArm, strut } = referenceCorner;
    const top: Vector3 = [lowerArm.ball[0], lowerArm.ball[1], lowerArm.ball[2] + 12];
    const vector = less(top as Triple, strut.top as Triple);
    expect(apart(top, lowerArm.ball)).toBeLessThan(fromLine(lowerArm.ball, strut.low, strut.top));
    expect(refused(() => topMountMoved({ vector })(buildLinkage(referenceCorner)))).toEqual(['cannot-close strut']);
  });

  it('tieRod: a rod shorter than the way from its inner end to where the steering arm can bring the outer one', () => {
    const { lowerArm, strut, tieRod } = referenceCorner;
    const shorter = -250;
    const away = fromLine(tieRod.inner, lowerArm.ball, strut.top) - fromLine(tieRod.outer, lowerArm.ball, strut.top);
    expect(apart(tieRod.inner, tieRod.outer) + shorter).toBeLessThan(away);
    const make = () => tieRodLonger({ mm: shorter })(buildLinkage(referenceCorner));
    expect(refused(make)).toEqual(['cannot-close tieRod']);
  });

  it('upperArm: an upper arm too short to hold the upper ball joint', () => {
    const { lowerArm, upperArm } = wishboneCorner;
    const centre = foot(upperArm.ball, upperArm.rear, upperArm.front);
    const shorter = -200;
    const arm = apart(upperArm.ball, centre) + shorter;
    expect(arm).toBeGreaterThan(0);
    expect(fromLine(lowerArm.ball, upperArm.rear, upperArm.front)).toBeGreaterThan(
      arm + apart(upperArm.ball, lowerArm.ball),
    );
    const make = () => armLonger({ mm: shorter, arm: 'upper' })(buildLinkage(wishboneCorner));
    expect(refused(make)).toEqual(['cannot-close upperArm']);
  });
});

describe('links that join in the measured position only, and cannot move from it, are refused by the one that locks', () => {
  const cases: [string, Corner][] = [
    [
      'upperArm: an upper arm that points straight away from the lower ball joint',
      {
        ...wishboneCorner,
        lowerArm: { ...wishboneCorner.lowerArm, ball: [5, 690, 190] },
        upperArm: { front: [110, 690, 800], rear: [-130, 690, 800], ball: [5, 690, 500] },
      } satisfies WishboneCorner,
    ],
    [
      'lowerArm: an arm that hangs straight down, so that the wheel centre is at its lowest',
      {
        ...referenceCorner,
        lowerArm: { front: [150, 700, 400], rear: [-150, 700, 400], ball: [0, 700, 185] },
      } satisfies StrutCorner,
    ],
    [
      'tieRod: an outer end on the steering axis, about which the carrier then turns freely',
      {
        ...referenceCorner,
        lowerArm: { ...referenceCorner.lowerArm, ball: [0, 700, 185] },
        strut: { top: [0, 580, 825], low: [0, 625, 585] },
        tieRod: { ...referenceCorner.tieRod, outer: [0, 670, 345] },
      } satisfies StrutCorner,
    ],
    [
      'strut: a ball joint above the top mount, along the damper',
      { ...referenceCorner, lowerArm: { ...referenceCorner.lowerArm, ball: [-35, 560, 900] } } satisfies StrutCorner,
    ],
  ];
  it.each(cases)('%s', (name, corner) => {
    const link = name.slice(0, name.indexOf(':'));
    expect(refused(() => buildLinkage(corner))).toEqual([`cannot-close ${link}`]);
    expect(refused(() => readCorner(corner))).toEqual([`cannot-close ${link}`]);
  });
});
