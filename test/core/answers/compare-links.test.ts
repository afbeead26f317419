import { describe, expect, it } from 'vitest';
import { type ComparedCurve, compareCurves, costsOf } from '../../../core/answers/compare.js';
import { rollCentre } from '../../../core/answers/roll-centre.js';
import { curveOf } from '../../../core/curve/curve.js';
import { rollCentreAt, rollCentreFrom } from '../../../core/curve/roll-centre.js';
import { solveSource } from '../../../core/curve-sources/solve-source.js';
import type { AnySource, SourceOf } from '../../../core/curve-sources/source.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { type HardPointKey, hardPoint, type StrutCorner, withHardPoint } from '../../../core/linkage/corner.js';
import type { PartData } from '../../../core/linkage/parts/part-kinds.js';
import { NORMAL_95 } from '../../../core/uncertainty/normal.js';
import { withLoweredJoint } from '../../reference/independent-joint.js';
import { type IndependentCorner, independentStrutSweep } from '../../reference/independent-strut.js';
import { referenceCorner } from '../linkage/reference-corner.js';
import { finished } from './finished.js';

const corner: StrutCorner = { ...referenceCorner, plusMinus: { other: 2 } };
const of = { kind: 'corner', corner } as const;
const [DROP, BUMP] = [25, 40];
/** What is sold is taken as exact: what is left is what the hard points are not known to. */
const JOINT: PartData = { part: 'ballJointExtended', mm: 22, plusMinus: 0 };
const CORRECTED: PartData = { ...JOINT, correctTieRod: true };

function compared(source: SourceOf<'corner' | 'driveway' | 'parts'>): ComparedCurve {
  const solved = solveSource(source);
  return {
    curve: curveOf(solved.camber),
    ...(solved.toe && { toe: curveOf(solved.toe) }),
    rollCentre: finished(rollCentre({ source: solved })),
    shares: 'car',
  };
}
const withPart = (part: PartData, on: Extract<AnySource, { kind: 'corner' | 'driveway' }> = of) =>
  compared({ kind: 'parts', of: on, parts: [part] });
const request = { curves: [compared(of), withPart(JOINT), withPart(CORRECTED)], heights: [0, DROP], bump: BUMP };

/**
 * The roll centre of the second solver (test/reference/independent-strut.ts, which shares nothing with core/): on the centreline, on the
 * line through the contact point across its way, which is found by differences. Source of the construction: SAE J670, roll centre.
 */
function independentRollCentre(of: IndependentCorner, travel: number): number {
  const step = 0.01;
  const [below, at, above] = independentStrutSweep(of, [travel - step, travel, travel + step]);
  const [across, up] = [above!.contact[1] - below!.contact[1], above!.contact[2] - below!.contact[2]];
  return (at!.contact[1] * across) / up;
}
const independentToe = (of: IndependentCorner): number => {
  const [from, to] = independentStrutSweep(of, [DROP, DROP + BUMP]);
  return to!.toe - from!.toe;
};
const lowered = (of: IndependentCorner, isTieRodCorrected: boolean) =>
  withLoweredJoint(of, { mm: 22, isTieRodCorrected });

const POINTS: readonly HardPointKey[] = [
  'lowerArm.front',
  'lowerArm.rear',
  'lowerArm.ball',
  'strut.top',
  'strut.low',
  'tieRod.inner',
  'tieRod.outer',
  'wheelCentre',
];
/** 95 %, of a figure of the corner by the second solver: each coordinate put off either way by itself. */
function independentPlusMinus(figure: (of: IndependentCorner) => number): number {
  const standard = 2 / NORMAL_95;
  const shares = POINTS.flatMap((key) =>
    [0, 1, 2].map((axis) => {
      const [more, less] = [0.2, -0.2].map((by) => {
        const point = [...hardPoint(referenceCorner, key as never)!] as [number, number, number];
        point[axis]! += by;
        return figure(withHardPoint(referenceCorner, key, point) as StrutCorner);
      });
      return ((more! - less!) / 0.4) * standard;
    }),
  );
  return NORMAL_95 * Math.hypot(...shares);
}

describe('compareCurves of links', () => {
  const { cells } = compareCurves(request);

  it('tells the toe change over the bump as a second solver does', () => {
    expect(cells[0]![1]!.toeChange!.value).toBeCloseTo(independentToe(referenceCorner), 5);
    expect(cells[1]![1]!.toeChange!.value).toBeCloseTo(independentToe(lowered(referenceCorner, false)), 5);
    expect(cells[2]![1]!.toeChange!.value).toBeCloseTo(independentToe(lowered(referenceCorner, true)), 5);
    // Without the rod the joint steers the wheel; with it hardly more than the bare corner.
    expect(Math.abs(cells[1]![1]!.toeChange!.value)).toBeGreaterThan(0.3);
  });

  it('tells the roll centre at each height as a second solver does', () => {
    for (const [h, drop] of [0, DROP].entries()) {
      expect(cells[0]![h]!.rollCentre!.value).toBeCloseTo(independentRollCentre(referenceCorner, drop), 2);
      const second = independentRollCentre(lowered(referenceCorner, true), drop);
      expect(cells[2]![h]!.rollCentre!.value).toBeCloseTo(second, 2);
    }
    expect(cells[2]![0]!.rollCentre!.value).toBeGreaterThan(cells[0]![0]!.rollCentre!.value + 20);
  });

  it('tells their ± as the second solver gives it with each coordinate put off', () => {
    const toe = independentPlusMinus((off) => independentToe(lowered(off, false)));
    expect(cells[1]![1]!.toeChange!.plusMinus).toBeCloseTo(toe, 3);
    const centre = independentPlusMinus((off) => independentRollCentre(lowered(off, true), DROP));
    expect(cells[2]![1]!.rollCentre!.plusMinus! / centre).toBeCloseTo(1, 2);
  });

  it('leaves both out of what does not know them: no links, no toe from a driveway', () => {
    const driveway = { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY } as const;
    const coefficients = { kind: 'coefficients', coefficients: [-0.5, -0.02], domain: [-60, 90] } as const;
    const rows = [compared(driveway), withPart(CORRECTED, driveway), compared(coefficients as never)];
    const [bare, joint, curve] = compareCurves({ ...request, curves: rows }).cells;
    for (const [cell] of [bare!, joint!]) {
      expect(cell!.toeChange).toBeUndefined();
      expect(cell!.rollCentre!.plusMinus).toBeGreaterThan(5);
    }
    expect(curve![0]).not.toHaveProperty('rollCentre');
    expect(curve![0]).not.toHaveProperty('toeChange');
  });

  it('tells no toe change beyond solid, as it tells no camber change', () => {
    const [cell] = compareCurves({ ...request, solid: 60 }).cells[1]!.slice(1);
    expect(cell).not.toHaveProperty('toeChange');
    expect(cell!.rollCentre).toBeDefined();
  });
});

describe('costsOf', () => {
  const from = { curve: 0, height: 1 };

  it('is the difference of two cells, and what both share cancels', () => {
    const to = { curve: 2, height: 1 };
    const costs = costsOf(request, from, to);
    const { cells } = compareCurves(request);
    expect(costs.rollCentre!.value).toBeCloseTo(cells[2]![1]!.rollCentre!.value - cells[0]![1]!.rollCentre!.value, 9);
    const gained = independentPlusMinus(
      (off) => independentRollCentre(lowered(off, true), DROP) - independentRollCentre(off, DROP),
    );
    expect(costs.rollCentre!.plusMinus! / gained).toBeCloseTo(1, 1);
    expect(costs.rollCentre!.plusMinus!).toBeLessThan(cells[2]![1]!.rollCentre!.plusMinus!);
  });

  it('of a cell and itself is nothing, and exactly so', () => {
    expect(costsOf(request, from, from)).toEqual({
      toeChange: { value: 0, plusMinus: 0, isTold: false },
      rollCentre: { value: 0, plusMinus: 0, isTold: false },
    });
  });
});

describe('rollCentreAt', () => {
  const centre = request.curves[0]!.rollCentre!;
  it('is told between the ends of reach and nowhere else', () => {
    const [low, high] = [centre.travel[0]!, centre.travel.at(-1)!];
    for (const at of [low, high, (low + high) / 2 + 1]) expect(rollCentreAt(centre, at).value).not.toBeNaN();
    for (const at of [low - 0.1, high + 0.1]) expect(rollCentreAt(centre, at).value).toBeNaN();
  });
  it('counted from another height is the same place', () => {
    expect(rollCentreAt(rollCentreFrom(centre, 20), 25)).toEqual(rollCentreAt(centre, 5));
    expect(rollCentreFrom(centre, 0)).toBe(centre);
  });
  it('between its samples lies where the second solver finds it, to a few hundredths', () => {
    expect(rollCentreAt(centre, 22.5).value).toBeCloseTo(independentRollCentre(referenceCorner, 22.5), 1);
  });
});

it('a roll centre from a driveway is in doubt by all that its own answer says, beside the curve’s sources', () => {
  const source = solveSource({ kind: 'driveway', driveway: EXAMPLE_DRIVEWAY });
  const centre = finished(rollCentre({ source }))!;
  const { cells } = compareCurves({
    curves: [{ curve: curveOf(source.camber), shares: 'car', rollCentre: centre }],
    heights: [0],
    bump: 40,
  });
  const { parts } = rollCentreAt(centre, 0);
  expect(centre.sources.length).toBeGreaterThan(source.camber.sources.length);
  expect(cells[0]![0]!.rollCentre!.plusMinus).toBeCloseTo(1.959964 * Math.hypot(...parts), 2);
});
