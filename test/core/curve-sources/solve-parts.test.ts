import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareCurves } from '../../../core/answers/compare.js';
import { wheelMotion } from '../../../core/answers/from-source.js';
import { curveOf } from '../../../core/curve/curve.js';
import type { CurveData } from '../../../core/curve/curve-data.js';
import { solveSource } from '../../../core/curve-sources/solve-source.js';
import type { PartsSource } from '../../../core/curve-sources/source.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { hardPoint, type StrutCorner, withHardPoint } from '../../../core/linkage/corner.js';
import { partOf } from '../../../core/linkage/parts/part-data.js';
import { PART_NAMES, type PartData } from '../../../core/linkage/parts/part-kinds.js';
import { NORMAL_95 } from '../../../core/uncertainty/normal.js';
import { independentJointBreakEven, withLoweredJoint } from '../../reference/independent-joint.js';
import { independentStrutSweep } from '../../reference/independent-strut.js';
import { BOLT } from '../linkage/parts/kinds-of-part.js';
import { referenceCorner } from '../linkage/reference-corner.js';
import { problemsOf } from '../problems-of.js';

const corner: StrutCorner = { ...referenceCorner, plusMinus: { other: 2 } };
const of = { kind: 'corner', corner } as const;
const JOINT: PartData = { part: 'ballJointExtended', mm: 22 };
const CORRECTED: PartData = { ...JOINT, correctTieRod: true };
const TRAVELS = [-30, 0, 25, 40, 65];

const source = (parts: readonly PartData[], more: Partial<PartsSource> = {}): PartsSource => ({
  kind: 'parts',
  of,
  parts,
  ...more,
});
const solve = (parts: readonly PartData[], more?: Partial<PartsSource>) => solveSource(source(parts, more));

describe('solveSource of a corner with parts on it', () => {
  it('gives camber and toe as a second solver does that builds the part in by itself', () => {
    // test/reference/independent-joint.ts and independent-strut.ts share nothing with core/.
    for (const [part, isTieRodCorrected] of [
      [JOINT, false],
      [CORRECTED, true],
    ] as const) {
      const solved = solve([part]);
      const second = independentStrutSweep(withLoweredJoint(referenceCorner, { mm: 22, isTieRodCorrected }), TRAVELS);
      TRAVELS.forEach((travel, i) => {
        expect(curveOf(solved.camber).value(travel)).toBeCloseTo(second[i]!.camber, 5);
        expect(curveOf(solved.toe!).value(travel)).toBeCloseTo(second[i]!.toe, 5);
      });
    }
  });

  it('is the corner’s own curve, with its doubt, where no part is on', () => {
    const [none, bare] = [solve([]), solveSource(of)];
    for (const angle of ['camber', 'toe'] as const) {
      const [a, b] = [curveOf(none[angle]!), curveOf(bare[angle]!)];
      for (const travel of TRAVELS) {
        expect(a.value(travel)).toBeCloseTo(b.value(travel), 9);
        const [mine, exact] = [a.changeEstimate(travel, 0), b.changeEstimate(travel, 0)];
        for (const [i, part] of mine.parts.entries()) expect(part).toBeCloseTo(exact.parts[i]!, 4);
      }
    }
    expect(none.camber.sources.map(({ id }) => id)).toEqual(bare.camber.sources.map(({ id }) => id));
  });

  it('shows a hard point that is off, through the part, as a second solver does', () => {
    const { camber, toe } = solve([CORRECTED]);
    const moved = (key: 'strut.top' | 'tieRod.inner', axis: number, by: number) => {
      const point = [...hardPoint(referenceCorner, key)!] as [number, number, number];
      point[axis]! += by;
      const off = withHardPoint(referenceCorner, key, point) as StrutCorner;
      return independentStrutSweep(withLoweredJoint(off, { mm: 22, isTieRodCorrected: true }), [40])[0]!;
    };
    const partOfSource = (data: CurveData, id: string) => {
      const at = data.sources.findIndex((one) => one.id === id);
      return curveOf(data).estimate(40).parts[at]!;
    };
    for (const [key, axis, name] of [
      ['strut.top', 1, 'sideways'],
      ['tieRod.inner', 2, 'height'],
    ] as const) {
      const slope = (angle: 'camber' | 'toe') =>
        (moved(key, axis, 0.5)[angle] - moved(key, axis, -0.5)[angle]) * (2 / NORMAL_95);
      expect(partOfSource(camber, `${key}.${name}`)).toBeCloseTo(slope('camber'), 4);
      expect(partOfSource(toe!, `${key}.${name}`)).toBeCloseTo(slope('toe'), 4);
    }
  });

  it('counts a part’s own ± and that of the rod made to match it', () => {
    const exact = solve([{ ...CORRECTED, plusMinus: 0 }]);
    const usual = solve([CORRECTED]);
    const own = usual.camber.sources.filter(({ id }) => id.startsWith('part.'));
    expect(own).toHaveLength(2);
    expect(exact.camber.sources).toHaveLength(usual.camber.sources.length - 2);
    // 1 mm more or less of the joint, by the second solver.
    const at = usual.camber.sources.indexOf(own[0]!);
    const [more, less] = [22.5, 21.5].map(
      (mm) =>
        independentStrutSweep(withLoweredJoint(referenceCorner, { mm, isTieRodCorrected: true }), [40])[0]!.camber,
    );
    expect(curveOf(usual.camber).estimate(40).parts[at]!).toBeCloseTo((more! - less!) / NORMAL_95, 5);
  });

  it('breaks even where bisection on the second solver does, and what both setups share cancels', () => {
    const curves = [solveSource(of), solve([CORRECTED])].map(({ camber }) => ({ curve: curveOf(camber) }));
    const alone = compareCurves({ curves, heights: [0], bump: 40 }).breakEvens[0]!.change;
    const shared = compareCurves({
      curves: curves.map((one) => ({ ...one, shares: 'car' })),
      heights: [0],
      bump: 40,
    }).breakEvens[0]!.change;
    if (alone?.kind !== 'at' || shared?.kind !== 'at') throw new Error('No break-even was found.');
    const second = independentJointBreakEven(referenceCorner, { mm: 22, isTieRodCorrected: true }, 40);
    expect(shared.drop).toBeCloseTo(second, 3);
    const width = ({ interval }: { interval: { low: number; high: number } }) => interval.high - interval.low;
    expect(width(shared as never)).toBeLessThan(width(alone as never) / 3);
  });

  it('sets toe again, or camber too, to what the bare corner had, and as fitted neither', () => {
    const at = (alignment: PartsSource['alignment']) => {
      const { camber, toe } = solve([JOINT], alignment ? { alignment } : {});
      return [curveOf(camber).value(0), curveOf(toe!).value(0)] as const;
    };
    expect(at(undefined)[1]).toBeCloseTo(corner.toe, 8);
    expect(Math.abs(at('as-fitted')[1] - corner.toe)).toBeGreaterThan(0.1);
    expect(at('camber-and-toe')[0]).toBeCloseTo(corner.camber, 8);
    expect(at('camber-and-toe')[1]).toBeCloseTo(corner.toe, 8);
  });

  it('answers camber, and no toe, of what was measured in a driveway', () => {
    const driveway = { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY } as const;
    const [bare, lowered] = [solveSource(driveway), solve([CORRECTED], { of: driveway })];
    expect(lowered.toe).toBeUndefined();
    expect(lowered.driveway).toEqual(bare.driveway);
    expect(lowered.links!.rollCentreHeight.length).toBe(lowered.links!.motion.travel.length);
    // More negative camber in bump: that is what the joint is bought for.
    const change = (of: CurveData) => curveOf(of).change(40, 0);
    expect(change(lowered.camber)).toBeLessThan(change(bare.camber) - 0.18);
  });

  it('is steered in doubt by nothing that a driveway leaves open of the tie rod: each doubt is a motion all over', () => {
    const driveway = { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY } as const;
    const { doubts = [] } = wheelMotion({ source: source([JOINT], { of: driveway }), lock: 35 });
    const bare = wheelMotion({ source: driveway, lock: 35 }).doubts!;
    // The joint's own, and those of the bare corner.
    expect(doubts).toHaveLength(bare.length + 1);
    for (const { id, motion } of doubts) expect(motion.centre.some(Number.isNaN), id).toBe(false);
  });

  it('moves its linkage by any of its sources as it says', () => {
    const { links } = solve([CORRECTED]);
    for (const one of links!.sources) expect(() => links!.moved(one, 1)).not.toThrow();
    const joint = links!.sources.find(({ part }) => part?.path === 'mm')!;
    expect(links!.moved(joint, 1).carrier.lowerBall[2]).toBeCloseTo(
      links!.linkage.carrier.lowerBall[2] - 1 / NORMAL_95,
      9,
    );
  });
});

describe('partOf', () => {
  const DATA: Record<string, PartData> = {
    ballJointExtended: JOINT,
    ballJointMoved: { part: 'ballJointMoved', vector: [0, 4, -10] },
    armLonger: { part: 'armLonger', mm: 10 },
    innerPivotsRaised: { part: 'innerPivotsRaised', front: 10, rear: 12 },
    topMountMoved: { part: 'topMountMoved', vector: [0, -15, 0] },
    knuckleBoltsTurned: { part: 'knuckleBoltsTurned', degrees: 1.5, otherBolt: BOLT },
    spinAxisTurned: { part: 'spinAxisTurned', camber: -1 },
    tieRodEndRaised: { part: 'tieRodEndRaised', mm: -10 },
    tieRodLonger: { part: 'tieRodLonger', mm: 2 },
    rackRaised: { part: 'rackRaised', mm: 5 },
    wheelOffset: { part: 'wheelOffset', mm: 12 },
  };

  it('makes every part, by the name of its function, and each changes the wheel', () => {
    expect(Object.keys(DATA).sort()).toEqual([...PART_NAMES].sort());
    const bare = curveOf(solveSource(of).camber);
    for (const data of Object.values(DATA)) {
      const { camber, toe } = solve([data], { alignment: 'as-fitted' });
      const isOther =
        Math.abs(curveOf(camber).value(40) - bare.value(40)) > 1e-4 ||
        Math.abs(curveOf(toe!).value(40) - corner.toe) > 1e-4;
      expect(isOther, data.part).toBe(true);
    }
  });

  it.each([
    [{ part: 'longerJoint', mm: 22 }, 'unknown-name', 'part'],
    [{ part: 'ballJointExtended' }, 'missing', 'mm'],
    [{ part: 'ballJointExtended', mm: '22' }, 'not-a-number', 'mm'],
    [{ part: 'ballJointExtended', mm: 558.8 }, 'out-of-range', 'mm'],
    [{ part: 'ballJointExtended', mm: 22, tieRod: true }, 'unknown-name', 'tieRod'],
    [{ part: 'ballJointExtended', mm: 22, correctTieRod: 'false' }, 'wrong-shape', 'correctTieRod'],
    [{ part: 'topMountMoved', vector: [0, Number.NaN, 0] }, 'not-finite', 'vector.1'],
    [{ part: 'spinAxisTurned', camber: 25 }, 'out-of-range', 'camber'],
    [{ part: 'armLonger', mm: 10, plusMinus: -1 }, 'out-of-range', 'plusMinus'],
    [null, 'missing', 'part'],
  ])('says of %j that it is %s at %s', (data, code, path) => {
    expect(problemsOf(() => partOf(data))).toMatchObject([{ code, path }]);
  });

  it('is named by its place where it does not go on: a wishbone’s part, a rod that no longer reaches', () => {
    expect(problemsOf(() => solve([JOINT, { part: 'armLonger', mm: 10, arm: 'upper' }]))).toMatchObject([
      { code: 'wrong-shape', path: 'parts.1.arm' },
    ]);
    expect(problemsOf(() => solve([JOINT, { part: 'tieRodLonger', mm: -149 }]))).toMatchObject([
      { code: 'cannot-close', path: 'parts.1', other: 'tieRod' },
    ]);
    expect(problemsOf(() => solve([{ part: 'topMountMoved', vector: [0, 'x' as never, 0] }]))).toMatchObject([
      { code: 'not-a-number', path: 'parts.0.vector.1' },
    ]);
  });

  it('throws nothing but problems, whatever it is given', () => {
    fc.assert(
      fc.property(fc.anything(), fc.constantFrom(...PART_NAMES), (value, part) => {
        for (const data of [value, { part, mm: value, vector: value, degrees: value, plusMinus: value }]) {
          problemsOf(() => partOf(data));
        }
      }),
      { numRuns: 300 },
    );
  });
});
