import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import { motionOf } from '../../../core/linkage/motion.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { type IndependentPose, independentStrutSweep } from '../../reference/independent-strut.js';
import { carry } from './carrier-frame.js';
import { randomCorner, seeded } from './random-corner.js';

/*
 * Every derivative that the solver has in closed form, against central differences of the positions that the independent
 * solver (test/reference/independent-strut.ts) finds.
 */
const STEP = 0.005;
const TRAVELS = [-55, -31, -8, 0, 13, 37, 55];

/** Positions just below, at and just above each travel. */
function around(corner: StrutCorner) {
  const poses = independentStrutSweep(
    corner,
    TRAVELS.flatMap((travel) => [travel - STEP, travel, travel + STEP]),
  );
  return TRAVELS.map((_, i) => poses.slice(3 * i, 3 * i + 3) as [IndependentPose, IndependentPose, IndependentPose]);
}

const eachCorner = (seed: number, check: (corner: StrutCorner) => void) =>
  fc.assert(fc.property(randomCorner, check), seeded(seed, 60));

function expectNear(found: number, expected: number, tolerance: number, what: string) {
  expect(Math.abs(found - expected), `${what}: ${found} against ${expected}`).toBeLessThan(tolerance);
}

describe('rates are the slopes of the positions, over random struts', () => {
  it('camber rate and toe rate, to 1e-8 degrees per mm', () => {
    eachCorner(31, (corner) => {
      const sweep = sweepTravel(buildLinkage(corner), TRAVELS);
      around(corner).forEach(([below, , above], i) => {
        expectNear(sweep.camberRate[i]!, (above.camber - below.camber) / (2 * STEP), 1e-8, 'camber rate');
        expectNear(sweep.toeRate[i]!, (above.toe - below.toe) / (2 * STEP), 1e-8, 'toe rate');
      });
    });
  });

  it('motion ratio: the damper shortens by it per mm of bump, to 1e-8', () => {
    eachCorner(32, (corner) => {
      const sweep = sweepTravel(buildLinkage(corner), TRAVELS);
      around(corner).forEach(([below, , above], i) => {
        expectNear(
          sweep.motionRatio[i]!,
          -(above.damperLength - below.damperLength) / (2 * STEP),
          1e-8,
          'motion ratio',
        );
      });
    });
  });

  it('roll centre: where the path of the contact point, mirrored on the other side, has its centre', () => {
    // Height above the ground = y · dy/dz of the wheel's lowest point: normals of both sides' paths meet on the centre plane.
    eachCorner(33, (corner) => {
      const sweep = sweepTravel(buildLinkage(corner), TRAVELS);
      around(corner).forEach(([below, here, above], i) => {
        const slope = (above.contact[1] - below.contact[1]) / (above.contact[2] - below.contact[2]);
        expectNear(sweep.rollCentreHeight[i]!, here.contact[1] * slope, 1e-5, 'roll centre');
      });
    });
  });

  it('instant centre: the carrier does not move there, seen along the car', () => {
    eachCorner(34, (corner) => {
      const sweep = sweepTravel(buildLinkage(corner), TRAVELS);
      around(corner).forEach(([below, here, above], i) => {
        const centre = [here.wheelCentre[0], sweep.instantCentreY[i]!, sweep.instantCentreZ[i]!] as const;
        const down = carry(here, below).point(centre);
        const up = carry(here, above).point(centre);
        // Rounding in the carrier's direction grows with the distance.
        const tolerance = 1e-8 * (1 + Math.abs(centre[1]) / 100);
        expectNear((up[1] - down[1]) / (2 * STEP), 0, tolerance, 'lateral speed');
        expectNear((up[2] - down[2]) / (2 * STEP), 0, tolerance, 'vertical speed');
      });
    });
  });

  it('a motion for drawings gives the same instant centre as finite ratios', () => {
    eachCorner(35, (corner) => {
      const linkage = buildLinkage(corner);
      const sweep = sweepTravel(linkage, TRAVELS);
      const motion = motionOf(linkage, Float64Array.from(TRAVELS));
      TRAVELS.forEach((_, i) => {
        const [lateral, roll] = [motion.instant[3 * i]!, motion.instant[3 * i + 1]!];
        const y = motion.wheelCentre[3 * i + 1]! - 1 / roll;
        const z = motion.wheelCentre[3 * i + 2]! + lateral / roll;
        expectNear(y / sweep.instantCentreY[i]!, 1, 1e-9, 'y');
        expectNear(z, sweep.instantCentreZ[i]!, 1e-9 * Math.max(1, Math.abs(y)), 'z');
      });
    });
  });
});
