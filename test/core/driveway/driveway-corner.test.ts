import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrivewayKey, DrivewayMeasurements } from '../../../core/driveway/driveway.js';
import { drivewayCorner, drivewayDerivatives } from '../../../core/driveway/driveway-corner.js';
import { readDriveway } from '../../../core/driveway/read-driveway.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { hardPoint, STRUT_POINT_KEYS } from '../../../core/linkage/corner.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import plane from '../../reference/derived_strut_3d.json' with { type: 'json' };
import { referenceCorner } from '../linkage/reference-corner.js';
import { measure, readOff } from './coverage.js';
import { planeDriveway, plausibleDriveway } from './random-driveway.js';

const DEGREES = 180 / Math.PI;
const seeded = (seed: number, numRuns = 100) => ({ seed, numRuns, endOnFailure: true });
/** With the ball joint's offset unknown to the lean: the same car by its kingpin inclination, degrees. */
const byKingpin = ({ damperLean, ...rest }: DrivewayMeasurements) => ({
  ...rest,
  kingpin: { value: damperLean!.value + 2, plusMinus: 0.5 },
});

describe('the corner made of driveway measurements', () => {
  it('has the lengths, heights and angles that were measured', () => {
    fc.assert(
      fc.property(plausibleDriveway, (given) => {
        const { lowerArm, strut, wheelCentre, loadedRadius } = drivewayCorner(readDriveway(given));
        const [, ballY, ballZ] = lowerArm.ball;
        const [, pivotY, pivotZ] = lowerArm.front;
        expect(lowerArm.rear.slice(1)).toEqual([pivotY, pivotZ]);
        expect(Math.hypot(ballY - pivotY, ballZ - pivotZ)).toBeCloseTo(given.armLength.value, 9);
        expect([pivotZ, ballZ]).toEqual([given.pivotHeight.value, given.ballHeight.value]);
        expect([strut.top[2], wheelCentre[2]]).toEqual([given.topHeight.value, given.wheelCentreHeight.value]);
        expect(loadedRadius).toBe(given.wheelCentreHeight.value);
        expect(2 * wheelCentre[1]).toBeCloseTo(given.track.value, 9);
        expect(wheelCentre[1] - ballY).toBeCloseTo(given.hubOffset.value, 9);
        const [, dy, dz] = strut.top.map((x, axis) => x - strut.low[axis]!) as [number, number, number];
        expect(Math.atan2(-dy, dz) * DEGREES).toBeCloseTo(given.damperLean.value, 9);
        // The ball joint's distance from the axis, outboard positive: across (dy, dz) is (dz, −dy).
        const across = ((ballY - strut.low[1]) * dz - (ballZ - strut.low[2]) * dy) / Math.hypot(dy, dz);
        expect(across).toBeCloseTo(given.ballOffset.value, 9);
      }),
      seeded(81),
    );
  });

  it('has the kingpin inclination that was given in place of the lean', () => {
    fc.assert(
      fc.property(plausibleDriveway, (given) => {
        const measured = byKingpin(given);
        const { lowerArm, strut } = drivewayCorner(readDriveway(measured));
        const kingpin = Math.atan2(lowerArm.ball[1] - strut.top[1], strut.top[2] - lowerArm.ball[2]) * DEGREES;
        expect(kingpin).toBeCloseTo(measured.kingpin.value, 9);
      }),
      seeded(82),
    );
  });

  it('steers by nothing at all in bump and droop without caster and bump steer', () => {
    fc.assert(
      fc.property(planeDriveway, (given) => {
        const linkage = buildLinkage(drivewayCorner(readDriveway(given)));
        const { toe, toeRate, reached } = sweepTravel(linkage, [-60, -30, 0, 30, 60]);
        expect([...reached]).toEqual([1, 1, 1, 1, 1]);
        for (const angle of [...toe, ...toeRate]) expect(Math.abs(angle)).toBeLessThan(1e-10);
      }),
      seeded(83, 50),
    );
  });

  it('has the caster that was given, and where it stands the bump steer that was', () => {
    fc.assert(
      fc.property(plausibleDriveway, (given) => {
        const { caster, toeRate } = sweepTravel(buildLinkage(drivewayCorner(readDriveway(given))), [0]);
        expect(caster[0]).toBeCloseTo(given.caster.value, 9);
        // Given over 25 mm.
        expect(25 * toeRate[0]!).toBeCloseTo(given.bumpSteer.value, 9);
      }),
      seeded(85),
    );
  });

  it('toes in over 25 mm of bump by what was given, to a twentieth of a degree', () => {
    fc.assert(
      fc.property(plausibleDriveway, (given) => {
        const { toe } = sweepTravel(buildLinkage(drivewayCorner(readDriveway(given))), [25]);
        expect(Math.abs(toe[0]! - given.bumpSteer.value)).toBeLessThan(0.05);
      }),
      seeded(86),
    );
  });

  it('carries static camber when it is known, else 0', () => {
    expect(drivewayCorner(readDriveway({ camber: { value: -1.2, plusMinus: 0.1 } })).camber).toBe(-1.2);
    expect(drivewayCorner(readDriveway({})).camber).toBe(0);
  });

  /* derived_strut_3d.json, planar_construction_at_design: drawn in front view with the arm's line through the axis at x = 0. */
  it('has the camber rate and roll centre of the front-view construction', () => {
    const exact = measure(readOff(referenceCorner), 0, 0);
    const { front, rear, ball } = referenceCorner.lowerArm;
    const share = rear[0] / (rear[0] - front[0]);
    const [pivotY, pivotZ] = [1, 2].map((axis) => rear[axis]! + share * (front[axis]! - rear[axis]!));
    const { top, low } = referenceCorner.strut;
    const along = [top[1] - low[1], top[2] - low[2]] as const;
    const across = ((ball[1] - low[1]) * along[1] - (ball[2] - low[2]) * along[0]) / Math.hypot(...along);
    const of = (value: number) => ({ value, plusMinus: 0 });
    const corner = drivewayCorner(
      readDriveway({
        ...exact,
        armLength: of(Math.hypot(ball[1] - pivotY!, ball[2] - pivotZ!)),
        pivotHeight: of(pivotZ!),
        ballOffset: of(across),
        hubOffset: of(referenceCorner.wheelCentre[1] - ball[1]),
        track: of(2 * referenceCorner.wheelCentre[1]),
        caster: of(0),
        bumpSteer: of(0),
      }),
    );
    const { camberRate, rollCentreHeight } = sweepTravel(buildLinkage(corner), [0]);
    const { camber_rate_deg_per_mm, roll_centre_mm } = plane.planar_construction_at_design.strut_slide_axis;
    expect(camberRate[0]).toBeCloseTo(camber_rate_deg_per_mm, 9);
    expect(rollCentreHeight[0]).toBeCloseTo(roll_centre_mm, 6);
  });
});

describe('derivatives of its points', () => {
  const STEP = 1e-3;
  /** Central differences of every coordinate by one measurement; error of the order of STEP² and of rounding over STEP. */
  const difference = (given: DrivewayMeasurements, key: DrivewayKey) => {
    const [before, after] = [-STEP, STEP].map((by) => {
      const { value, plusMinus } = given[key]!;
      return drivewayCorner(readDriveway({ ...given, [key]: { value: value + by, plusMinus } }));
    });
    return STRUT_POINT_KEYS.map((point) =>
      hardPoint(after!, point).map((x, axis) => (x - hardPoint(before!, point)[axis]!) / (2 * STEP)),
    );
  };

  it.each([
    ['lean', (given: DrivewayMeasurements) => given],
    ['kingpin inclination', byKingpin],
  ])('are those of differences, for every measurement, by the %s', (_, as) => {
    fc.assert(
      fc.property(plausibleDriveway, (plausible) => {
        const given = as(plausible);
        const derivatives = drivewayDerivatives(readDriveway(given));
        expect(Object.keys(derivatives).sort()).toEqual(Object.keys(given).sort());
        for (const key of Object.keys(derivatives) as DrivewayKey[]) {
          const expected = difference(given, key);
          STRUT_POINT_KEYS.forEach((point, i) => {
            expected[i]!.forEach((slope, axis) => {
              expect(Math.abs(derivatives[key]![point]![axis]! - slope)).toBeLessThan(1e-7);
            });
          });
        }
      }),
      seeded(84, 60),
    );
  });
});
