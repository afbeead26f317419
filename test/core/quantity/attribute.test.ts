import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readLengthAttribute } from '../../../core/quantity/attribute.js';
import { parseQuantity } from '../../../core/quantity/parse.js';
import { METRIC } from '../../../core/quantity/units.js';

it.each([
  ['30', 30],
  [' 30 mm ', 30],
  ['-12.5', -12.5],
  ['−12.5', -12.5],
  ['1.25in', 31.75],
  ['.5 in', 12.7],
])('%s is %d mm', (text, mm) => {
  expect(readLengthAttribute(text, 'drop', 'drop')).toEqual({ ok: true, value: mm });
});

it.each([
  ['', 'missing'],
  ['low', 'not-a-number'],
  ['1,5', 'not-a-number'],
  ['30 cm', 'not-a-number'],
  ['1e2', 'not-a-number'],
  ['400', 'out-of-range'],
] as const)('%j is refused: %s', (text, code) => {
  const read = readLengthAttribute(text, 'drop', 'drop');
  expect(read).toMatchObject({ ok: false, problem: { code, path: 'drop', value: text } });
});

it('reads whatever it reads as what people type is read', () => {
  fc.assert(
    fc.property(fc.double({ min: -149, max: 149, noNaN: true }), fc.constantFrom('', 'mm', ' mm'), (mm, unit) => {
      const text = `${mm.toFixed(4)}${unit}`;
      const read = readLengthAttribute(text, 'drop', 'drop');
      expect(read).toEqual(parseQuantity(text, 'drop', METRIC));
    }),
    { seed: 7 },
  );
});
