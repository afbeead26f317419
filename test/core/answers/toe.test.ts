import { describe, expect, it } from 'vitest';
import { EXAMPLE_CORNER, EXAMPLE_DRIVEWAY, toe, toeAcross } from '../../../core/index.js';
import { withLoweredJoint } from '../../reference/independent-joint.js';
import { type IndependentCorner, independentStrutSweep } from '../../reference/independent-strut.js';
import { problemsOf } from '../problems-of.js';

/* How far a wheel steers itself, by test/reference/independent-strut.ts and independent-joint.ts, which share nothing with core/. */

const corner: IndependentCorner = EXAMPLE_CORNER;
const of = { kind: 'corner', corner: EXAMPLE_CORNER } as const;
const joint = { part: 'ballJointExtended', mm: 22 } as const;

function change(corner: IndependentCorner, from: number, over: number): number {
  const [here, there] = independentStrutSweep(corner, [from, from + over]);
  return there!.toe - here!.toe;
}

describe('toe', () => {
  it.each([
    [0, 40],
    [25, 40],
    [30, -30],
    [-10, 55],
  ])('from %i mm lower over %i mm is what a second solver says, bare and with a lower joint', (drop, over) => {
    expect(toe({ source: of, drop, over }).change.value).toBeCloseTo(change(corner, drop, over), 5);
    const lowered = withLoweredJoint(corner, { mm: 22, isTieRodCorrected: false });
    const fitted = toe({ source: { kind: 'parts', of, parts: [joint] }, drop, over });
    expect(fitted.change.value).toBeCloseTo(change(lowered, drop, over), 5);
    expect(fitted.back!.value).toBeCloseTo(change(lowered, drop, -over), 5);
  });

  it('is told over 40 mm of bump unless somebody says otherwise, with a rate that its change begins with', () => {
    const answer = toe({ source: of, drop: 20 });
    expect(answer.over).toBe(40);
    expect(answer.rate.value).toBeCloseTo(change(corner, 20, 0.01) / 0.01, 4);
    expect(answer.standing.value).toBeCloseTo(independentStrutSweep(corner, [20])[0]!.toe, 5);
  });

  it('counts from stock height where the links were measured on a lowered car', () => {
    const there = toe({ source: of, drop: 30, measuredAt: 30 });
    expect(there.change.value).toBeCloseTo(change(corner, 0, 40), 5);
  });

  it('has contributions that add up to its ±’s variance, points by their names', () => {
    const { contributions } = toe({ source: of, drop: 0 });
    expect(contributions.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(contributions.map(({ label }) => label)).toContain('tie rod, outer end');
  });

  it('is refused by its field where the links do not reach, with the nearest that they do', () => {
    const reach = problemsOf(() => toe({ source: of, drop: 0, over: 250 }));
    expect(reach).toMatchObject([{ code: 'outside-domain', path: 'toe.over' }]);
    expect(reach[0]!.limit).toBeLessThan(250);
    expect(problemsOf(() => toe({ source: of, drop: 149 }))).toMatchObject([{ code: 'outside-domain', path: 'drop' }]);
    expect(problemsOf(() => toe({ source: of, drop: Number.NaN, over: 'far' as never }))).toMatchObject([
      { code: 'not-finite', path: 'drop' },
      { code: 'not-a-number', path: 'toe.over' },
    ]);
  });

  it('six measurements tell nothing of it', () => {
    const source = { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY } as const;
    expect(problemsOf(() => toe({ source, drop: 0 }))).toMatchObject([{ code: 'missing', path: 'source' }]);
  });
});

it('toe across a diameter is its chord by trigonometry: 1.5 mm at 430 mm is 0.199868° (toe_gauge_cases.csv)', () => {
  expect(toeAcross(0.199868188, 430)).toBeCloseTo(1.5, 6);
  expect(toeAcross(-0.181315153, 632)).toBeCloseTo(-2, 6);
});
