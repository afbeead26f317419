import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import strut from '../../reference/derived_strut_3d.json' with { type: 'json' };
import { independentReversal, independentStrutSweep } from '../../reference/independent-strut.js';
import { cross, dot, less, size, unit } from './carrier-frame.js';
import { randomCorner, seeded } from './random-corner.js';
import { referenceCorner } from './reference-corner.js';

/* Against the independent solver, test/reference/independent-strut.ts (generic Newton, nothing shared). */
const ANGLE = 1e-7;
const LENGTH = 1e-6;

function expectAgreement(corner: StrutCorner, travels: number[], rack = 0) {
  const sweep = sweepTravel(buildLinkage(corner), travels, { rack });
  independentStrutSweep(corner, travels, { rack }).forEach((pose, i) => {
    const at = `at ${travels[i]} mm, rack ${rack} mm`;
    expect(sweep.reached[i], at).toBe(1);
    for (const angle of ['camber', 'toe', 'inclination', 'caster', 'kingpin'] as const) {
      expect(Math.abs(sweep[angle][i]! - pose[angle]), `${angle} ${at}`).toBeLessThan(ANGLE);
    }
    expect(Math.abs(sweep.damperLength[i]! - pose.damperLength), `damper ${at}`).toBeLessThan(LENGTH);
    expect(Math.abs(sweep.halfTrack[i]! - pose.contact[1]), `half track ${at}`).toBeLessThan(LENGTH);
    // Where the steering axis meets the ground under the tyre.
    const axis = less(corner.strut.top, pose.ball);
    const down = (pose.contact[2] - pose.ball[2]) / axis[2];
    const ground = [pose.ball[0] + down * axis[0], pose.ball[1] + down * axis[1]] as const;
    expect(Math.abs(sweep.scrubRadius[i]! - (pose.contact[1] - ground[1])), `scrub ${at}`).toBeLessThan(LENGTH);
    expect(Math.abs(sweep.casterTrail[i]! - (ground[0] - pose.contact[0])), `trail ${at}`).toBeLessThan(LENGTH);
  });
}

describe('agreement with the independent solver on random struts', () => {
  it('every angle to 1e-7 degrees and every length to 1e-6 mm, over ±60 mm', () => {
    fc.assert(
      fc.property(randomCorner, (corner) => {
        expectAgreement(
          corner,
          Array.from({ length: 13 }, (_, i) => -60 + 10 * i),
        );
      }),
      seeded(41, 150),
    );
  });

  it('and over nine tenths of the reach', () => {
    fc.assert(
      fc.property(randomCorner, (corner) => {
        const { droop, bump } = buildLinkage(corner).reach;
        const parts = [0.15, 0.3, 0.45, 0.6, 0.75, 0.9];
        expectAgreement(corner, [...parts.map((part) => part * droop).reverse(), ...parts.map((part) => part * bump)]);
      }),
      seeded(42, 60),
    );
  });

  it('with the rack to either side', () => {
    fc.assert(
      fc.property(randomCorner, fc.integer({ min: -15, max: 15 }), (corner, rack) => {
        const travels = [-30, -10, 0, 10, 30];
        fc.pre(sweepTravel(buildLinkage(corner), travels, { rack }).reached.every((reached) => reached === 1));
        expectAgreement(corner, travels, rack);
      }),
      seeded(43, 60),
    );
  });
});

describe('the rack, positive towards the car’s left, moves the tie rod’s inner end outward', () => {
  const steered = (corner: StrutCorner, rack: number) => sweepTravel(buildLinkage(corner), [0], { rack }).toe[0]!;
  it('behind the axle that is toe-in of the left wheel', () => {
    expect(steered(referenceCorner, 5)).toBeGreaterThan(referenceCorner.toe + 1);
    expect(steered(referenceCorner, -5)).toBeLessThan(referenceCorner.toe - 1);
  });
  it('ahead of the axle that is toe-out', () => {
    const ahead: StrutCorner = { ...referenceCorner, tieRod: { inner: [120, 345, 200], outer: [125, 680, 190] } };
    expect(steered(ahead, 5)).toBeLessThan(referenceCorner.toe - 1);
    expectAgreement(ahead, [-20, 0, 20], 5);
  });
  it('so far out that nothing joins is out of reach at every travel, not a wrong number', () => {
    const sweep = sweepTravel(buildLinkage(referenceCorner), [-310, -302, -50, 0, 50], { rack: 400 });
    expect([...sweep.reached]).toEqual([0, 0, 0, 0, 0]);
    expect(sweep.camber.every(Number.isNaN)).toBe(true);
  });
});

describe('a strut’s camber curve bends upward', () => {
  // M. Ortiz, Chassis Newsletter, Sept. 2015: with camber positive top outward and bump positive, d²(camber)/d(travel)² is
  // positive for a MacPherson strut.
  it('d²(camber)/d(travel)² is positive over ±60 mm, for every random strut that steers itself by less than 5°', () => {
    fc.assert(
      fc.property(randomCorner, (corner) => {
        const travels = Array.from({ length: 25 }, (_, i) => -60 + 5 * i);
        const { camber, camberRate, toe } = sweepTravel(buildLinkage(corner), travels);
        fc.pre(toe.every((angle) => Math.abs(angle - corner.toe) < 5));
        for (let i = 1; i < travels.length; i++) expect(camberRate[i]!).toBeGreaterThan(camberRate[i - 1]!);
        for (let i = 1; i < travels.length - 1; i++) {
          expect(camber[i + 1]! - 2 * camber[i]! + camber[i - 1]!).toBeGreaterThan(0);
        }
      }),
      seeded(44, 200),
    );
  });
});

describe('camber reversal of the derived case', () => {
  const linkage = buildLinkage(referenceCorner);
  const rateAt = (travel: number) => sweepTravel(linkage, [travel]).camberRate[0]!;
  const zeroOf = (rate: (travel: number) => number) => {
    let [low, high] = [0, 120];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (rate(middle) < 0) low = middle;
      else high = middle;
    }
    return low;
  };

  it('in three dimensions it is at 57.0 mm, and the independent solver agrees to a thousandth of a millimetre', () => {
    const travel = zeroOf(rateAt);
    expect(travel).toBeCloseTo(57.0, 1);
    expect(Math.abs(travel - independentReversal(referenceCorner)!.travel)).toBeLessThan(1e-3);
  });

  it('the front-view construction with the damper’s axis says 59.7 mm, with the steering axis 78 mm', () => {
    // Both recomputed here, on positions of the independent solver. Arm line: from where the transverse plane through the ball
    // joint at reference height cuts the pivot axis, to the ball joint.
    const { front, rear, ball } = referenceCorner.lowerArm;
    const pivot = front.map((v, k) => v - ((front[0] - ball[0]) / (front[0] - rear[0])) * (v - rear[k]!));
    const top = referenceCorner.strut.top;
    const squareness = (of: 'damper' | 'steering') => (travel: number) => {
      const [pose] = independentStrutSweep(referenceCorner, [travel]);
      const arm = [pose!.ball[1] - pivot[1]!, pose!.ball[2] - pivot[2]!] as const;
      const foot = of === 'damper' ? pose!.low : pose!.ball;
      const axis = [top[1] - foot[1], top[2] - foot[2]] as const;
      // Negative while the arm has not yet risen to the perpendicular.
      return arm[0] * axis[0] + arm[1] * axis[1];
    };
    expect(zeroOf(squareness('damper'))).toBeCloseTo(59.7, 1);
    expect(zeroOf(squareness('steering'))).toBeCloseTo(78, 0);
  });

  it('the plane construction of the design position is that of the derived file', () => {
    const design = strut.planar_construction_at_design.strut_slide_axis;
    // Its arm line starts from the pivot axis at x = 0.
    const { front, rear, ball } = referenceCorner.lowerArm;
    const pivot = front.map((v, k) => v - (front[0] / (front[0] - rear[0])) * (v - rear[k]!));
    const { top, low } = referenceCorner.strut;
    const axis = unit([0, top[1] - low[1], top[2] - low[2]]);
    const arm = unit([0, ball[1] - pivot[1]!, ball[2] - pivot[2]!]);
    // Ball joint + k · arm, such that the line to it from the top mount is square to the axis.
    const k = dot(less(top, ball), axis) / dot(arm, axis);
    const centre = [ball[1] + k * arm[1], ball[2] + k * arm[2]];
    expect(centre[0]).toBeCloseTo(design.instant_centre_yz[0]!, 4);
    expect(centre[1]).toBeCloseTo(design.instant_centre_yz[1]!, 4);
    expect(size(cross(arm, axis))).toBeGreaterThan(0.9);
  });
});
