import { describe, expect, it } from 'vitest';
import { axleAt } from '../../../core/linkage/axle.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { sweepTravel, type TravelSweep } from '../../../core/linkage/sweep.js';
import { sweepRight } from '../../../core/linkage/sweep-right.js';
import { independentStrutSweep } from '../../reference/independent-strut.js';
import { referenceCorner } from './reference-corner.js';

const linkage = buildLinkage(referenceCorner);
const travels = [-500, -60, -20, 0, 15, 50];

describe('a right corner', () => {
  it('with the rack in the middle has the angles, offsets and rates of its mirror image', () => {
    const { instantCentreY, ...left } = sweepTravel(linkage, travels);
    const { instantCentreY: rightY, ...right } = sweepRight(linkage, travels);
    expect(right).toEqual(left);
    expect([...right.reached]).toEqual([0, 1, 1, 1, 1, 1]);
    expect([...rightY]).toEqual([...instantCentreY].map((y) => -y));
  });
  it('has its instant centre on the other side of the car', () => {
    const at = (sweep: TravelSweep) => sweep.instantCentreY[1]!;
    expect(at(sweepRight(linkage, [0, 15]))).toBe(-at(sweepTravel(linkage, [0, 15])));
  });
  it('is moved by the car’s rack: what comes nearer to the left corner goes away from the right one', () => {
    const rack = 25;
    const right = sweepRight(linkage, [0, 30], { rack });
    const mirrorImage = independentStrutSweep(referenceCorner, [0, 30], { rack: -rack });
    mirrorImage.forEach(({ toe, camber }, i) => {
      expect(right.toe[i]).toBeCloseTo(toe, 6);
      expect(right.camber[i]).toBeCloseTo(camber, 6);
    });
    const left = sweepTravel(linkage, [0, 30], { rack });
    // Both wheels point the same way: one toes in, the other out.
    expect(Math.sign(left.toe[0]!)).toBe(-Math.sign(right.toe[0]!));
  });
  it('is the right wheel of the axle', () => {
    const { right } = axleAt(linkage, linkage, { heave: 12, rack: -15, roll: 1 });
    const sweep = sweepRight(linkage, [right.travel], { rack: -15 });
    expect(sweep.camber[0]).toBeCloseTo(right.camber, 9);
    expect(sweep.toe[0]).toBeCloseTo(right.toe, 9);
  });
});
