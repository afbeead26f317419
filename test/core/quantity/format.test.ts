import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatNumber, formatQuantity } from '../../../core/quantity/format.js';
import { parseQuantity } from '../../../core/quantity/parse.js';
import { finestDecimals, QUANTITIES, type Quantity } from '../../../core/quantity/quantities.js';
import { fromShown, METRIC, type UnitSystem } from '../../../core/quantity/units.js';

const INCH: UnitSystem = { length: 'in', angle: 'degrees' };
const MINUTES: UnitSystem = { length: 'mm', angle: 'arcminutes' };
const BOTH: UnitSystem = { length: 'in', angle: 'arcminutes' };

describe('formatQuantity', () => {
  // SI Brochure, 9th ed., 5.4.3: a space between number and unit, none before ° and ′. ISO 80000-1: a real minus.
  it('sets a length apart from its unit, an angle not, with a real minus', () => {
    expect(formatQuantity(-30, 'drop', METRIC)).toEqual({ value: '−30', unit: 'mm', text: '−30\u202fmm' });
    expect(formatQuantity(-0.5, 'camber', METRIC)).toEqual({ value: '−0.50', unit: '°', text: '−0.50°' });
    expect(formatQuantity(-0.3, 'camber', MINUTES)).toEqual({ value: '−0°18′', unit: '', text: '−0°18′' });
    expect(formatQuantity(38.1, 'drop', INCH).text).toBe('1.5\u202fin');
  });

  it('rounds by the ±, which has the same unit', () => {
    expect(formatQuantity(29.64, 'drop', METRIC, { plusMinus: 2.3 })).toEqual({
      value: '30',
      plusMinus: '2',
      unit: 'mm',
      text: '30\u202f±\u202f2\u202fmm',
    });
    expect(formatQuantity(-0.4967, 'camberChange', METRIC, { plusMinus: 0.128 }).text).toBe('−0.50°\u202f±\u202f0.13°');
    expect(formatQuantity(-0.4967, 'camberChange', METRIC, { plusMinus: 0.31 }).text).toBe('−0.5°\u202f±\u202f0.3°');
    expect(formatQuantity(-0.3, 'camber', MINUTES, { plusMinus: 0.051 }).text).toBe('−0°18′\u202f±\u202f3′');
    expect(formatQuantity(30, 'drop', METRIC, { plusMinus: 0.4 }).text).toBe('30.0\u202f±\u202f0.4\u202fmm');
  });

  it('shows a doubt of exactly nothing as 0, a small one never as 0, an unknown one in words', () => {
    expect(formatQuantity(0, 'camberChange', METRIC, { plusMinus: 0 }).text).toBe('0.00°\u202f±\u202f0.00°');
    expect(formatQuantity(0.1, 'camberChange', METRIC, { plusMinus: 0.001 }).plusMinus).toBe('0.01');
    expect(formatQuantity(0.1, 'camberChange', METRIC, { plusMinus: NaN }).text).toBe('0.10°\u202f±\u202fnot known');
  });

  it('shows a rate over 10 mm or over an inch', () => {
    expect(formatQuantity(-0.0093, 'camberRate', METRIC).text).toBe('−0.093°\u202fper\u202f10\u202fmm');
    expect(formatQuantity(-0.01, 'camberRate', INCH, { plusMinus: 0.002 }).text).toBe(
      '−0.25°\u202f±\u202f0.05°\u202fper\u202fin',
    );
    expect(formatQuantity(-0.01, 'camberRate', MINUTES).text).toBe('−0°06.0′\u202fper\u202f10\u202fmm');
  });

  it('carries minutes over into degrees', () => {
    expect(formatQuantity(0.9999, 'camber', MINUTES).text).toBe('1°00′');
    expect(formatQuantity(-1.5, 'camber', MINUTES, { plusMinus: 1.6 }).plusMinus).toBe('1°40′');
  });

  it('never writes −0, and writes a plus on demand but not on zero', () => {
    expect(formatQuantity(-0.001, 'camber', METRIC).text).toBe('0.00°');
    expect(formatQuantity(-0.001, 'camber', MINUTES, { sign: 'always' }).text).toBe('0°00′');
    expect(formatQuantity(0.5, 'toe', METRIC, { sign: 'always' }).text).toBe('+0.50°');
    expect(formatQuantity(-0.5, 'toe', METRIC, { sign: 'always' }).text).toBe('−0.50°');
    expect(formatQuantity(-3, 'drop', METRIC, { plusMinus: 20 }).value).toBe('0');
  });

  it('leaves the unit out for cells under a heading', () => {
    expect(formatQuantity(30, 'drop', METRIC, { unit: false, plusMinus: 2 }).text).toBe('30\u202f±\u202f2');
    expect(formatQuantity(-0.3, 'camber', METRIC, { unit: false }).text).toBe('−0.30');
    expect(formatQuantity(-0.3, 'camber', MINUTES, { unit: false }).text).toBe('−0°18′');
  });

  it('writes the decimal mark of the language, and survives a language that is none', () => {
    expect(formatQuantity(-0.5, 'camber', METRIC, { language: 'de' }).text).toBe('−0,50°');
    expect(formatQuantity(1234.5, 'coordinate', METRIC, { language: 'en' }).text).toBe('1234.5\u202fmm');
    expect(formatQuantity(1.5, 'coordinate', METRIC, { language: 'ar-EG' }).text).toMatch(/^1[.,]5/);
    expect(formatQuantity(-0.5, 'camber', METRIC, { language: 'en-US@posix' }).text).toBe('−0.50°');
  });

  it('says so where there is no value', () => {
    for (const value of [NaN, Infinity, -Infinity]) {
      expect(formatQuantity(value, 'camber', METRIC, { plusMinus: 1 })).toEqual({
        value: 'not known',
        unit: '',
        text: 'not known',
      });
    }
  });
});

describe('what is shown', () => {
  const quantities = fc.constantFrom(...(Object.keys(QUANTITIES) as Quantity[]));
  it('is read back to within half a unit of its last place, in every unit and language, and then shown the same', () => {
    fc.assert(
      fc.property(
        quantities,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom(METRIC, INCH, MINUTES, BOTH),
        fc.constantFrom('en', 'de'),
        fc.constantFrom('auto' as const, 'always' as const),
        (quantity, share, units, language, sign) => {
          const { min, max, dimension } = QUANTITIES[quantity];
          const half = fromShown(0.5 * 10 ** -finestDecimals(quantity, units), dimension, units);
          const value = min + half + share * (max - min - 2 * half);
          const { text } = formatQuantity(value, quantity, units, { language, sign });
          const parsed = parseQuantity(text, quantity, units);
          if (!parsed.ok) throw new Error(`${text}: ${parsed.problem.code}`);
          expect(Math.abs(parsed.value - value)).toBeLessThanOrEqual(half * (1 + 1e-9));
          expect(formatQuantity(parsed.value, quantity, units, { language, sign }).text).toBe(text);
        },
      ),
      { seed: 10, numRuns: 3000 },
    );
  });
});

describe('formatNumber', () => {
  it('writes a bare number with a real minus and no −0', () => {
    expect([formatNumber(-1.25, 2), formatNumber(-0.001, 2), formatNumber(1234.5, 2, 'de')]).toEqual([
      '−1.25',
      '0',
      '1234,5',
    ]);
    expect(formatNumber(NaN, 2)).toBe('not known');
  });
});
