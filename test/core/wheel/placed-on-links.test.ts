import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wheelMotion } from '../../../core/answers/from-source.js';
import { Poses } from '../../../core/wheel/gaps.js';
import { placed } from '../../../core/wheel/placed.js';
import { tyreSection } from '../../../core/wheel/tyre-section.js';
import { onRod, onTriangle } from '../../reference/independent-link.js';
import { independentStrutSweep, type Point } from '../../reference/independent-strut.js';
import { randomCar, randomNumbers } from '../driveway/random-car.js';
import { aPlace, SHAPE } from './gap-cases.js';

const BEFORE = { section: tyreSection(SHAPE), shift: 0 };
const apart = (a: readonly number[], b: readonly number[]) => Math.hypot(...a.map((x, i) => x - b[i]!));

/** Invented cars at invented heights and steers, with a point somewhere off the arm's line and one off the rod's. */
const cases = Array.from({ length: 12 }, (_, seed) => {
  const random = randomNumbers(700 + seed);
  const corner = randomCar(random);
  const motion = wheelMotion({ source: { kind: 'corner', corner }, lock: 25 + 12 * random() });
  const off = () => 80 * (random() - 0.5);
  return { corner, motion, measuredAt: 40 * (random() - 0.5), off: [off(), off(), off()] as const, along: random() };
});

describe('a place off the line of a link, over travel and rack', () => {
  it.each(cases.map((one, i) => ({ ...one, i })))(
    'of invented car $i is where the general solver puts the link',
    ({ corner, motion, measuredAt, off, along }) => {
      const poses = new Poses(motion);
      const { lowerArm, tieRod, wheelCentre } = corner;
      const here = (point: Point): Point => [
        point[0] - wheelCentre[0],
        point[1] - wheelCentre[1],
        point[2] - wheelCentre[2],
      ];
      const linksAt = (travel: number, rack: number) => {
        const [pose] = independentStrutSweep(corner, [travel], { rack });
        return {
          arm: [here(lowerArm.front), here(lowerArm.rear), here(pose!.ball)] as const,
          rod: [here([tieRod.inner[0], tieRod.inner[1] + rack, tieRod.inner[2]]), here(pose!.tieOuter)] as const,
        };
      };
      const home = linksAt(measuredAt, 0);
      const between = (a: Point, b: Point): Point =>
        [0, 1, 2].map((i) => a[i]! + along * (b[i]! - a[i]!) + off[i]!) as unknown as Point;
      const onArm = between(home.arm[0], home.arm[2]);
      const beside = between(home.rod[0], home.rod[1]);
      const asPlace = (point: Point, fixedTo: 'lowerArm' | 'tieRod') =>
        placed(aPlace({ point }, fixedTo), BEFORE, poses, measuredAt, true);
      for (const travel of [-45, 12, 55]) {
        for (const j of [0, 4, 10, 17, 20]) {
          const now = linksAt(travel, motion.rack[j]!);
          const steer = motion.toe[j]!;
          expect(
            apart(asPlace(onArm, 'lowerArm').at(poses, travel, steer), onTriangle(home.arm, now.arm, onArm)),
          ).toBeLessThan(2e-3);
          expect(
            apart(asPlace(beside, 'tieRod').at(poses, travel, steer), onRod(home.rod, now.rod, beside)),
          ).toBeLessThan(2e-3);
        }
      }
    },
  );

  it('keeps its distances to the ends of its link', () => {
    const { motion, measuredAt } = cases[3]!;
    const poses = new Poses(motion);
    const { joints } = motion;
    fc.assert(
      fc.property(
        fc.tuple(
          fc.integer({ min: -60, max: 60 }),
          fc.integer({ min: -350, max: 0 }),
          fc.integer({ min: -150, max: 60 }),
        ),
        fc.integer({ min: -50, max: 60 }),
        fc.integer({ min: 0, max: 20 }),
        (point, travel, j) => {
          const steer = motion.toe[j]!;
          const rod = placed(aPlace({ point }, 'tieRod'), BEFORE, poses, measuredAt, true).at(poses, travel, steer);
          const inner = joints!.tieInner;
          const innerNow = [inner[0], inner[1] + motion.rack[j]!, inner[2]];
          expect(apart(rod, innerNow)).toBeCloseTo(apart(point, inner), 6);
          expect(apart(rod, poses.joint('tieOuter', travel, steer)!)).toBeCloseTo(
            apart(point, poses.joint('tieOuter', measuredAt)!),
            2,
          );
          const arm = placed(aPlace({ point }, 'lowerArm'), BEFORE, poses, measuredAt, true).at(poses, travel, steer);
          expect(apart(arm, joints!.armPivot)).toBeCloseTo(apart(point, joints!.armPivot), 6);
          expect(apart(arm, poses.joint('ball', travel, steer)!)).toBeCloseTo(
            apart(point, poses.joint('ball', measuredAt)!),
            2,
          );
        },
      ),
      { seed: 61, numRuns: 60 },
    );
  });
});
