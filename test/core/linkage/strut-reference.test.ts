import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import strut from '../../reference/derived_strut_3d.json' with { type: 'json' };
import planar from '../../reference/derived_strut_planar.json' with { type: 'json' };
import { referenceCorner } from './reference-corner.js';

/*
 * Source of both files: derived for this project by two unrelated formulations (40-digit Newton on rotation vector and
 * translation; arm-angle and Euler form), not published. Each file says so in its own `source` line.
 */
const ANGLE = 1e-7;
const LENGTH = 1e-6;

describe('a three-dimensional strut agrees with its independent derivation', () => {
  const sweep = sweepTravel(
    buildLinkage(referenceCorner),
    strut.results.map((r) => r.wheel_travel_mm),
  );
  const checks: [keyof typeof sweep, string, number][] = [
    ['camber', 'camber_deg', ANGLE],
    ['toe', 'toe_in_deg', ANGLE],
    ['caster', 'caster_deg', ANGLE],
    ['kingpin', 'kpi_deg', ANGLE],
    ['camberRate', 'camber_rate_deg_per_mm', ANGLE],
    ['toeRate', 'toe_rate_deg_per_mm', ANGLE],
    ['scrubRadius', 'scrub_radius_mm', LENGTH],
    ['casterTrail', 'caster_trail_mm', LENGTH],
    ['damperLength', 'strut_length_mm', LENGTH],
    ['motionRatio', 'strut_motion_ratio', LENGTH],
    ['rollCentreHeight', 'roll_centre_lowest_point_mm', LENGTH],
  ];
  it.each(checks)('%s within its tolerance at every travel', (output, field, tolerance) => {
    strut.results.forEach((result, i) => {
      const expected = (result as unknown as Record<string, number>)[field]!;
      expect(Math.abs(sweep[output][i]! - expected), `${field} at ${result.wheel_travel_mm} mm`).toBeLessThan(
        tolerance,
      );
    });
  });
  it('half track is the lowest point of the wheel', () => {
    strut.results.forEach((result, i) => {
      expect(Math.abs(sweep.halfTrack[i]! - result.contact_point[1]!)).toBeLessThan(LENGTH);
    });
  });
  it('inclination is the tilt of the wheel plane to the road normal', () => {
    strut.results.forEach((result, i) => {
      const expected = (Math.asin(-result.spin_axis_unit_outboard[2]!) * 180) / Math.PI;
      expect(Math.abs(sweep.inclination[i]! - expected)).toBeLessThan(ANGLE);
    });
  });
});

describe('a plane strut, drawn out into space, agrees with plane geometry', () => {
  // Pivots before and behind the transverse plane and a tie rod that follows the arm exactly keep the motion in the plane.
  const at = ([y, z]: number[], x: number): [number, number, number] => [x, y!, z!];
  const { arm_inner, ball_joint, strut_top, wheel_centre } = planar.points_yz_mm;
  const corner: StrutCorner = {
    kind: 'strut',
    wheelCentre: at(wheel_centre, 0),
    loadedRadius: 310,
    camber: 0,
    toe: 0,
    lowerArm: { front: at(arm_inner, 150), rear: at(arm_inner, -150), ball: at(ball_joint, 0) },
    strut: { top: at(strut_top, 0), low: at(ball_joint, 0) },
    tieRod: { inner: at(arm_inner, -130), outer: at(ball_joint, -130) },
  };
  const linkage = buildLinkage(corner);
  const travels = planar.results.map((r) => r.wheel_travel_mm);
  const sweep = sweepTravel(linkage, travels);
  it('camber change, camber rate and damper length at every travel, and no toe', () => {
    planar.results.forEach((result, i) => {
      expect(Math.abs(sweep.camber[i]! - result.camber_change_deg)).toBeLessThan(ANGLE);
      expect(Math.abs(sweep.camberRate[i]! - result.camber_rate_deg_per_mm)).toBeLessThan(ANGLE);
      expect(Math.abs(sweep.damperLength[i]! - result.strut_length_mm)).toBeLessThan(LENGTH);
      expect(Math.abs(sweep.toe[i]!)).toBeLessThan(ANGLE);
    });
  });
  it('instant centre and roll centre in the reference position', () => {
    const zero = travels.indexOf(0);
    expect(Math.abs(sweep.instantCentreY[zero]! - planar.design.instant_centre_yz[0]!)).toBeLessThan(LENGTH * 10);
    expect(Math.abs(sweep.instantCentreZ[zero]! - planar.design.instant_centre_yz[1]!)).toBeLessThan(LENGTH);
  });
  it('camber reverses where the arm is perpendicular to the sliding axis', () => {
    const turn = planar.camber_reversal;
    const there = sweepTravel(linkage, [turn.wheel_travel_mm]);
    expect(Math.abs(there.camberRate[0]!)).toBeLessThan(1e-9);
    expect(Math.abs(there.camber[0]! - turn.camber_change_deg)).toBeLessThan(ANGLE);
  });
});
