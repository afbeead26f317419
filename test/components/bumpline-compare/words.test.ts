import { describe, expect, it } from 'vitest';
import { crossingWords } from '../../../components/bumpline-compare/bumpline-compare.words.js';
import { bySet } from '../../../components/bumpline-compare/page-setups.js';
import type { Crossing } from '../../../core/curve/break-even.js';

const reader = { units: { length: 'mm', angle: 'degrees' }, language: 'en' } as const;
const say = (crossing: object, name = 'Lowered joints') =>
  crossingWords({ range: [0, 60], ...crossing } as Crossing, name, reader)
    .map(({ text }) => text)
    .join('')
    .replace(/\s/g, ' ')
    .trim();
const interval = (low: number, high: number, isLowOpen = false, isHighOpen = false) => ({
  low,
  high,
  isLowOpen,
  isHighOpen,
});

describe('where two sets break even, in words', () => {
  it('is a drop with its ± where the interval is about even', () => {
    expect(say({ kind: 'at', drop: 23, interval: interval(19, 27), isAheadBelow: true })).toBe(
      'Below 23 ± 4 mm of drop lowered joints are ahead.',
    );
    expect(say({ kind: 'at', drop: 23, interval: interval(19, 27), isAheadBelow: false }, 'Longer arm')).toBe(
      'Above 23 ± 4 mm of drop longer arm is ahead.',
    );
  });
  it('names both ends where it is not, and the one that is known where the other is open', () => {
    expect(say({ kind: 'at', drop: 20, interval: interval(18, 31), isAheadBelow: true })).toContain(
      '20 mm (18 mm to 31 mm)',
    );
    expect(say({ kind: 'at', drop: 50, interval: interval(38, 60, false, true), isAheadBelow: true })).toContain(
      '50 mm (at least 38 mm)',
    );
    expect(say({ kind: 'at', drop: 5, interval: interval(0, 12, true), isAheadBelow: true })).toContain(
      '5 mm (at most 12 mm)',
    );
  });
  it('says plainly that there is none, that there are two, or that it cannot be told', () => {
    expect(say({ kind: 'none', side: 'behind' })).toBe(
      'Lowered joints are behind all the way between 0 mm and 60 mm of drop.',
    );
    expect(say({ kind: 'two', drops: [20, 50], interval: interval(10, 60) })).toBe(
      'Lowered joints are even at 20 mm and again, past the reversal, at 50 mm of drop.',
    );
    expect(say({ kind: 'cannot-tell', side: 'ahead', interval: interval(18.6, 60, false, true) })).toBe(
      'Up to 18 mm of drop lowered joints are ahead; whether they break even between there and 60 mm cannot be told.',
    );
    expect(say({ kind: 'cannot-tell', interval: interval(0, 60, true, true) })).toBe(
      'Where they break even cannot be told between 0 mm and 60 mm of drop.',
    );
  });
});

describe('columns of a table', () => {
  it('are sets by their heading; passes of one set go together', () => {
    const sets = bySet([
      { travel: 0, value: 0, pass: 'Standard joints, pass 1' },
      { travel: 0, value: 0.1, pass: 'Standard joints, pass 2' },
      { travel: 0, value: 0, pass: 'Lowered joints' },
    ]);
    expect(sets.map(({ name, readings }) => [name, readings.map(({ pass }) => pass)])).toEqual([
      ['Standard joints', ['Pass 1', 'Pass 2']],
      ['Lowered joints', [undefined]],
    ]);
  });
});
