import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import strut from '../../reference/derived_strut_3d.json' with { type: 'json' };
import {
  independentCamberChange,
  independentReversal,
  independentStrut,
  independentStrutSweep,
} from '../../reference/independent-strut.js';
import { referenceCorner } from './reference-corner.js';

/*
 * The independent solver is a second opinion only as long as it is right itself. Source of the figures: derived for this
 * project by two further formulations (40-digit Newton; arm-angle and Euler form), not published.
 */
describe('the independent solver', () => {
  const poses = independentStrutSweep(
    referenceCorner,
    strut.results.map((r) => r.wheel_travel_mm),
  );

  it('gives the derived angles to 1e-10 degrees, in order and from far away', () => {
    strut.results.forEach((result, i) => {
      expect(Math.abs(poses[i]!.camber - result.camber_deg)).toBeLessThan(1e-10);
      expect(Math.abs(poses[i]!.toe - result.toe_in_deg)).toBeLessThan(1e-10);
      expect(Math.abs(poses[i]!.caster - result.caster_deg)).toBeLessThan(1e-10);
      expect(Math.abs(poses[i]!.kingpin - result.kpi_deg)).toBeLessThan(1e-10);
    });
    const [high, low] = independentStrutSweep(referenceCorner, [80, -80]);
    expect(Math.abs(high!.camber - strut.results.at(-1)!.camber_deg)).toBeLessThan(1e-10);
    expect(Math.abs(low!.camber - strut.results[0]!.camber_deg)).toBeLessThan(1e-10);
  });

  it('gives the derived joint positions and damper lengths to 1e-8 mm', () => {
    strut.results.forEach((result, i) => {
      const pose = poses[i]!;
      const pairs: [readonly number[], number[]][] = [
        [pose.ball, result.ball_joint],
        [pose.tieOuter, result.tie_rod_outer],
        [pose.low, result.strut_lower_point],
        [pose.wheelCentre, result.wheel_centre],
        [pose.contact, result.contact_point],
        [[pose.damperLength], [result.strut_length_mm]],
      ];
      for (const [found, expected] of pairs) {
        found.forEach((value, k) => {
          expect(Math.abs(value - expected[k]!)).toBeLessThan(1e-8);
        });
      }
    });
  });

  it('reports camber change from the reference position', () => {
    const at40 = strut.results.find((r) => r.wheel_travel_mm === 40)!;
    expect(independentCamberChange(referenceCorner, 40)).toBeCloseTo(at40.camber_deg - strut.design_camber_deg, 9);
    expect(independentCamberChange(referenceCorner, 0)).toBeCloseTo(0, 12);
  });

  it('finds the reversal between the derived travels where the derived camber rate changes sign', () => {
    const reversal = independentReversal(referenceCorner)!;
    const before = strut.results.find((r) => r.wheel_travel_mm === 40)!;
    const after = strut.results.find((r) => r.wheel_travel_mm === 60)!;
    expect(before.camber_rate_deg_per_mm).toBeLessThan(0);
    expect(after.camber_rate_deg_per_mm).toBeGreaterThan(0);
    expect(reversal.travel).toBeGreaterThan(40);
    expect(reversal.travel).toBeLessThan(60);
    expect(independentReversal(referenceCorner, 0, 50)).toBeUndefined();
  });

  it('says so, and keeps its position, when a travel cannot be reached', () => {
    const solver = independentStrut(referenceCorner);
    expect(solver.solve(20)).toBe(true);
    const { camber } = solver.pose();
    expect(solver.solve(2000)).toBe(false);
    expect(solver.pose().camber).toBe(camber);
    expect(independentStrutSweep(referenceCorner, [2000])[0]!.camber).toBeNaN();
  });

  it('imports nothing of the project', () => {
    const text = readFileSync(new URL('../../reference/independent-strut.ts', import.meta.url), 'utf8');
    const imported = [...text.matchAll(/\bfrom '([^']+)'|\bimport\(/g)].map((match) => match[1]);
    expect(imported).toEqual(['ml-matrix']);
  });
});
