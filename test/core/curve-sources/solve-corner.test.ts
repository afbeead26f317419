import { describe, expect, it } from 'vitest';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import type { Curve } from '../../../core/curve/curve.js';
import { solveCorner, solveDriveway } from '../../../core/curve-sources/solve-corner.js';
import { solveSource } from '../../../core/curve-sources/solve-source.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import {
  type Corner,
  hardPoint,
  hardPointKeys,
  type StrutCorner,
  withHardPoint,
} from '../../../core/linkage/corner.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import reference from '../../reference/derived_strut_3d.json' with { type: 'json' };
import { independentStrutSweep } from '../../reference/independent-strut.js';
import { referenceCorner } from '../linkage/reference-corner.js';
import { wishboneCorner } from '../linkage/wishbone-corner.js';

const corner: StrutCorner = { ...(referenceCorner as StrutCorner), plusMinus: { other: 2, 'tieRod.inner': 3 } };
/** 97.5 % quantile of the normal distribution (NIST/SEMATECH e-Handbook 1.3.6.7.1: 1.960). */
const NORMAL = 1.959964;
const TRAVELS = [-60, -31.3, -10, 0, 17.7, 40, 75];
const toeOf = (of: Corner): Curve => curveFrom(solveCorner(of).toe!);

describe('toe as a curve', () => {
  /* test/reference/independent-strut.ts: a general Newton solver that shares nothing with the core. */
  it('is what the independent solver finds, at and between its samples', () => {
    const toe = toeOf(corner);
    const poses = independentStrutSweep(corner as never, TRAVELS);
    for (const { travel, toe: expected } of poses) expect(toe.value(travel)).toBeCloseTo(expected, 6);
    expect(toe.quantity).toBe('toe');
  });

  /* test/reference/derived_strut_3d.json: derived for this project by two unrelated formulations, agreeing to 1e-13 degrees. */
  it('has the values and the rates of the derived case', () => {
    const toe = toeOf(corner);
    for (const row of reference.results) {
      if (row.wheel_travel_mm < toe.domain[0] || row.wheel_travel_mm > toe.domain[1]) continue;
      expect(toe.value(row.wheel_travel_mm)).toBeCloseTo(row.toe_in_deg, 6);
      expect(toe.slope(row.wheel_travel_mm)).toBeCloseTo(row.toe_rate_deg_per_mm, 5);
    }
  });

  it.each([
    ['a strut', corner as Corner],
    ['a wishbone', { ...wishboneCorner, plusMinus: { other: 1.5 } } as Corner],
  ])('of %s has the doubt that nudging every coordinate by a little shows', (_, of) => {
    const toe = toeOf(of);
    const at = (moved: Corner) => sweepTravel(buildLinkage(moved), TRAVELS).toe;
    const squares = TRAVELS.map(() => 0);
    for (const key of hardPointKeys(of)) {
      const standard = (of.plusMinus?.[key] ?? of.plusMinus?.other ?? 0) / NORMAL;
      for (const axis of [0, 1, 2]) {
        const nudged = (by: number) => {
          const point = [...hardPoint(of, key)!] as [number, number, number];
          point[axis]! += by;
          return at(withHardPoint(of, key, point));
        };
        const [above, below] = [nudged(0.01), nudged(-0.01)];
        for (const i of TRAVELS.keys()) squares[i]! += (((above[i]! - below[i]!) / 0.02) * standard) ** 2;
      }
    }
    TRAVELS.forEach((travel, i) => {
      const u = Math.sqrt(squares[i]!);
      expect(toe.changeStandardError(travel, 0)).toBeCloseTo(u, u > 0.01 ? 4 : 5);
    });
    expect(toe.standardError(0)).toBeLessThan(1e-9);
  });

  it('has the sources of camber, so that what both share can be told', () => {
    const { camber, toe } = solveCorner(corner);
    expect(toe!.sources).toEqual(camber.sources);
    expect(toe!.domain).toEqual(camber.domain);
  });

  it('is absent where it cannot be known: driveway, readings of camber, coefficients, a camber curve', () => {
    expect(solveDriveway(EXAMPLE_DRIVEWAY)).not.toHaveProperty('toe');
    for (const source of [
      { kind: 'readings', readings: EXAMPLE_READINGS },
      { kind: 'coefficients', coefficients: [0, -0.02], domain: [-20, 40] },
      { kind: 'curve', curve: solveCorner(EXAMPLE_CORNER).camber },
    ] as const) {
      const solved = solveSource(source as never);
      expect(solved.camber.quantity).toBe('camber');
      expect(solved).not.toHaveProperty('toe');
      expect(solved).not.toHaveProperty('links');
    }
    expect(solveSource({ kind: 'corner', corner: EXAMPLE_CORNER })).toHaveProperty('toe.quantity', 'toe');
  });
});
