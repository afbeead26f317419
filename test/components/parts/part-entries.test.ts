import { expect, it } from 'vitest';
import { amountIn, entryOf, offeredParts, PART_ENTRIES, withField } from '../../../components/parts/part-entries.js';
import { partProblemText, partsText } from '../../../components/parts/parts-text.js';
import { solveParts } from '../../../core/curve-sources/solve-parts.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { assumedBolt } from '../../../core/linkage/parts/assumed-bolt.js';
import { partOf } from '../../../core/linkage/parts/part-data.js';
import { numbersIn, PART_KINDS, PART_NAMES, type PartData } from '../../../core/linkage/parts/part-kinds.js';
import { InputError, type Problem } from '../../../core/quantity/problem.js';
import { METRIC } from '../../../core/quantity/units.js';

const DISPLAY = { units: METRIC, language: 'en' };
const linkage = buildLinkage(EXAMPLE_CORNER);

it('every part of the core can be added, and every amount of it has a field', () => {
  expect(new Set(PART_ENTRIES.map((entry) => entry.begin(undefined).part))).toEqual(new Set(PART_NAMES));
  for (const entry of PART_ENTRIES) {
    const data = entry.begin(EXAMPLE_CORNER);
    const asked = entry.fields.map(({ path }) => path);
    const kind = PART_KINDS[data.part];
    const amounts = kind.amounts.flatMap((key) =>
      kind.optional?.includes(key) ? [key] : numbersIn(data, key).map(([path]) => path),
    );
    expect(asked).toEqual(expect.arrayContaining(amounts));
  }
});

it('a part as it is added changes nothing, and knows its own line of the chooser', () => {
  for (const entry of PART_ENTRIES) {
    const data = entry.begin(EXAMPLE_CORNER);
    expect(entryOf(data)).toBe(entry);
    if (entry.only !== 'wishbone') expect(partOf(data)(linkage).home).toBeCloseTo(linkage.home, 12);
  }
});

it('what is written into a field is read out of it, and no other amount moves', () => {
  for (const entry of PART_ENTRIES) {
    for (const field of entry.fields) {
      const data = withField(entry.begin(EXAMPLE_CORNER), field, 7);
      expect(amountIn(data, field)).toBe(7);
      for (const other of entry.fields) {
        if (other !== field) expect(amountIn(data, other)).toEqual(amountIn(entry.begin(EXAMPLE_CORNER), other));
      }
    }
  }
});

it('a top mount moved inboard and rearward goes to −y and −x', () => {
  const entry = PART_ENTRIES.find(({ key }) => key === 'topMount')!;
  const [inboard, rearward, up] = entry.fields;
  const data = withField(withField(withField(entry.begin(undefined), inboard!, 15), rearward!, 4), up!, 2);
  expect(data).toEqual({ part: 'topMountMoved', vector: [-4, -15, 2] });
});

it('the bolt that is assumed lies on the damper’s line, 60 mm over the wheel centre', () => {
  const { strut, wheelCentre } = EXAMPLE_CORNER;
  const bolt = assumedBolt(EXAMPLE_CORNER);
  expect(bolt[2]).toBe(60);
  const share = (wheelCentre[2] + 60 - strut.low[2]) / (strut.top[2] - strut.low[2]);
  for (const axis of [0, 1] as const) {
    expect(bolt[axis]).toBeCloseTo(
      strut.low[axis] + share * (strut.top[axis] - strut.low[axis]) - wheelCentre[axis],
      -0.3,
    );
  }
});

it('a strut is offered no upper arm, and a wishbone no top mount', () => {
  const keys = (kind?: 'strut' | 'wishbone') => offeredParts(kind).map(({ key }) => key);
  expect(keys()).toEqual(keys('strut'));
  expect(keys('strut')).not.toContain('upperJoint');
  expect(keys('wishbone')).not.toContain('topMount');
  expect(keys('wishbone')).toContain('upperArm');
});

const problemsOf = (parts: readonly PartData[]): readonly Problem[] => {
  try {
    solveParts({ kind: 'parts', of: { kind: 'corner', corner: EXAMPLE_CORNER }, parts });
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  return [];
};
const said = (parts: readonly PartData[]) =>
  problemsOf(parts).map((problem) => partProblemText(problem, parts, 'strut', DISPLAY));

it('a part that does not go on says which link no longer reaches', () => {
  expect(
    said([
      { part: 'tieRodLonger', mm: -140 },
      { part: 'ballJointExtended', mm: 140 },
    ])[0],
  ).toMatch(
    /^With (this length|the lower ball joint) the (tie rod|strut|lower arm) no longer reaches\. Choose a smaller amount/,
  );
});

it('a wrong amount is told by the name and the sign it was asked with', () => {
  expect(said([{ part: 'topMountMoved', vector: [0, -558.8, 0] }])).toEqual([
    'Top mount, moved: Inboard is 558.8\u202fmm, which is not possible. Enter 150\u202fmm or less.',
  ]);
});

it('a wishbone’s part on a strut says so', () => {
  expect(said([{ part: 'armLonger', mm: 4, arm: 'upper' }])).toEqual([
    'A strut has no place for the upper arm. Take this part off.',
  ]);
});

it('a list of parts is one line, with what became of the tie rod', () => {
  expect(
    partsText(
      [
        { part: 'ballJointExtended', mm: 22, correctTieRod: true },
        { part: 'topMountMoved', vector: [-3, -15, 0] },
        { part: 'ballJointExtended', mm: 10 },
      ],
      DISPLAY,
    ).replaceAll('\u202f', ' '),
  ).toBe(
    'lower joint +22 mm, tie rod corrected; top mount inboard +15 mm, rearward +3 mm; lower joint +10 mm, tie rod as it was',
  );
});
