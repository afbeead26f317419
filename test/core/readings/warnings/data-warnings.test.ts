import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitCurve } from '../../../../core/curve/fit.js';
import { EXAMPLE_READINGS } from '../../../../core/readings/example-readings.js';
import type { Reading } from '../../../../core/readings/reading.js';
import { ACCUSING, DATA_WARNING_KINDS } from '../../../../core/readings/warnings/data-warning.js';
import { dataWarningsIn } from '../../../../core/readings/warnings/data-warnings.js';
import { applyFix, fixOf } from '../../../../core/readings/warnings/fix.js';
import { normal, randomNumbers } from '../../driveway/random-car.js';
import { missed, ownSeeds, together } from '../../study-limits.js';
import {
  accusedClaim,
  CLEAN,
  COMMON,
  cleanStudy,
  commonClaims,
  faultStudy,
  look,
  namedClaim,
  SEEDS,
} from './data-warnings-study.js';
import { FAULTS, planted } from './planted-faults.js';
import { randomReadings } from './random-readings.js';

const kindsIn = (readings: readonly Reading[]) => look(readings).map(({ kind }) => kind);
const index = (pass: string, travel: number) =>
  EXAMPLE_READINGS.findIndex((reading) => reading.pass === pass && reading.travel === travel);
const changed = (i: number, change: Partial<Reading>) =>
  EXAMPLE_READINGS.map((reading, k) => (k === i ? { ...reading, ...change } : reading));

describe('clean readings of random linkages', () => {
  // In full: node test/bench/run.mjs data-warnings
  const SETS = 50;
  it.each(SEEDS)('accuse a reading or a pass in 2 % of sets at most, seed %i', (seed) => {
    expect(missed([accusedClaim(cleanStudy(seed, SETS).accused, SETS)], true)).toEqual([]);
  });
  it.each(Object.entries(CLEAN))('of other kinds as seldom: %s', (name, care) => {
    const sets = name.includes('2 mm') ? SETS / 2 : SETS;
    expect(missed([accusedClaim(cleanStudy(4, sets, care).accused, sets)], true)).toEqual([]);
  });
  it('accuse as seldom, of all kinds and seeds together', () => {
    const claims = Object.values(CLEAN).map((care, i) =>
      accusedClaim(cleanStudy(11 + i, SETS / 2, care).accused, SETS / 2),
    );
    expect(missed([together('accused', claims)], true)).toEqual([]);
  });
  it('nothing looks wrong in the example', () => {
    expect(look(EXAMPLE_READINGS)).toEqual([]);
  });
});

describe('a planted fault is named in nine sets of ten', () => {
  const SETS = 7;
  const claimOf = (fault: (typeof FAULTS)[number]) =>
    together(
      'named',
      ownSeeds(FAULTS.indexOf(fault)).map((seed) => namedClaim(faultStudy(fault, seed, SETS).found, SETS)),
    );
  it.each(FAULTS)('$name', (fault) => {
    expect(missed([claimOf(fault)], true)).toEqual([]);
  });
  it('covers every kind that accuses', () => {
    const planted = new Set(FAULTS.map(({ kind }) => kind));
    expect([...ACCUSING].filter((kind) => !planted.has(kind))).toEqual([]);
  });
});

describe('one fault gives one warning', () => {
  it('a sign left out, with what it would be', () => {
    const i = index('Pass 2', 30);
    expect(look(changed(i, { value: 1.04 }))).toEqual([
      { kind: 'wrong-sign', readings: [i], of: 'value', proposed: -1.04 },
    ]);
  });
  it('a decimal point that slipped', () => {
    const i = index('Pass 1', -15);
    expect(look(changed(i, { value: -3.5 }))).toEqual([
      { kind: 'decimal-slip', readings: [i], of: 'value', proposed: expect.closeTo(-0.35) },
    ]);
  });
  it('a slip of the gauge is no row of outliers', () => {
    const readings = EXAMPLE_READINGS.map((reading) =>
      reading.pass === 'Pass 3' && reading.travel >= 20 ? { ...reading, value: reading.value + 0.4 } : reading,
    );
    const [warning, ...others] = look(readings);
    expect(others).toEqual([]);
    expect(warning).toMatchObject({ kind: 'slipped-within', pass: 'Pass 3', before: 15, from: 20 });
    expect(warning).toHaveProperty('shift', expect.closeTo(0.4, 1));
  });
  it('a body that sank explains the jump of the readings', () => {
    const readings = EXAMPLE_READINGS.map((reading) => {
      const isLate = reading.pass === 'Pass 3' && reading.travel >= 10;
      return { ...reading, body: isLate ? 636 : 640, value: reading.value + (isLate ? 0.25 : 0) };
    });
    const warnings = look(readings);
    expect(warnings.map(({ kind }) => kind)).toEqual(['body-moved']);
    // The example's camber changes by 0.02° a mm where it does so fastest: 4 mm are worth about 0.1°.
    expect(warnings[0]).toMatchObject({ pass: 'Pass 3', isWithin: true, mm: -4 });
    expect((warnings[0] as { degrees: number }).degrees).toBeGreaterThan(0.06);
    expect((warnings[0] as { degrees: number }).degrees).toBeLessThan(0.16);
  });
  it('a height entered twice explains the value that does not belong there', () => {
    const i = index('Pass 1', 40);
    const warnings = look(changed(i, { travel: -20 }));
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toMatchObject({ kind: 'duplicate', isSameValue: false, odd: i });
  });
  it('the same height and value twice in a pass', () => {
    const i = index('Pass 1', 10);
    const warnings = look([...EXAMPLE_READINGS, EXAMPLE_READINGS[i]!]);
    expect(warnings).toEqual([{ kind: 'duplicate', readings: [i, EXAMPLE_READINGS.length], isSameValue: true }]);
  });
  it('a pass in which every height is read twice is meant so', () => {
    const twice = EXAMPLE_READINGS.flatMap((reading) => [reading, { ...reading, value: reading.value + 0.01 }]);
    expect(kindsIn(twice)).not.toContain('duplicate');
  });
});

describe('what leaves the curve weak', () => {
  const line = (travels: readonly number[], pass: string): Reading[] =>
    travels.map((travel, i) => ({
      travel,
      value: -0.02 * travel + 0.0002 * travel ** 2 + (i % 2 ? 0.02 : -0.02),
      pass,
    }));
  it('too few readings, with how many more are needed', () => {
    const readings = line([-20, -10, 0, 10, 20], 'Pass 1');
    const fit = fitCurve(readings, { degree: 2 });
    expect(dataWarningsIn(readings, fit)).toContainEqual({ kind: 'few-readings', readings: [], dof: 2, more: 6 });
  });
  it('readings that cannot be fitted at all', () => {
    expect(dataWarningsIn(line([0, 10], 'Pass 1'), undefined)).toEqual([
      { kind: 'few-readings', readings: [], dof: 0, more: 8 },
    ]);
    expect(dataWarningsIn([], undefined)).toEqual([]);
  });
  it('a pass of two readings', () => {
    const readings = [...EXAMPLE_READINGS, ...line([0, 10], 'Pass 4')];
    expect(look(readings)).toContainEqual({ kind: 'short-pass', readings: [49, 50], pass: 'Pass 4' });
  });
  it('a gap in the heights that is wide against the bend', () => {
    const readings = EXAMPLE_READINGS.filter(({ travel }) => travel <= -20 || travel >= 45);
    expect(look(readings)).toContainEqual(
      expect.objectContaining({ kind: 'gap', from: -20, to: 45, readings: expect.any(Array) }),
    );
  });
  it('a straight line through a bent curve', () => {
    expect(dataWarningsIn(EXAMPLE_READINGS, fitCurve(EXAMPLE_READINGS, { degree: 1 }))).toContainEqual({
      kind: 'pattern',
      readings: [],
      degree: 1,
      better: 2,
    });
  });
});

describe('a fix', () => {
  const FIXED = ['wrong-sign', 'decimal-slip', 'swapped', 'mixed-units', 'reversed-pass', 'slipped-within'];
  it.each(FAULTS.filter(({ kind }) => FIXED.includes(kind)))('does away with its warning: $name', (fault) => {
    const random = randomNumbers(7);
    let [tried, settled] = [0, 0];
    for (let n = 0; n < 12; n++) {
      const { readings, isNamed } = planted(fault, random);
      const warning = look(readings).find(isNamed);
      const fix = warning && fixOf(warning, readings);
      if (!fix) continue;
      tried++;
      if (!look(applyFix(readings, fix)).some(({ kind }) => kind === fault.kind)) settled++;
    }
    expect(tried).toBeGreaterThan(8);
    expect(settled / tried).toBeGreaterThanOrEqual(0.8);
  });
});

describe('what readings of one garage have in common', () => {
  it.each(COMMON)('$name', (common) => {
    expect(missed(commonClaims(common, 20), true)).toEqual([]);
  });

  it('a pass whose heights are 10 mm off is told with about so many', () => {
    const strut = (t: number) => -0.6 - 0.016 * t + 1.2e-4 * t * t;
    const random = randomNumbers(2);
    const readings = [0, 10, 0].flatMap((by, p) =>
      Array.from({ length: 21 }, (_, i) => {
        const travel = -50 + 5 * i;
        return { travel, value: strut(travel + by) + 0.02 * normal(random), pass: `Pass ${p + 1}` };
      }),
    );
    const [warning] = look(readings);
    expect(warning).toMatchObject({ kind: 'pass-apart', pass: 'Pass 2' });
    expect((warning as { mm: number }).mm).toBeGreaterThan(6);
    expect((warning as { mm: number }).mm).toBeLessThan(14);
  });
});

describe('properties', () => {
  const reading = fc.record(
    {
      travel: fc.integer({ min: -60, max: 60 }),
      value: fc.integer({ min: -300, max: 300 }).map((hundredths) => hundredths / 100),
      pass: fc.constantFrom('A', 'B', 'C'),
      going: fc.constantFrom('up' as const, 'down' as const),
      body: fc.integer({ min: 600, max: 610 }),
    },
    { requiredKeys: ['travel', 'value'] },
  );
  it('any readings at all: indexes exist, kinds are sorted, figures are finite', () => {
    fc.assert(
      fc.property(fc.array(reading, { maxLength: 40 }), (readings) => {
        const warnings = look(readings);
        const ranks = warnings.map(({ kind }) => DATA_WARNING_KINDS.indexOf(kind));
        expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
        for (const warning of warnings) {
          expect(new Set(warning.readings).size).toBe(warning.readings.length);
          for (const i of warning.readings) expect(readings[i]).toBeDefined();
          for (const figure of Object.values(warning)) {
            if (typeof figure === 'number') expect(figure).toSatisfy(Number.isFinite);
          }
        }
      }),
      { seed: 11, numRuns: 300, endOnFailure: true },
    );
  });
  it('the order of readings that say which way the wheel went changes nothing but the indexes', () => {
    // Nothing but their place says which pass came first: only the body's move from one to the next is told by it.
    const faults = FAULTS.filter(({ kind }) => kind !== 'body-moved');
    const random = randomNumbers(5);
    for (let n = 0; n < 30; n++) {
      const { readings } = planted(faults[n % faults.length]!, random);
      const marked = readings.map((one) => ({ ...one, going: 'up' as const }));
      const order = [...marked.keys()].sort(() => random() - 0.5);
      const mixed = order.map((i) => marked[i]!);
      const told = (list: Reading[], back: (i: number) => number) =>
        look(list)
          .map(({ kind, readings: indexes }) => `${kind} ${indexes.map(back).sort((a, b) => a - b)}`)
          .sort();
      expect(told(mixed, (i) => order[i]!)).toEqual(told(marked, (i) => i));
    }
  });
  it('readings are left as they are', () => {
    const readings = randomReadings(randomNumbers(3));
    const before = structuredClone(readings);
    look(readings);
    expect(readings).toEqual(before);
  });
});
