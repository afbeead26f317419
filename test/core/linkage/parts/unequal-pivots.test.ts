import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../../core/linkage/build-linkage.js';
import type { StrutCorner, Vector3, WishboneCorner } from '../../../../core/linkage/corner.js';
import type { Linkage } from '../../../../core/linkage/linkage.js';
import { innerPivotsRaised } from '../../../../core/linkage/parts/index.js';
import { sweepTravel } from '../../../../core/linkage/sweep.js';
import { independentStrut, type Point } from '../../../reference/independent-strut.js';
import { randomCorner, seeded } from '../random-corner.js';
import { randomWishbone } from '../random-wishbone.js';
import { referenceCorner } from '../reference-corner.js';

/*
 * Raised by different amounts, the body's two pivots come to stand further apart or closer together than the arm's own. A rigid
 * arm then sits between them: with two bushes alike along their axis, each gives way by half of the difference. That is the least
 * squares fit of the arm's two pivot centres to the body's two (on one line, middle to middle), computed here without core/.
 */

const TRAVELS = [-40, -15, 0, 20, 50];
const ANGLES = ['camber', 'toe', 'caster', 'kingpin'] as const;

const raised = ([x, y, z]: Point, mm: number): Point => [x, y, z + mm];

/** Where the arm's own pivot centres come to stand. */
function seated({ front, rear }: { front: Point; rear: Point }, front_mm: number, rear_mm: number) {
  const spacing = Math.hypot(front[0] - rear[0], front[1] - rear[1], front[2] - rear[2]);
  const [f, r] = [raised(front, front_mm), raised(rear, rear_mm)];
  const apart = Math.hypot(f[0] - r[0], f[1] - r[1], f[2] - r[2]);
  const at = (side: 1 | -1) =>
    [0, 1, 2].map((i) => (f[i]! + r[i]!) / 2 + (side * (f[i]! - r[i]!) * spacing) / (2 * apart)) as unknown as Point;
  return { front: at(1), rear: at(-1) };
}

describe('inner pivots raised by different amounts', () => {
  it.each([
    [15, -15],
    [-20, 20],
    [25, 0],
    [0, -18],
    [-30, 30],
  ])('front %d mm, rear %d mm: every angle is that of a rigid arm whose bushes share the misfit', (front, rear) => {
    const sweep = sweepTravel(innerPivotsRaised({ front, rear })(buildLinkage(referenceCorner)), TRAVELS);
    const corner = referenceCorner as StrutCorner;
    const independent = independentStrut(corner, seated(corner.lowerArm, front, rear));
    // In small steps from the position as built, so that Newton's rule stays on its branch.
    const walk = (to: number) => {
      const from = independent.pose().travel;
      for (let i = 1; i <= 10; i++) expect(independent.solve(from + ((to - from) * i) / 10)).toBe(true);
      return independent.pose();
    };
    TRAVELS.forEach((travel, i) => {
      const pose = walk(travel);
      for (const name of ANGLES)
        expect(Math.abs(sweep[name][i]! - pose[name]), `${name} at ${travel}`).toBeLessThan(1e-7);
    });
  });

  const amount = fc.double({ min: -15, max: 15, noNaN: true });
  const expectSame = (one: Linkage, other: Linkage) => {
    const [a, b] = [sweepTravel(one, TRAVELS), sweepTravel(other, TRAVELS)];
    expect(a.reached).toEqual(b.reached);
    TRAVELS.forEach((_, i) => {
      for (const name of ANGLES) if (a.reached[i]) expect(Math.abs(a[name][i]! - b[name][i]!), name).toBeLessThan(1e-8);
    });
  };
  const swapped = <A extends { front: Vector3; rear: Vector3 }>(arm: A): A => ({
    ...arm,
    front: arm.rear,
    rear: arm.front,
  });

  it('come out the same whichever of the two is called the front one, on a strut', () => {
    fc.assert(
      fc.property(randomCorner, amount, amount, (corner, front, rear) => {
        const turned = { ...corner, lowerArm: swapped((corner as StrutCorner).lowerArm) } as StrutCorner;
        expectSame(
          innerPivotsRaised({ front, rear })(buildLinkage(corner)),
          innerPivotsRaised({ front: rear, rear: front })(buildLinkage(turned)),
        );
      }),
      seeded(61, 40),
    );
  });

  it('and on both arms of a wishbone', () => {
    fc.assert(
      fc.property(
        randomWishbone,
        fc.constantFrom('lower' as const, 'upper' as const),
        amount,
        amount,
        (corner, arm, front, rear) => {
          const { lowerArm, upperArm } = corner as WishboneCorner;
          const turned = { ...corner, lowerArm: swapped(lowerArm), upperArm: swapped(upperArm) } as WishboneCorner;
          expectSame(
            innerPivotsRaised({ front, rear, arm })(buildLinkage(corner)),
            innerPivotsRaised({ front: rear, rear: front, arm })(buildLinkage(turned)),
          );
        },
      ),
      seeded(62, 40),
    );
  });
});
