import { expect, it } from 'vitest';
import { compareCurves, netChange } from '../../../core/answers/compare.js';
import { partCurve, partCurves } from '../../../core/answers/part-curve.js';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import { solveCorner } from '../../../core/curve-sources/solve-corner.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import { ballJointExtended, toeReset } from '../../../core/linkage/parts/index.js';
import { withLoweredJoint } from '../../reference/independent-joint.js';
import { independentStrutSweep } from '../../reference/independent-strut.js';
import { referenceCorner } from '../linkage/reference-corner.js';

const corner: StrutCorner = { ...(referenceCorner as StrutCorner), plusMinus: { other: 2 } };
const bare = curveFrom(partCurve(corner));
const lowered = curveFrom(partCurve(corner, ballJointExtended({ mm: 22 })));

it('without a part is the corner’s own curve, with the doubt of its exact derivatives', () => {
  const exact = curveFrom(solveCorner(corner).camber);
  for (const t of [-40, 20, 60]) {
    expect(bare.change(t, 0)).toBeCloseTo(exact.change(t, 0), 9);
    expect(bare.changeStandardError(t, 0) / exact.changeStandardError(t, 0)).toBeCloseTo(1, 3);
  }
});

it('gives toe besides, as a second solver does (test/reference/independent-joint.ts)', () => {
  const { toe } = partCurves(corner, ballJointExtended({ mm: 22 }), (linkage) => toeReset(linkage, corner.toe));
  const second = independentStrutSweep(withLoweredJoint(corner, { mm: 22, isTieRodCorrected: false }), [-20, 40]);
  expect(curveFrom(toe).value(-20)).toBeCloseTo(second[0]!.toe, 5);
  expect(curveFrom(toe).value(40)).toBeCloseTo(second[1]!.toe, 5);
});

it('shared hard points cancel in what a part does: its ± is a fraction of that of either curve', () => {
  const request = (shares: string | undefined) => ({
    curves: [bare, lowered].map((curve) => ({ curve, shares })),
    heights: [0],
    bump: 40,
  });
  const [from, to] = [
    { curve: 0, height: 0 },
    { curve: 1, height: 0 },
  ];
  const shared = netChange(request('car'), from, to)!.total;
  const apart = netChange(request(undefined), from, to)!.total;
  expect(shared.value).toBeCloseTo(apart.value, 12);
  expect(shared.plusMinus!).toBeLessThan(apart.plusMinus! / 4);
  const { change } = compareCurves(request('car')).breakEvens[0]!;
  // About 17 mm with the tie rod left as it is: see the derived case in test/core/curve/break-even.test.ts.
  expect(change).toMatchObject({ kind: 'at' });
  expect((change as { drop: number }).drop).toBeGreaterThan(16);
  expect((change as { drop: number }).drop).toBeLessThan(18);
});
