import { describe, expect, it } from 'vitest';
import { EXAMPLE_SETUPS } from '../../../../core/document/example-setups.js';
import { groupsAmong } from '../../../../core/readings/warnings/differ.js';
import { AVERAGED, averageStudy, ONE_SET, setsStudy, TWO_SETS } from '../table/sets-study.js';

// In full: node test/bench/run.mjs sets

describe('passes of one set of parts are hardly ever parted', () => {
  it.each(Object.entries(ONE_SET))('%s', (_, table) => {
    const parted = [1, 2, 3].reduce((sum, seed) => sum + setsStudy(seed, 25, table).parted / 3, 0);
    expect(parted).toBeLessThanOrEqual(0.04);
  });
});

describe('passes with two joints are found, and parted between the two', () => {
  it.each(Object.entries(TWO_SETS))('%s', (_, table) => {
    const exact = [1, 2, 3].reduce((sum, seed) => sum + setsStudy(seed, 20, table).exact / 3, 0);
    expect(exact).toBeGreaterThanOrEqual(0.85);
  });
});

describe('a column without a name that is the average of the others is found, and no honest column is taken for one', () => {
  it.each(Object.entries(AVERAGED))('%s', (_, table) => {
    for (const decimals of [2, 3] as const) {
      const { found, asked, wronglyLeft, wronglyAsked } = averageStudy(4, 20, table, decimals);
      expect(found + asked).toBe(1);
      expect(wronglyLeft).toBe(0);
      expect(wronglyAsked).toBeLessThanOrEqual(0.05);
    }
  });
});

describe('groups among passes', () => {
  const line = (slope: number, zero = 0, bend = 0) =>
    [-40, -30, -20, -10, 0, 10, 20, 30, 40].map((travel, i) => ({
      travel,
      value: zero + slope * travel + bend * travel * travel + (i % 2 ? 0.01 : -0.01),
    }));
  it('whatever the order of the columns, and whatever the zeros', () => {
    expect(groupsAmong([line(-0.013), line(-0.018), line(-0.013, 0.2), line(-0.018, -0.2)])).toEqual([
      [0, 2],
      [1, 3],
    ]);
  });
  it('a zero that is far off parts only where passes are not called so', () => {
    expect(groupsAmong([line(-0.013), line(-0.013, 1)])).toEqual([[0], [1]]);
    expect(groupsAmong([line(-0.013), line(-0.013, 1)], Number.POSITIVE_INFINITY)).toEqual([[0, 1]]);
  });
  it('two heights, one height or one pass tell nothing', () => {
    expect(groupsAmong([line(-0.013).slice(0, 1), line(-0.02).slice(0, 1)])).toEqual([[0, 1]]);
    expect(groupsAmong([line(-0.013).slice(0, 2), line(-0.013).slice(0, 2)])).toEqual([[0, 1]]);
    expect(groupsAmong([line(-0.013)])).toEqual([[0]]);
    expect(groupsAmong([])).toEqual([[]]);
  });
  it('the example’s joints are parted, its passes are not', () => {
    const passes = EXAMPLE_SETUPS.flatMap(({ readings }) => {
      const names = [...new Set(readings.map(({ pass }) => pass))];
      return names.map((name) => readings.filter(({ pass }) => pass === name));
    });
    expect(groupsAmong(passes)).toEqual([
      [0, 1, 2],
      [3, 4],
    ]);
  });
});
