import { describe, expect, it } from 'vitest';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { pairReading, readAlike, withOverBase } from '../../../core/document/over-base.js';
import type { Setup } from '../../../core/document/setup.js';
import { addSetup } from '../../../core/document/setup-edits.js';
import { takeSets } from '../../../core/document/take-sets.js';
import type { OverBase, Pair } from '../../../core/readings/over-base.js';
import { applyFix } from '../../../core/readings/warnings/fix.js';

const DIALS: OverBase = { by: 'dials', base: 300, front: 'inboard' };
const PAIRS: readonly Pair[] = [
  [12, 11],
  [12.5, 12.5],
  [13, 14.5],
];
const read = (over: OverBase, pairs = PAIRS) =>
  pairs.map((pair, i) => ({ travel: 20 * i - 20, ...pairReading(pair, over) }));
const setup: Setup = {
  name: 'Dials',
  cornerName: 'Front left',
  quantity: 'toe',
  readings: [...read(DIALS), { travel: 40, value: -0.3 }],
  overBase: DIALS,
};
const degrees = (mm: number, base: number) => (Math.atan(mm / base) * 180) / Math.PI;

describe('readings by two figures', () => {
  /* 1 mm over 300 mm: the row of test/reference/toe_gauge_cases.csv. */
  it('are the angle over the base', () => {
    expect(pairReading([12, 11], DIALS)).toEqual({ value: expect.closeTo(0.190985224, 8), pair: [12, 11] });
    expect(pairReading([12, 11], { ...DIALS, front: 'outboard' }).value).toBeCloseTo(-0.190985224, 8);
    expect(Object.is(pairReading([5, 5], { ...DIALS, front: 'outboard' }).value, 0)).toBe(true);
  });

  it('are worked out again when the base or the sign is corrected; angles, and the figures, stay', () => {
    const corrected = withOverBase(setup, { ...DIALS, base: 254, front: 'outboard' });
    expect(corrected.readings.map(({ value }) => value)).toEqual(
      [-1, 0, 1.5].map((mm) => expect.closeTo(degrees(mm, 254), 10)).concat(-0.3 as never),
    );
    expect(corrected.readings.slice(0, 3).map(({ pair }) => pair)).toEqual(PAIRS);
    expect(withOverBase(corrected, DIALS)).toEqual(setup);
  });

  it('keep their figures while a gauge is said to have been used, and bring them back', () => {
    const gauge = withOverBase(setup, undefined);
    expect(gauge).not.toHaveProperty('overBase');
    expect(gauge.readings).toEqual(setup.readings);
    expect(withOverBase(gauge, DIALS)).toEqual(setup);
  });
});

describe('pairs that are taken from a sheet', () => {
  const taken = { name: 'Sheet', quantity: 'toe', readings: read(DIALS), overBase: DIALS } as const;
  const own = addSetup(EMPTY_CAR, setup);
  it('come with how they were read, in place of others as beside them', () => {
    for (const how of ['replace', 'beside'] as const) {
      const car = takeSets(own, [taken], how);
      expect(car.setups!.at(-1)).toMatchObject({ overBase: DIALS, readings: taken.readings });
    }
    const angles = { ...taken, readings: [{ travel: 0, value: 0.1 }], overBase: undefined };
    const { overBase: _, ...plain } = angles;
    expect(takeSets(own, [plain], 'replace').setups![0]).not.toHaveProperty('overBase');
  });

  it('as further passes keep their figures where they were read alike, else their angle alone', () => {
    const alike = takeSets(own, [taken], 'add').setups![0]!;
    expect(alike.readings.slice(4).map(({ pair }) => pair)).toEqual(PAIRS);
    const longer = { ...DIALS, base: 400 };
    const apart = takeSets(own, [{ ...taken, readings: read(longer), overBase: longer }], 'add').setups![0]!;
    expect(apart.overBase).toEqual(DIALS);
    expect(apart.readings.slice(4)).toMatchObject(read(longer).map(({ value }) => ({ value })));
    for (const reading of apart.readings.slice(4)) expect(reading).not.toHaveProperty('pair');
    // A base that is corrected later leaves them as they are then.
    expect(withOverBase(apart, longer).readings[4]!.value).toBe(apart.readings[4]!.value);
  });

  it('give a set of angles their base, but not one whose own figures wait for theirs', () => {
    const angles = { readings: [{ travel: 0, value: 0.1 }] };
    expect(readAlike(angles, taken)).toEqual({ readings: taken.readings, overBase: DIALS });
    expect(readAlike({ readings: setup.readings }, taken)).not.toHaveProperty('overBase');
  });
});

describe('a fix of what looks wrong', () => {
  const readings = read(DIALS);
  it('turns a sign by the two figures changing places, so that they still give it', () => {
    const [first] = applyFix(readings, { kind: 'value', index: 0, value: -readings[0]!.value });
    expect(first).toEqual({ travel: -20, ...pairReading([11, 12], DIALS) });
    const turned = applyFix(readings, { kind: 'negate-pass', pass: '', of: 'value' });
    expect(turned.map(({ pair }) => pair)).toEqual(PAIRS.map(([front, rear]) => [rear, front]));
  });

  it('leaves out figures that no longer give the value, and swaps them with their values', () => {
    const [slip] = applyFix(readings, { kind: 'value', index: 0, value: 0.019 });
    expect(slip).toEqual({ travel: -20, value: 0.019 });
    const scaled = applyFix(readings, { kind: 'scale', indexes: [2], of: 'value', factor: 0.1 });
    expect(scaled[2]).not.toHaveProperty('pair');
    expect(scaled[0]).toBe(readings[0]);
    const swapped = applyFix(readings, { kind: 'swap', indexes: [0, 2] });
    expect(swapped[0]).toEqual({ travel: -20, ...pairReading(PAIRS[2]!, DIALS) });
    expect(swapped[2]).toEqual({ travel: 20, ...pairReading(PAIRS[0]!, DIALS) });
  });
});
