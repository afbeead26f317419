import fc from 'fast-check';
import { expect, test } from 'vitest';
import { furtherPasses } from '../../../core/readings/further-passes.js';
import type { Reading } from '../../../core/readings/reading.js';

const passName = fc.constantFrom(undefined, 'Pass 1', 'Pass 2', 'Pass 3', 'morning', 'morning 2');
const readings = fc.array(
  fc.record({ travel: fc.integer(), value: fc.integer(), pass: passName }, { requiredKeys: ['travel', 'value'] }),
  { maxLength: 12 },
) as fc.Arbitrary<Reading[]>;
const names = (list: readonly Reading[]) => new Set(list.map(({ pass }) => pass));

test('added readings share no pass with the own ones, and one with each other exactly where they did', () => {
  fc.assert(
    fc.property(readings, readings, (own, added) => {
      const further = furtherPasses(own, added);
      expect(further.filter(({ pass }) => names(own).has(pass))).toEqual([]);
      expect(further.map(({ travel, value }) => [travel, value])).toEqual(
        added.map(({ travel, value }) => [travel, value]),
      );
      for (const [i, one] of further.entries())
        for (const [k, other] of further.entries())
          expect(one.pass === other.pass).toBe(added[i]!.pass === added[k]!.pass);
    }),
    { endOnFailure: true },
  );
});

test('a name that is free is kept; a taken one, or none, gets the next number', () => {
  const of = (...passes: (string | undefined)[]): Reading[] =>
    passes.map((pass) => ({ travel: 0, value: 0, ...(pass && { pass }) }));
  const named = (own: Reading[], added: Reading[]) => furtherPasses(own, added).map(({ pass }) => pass);
  expect(named(of('Pass 1', 'Pass 2'), of('Pass 1', 'Pass 2', 'evening'))).toEqual(['Pass 3', 'Pass 4', 'evening']);
  expect(named(of('morning'), of('morning'))).toEqual(['morning 2']);
  expect(named(of(undefined), of(undefined))).toEqual(['Pass 2']);
});
