import { describe, expect, it } from 'vitest';
import { type AmountRequest, amountFor } from '../../../core/answers/amount.js';
import { cornerSources } from '../../../core/curve-sources/corner-doubt.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import { type CornerSource, movedBy } from '../../../core/linkage/corner-source.js';
import type { PartData } from '../../../core/linkage/parts/part-kinds.js';
import { InputError } from '../../../core/quantity/problem.js';
import { NORMAL_95 } from '../../../core/uncertainty/normal.js';
import { withChange, withLoweredJoint } from '../../reference/independent-joint.js';
import {
  type IndependentCorner,
  independentCamberRate,
  independentStrutSweep,
} from '../../reference/independent-strut.js';
import { referenceCorner } from '../linkage/reference-corner.js';

/*
 * Every amount is looked for a second time, by bisection on test/reference/independent-joint.ts and independent-strut.ts, which share
 * nothing with core/.
 */
const corner: StrutCorner = { ...referenceCorner, plusMinus: { other: 2 } };
const of = { kind: 'corner', corner } as const;
const JOINT: PartData = { part: 'ballJointExtended', mm: 0, correctTieRod: true };

function bisection(miss: (amount: number) => number, low: number, high: number): number {
  const sign = Math.sign(miss(low));
  let [a, b] = [low, high];
  for (let i = 0; i < 45; i++) {
    const middle = (a + b) / 2;
    if (Math.sign(miss(middle)) === sign) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

const camberAt = (of: IndependentCorner, travel: number) => independentStrutSweep(of, [travel])[0]!.camber;
const found = (request: AmountRequest) => {
  const answer = amountFor(request);
  if (answer.kind !== 'at') throw new Error(`It ends at ${answer.ends.value} by ${answer.ends.amount}.`);
  return answer;
};

describe('amountFor', () => {
  it('finds the joint that gives back the stock camber rate at a drop', () => {
    for (const [isTieRodCorrected, drop] of [
      [true, 15],
      [true, 30],
      [false, 15],
    ] as const) {
      const part: PartData = { ...JOINT, correctTieRod: isTieRodCorrected };
      const { amount } = found({ of, part, path: 'mm', between: [0, 60], goal: 'stockRate', drop });
      const stock = independentCamberRate(referenceCorner, 0);
      const rate = (mm: number) =>
        independentCamberRate(withLoweredJoint(referenceCorner, { mm, isTieRodCorrected }), drop);
      expect(amount).toBeCloseTo(
        bisection((mm) => rate(mm) - stock, 0, 60),
        3,
      );
    }
  });

  it('finds the top mount’s shift and the arm’s length that reach a static camber at a drop', () => {
    const goal = { camber: -2 };
    const drop = 20;
    const shift = found({
      of,
      part: { part: 'topMountMoved', vector: [0, 0, 0] },
      path: 'vector.1',
      between: [-40, 40],
      goal,
      drop,
    }).amount;
    const byTop = (mm: number) => camberAt(withChange(referenceCorner, { topBy: [0, mm, 0] }), drop) + 2;
    expect(shift).toBeCloseTo(bisection(byTop, -40, 0), 4);
    expect(shift).toBeLessThan(0);
    const longer = found({ of, part: { part: 'armLonger', mm: 0 }, path: 'mm', between: [-30, 30], goal, drop }).amount;
    const byArm = (mm: number) => camberAt(withChange(referenceCorner, { armLongerBy: mm }), drop) + 2;
    expect(longer).toBeCloseTo(bisection(byArm, 0, 30), 4);
  });

  it('says how far the part leads where the goal is out of reach', () => {
    const answer = amountFor({
      of,
      part: { part: 'topMountMoved', vector: [0, 0, 0] },
      path: 'vector.1',
      between: [-5, 0],
      goal: { camber: -4 },
      drop: 0,
    });
    if (answer.kind !== 'out-of-reach') throw new Error('It was reached.');
    expect(answer.ends.amount).toBe(-5);
    expect(answer.ends.value).toBeCloseTo(camberAt(withChange(referenceCorner, { topBy: [0, -5, 0] }), 0), 5);
    expect(answer.wanted).toBe(-4);
  });

  it('is in doubt by what the points are, as a second solver finds with each of them off', () => {
    const request: AmountRequest = { of, part: JOINT, path: 'mm', between: [0, 60], goal: 'stockRate', drop: 25 };
    const { plusMinus } = found(request);
    const again = (source: CornerSource, times: number) => {
      const off = movedBy(referenceCorner, source, times) as StrutCorner;
      const stock = independentCamberRate(off, 0);
      const rate = (mm: number) => independentCamberRate(withLoweredJoint(off, { mm, isTieRodCorrected: true }), 25);
      return bisection((mm) => rate(mm) - stock, 10, 40);
    };
    // A few of the points alone: all of them would take the second solver a minute.
    const some = { ...referenceCorner, plusMinus: { 'strut.top': 2, 'lowerArm.ball': 2 } };
    const sources = cornerSources(some);
    const square = sources.reduce((sum, source) => sum + (again(source, 0.5) - again(source, -0.5)) ** 2, 0);
    const few = found({ ...request, of: { kind: 'corner', corner: some } }).plusMinus!;
    expect(few / (NORMAL_95 * Math.sqrt(square))).toBeCloseTo(1, 2);
    expect(plusMinus!).toBeGreaterThan(few);
  });

  it('answers from what was measured in a driveway, counted from where it was measured', () => {
    const driveway = { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY } as const;
    const part = JOINT;
    const { amount, plusMinus } = found({
      of: driveway,
      part,
      path: 'mm',
      between: [0, 60],
      goal: 'stockRate',
      drop: 25,
    });
    expect(amount).toBeGreaterThan(20);
    expect(amount).toBeLessThan(26);
    expect(plusMinus!).toBeGreaterThan(0.1);
    expect(plusMinus!).toBeLessThan(5);
    // Measured 10 mm lower, the same links are asked elsewhere on their curve.
    const lower = found({
      of: driveway,
      part,
      path: 'mm',
      between: [0, 60],
      goal: 'stockRate',
      drop: 25,
      measuredAt: 10,
    });
    expect(Math.abs(lower.amount - amount)).toBeGreaterThan(0.001);
  });

  it('refuses a height that the links do not reach, and a part that is none, by their fields', () => {
    const request: AmountRequest = { of, part: JOINT, path: 'mm', between: [0, 60], goal: 'stockRate', drop: 25 };
    // As far as drops are asked, from as high as cars are measured.
    const far = { drop: 150, measuredAt: -150 };
    expect(buildLinkage(corner).reach.bump).toBeLessThan(far.drop - far.measuredAt);
    for (const [wrong, code, field] of [
      [far, 'outside-domain', 'drop'],
      [{ part: 'ballJointExtended' as never }, 'unknown-name', 'path'],
    ] as const) {
      try {
        amountFor({ ...request, ...wrong });
        throw new Error('It was answered.');
      } catch (error) {
        expect(error).toMatchObject({ code, field });
      }
    }
  });

  it.each([
    [{ drop: 900 }, 'drop'],
    [{ goal: { camber: Number.NaN } }, 'goal'],
    [{ path: 'degrees' }, 'path'],
    [{ between: [0, 'x'] as never }, 'between.1'],
    [{ parts: [{ part: 'armLonger', mm: 999 }] }, 'parts.0.mm'],
  ] as const)('refuses %j at its field', (wrong, field) => {
    const request: AmountRequest = { of, part: JOINT, path: 'mm', between: [0, 60], goal: 'stockRate', drop: 25 };
    expect(() => amountFor({ ...request, ...wrong } as AmountRequest)).toThrow(InputError);
    try {
      amountFor({ ...request, ...wrong } as AmountRequest);
    } catch (error) {
      expect((error as InputError).field).toBe(field);
    }
  });
});
