import { describe, expect, it } from 'vitest';
import { toeCure, toeCureDoubt } from '../../../core/answers/from-source.js';
import { idealRodOf, type ToeCureRequest, toeAtAmount } from '../../../core/answers/toe-cure.js';
import type { AnySource } from '../../../core/curve-sources/source.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { hardPoint, type StrutCorner, type Vector3, withHardPoint } from '../../../core/linkage/corner.js';
import { ballJointExtended, toeReset } from '../../../core/linkage/parts/index.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { sweepRight } from '../../../core/linkage/sweep-right.js';
import { toeCorrection } from '../../../core/linkage/toe-correction.js';
import { NORMAL_95 } from '../../../core/uncertainty/normal.js';
import { withLoweredJoint } from '../../reference/independent-joint.js';
import type { IndependentCorner } from '../../reference/independent-strut.js';
import { independentFlatAmount, independentToe } from '../../reference/independent-toe.js';
import { referenceCorner } from '../linkage/reference-corner.js';
import { withToeSet } from '../linkage/toe-brute-force.js';
import { wishboneCorner } from '../linkage/wishbone-corner.js';
import { problemsOf } from '../problems-of.js';
import { cureCoverage, cureMissed } from './toe-cure-coverage.js';

const corner: StrutCorner = { ...referenceCorner, plusMinus: { other: 2 } };
const of = { kind: 'corner', corner } as const;
const JOINT = { part: 'ballJointExtended', mm: 22 } as const;
const withJoint: AnySource = { kind: 'parts', of, parts: [JOINT] };
const driveway = { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY } as const;
const asked = (more: Partial<ToeCureRequest<AnySource>> = {}): ToeCureRequest<AnySource> => ({
  source: of,
  at: 0,
  window: [-40, 40],
  adjust: 'outerEnd',
  ...more,
});
const linkage = buildLinkage(referenceCorner);

describe('toeCure', () => {
  it('has toe for every millimetre of the range, set again at ride height, as parts and sweep give it', () => {
    for (const adjust of ['outerEnd', 'rack'] as const) {
      const at = 33;
      const { amounts, travel, toe, toeSet } = toeCure(asked({ at, adjust, range: [-12, 12.5], toe: 0.4 }));
      expect([...amounts]).toEqual([...Array.from({ length: 25 }, (_, i) => i - 12), 12.5]);
      expect(toeSet).toBeCloseTo(0.4, 9);
      for (const place of [0, 12, 19, 25]) {
        const set = { at, window: [-40, 40], toe: 0.4, adjust, range: [-12, 12] } as const;
        const fitted = withToeSet(linkage, set, amounts[place]!)!.linkage;
        const swept = sweepTravel(fitted, travel).toe;
        const row = [...toe.subarray(place * travel.length, (place + 1) * travel.length)];
        expect(row).toEqual([...swept].map((one) => expect.closeTo(one, 6)));
      }
    }
  });

  it('counts travel by 2.5 mm from where the source was measured, ride height and both ends of the window among it', () => {
    const { travel, motion } = toeCure(asked({ at: 13, window: [-41, 38] }));
    for (const one of [13, -28, 51, -80, 0, 2.5, 120]) expect(travel).toContain(one);
    expect([...travel]).toEqual([...travel].sort((a, b) => a - b));
    expect(new Set(travel).size).toBe(travel.length);
    expect(motion.travel[0]).toBe(-80);
    // 12.4 − 9.9 is a rounding error beside 2.5: one travel, and what lies beyond is driven to.
    const { travel: rounded, toe } = toeCure(asked({ at: 12.4, window: [-9.9, 40] }));
    expect(rounded.filter((one) => Math.abs(one - 2.5) < 0.1)).toEqual(Float64Array.of(12.4 - 9.9));
    expect(toe.some(Number.isNaN)).toBe(false);
  });

  it('leaves NaN where a link runs out with an amount, and goes on with the others', () => {
    // A steering arm so short that a rod far off its line turns it to its end.
    const { inner, outer } = referenceCorner.tieRod;
    const tieRod = { inner: [-45, inner[1], inner[2]], outer: [-45, outer[1], outer[2]] } as const;
    const short: StrutCorner = { ...referenceCorner, tieRod };
    const cure = toeCure(asked({ source: { kind: 'corner', corner: short }, window: [-20, 20], range: [-120, 120] }));
    const { travel, toe, amounts } = cure;
    const rows = [...amounts].map((_, i) => toe.subarray(i * travel.length, (i + 1) * travel.length));
    expect(rows.some((row) => row.some(Number.isNaN))).toBe(true);
    for (const row of rows) expect(row[travel.indexOf(0)]).toBeCloseTo(short.toe, 9);
    // Between two amounts of which one runs out there is none either.
    for (const amount of [-60.5, -40.3, 40.2, 60.5, 90.3]) {
      const mixed = toeAtAmount(cure, amount);
      const last = [...amounts].findIndex((one) => one > amount);
      const [below, above] = [rows[last - 1]!, rows[last]!];
      const lost = below.map((one, t) => one + above[t]!);
      expect([...mixed].map(Number.isNaN)).toEqual([...lost].map(Number.isNaN));
    }
  });

  it('has the other wheel’s curve with the rack over, as its mirror image is swept', () => {
    const cure = toeCure(asked({ rack: 20 }));
    const zero = [...cure.amounts].indexOf(0);
    const row = (table: Float64Array) => [
      ...table.subarray(zero * cure.travel.length, (zero + 1) * cure.travel.length),
    ];
    const [here, there] = [
      sweepTravel(linkage, cure.travel, { rack: 20 }),
      sweepRight(linkage, cure.travel, { rack: 20 }),
    ];
    expect(row(cure.toe)).toEqual([...here.toe].map((toe) => expect.closeTo(toe, 6)));
    expect(row(cure.otherToe!)).toEqual([...there.toe].map((toe) => expect.closeTo(toe, 6)));
    expect(toeCure(asked()).otherToe).toBeUndefined();
    expect([...toeAtAmount(cure, 0, 'other')]).toEqual(row(cure.otherToe!));
  });

  it('says what a millimetre does to the toe change in bump, as the second solver has it', () => {
    for (const [adjust, end] of [
      ['outerEnd', 'outer'],
      ['innerEnd', 'inner'],
    ] as const) {
      const { sensitivity } = toeCure(asked({ at: 20, window: [-30, 45], adjust }));
      const change = (amount: number) => {
        const [from, to] = independentToe(referenceCorner, { at: 20, end, amount }, [0, 45]);
        return to! - from!;
      };
      expect(sensitivity).toBeCloseTo((change(0.25) - change(-0.25)) / 0.5, 5);
    }
  });

  it('corrects by the same function as the core offers, with parts on as well', () => {
    const { correction } = toeCure(asked());
    expect(correction).toEqual(toeCorrection(linkage, { at: 0, window: [-40, 40], adjust: 'outerEnd' }));
    const fitted = toeReset(ballJointExtended({ mm: 22 })(linkage), referenceCorner.toe);
    const joint = toeCure(asked({ source: withJoint })).correction;
    expect(joint.slope!.amount).toBeCloseTo(toeCorrection(fitted).slope!.amount, 6);
    // A lower joint has the arm point down: the rod must point down with it, by nearly as much.
    expect(joint.slope!.amount - correction.slope!.amount).toBeLessThan(-0.7 * 22);
    expect(joint.slope!.amount - correction.slope!.amount).toBeGreaterThan(-22);
  });

  it('says of the rod how long it is and should be, and with the flat amount how high it is: right', () => {
    for (const adjust of ['outerEnd', 'rack'] as const) {
      const cure = toeCure(asked({ at: 15, adjust }));
      const { rods, correction, path, motion } = cure;
      expect(rods.asItIs.actual).toBeCloseTo(linkage.lengths.tieRod, 6);
      expect(rods.slope!.tooHigh).toBeCloseTo(0, 7);
      expect(rods.leastSquares.tooHigh).not.toBeCloseTo(0, 3);
      const dragged = idealRodOf({ path, adjust, inner: motion.fixed.tieInner }, 15, correction.slope!.amount);
      expect(dragged).toEqual(rods.slope);
    }
  });

  it('works on a wishbone too', () => {
    const { correction, motion, rods } = toeCure(asked({ source: { kind: 'corner', corner: wishboneCorner } }));
    expect(correction.minimax.after).toBeLessThan(correction.minimax.before);
    expect(motion.kind).toBe('wishbone');
    expect(rods.asItIs.length).toBeGreaterThan(100);
  });
});

describe('toeAtAmount', () => {
  it('is within a ten-thousandth of a degree of the solver between the amounts of the table', () => {
    for (const source of [of, withJoint, { kind: 'corner', corner: wishboneCorner } as const]) {
      const cure = toeCure(asked({ source, at: -10 }));
      for (const amount of [-29.5, -7.3, -0.5, 2.21, 29.7]) {
        const fitted = toeCure(asked({ source, at: -10, range: [amount, amount] }));
        toeAtAmount(cure, amount).forEach((toe, t) => {
          expect(Math.abs(toe - fitted.toe[t]!)).toBeLessThan(1e-4);
        });
      }
      expect([...toeAtAmount(cure, 5)]).toEqual([
        ...cure.toe.subarray(35 * cure.travel.length, 36 * cure.travel.length),
      ]);
      expect([...toeAtAmount(cure, 29.99999999)]).toEqual(
        [...toeAtAmount(cure, 30)].map((toe) => expect.closeTo(toe, 7)),
      );
      expect([...toeAtAmount(cure, 99)]).toEqual([...toeAtAmount(cure, 30)]);
    }
  });
});

describe('toeAtAmount beside gaps of the table', () => {
  const travel = Float64Array.of(0, 10);
  const cubic = (x: number) => 0.001 * x ** 3 - 0.02 * x;

  it('mixes nothing across amounts at which the rod does not join', () => {
    const amounts = Float64Array.of(-4, -3, -2, -1, 5, 6, 7, 8);
    const toe = Float64Array.from([...amounts].flatMap((x) => [cubic(x), x < 0 ? cubic(x) : 50]));
    const at = (amount: number) => [...toeAtAmount({ amounts, travel, toe }, amount)];
    expect(at(2)).toEqual([Number.NaN, Number.NaN]);
    expect(at(-1.5)).toEqual([expect.closeTo(cubic(-1.5), 12), expect.closeTo(cubic(-1.5), 12)]);
    expect(at(5.5)).toEqual([expect.closeTo(cubic(5.5), 12), expect.closeTo(50, 12)]);
  });

  it('takes neighbours on one side where those on the other run out', () => {
    const amounts = Float64Array.of(0, 1, 2, 3, 4);
    const toe = Float64Array.from(
      [...amounts].flatMap((x) => [x === 4 ? Number.NaN : cubic(x), x > 1 ? Number.NaN : x]),
    );
    const at = (amount: number) => [...toeAtAmount({ amounts, travel, toe }, amount)];
    expect(at(2.5)).toEqual([expect.closeTo(cubic(2.5), 12), Number.NaN]);
    expect(at(0.5)[1]).toBeCloseTo(0.5, 12);
    expect(at(3.5)[0]).toBeNaN();
    expect(at(3)[0]).toBe(cubic(3));
  });
});

describe('toeCure refuses', () => {
  const found = (request: ToeCureRequest<AnySource>) =>
    problemsOf(() => toeCure(request)).map(({ code, path }) => `${path} ${code}`);

  it.each([
    ['a driveway, which says nothing of the tie rod', { source: driveway }, ['source.tieRod missing']],
    [
      'a driveway with parts on, and a bad range besides',
      { source: { kind: 'parts', of: driveway, parts: [JOINT] }, range: [3, 1] },
      ['range.1 out-of-range', 'source.tieRod missing'],
    ],
    [
      'a source without links',
      { source: { kind: 'coefficients', coefficients: [0, -0.01], domain: [-50, 50] } },
      ['source wrong-shape'],
    ],
    [
      'what the correction refuses',
      { window: [5, 40], adjust: 'nut' },
      ['window.0 out-of-range', 'adjust unknown-name'],
    ],
    ['a ride height out of reach', { at: 295 }, ['at outside-domain']],
    [
      'a bad part',
      { source: { kind: 'parts', of, parts: [{ part: 'armLonger', mm: 900 }] } },
      ['parts.0.mm out-of-range'],
    ],
  ] as [string, Partial<ToeCureRequest<AnySource>>, string[]][])('%s', (_, more, expected) => {
    expect(found(asked(more))).toEqual(expected);
    expect(problemsOf(() => toeCureDoubt(asked(more))).length).toBe(expected.length);
  });
});

describe('toeCureDoubt', () => {
  const offBy = (axis: number, key: 'tieRod.inner' | 'lowerArm.ball', by: number): IndependentCorner => {
    const point = [...hardPoint(referenceCorner, key)];
    point[axis]! += by;
    return withHardPoint(referenceCorner, key, point as unknown as Vector3) as IndependentCorner;
  };

  it('is what moving a hard point does to the second solver’s flat amount, each cause with its share', () => {
    const { amount } = toeCureDoubt(asked()).slope!;
    expect(amount.contributions.reduce((sum, one) => sum + one.share, 0)).toBeCloseTo(1, 9);
    for (const [key, axes] of [
      ['tieRod.inner', [0, 1, 2]],
      ['lowerArm.ball', [0, 1, 2]],
    ] as const) {
      const share = amount.contributions.find(({ id }) => id === key)!.share;
      const flat = (axis: number, by: number) =>
        independentFlatAmount(offBy(axis, key, by), { at: 0, end: 'outer', toe: referenceCorner.toe }, [-10, 15]);
      const squares = axes.map((axis) => (((flat(axis, 0.2) - flat(axis, -0.2)) / 0.4) * (2 / NORMAL_95)) ** 2);
      const expected = Math.sqrt(squares.reduce((sum, one) => sum + one, 0));
      expect((Math.sqrt(share) * amount.plusMinus) / NORMAL_95 / expected, key).toBeCloseTo(1, 2);
    }
  });

  it('counts a part’s tolerance, by the second solver', () => {
    const { amount } = toeCureDoubt(asked({ source: withJoint })).slope!;
    const { share } = amount.contributions.find(({ id }) => id.startsWith('part.'))!;
    const flat = (mm: number) =>
      independentFlatAmount(
        withLoweredJoint(referenceCorner, { mm, isTieRodCorrected: false }),
        { at: 0, end: 'outer', asBuilt: referenceCorner },
        [-40, 0],
      );
    const expected = Math.abs((flat(22.4) - flat(21.6)) / 0.8);
    expect(Math.sqrt(share) * amount.plusMinus).toBeCloseTo(expected, 2);
  });

  it('knows the three amounts, what is left at best, one millimetre’s worth and the rod', () => {
    const doubt = toeCureDoubt(asked({ source: withJoint, at: 12, adjust: 'rack' }));
    for (const name of ['slope', 'leastSquares', 'minimax'] as const) {
      expect(doubt[name]!.amount.plusMinus).toBeGreaterThan(0.5);
      expect(doubt[name]!.amount.plusMinus).toBeLessThan(20);
      expect(doubt[name]!.after.plusMinus).toBeGreaterThan(0);
    }
    for (const name of ['before', 'sensitivity', 'tooShort', 'tooHigh'] as const) {
      expect(doubt[name]!.plusMinus).toBeGreaterThan(0);
    }
    // The rack is raised by as much as the rod is too high, so both are known alike.
    expect(doubt.tooHigh!.plusMinus / doubt.slope!.amount.plusMinus).toBeCloseTo(1, 4);
  });

  it('says nothing of an amount that the range ended, nor where no ± was stated', () => {
    const ended = toeCureDoubt(asked({ range: [-5, 1] }));
    expect([ended.slope, ended.leastSquares, ended.minimax]).toEqual([undefined, undefined, undefined]);
    expect(ended.before!.plusMinus).toBeGreaterThan(0);
    expect(toeCureDoubt(asked({ source: { kind: 'corner', corner: referenceCorner } }))).toEqual({});
  });

  /** The full study runs in the bench: `node test/bench/run.mjs toe`. */
  it('holds what the true car needs, over random struts measured with a tape', () => {
    const cars = 30;
    const found = cureCoverage({ seed: 1821, cars });
    expect(cureMissed(found, cars, true)).toEqual([]);
    expect(found.none).toBeLessThan(3);
    expect(found.slope.plusMinus).toBeLessThan(10);
  });
});
