import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import wishbone from '../../reference/derived_double_wishbone_3d.json' with { type: 'json' };
import { wishboneCorner } from './wishbone-corner.js';

/*
 * Source: derived for this project by two unrelated formulations (40-digit Newton on rotation vector and translation; arm-angle
 * and Euler form), not published. The file says so in its own `source` line.
 */
const ANGLE = 1e-7;
const LENGTH = 1e-6;

describe('a three-dimensional double wishbone agrees with its independent derivation', () => {
  const travels = wishbone.results.map((r) => r.wheel_travel_mm);
  const sweep = sweepTravel(buildLinkage(wishboneCorner), travels);
  const checks: [keyof typeof sweep, string, number][] = [
    ['camber', 'camber_deg', ANGLE],
    ['toe', 'toe_in_deg', ANGLE],
    ['caster', 'caster_deg', ANGLE],
    ['kingpin', 'kpi_deg', ANGLE],
    ['camberRate', 'camber_rate_deg_per_mm', ANGLE],
    ['toeRate', 'toe_rate_deg_per_mm', ANGLE],
    ['scrubRadius', 'scrub_radius_mm', LENGTH],
    ['casterTrail', 'caster_trail_mm', LENGTH],
    ['rollCentreHeight', 'roll_centre_lowest_point_mm', LENGTH],
  ];
  it.each(checks)('%s within its tolerance at every travel', (output, field, tolerance) => {
    wishbone.results.forEach((result, i) => {
      const expected = (result as unknown as Record<string, number>)[field]!;
      expect(Math.abs(sweep[output][i]! - expected), `${field} at ${result.wheel_travel_mm} mm`).toBeLessThan(
        tolerance,
      );
    });
  });
  it('half track and inclination', () => {
    wishbone.results.forEach((result, i) => {
      expect(Math.abs(sweep.halfTrack[i]! - result.contact_point[1]!)).toBeLessThan(LENGTH);
      const inclination = (Math.asin(-result.spin_axis_unit_outboard[2]!) * 180) / Math.PI;
      expect(Math.abs(sweep.inclination[i]! - inclination)).toBeLessThan(ANGLE);
    });
  });
  it('has no damper outputs without a damper', () => {
    expect([...sweep.damperLength, ...sweep.motionRatio].every(Number.isNaN)).toBe(true);
  });
});

describe('two equal parallel arms in a plane', () => {
  // Closed form (derived_strut_planar.json, exact_special_case): no camber change, lateral motion L (cos θ − cos θ₀), roll centre at −y_c tan θ.
  const corner = {
    ...wishboneCorner,
    camber: 0,
    toe: 0,
    wheelCentre: [0, 760, 310] as const,
    lowerArm: { front: [150, 400, 200], rear: [-150, 400, 200], ball: [0, 700, 190] },
    upperArm: { front: [120, 390, 420], rear: [-120, 390, 420], ball: [0, 690, 410] },
    tieRod: { inner: [-140, 395, 260], outer: [-140, 695, 250] },
  } as const;
  const length = Math.hypot(300, 10);
  const travels = [-60, -20, 0, 35, 60];
  const sweep = sweepTravel(buildLinkage(corner), travels);
  it('do not change camber, and move the contact point and the roll centre as the closed form says', () => {
    travels.forEach((travel, i) => {
      const rise = -10 + travel;
      const theta = Math.asin(rise / length);
      expect(Math.abs(sweep.camber[i]!)).toBeLessThan(ANGLE);
      const lateral = length * Math.cos(theta) - 300;
      expect(Math.abs(sweep.halfTrack[i]! - 760 - lateral)).toBeLessThan(LENGTH);
      expect(Math.abs(sweep.rollCentreHeight[i]! + sweep.halfTrack[i]! * Math.tan(theta))).toBeLessThan(LENGTH);
    });
  });
});

describe('a wishbone’s damper', () => {
  const damper = { top: [-10, 520, 640], low: [-5, 600, 205] } as const;
  it.each(['lowerArm', 'upperArm', 'carrier'] as const)(
    'on the %s: the ratio is the derivative of the length',
    (on) => {
      const low =
        on === 'lowerArm' ? damper.low : on === 'upperArm' ? ([-5, 600, 490] as const) : ([-5, 700, 260] as const);
      const linkage = buildLinkage({ ...wishboneCorner, damper: { top: damper.top, low, on } });
      const step = 0.01;
      const travels = [-50, 0, 50].flatMap((t) => [t - step, t, t + step]);
      const { damperLength, motionRatio } = sweepTravel(linkage, travels);
      expect(damperLength[4]).toBeCloseTo(Math.hypot(...low.map((x, i) => damper.top[i]! - x)), 9);
      for (const i of [1, 4, 7]) {
        const slope = -(damperLength[i + 1]! - damperLength[i - 1]!) / (2 * step);
        expect(motionRatio[i]).toBeCloseTo(slope, 6);
      }
    },
  );
});
