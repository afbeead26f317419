import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { type Corner, hardPoint, withHardPoint } from '../../../core/linkage/corner.js';
import { sweepDerivatives } from '../../../core/linkage/derivatives.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { referenceCorner } from './reference-corner.js';
import { wishboneCorner } from './wishbone-corner.js';

const TRAVELS = [-60, -25, 0, 30, 70];
const NUDGE_MM = 0.01;

function central(corner: Corner, rack: number) {
  const at = (moved: Corner) => sweepTravel(buildLinkage(moved), TRAVELS, { rack });
  return (key: Parameters<typeof hardPoint>[1], axis: number) => {
    const nudged = (by: number) => {
      const point = [...hardPoint(corner, key)!] as [number, number, number];
      point[axis]! += by;
      return at(withHardPoint(corner, key, point));
    };
    const above = nudged(NUDGE_MM);
    const below = nudged(-NUDGE_MM);
    const slope = (name: 'camber' | 'toe') => above[name].map((value, i) => (value - below[name][i]!) / (2 * NUDGE_MM));
    return { camber: slope('camber'), toe: slope('toe') };
  };
}

describe.each([
  ['strut', referenceCorner as Corner],
  ['wishbone', wishboneCorner as Corner],
  ['wishbone with a damper', { ...wishboneCorner, damper: { top: [0, 520, 640], low: [0, 600, 205] } } as Corner],
])('exact derivatives of a %s', (_, corner) => {
  it.each([0, 25, -40])('agree with central differences at every travel and coordinate, rack at %d mm', (rack) => {
    const { keys, camber, toe } = sweepDerivatives(corner, buildLinkage(corner), TRAVELS, { rack });
    const differences = central(corner, rack);
    keys.forEach((key, point) => {
      for (let axis = 0; axis < 3; axis++) {
        const expected = differences(key, axis);
        TRAVELS.forEach((travel, i) => {
          const at = i * keys.length * 3 + 3 * point + axis;
          const where = `${key} ${axis} at ${travel} mm`;
          expect(Math.abs(camber[at]! - expected.camber[i]!), `camber, ${where}`).toBeLessThan(2e-8);
          expect(Math.abs(toe[at]! - expected.toe[i]!), `toe, ${where}`).toBeLessThan(2e-8);
        });
      }
    });
  });

  it('are 0 at travel 0, where camber and toe are what was measured', () => {
    const { camber, toe } = sweepDerivatives(corner, buildLinkage(corner), [0]);
    for (const value of [...camber, ...toe]) expect(Math.abs(value)).toBeLessThan(1e-12);
  });

  it('are NaN out of reach', () => {
    const linkage = buildLinkage(corner);
    const { camber } = sweepDerivatives(corner, linkage, [linkage.reach.bump + 1]);
    expect([...camber].every(Number.isNaN)).toBe(true);
  });
});
