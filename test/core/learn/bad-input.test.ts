import { describe, expect, it } from 'vitest';
import { learnCorner } from '../../../core/learn/learn-corner.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { explainProblem } from '../../../core/quantity/explain.js';
import { InputError } from '../../../core/quantity/problem.js';
import type { Reading } from '../../../core/readings/reading.js';
import { randomNumbers } from '../driveway/random-car.js';
import { referenceCorner } from '../linkage/reference-corner.js';
import { missed, together } from '../study-limits.js';
import { median } from './coverage.js';
import { drawnAfternoon, EXACT, readAfternoon, taped } from './study.js';
import { type Fault, faultStudy, LITTLE, WRONG } from './wrong-car.js';

const random = randomNumbers(3);
const corner = taped(random, referenceCorner, 2);
const heights = [-45, -30, -15, 0, 15, 30, 45];
const readings = readAfternoon(random, buildLinkage(referenceCorner), drawnAfternoon(random, EXACT), { heights });

function refusal(changed: readonly unknown[], of: unknown = corner) {
  try {
    learnCorner({ corner: of, readings: changed as Reading[] });
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  return [];
}

const named = (name: string): Fault => WRONG.find((one) => one.name === name)!;
const isHeld = ({ error, plusMinus }: { error: number; plusMinus: number }) => Math.abs(error) <= plusMinus;

describe('readings that cannot be learnt from are refused, and what is wrong is named', () => {
  it.each([
    ['a letter in a value', { value: 'a' }, 'not-a-number', 'readings.2.value'],
    ['no number in a height', { travel: Number.NaN }, 'not-finite', 'readings.2.travel'],
    ['nothing in a height', { travel: undefined }, 'missing', 'readings.2.travel'],
    ['a height no wheel reaches', { travel: 5000 }, 'cannot-close', 'readings'],
  ] as const)('%s', (_, change, code, path) => {
    const problems = refusal(readings.map((one, i) => (i === 2 ? { ...one, ...change } : one)));
    expect(problems.map((one) => [one.code, one.path])).toContainEqual([code, path]);
    expect(explainProblem(problems[0]!)).toMatch(/\.$/);
  });

  it('three heights: too few to tell a curve', () => {
    const [problem] = refusal(readings.filter(({ travel }) => [-45, 0, 45].includes(travel)));
    expect(problem).toMatchObject({ code: 'too-few', path: 'readings', value: 3, limit: 4 });
  });

  it('no readings, and no corner', () => {
    expect(refusal([])[0]).toMatchObject({ code: 'missing', path: 'readings' });
    expect(() => learnCorner({ readings })).toThrow(InputError);
  });

  it('heights that the taped links do not reach', () => {
    const [problem] = refusal(readings.map((one) => ({ ...one, travel: 6 * one.travel })));
    expect(problem).toMatchObject({ code: 'cannot-close', path: 'readings' });
  });

  it('camber of the wrong sign, and heights in centimetres: nothing near the taped corner gives them, and likely causes are named', () => {
    for (const [changed, other] of [
      [readings.map((one) => ({ ...one, value: -one.value })), 'camber'],
      [readings.map((one) => ({ ...one, travel: one.travel / 10 })), 'centimetres'],
      [readings.map((one) => ({ ...one, value: 8 * one.value })), undefined],
    ] as const) {
      const [problem] = refusal(changed);
      expect(problem).toMatchObject({ code: 'inconsistent', path: 'readings' });
      expect(problem!.other).toBe(other);
      expect(problem!.names!.length).toBeGreaterThan(0);
      expect(explainProblem(problem!)).toContain(other ? 'a sign or a unit' : problem!.names![0]);
    }
  });

  it('a pass without a reading at travel zero is none of this: its own zero is found anyway', () => {
    const without = readings.filter(({ travel, pass }) => travel !== 0 || pass !== 'b');
    expect(refusal(without)).toEqual([]);
  });
});

describe('little to go by', () => {
  const CARS = 5;
  const found = LITTLE.map((fault, f) => faultStudy(fault, { seed: 60 + f, cars: CARS }));

  it('is answered, with a band that holds the truth: one side of the travel, one pass, four or five heights', () => {
    expect(found.flatMap(({ refused }) => refused)).toEqual([]);
    const claims = found.map(({ outcomes }, f) => {
      const share = outcomes.filter(isHeld).length / outcomes.length;
      return { what: LITTLE[f]!.name, share, draws: outcomes.length, least: 0.93 };
    });
    expect(missed([together('few', claims)], true)).toEqual([]);
    expect(missed(claims, true)).toEqual([]);
  });

  it('leaves the band wider than three passes of both sides would, and narrower than the tape alone', () => {
    const width = (f: number) => median(found[f]!.outcomes.map((one) => one.plusMinus / one.before));
    for (const [f, { name }] of LITTLE.entries()) {
      expect(width(f), name).toBeLessThan(0.97);
      expect(width(f), name).toBeGreaterThan(0.29);
    }
    const at = (name: string) => width(LITTLE.findIndex((one) => one.name === name));
    expect(at('bump of 30 mm alone')).toBeGreaterThan(at('bump alone, 0 to 60 mm'));
  });

  it('accuses nobody more than a full set does', () => {
    const accused = found.reduce((sum, one) => sum + one.accused, 0);
    const draws = CARS * found.length;
    expect(missed([{ what: 'accused', share: accused / draws, draws, most: 0.02 }], true)).toEqual([]);
  });
});

describe('readings of another car than was measured', () => {
  it('a joint that nobody mentioned, where the tape would show it: always told, and the band holds the truth', () => {
    const { refused, accused, outcomes, cars } = faultStudy(named('a joint 30 mm longer on, taped to 1.5 mm'), {
      seed: 70,
      cars: 6,
    });
    expect(accused + refused.length).toBe(cars);
    const claim = { what: 'held', share: outcomes.filter(isHeld).length / outcomes.length, draws: outcomes.length };
    expect(missed([{ ...claim, least: 0.9 }], true)).toEqual([]);
    for (const { plusMinus, before } of outcomes) expect(plusMinus).toBeGreaterThan(before);
  });

  it('contradicting readings narrow nothing', () => {
    for (const fault of WRONG) {
      const { outcomes } = faultStudy(fault, { seed: 71, cars: 2 });
      for (const { isAccused, isContradicted, plusMinus, before } of outcomes) {
        if (isContradicted) expect(plusMinus, fault.name).toBeGreaterThan(0.8 * before);
        expect(isAccused || !isContradicted).toBe(true);
      }
    }
  });
});
