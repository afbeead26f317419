import { expect, it } from 'vitest';
import { isAngleText, pairText, readPair } from '../../../components/bumpline-readings/pair-text.js';
import { METRIC } from '../../../core/quantity/units.js';

const INCHES = { length: 'in', angle: 'degrees' } as const;
const DISPLAY = { units: METRIC, language: 'en' } as never;

it.each([
  ['12.35 / 11.2', [12.35, 11.2]],
  ['12,35/11,2', [12.35, 11.2]],
  ['12.35 11.2', [12.35, 11.2]],
  ['12.35; −0.5', [12.35, -0.5]],
  ['-0.2 / 1 in', [-0.2, 25.4]],
])('“%s” is both figures of a reading', (text, pair) => {
  expect(readPair(text, METRIC, 'x')).toEqual({ ok: true, pair });
});

it('a fraction of an inch has a slash of its own', () => {
  expect(readPair('12 1/2 / 12 1/4', INCHES, 'x')).toEqual({ ok: true, pair: [317.5, 311.15] });
  expect(readPair('0.030 / 0.012', INCHES, 'x')).toEqual({
    ok: true,
    pair: [expect.closeTo(0.762, 9), expect.closeTo(0.3048, 9)],
  });
});

it.each([
  ['12.35', 'missing', 'pair'],
  ['12.35 / ', 'missing', 'rear'],
  ['/ 3', 'missing', 'front'],
  ['3/', 'missing', 'rear'],
  ['1 / 2 / 3', 'missing', 'pair'],
  ['12.3x / 11', 'wrong-unit', 'front'],
  ['a / 11', 'not-a-number', 'front'],
  ['12 / 11°', 'wrong-unit', 'rear'],
  ['12 / 1,500', 'not-a-number', 'rear'],
  ['12 / 9000', 'out-of-range', 'rear'],
])('“%s” says which figure is wrong', (text, code, other) => {
  expect(readPair(text, METRIC, '0 0')).toMatchObject({ ok: false, problem: { code, path: '0 0', other } });
});

it('is written as finely as dials are read, and read back', () => {
  expect(pairText([12.35, -0.005], DISPLAY)).toBe('12.35 / −0.005');
  expect(readPair(pairText([12.35, -0.005], DISPLAY), METRIC, 'x')).toEqual({ ok: true, pair: [12.35, -0.005] });
});

it('an angle is told by its mark', () => {
  expect(['0.2°', '12′', "12'", '3 / 2', '3'].map(isAngleText)).toEqual([true, true, true, false, false]);
});
