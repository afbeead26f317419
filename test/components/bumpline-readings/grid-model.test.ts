import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meantBy } from '../../../components/bumpline-readings/far-off.js';
import {
  firstHeight,
  gridOf,
  nextColumn,
  nextHeight,
  withColumn,
  withHeight,
  without,
  withReading,
} from '../../../components/bumpline-readings/grid-model.js';
import { EXAMPLE_SETUP } from '../../../core/document/setups.js';
import type { Reading } from '../../../core/readings/reading.js';

const setupOf = (readings: Reading[]) => ({ ...EXAMPLE_SETUP, readings });
const a = { pass: 'A', going: 'up' } as const;
const b = { pass: 'B', going: 'down' } as const;

describe('the grid of readings', () => {
  it('has a row a height in the order read, a column a pass and way, gaps empty', () => {
    const { columns, rows } = gridOf(EXAMPLE_SETUP, []);
    expect(columns).toEqual([
      { pass: 'Pass 1', going: 'up' },
      { pass: 'Pass 2', going: 'down' },
      { pass: 'Pass 3', going: 'up' },
    ]);
    expect(rows).toHaveLength(18);
    const at10 = rows.find(({ travel }) => travel === 10)!;
    expect(at10.cells.map((index) => index !== undefined && EXAMPLE_SETUP.readings[index]!.value)).toEqual([
      -0.77,
      -0.82,
      false,
    ]);
  });

  it('parts a pass that went both ways into two columns', () => {
    const both = setupOf([
      { travel: 0, value: 1, pass: 'A', going: 'up' },
      { travel: 0, value: 2, pass: 'A', going: 'down' },
    ]);
    expect(gridOf(both, []).rows[0]!.cells).toEqual([0, 1]);
  });

  it('shows what is in the readings, whatever they are: each once, at its height and pass', () => {
    const anyReading = fc.record({
      travel: fc.integer({ min: -5, max: 5 }).map((step) => step * 10),
      value: fc.double({ min: -3, max: 3, noNaN: true }),
      pass: fc.constantFrom('A', 'B', 'C'),
      going: fc.constantFrom('up' as const, 'down' as const),
    });
    fc.assert(
      fc.property(
        fc.uniqueArray(anyReading, { selector: (one) => `${one.travel} ${one.pass} ${one.going}` }),
        (readings) => {
          const { columns, rows } = gridOf(setupOf(readings), []);
          const shown = rows.flatMap(({ travel, cells }) =>
            cells.flatMap((index, c) =>
              index === undefined ? [] : [{ travel, value: readings[index]!.value, ...columns[c]! }],
            ),
          );
          expect(new Set(shown.map((one) => JSON.stringify([one.travel, one.value, one.pass, one.going])))).toEqual(
            new Set(readings.map((one) => JSON.stringify([one.travel, one.value, one.pass, one.going]))),
          );
          expect(shown).toHaveLength(readings.length);
        },
      ),
      { endOnFailure: true },
    );
  });

  it('sets, replaces and takes out one reading, and keeps the marks of those set aside', () => {
    const first = withReading(setupOf([]), 10, a, -0.5);
    expect(first.readings).toEqual([{ travel: 10, value: -0.5, ...a }]);
    const two = { ...withReading(first, 20, a, -0.7), setAside: [1] };
    expect(withReading(two, 10, a, -0.6).readings[0]!.value).toBe(-0.6);
    expect(withReading(two, 10, a, -0.6).setAside).toEqual([1]);
    const gone = withReading(two, 10, a, undefined);
    expect(gone.readings).toEqual([{ travel: 20, value: -0.7, ...a }]);
    expect(gone.setAside).toEqual([0]);
    expect(without(two, ({ travel }) => travel === 20).setAside).toBe(undefined);
  });

  it('moves a height with all its readings, and renames or turns a pass', () => {
    const two = withReading(withReading(setupOf([]), 10, a, -0.5), 10, b, -0.6);
    expect(withHeight(two, 10, 12).readings.map(({ travel }) => travel)).toEqual([12, 12]);
    expect(withColumn(two, b, { pass: 'C' }).readings[1]).toEqual({ travel: 10, value: -0.6, pass: 'C' });
  });

  it('proposes the next height as far on as the last, downward where that is the way, and the next pass the other way', () => {
    const rows = (...travels: number[]) => ({
      columns: [a],
      rows: travels.map((travel) => ({ travel, cells: [0] })),
      again: [undefined],
    });
    expect(nextHeight(rows(), a)).toBe(0);
    expect(nextHeight(rows(-40), a)).toBe(-35);
    expect(nextHeight(rows(50), b)).toBe(45);
    expect(nextHeight(rows(-40, -32.5), a)).toBe(-25);
    expect(nextHeight(rows(50, 40), b)).toBe(30);
    expect(nextColumn({ columns: [{ pass: 'Pass 1', going: 'up' }], rows: [], again: [] })).toEqual({
      pass: 'Pass 2',
      going: 'down',
    });
    expect(nextColumn({ columns: [{ pass: 'Pass 2' }], rows: [], again: [] })).toEqual({ pass: 'Pass 3' });
  });
});

describe('the first height of a pass, read again at its end', () => {
  const pass = (column: typeof a | typeof b, travels: number[]) =>
    travels.map((travel) => ({ travel, value: -travel / 100, ...column }));

  it('is the lowest of a pass that goes up, the highest of one that goes down, the first entered where nothing is said', () => {
    const grid = gridOf(setupOf([...pass(a, [-10, 0, 10]), ...pass(b, [-10, 0, 10])]), []);
    expect(firstHeight(grid, 0)).toBe(-10);
    expect(firstHeight(grid, 1)).toBe(10);
    const unsaid = gridOf(setupOf([5, -10, 10].map((travel) => ({ travel, value: 0, pass: 'C' }))), []);
    expect(firstHeight(unsaid, 0)).toBe(5);
  });

  it('is the first entered where that lies inside: up from the middle and then down from it, whatever rows others brought', () => {
    const travels = [0, 10, 20, -10, -20];
    expect(firstHeight(gridOf(setupOf(pass(a, travels)), []), 0)).toBe(0);
    const grid = gridOf(setupOf([...pass(a, travels), ...pass(b, [20, 10, 0, -10, -20])]), []);
    expect(firstHeight(grid, 0)).toBe(0);
    expect(firstHeight(grid, 1)).toBe(20);
  });

  it('is not asked for where there is little to come back from, or the pass came back by itself', () => {
    expect(firstHeight(gridOf(setupOf(pass(a, [0, 5])), []), 0)).toBe(undefined);
    const both = [...pass(a, [0, 5, 10]), ...pass({ pass: 'A', going: 'down' } as never, [10, 5, 0])];
    expect(firstHeight(gridOf(setupOf(both), []), 0)).toBe(undefined);
  });

  it('stands in a row of its own beside the reading that was first, is set, replaced and taken out by itself', () => {
    const three = setupOf(pass(a, [-10, 0, 10]));
    const again = withReading(three, -10, a, 0.2, true);
    expect(again.readings.at(-1)).toEqual({ travel: -10, value: 0.2, ...a, again: true });
    const grid = gridOf(again, []);
    expect(grid.rows.map(({ travel }) => travel)).toEqual([-10, 0, 10]);
    expect(grid.again).toEqual([3]);
    expect(grid.rows[0]!.cells).toEqual([0]);
    expect(withReading(again, -10, a, 0.3, true).readings.at(-1)!.value).toBe(0.3);
    expect(withReading(again, -10, a, 0.05).readings.map(({ value }) => value)).toEqual([0.05, -0, -0.1, 0.2]);
    expect(withReading(again, -10, a, undefined, true).readings).toEqual(three.readings);
    expect(withReading(again, -10, a, undefined).readings.map(({ again: is }) => is)).toEqual([
      undefined,
      undefined,
      true,
    ]);
  });
});

describe('a value far off its neighbours', () => {
  const near: Reading[] = [-0.5, -0.62, -0.7, -0.8].map((value, i) => ({ travel: i * 5, value }));

  it('is asked about with what was likelier meant: the point elsewhere, the other sign', () => {
    expect(meantBy(-8.8, 20, near)).toBe(-0.88);
    expect(meantBy(0.88, 20, near)).toBe(-0.88);
    expect(meantBy(-0.088, 20, near)).toBe(-0.88);
  });

  it('is left alone where it is usual there, or nothing likelier was meant, or too little is known', () => {
    expect(meantBy(-0.9, 20, near)).toBe(undefined);
    expect(meantBy(-2.1, 20, near)).toBe(undefined);
    expect(meantBy(-8.8, 20, near.slice(0, 1))).toBe(undefined);
    expect(meantBy(-8.8, 90, near)).toBe(undefined);
  });
});
