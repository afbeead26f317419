import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readAngleAttribute } from '../../../core/quantity/angle-attribute.js';
import { readLengthAttribute, readLengthsAttribute } from '../../../core/quantity/attribute.js';
import { parseQuantity } from '../../../core/quantity/parse.js';
import { METRIC } from '../../../core/quantity/units.js';

it.each([
  ['30', 30],
  [' 30 mm ', 30],
  ['-12.5', -12.5],
  ['−12.5', -12.5],
  ['1.25in', 31.75],
  ['.5 in', 12.7],
  ['3 cm', 30],
  ['3CM', 30],
  ['1.25 inch', 31.75],
  ['1.25 inches', 31.75],
  ['1.25"', 31.75],
  ['1.25″', 31.75],
  ['30 mm.', 30],
  ['+30', 30],
])('%s is %d mm', (text, mm) => {
  expect(readLengthAttribute(text, 'drop', 'drop')).toEqual({ ok: true, value: mm });
});

it.each([
  ['', 'missing'],
  ['low', 'not-a-number'],
  ['1,5', 'not-a-number'],
  ['30 cm', 'out-of-range'],
  ['3 ft', 'wrong-unit'],
  ['30 °', 'wrong-unit'],
  ['30 mm 2', 'not-a-number'],
  ['1 1/2 in', 'not-a-number'],
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

it.each([
  ['33', 33],
  ['33°', 33],
  [' 33.5 deg', 33.5],
  ['33 degrees', 33],
  ['33°30′', 33.5],
  ["33°30'", 33.5],
  ['90′', 1.5],
  ['90 arcmin', 1.5],
  ['90 min', 1.5],
])('%s is %d degrees', (text, degrees) => {
  expect(readAngleAttribute(text, 'steer', 'lock')).toEqual({ ok: true, value: degrees });
});

it.each([
  ['', 'missing'],
  ['far', 'not-a-number'],
  ['33 mm', 'not-a-number'],
  ['33,5', 'not-a-number'],
  ['90', 'out-of-range'],
] as const)('%j is no lock: %s', (text, code) => {
  expect(readAngleAttribute(text, 'steer', 'lock')).toMatchObject({
    ok: false,
    problem: { code, path: 'lock', value: text },
  });
});

it('minutes count the way of their degrees', () => {
  expect(readAngleAttribute('-0°30′', 'camber', 'camber')).toEqual({ ok: true, value: -0.5 });
});

it.each([
  ['0, 25', [0, 25]],
  ['0 25', [0, 25]],
  ['-60 80', [-60, 80]],
  ['0; 2.5 cm; 1 in', [0, 25, 25.4]],
  ['0 mm 25 mm', [0, 25]],
])('%s are lengths one after the other', (text, mm) => {
  expect(readLengthsAttribute(text, 'travel', 'heights').map((read) => (read.ok ? read.value : read))).toEqual(mm);
});

it('each of several lengths has its own problem, by its number', () => {
  const [, second] = readLengthsAttribute('0, deep', 'drop', 'heights');
  expect(second).toEqual({ ok: false, problem: { code: 'not-a-number', path: 'heights.1', value: 'deep' } });
});
