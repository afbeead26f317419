import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../../core/quantity/parse.js';
import type { Quantity } from '../../../core/quantity/quantities.js';
import { METRIC, type UnitSystem } from '../../../core/quantity/units.js';

const INCH: UnitSystem = { length: 'in', angle: 'degrees' };
const MINUTES: UnitSystem = { length: 'mm', angle: 'arcminutes' };

const value = (text: string, quantity: Quantity, units = METRIC) => {
  const parsed = parseQuantity(text, quantity, units);
  if (!parsed.ok) throw new Error(`${text}: ${JSON.stringify(parsed.problem)}`);
  return parsed.value;
};
const problem = (text: string, quantity: Quantity, units = METRIC) => {
  const parsed = parseQuantity(text, quantity, units);
  if (parsed.ok) throw new Error(`${text} was read as ${parsed.value}`);
  return parsed.problem;
};

describe('a length', () => {
  it.each([
    ['1.5', 1.5],
    ['1,5', 1.5],
    ['1 1/2', 1.5],
    ['1-1/2', 1.5],
    ['1½', 1.5],
    ['1 ½', 1.5],
    ['½', 0.5],
    ['1⁄2', 0.5],
    ['3/2', 1.5],
    ['-1 1/2', -1.5],
    ['−30', -30], // U+2212
    ['–30', -30], // en dash
    ['- 30', -30],
    ['+30', 30],
    ['.5', 0.5],
    ['5.', 5],
    ['0,500', 0.5],
    ['12.3456', 12.3456],
    ['30mm', 30],
    ['30\u202fmm', 30],
    ['30\u00a0MM', 30],
    ['\u200e30 mm.', 30],
    ['3 cm', 30],
    ['1.2 in', 30.48],
    ['1 1/2"', 38.1],
    ['1½″', 38.1],
    ['2 inches', 50.8],
    ['３０', 30],
  ])('%s is %d mm', (text, mm) => {
    expect(value(text, 'drop')).toBeCloseTo(mm, 12);
  });

  it.each([
    ['1.234,5', 1234.5],
    ['1,234.5', 1234.5],
    ['1 234,5', 1234.5],
    ['1\u202f234.567', 1234.567],
    ['1 234', 1234],
    ['-1.234,567', -1234.567],
  ])('%s is %d mm: grouped, with the other mark for decimals', (text, mm) => {
    expect(value(text, 'coordinate')).toBeCloseTo(mm, 12);
  });

  it('takes the unit of the unit system unless it names one', () => {
    expect(value('1 1/2', 'drop', INCH)).toBe(38.1);
    expect(value('30mm', 'drop', INCH)).toBe(30);
    expect(value('0.1', 'drop', INCH)).toBeCloseTo(2.54, 14);
  });

  it.each([
    ['1,500', 'drop', METRIC, [1.5, 1500]],
    ['1.500', 'coordinate', METRIC, [1.5, 1500]],
    ['-1,500', 'coordinate', METRIC, [-1.5, -1500]],
    ['120,250 mm', 'drop', METRIC, [120.25, 120250]],
    ['1,500', 'drop', INCH, [38.1, 38100]],
  ] as const)('%s (%s) is asked about', (text, quantity, units, choices) => {
    const found = problem(text, quantity, units);
    expect(found).toMatchObject({ code: 'ambiguous', path: quantity, value: text });
    expect(found.choices).toHaveLength(2);
    found.choices?.forEach((choice, i) => {
      expect(choice).toBeCloseTo(choices[i]!, 9);
    });
  });

  it.each([
    ['310.125', 'coordinate', 310.125],
    ['1.125 in', 'drop', 28.575],
    ['-12.500', 'drop', -12.5],
  ] as const)('%s (%s) is a decimal: read as thousands it would be impossible', (text, quantity, mm) => {
    expect(value(text, quantity)).toBeCloseTo(mm, 9);
  });

  it.each(['20²', '20¹', '10³', '20₁', '20①', '20 ²', '²20', '12¹', '20 mm²', '1²/₂'])(
    '%s is no number: what is set high, low or in a circle is no digit',
    (text) => {
      expect(['not-a-number', 'wrong-unit']).toContain(problem(text, 'coordinate').code);
      expect(problem(text.replace(' mm', ''), 'camber').code).toBe('not-a-number');
    },
  );

  it.each([
    ['1¹⁄₂', 1.5],
    ['12 ³⁄₈ in', 12.375 * 25.4],
    ['¹⁄₄"', 6.35],
  ])('%s is a fraction, %d mm', (text, mm) => {
    expect(value(text, 'coordinate')).toBeCloseTo(mm, 12);
  });

  it('accepts ± in front of a half-width', () => {
    expect(value('±5 mm', 'plusMinusLength')).toBe(5);
    expect(value('+/- 1/4 in', 'plusMinusLength')).toBe(6.35);
    expect(problem('±5', 'drop').code).toBe('not-a-number');
  });

  it('zero with a minus is zero', () => {
    expect(Object.is(value('-0', 'drop'), 0)).toBe(true);
  });
});

describe('an angle', () => {
  it.each([
    ['-0.5', -0.5],
    ['0,30°', 0.3],
    ['1.30 deg', 1.3],
    ['−1,30°', -1.3],
    ["-0°18'", -0.3],
    ["-0° 18'", -0.3],
    ['−0°18′', -0.3],
    ['-0º18’', -0.3],
    ['0°18', 0.3],
    ['0°18′30″', 0.3 + 30 / 3600],
    ["0°18'30''", 0.3 + 30 / 3600],
    ["18'", 0.3],
    ["-18.6'", -0.31],
    ["90'", 1.5],
    ['18 min', 0.3],
    ['36"', 0.01],
    ['1 1/2°', 1.5],
    ['1.00', 1],
    ['1.5', 1.5],
    ['1.25', 1.25],
    ['1.75', 1.75],
    ['1.60', 1.6],
    ['1,500', 1.5],
    ['-0.305', -0.305],
  ])('%s is %d°', (text, degrees) => {
    expect(value(text, 'camber')).toBeCloseTo(degrees, 13);
  });

  it.each([
    ['1.30', METRIC, [1.3, 1.5]],
    ['1,30', METRIC, [1.3, 1.5]],
    ['-0.50', METRIC, [-0.5, -50 / 60]],
    ['.20', METRIC, [0.2, 20 / 60]],
    ['1.25', MINUTES, [1.25, 1 + 25 / 60]],
    ['1.05', MINUTES, [1.05, 1 + 5 / 60]],
  ] as const)('%s is asked about: decimals or minutes?', (text, units, choices) => {
    const found = problem(text, 'camber', units);
    expect(found.code).toBe('ambiguous');
    found.choices?.forEach((choice, i) => {
      expect(choice).toBeCloseTo(choices[i]!, 13);
    });
    expect(value(`${text}°`, 'camber', units)).toBeCloseTo(choices[0], 13);
  });

  it.each([
    ['5', 'toe', [5, 5 / 60]],
    ['-2', 'camber', [-2, -2 / 60]],
    ['1.00', 'camber', [1, 1 / 60]],
    ['1.5', 'camber', [1.5, 1.5 / 60]],
    ['1 1/2', 'toe', [1.5, 1.5 / 60]],
    ['2', 'camberChange', [2, 2 / 60]],
    ['1', 'plusMinusAngle', [1, 1 / 60]],
    ['6', 'camberRate', [0.6, 0.01]],
  ] as const)(
    'bare, %s of %s is asked about where minutes are read: degrees or minutes?',
    (text, quantity, choices) => {
      const found = problem(text, quantity, MINUTES);
      expect(found.code).toBe('ambiguous');
      expect(found.choices).toHaveLength(2);
      found.choices!.forEach((choice, i) => {
        expect(choice).toBeCloseTo(choices[i]!, 13);
      });
      expect(value(text, quantity)).toBeCloseTo(choices[0], 13);
      expect(value(`${text}°`, quantity, MINUTES)).toBeCloseTo(choices[0], 13);
      expect(value(`${text}'`, quantity, MINUTES)).toBeCloseTo(choices[1], 13);
    },
  );

  it('bare is not asked about where only one of the two can be', () => {
    // More of a toe than a wheel can have; less than anybody reads; links, leans and locks.
    expect(value('30', 'toe', MINUTES)).toBeCloseTo(0.5, 13);
    expect(value('-16', 'camber', MINUTES)).toBeCloseTo(-16 / 60, 13);
    expect(value('0.75', 'camber', MINUTES)).toBe(0.75);
    expect(value('0', 'toe', MINUTES)).toBe(0);
    expect(value('12', 'linkAngle', MINUTES)).toBe(12);
    expect(value('8', 'lean', MINUTES)).toBe(8);
    expect(value('35', 'steer', MINUTES)).toBe(35);
  });

  it.each(["0°75'", "1.5°30'", '0°18\'99"', "0°-18'", "18'30'", '1°1.5\'30"'])('%s is not a number', (text) => {
    expect(problem(text, 'camber').code).toBe('not-a-number');
  });
});

describe('a rate', () => {
  it('is over 10 mm or an inch, as it is shown, unless it says over what', () => {
    expect(value('-0.1', 'camberRate')).toBeCloseTo(-0.01, 15);
    expect(value('-0.254', 'camberRate', INCH)).toBeCloseTo(-0.01, 15);
    expect(value('-0.1° per 10 mm', 'camberRate', INCH)).toBeCloseTo(-0.01, 15);
    expect(value('-0.01°/mm', 'camberRate')).toBeCloseTo(-0.01, 15);
    expect(value("-6'/10mm", 'camberRate')).toBeCloseTo(-0.01, 15);
    expect(value('-0.254°/in', 'camberRate')).toBeCloseTo(-0.01, 15);
    expect(problem('1° per 0 mm', 'camberRate').code).toBe('out-of-range');
  });
});

describe('problems', () => {
  it.each([
    ['', 'missing'],
    ['  \u00a0', 'missing'],
    ['±', 'not-a-number'],
    ['-', 'not-a-number'],
    ['abc', 'not-a-number'],
    ['mm', 'not-a-number'],
    ['NaN', 'not-a-number'],
    ['Infinity', 'not-a-number'],
    ['1e3', 'not-a-number'],
    ['0x10', 'not-a-number'],
    ['1.2.3', 'not-a-number'],
    ['1,2,3', 'not-a-number'],
    ['1.23,456.7', 'not-a-number'],
    ['1,2345,6', 'not-a-number'],
    ['1/0', 'not-a-number'],
    ['0/0', 'not-a-number'],
    ['1 3/2', 'not-a-number'],
    ['1/2/3', 'not-a-number'],
    ['10-20', 'not-a-number'],
    ['--5', 'not-a-number'],
    ['5-', 'not-a-number'],
    ['.', 'not-a-number'],
    ['5 5', 'not-a-number'],
    ['3 mm 5', 'not-a-number'],
    ['30°', 'wrong-unit'],
    ["18'", 'wrong-unit'],
    ["0°18'", 'wrong-unit'],
    ['3 kg', 'wrong-unit'],
    ['3 constructor', 'wrong-unit'],
  ] as const)('"%s" for a length is %s', (text, code) => {
    expect(problem(text, 'drop')).toMatchObject({ code, path: 'drop', value: text });
  });

  it('a length for an angle has the wrong unit', () => {
    expect(problem('30 mm', 'camber').code).toBe('wrong-unit');
    expect(problem('1 1/2 in', 'toe').code).toBe('wrong-unit');
    expect(problem('0.1 mm', 'camberRate').code).toBe('wrong-unit');
  });

  it('the bound that was crossed is named in the unit of the API', () => {
    expect(problem('151', 'drop')).toMatchObject({ code: 'out-of-range', limit: 150 });
    expect(problem('-10 in', 'drop')).toMatchObject({ code: 'out-of-range', limit: -150 });
    expect(problem('16', 'camber')).toMatchObject({ code: 'out-of-range', limit: 15 });
    expect(problem('1000', 'camber', MINUTES)).toMatchObject({ code: 'out-of-range', limit: 15 });
    expect(problem('-1', 'plusMinusLength')).toMatchObject({ code: 'out-of-range', limit: 0 });
    expect(problem('1.500.000', 'coordinate')).toMatchObject({ code: 'out-of-range', limit: 4000 });
    expect(problem('9'.repeat(400), 'coordinate')).toMatchObject({ code: 'out-of-range', limit: 4000 });
    expect(problem('20.30', 'camber')).toMatchObject({ code: 'out-of-range', limit: 15 });
    expect(value('150', 'drop')).toBe(150);
  });

  it('the path is the one given', () => {
    const parsed = parseQuantity('x', 'coordinate', METRIC, 'lowerArm.ball.2');
    expect(parsed).toEqual({ ok: false, problem: { code: 'not-a-number', path: 'lowerArm.ball.2', value: 'x' } });
  });

  it('no text whatever gives NaN, an infinite value or an error', () => {
    const alphabet = [...'0123456789.,/ -−–+°\'"′″½±emincmdg\u202f\u00a0'];
    const texts = fc.oneof(
      fc.array(fc.constantFrom(...alphabet), { maxLength: 14 }).map((letters) => letters.join('')),
      fc.string({ maxLength: 20, unit: 'binary' }),
    );
    const systems = fc.constantFrom(METRIC, INCH, MINUTES);
    const quantities = fc.constantFrom<Quantity>('drop', 'camber', 'camberRate', 'plusMinusLength');
    let numbers = 0;
    fc.assert(
      fc.property(texts, systems, quantities, (text, units, quantity) => {
        const parsed = parseQuantity(text, quantity, units);
        if (parsed.ok) {
          numbers++;
          expect(Number.isFinite(parsed.value)).toBe(true);
        } else {
          expect(parsed.problem.value).toBe(text);
          for (const choice of parsed.problem.choices ?? []) expect(Number.isFinite(choice)).toBe(true);
        }
      }),
      { seed: 9, numRuns: 5000 },
    );
    expect(numbers).toBeGreaterThan(50);
  });
});

it.each([
  ['ET40', 40],
  ['et 35', 35],
  ['ET-12', -12],
  ['ET 37,5', 37.5],
  ['40', 40],
])('reads an offset as it is cast into the wheel: %s', (text, value) => {
  expect(parseQuantity(text, 'offset', { length: 'mm', angle: 'degrees' })).toEqual({ ok: true, value });
});

it('knows no ET before any other length', () => {
  expect(parseQuantity('ET40', 'drop', { length: 'mm', angle: 'degrees' }).ok).toBe(false);
});

describe('a spring rate', () => {
  // NIST Special Publication 811, appendix B: 1 lbf/in = 0.175 126 8 N/mm, 1 kgf = 9.806 65 N.
  it.each([
    ['28', 28],
    ['28 N/mm', 28],
    ['160 lb/in', 28.020288],
    ['160lbs/in', 28.020288],
    ['160 lbf/in', 28.020288],
    ['2.9 kg/mm', 28.439285],
    ['2,9 kgf/mm', 28.439285],
    ['28000 N/m', 28],
    ['28 kN/m', 28],
    ['28,5kN/m', 28.5],
  ])('%s is %d N/mm', (text, rate) => {
    expect(value(text, 'springRate')).toBeCloseTo(rate, 4);
  });

  it('too large for N/mm, it is told to look like N/m, with what it would be', () => {
    expect(problem('28000', 'springRate')).toMatchObject({ code: 'looks-like-unit', names: ['N/m'], choices: [28] });
  });

  it('in a unit of something else is no rate', () => {
    expect(problem('28 N', 'springRate').code).toBe('wrong-unit');
  });
});

describe('a length that is told in metres', () => {
  // The international foot, 0.3048 m exactly, and inch: NIST Special Publication 811, appendix B.
  it.each([
    ['2.5', 2.5],
    ['2.5 m', 2.5],
    ['2500 mm', 2.5],
    ['2500mm', 2.5],
    ['250 cm', 2.5],
    ['98.5 in', 2.5019],
    ['98 1/2"', 2.5019],
    ['8 ft', 2.4384],
    ['8.2ft', 2.49936],
    ['8\' 2 1/2"', 2.5019],
    ['8 ft 2 in', 2.4892],
    ['8′2″', 2.4892],
  ])('%s is %d m', (text, metres) => {
    expect(value(text, 'wheelbase')).toBeCloseTo(metres, 6);
  });

  it.each([
    ['2500', 'mm', 2.5],
    ['250', 'cm', 2.5],
    ['98', 'in', 2.4892],
    ['8.2', 'ft', 2.4994],
  ])('a bare %s looks like %s', (text, unit, metres) => {
    expect(problem(text, 'wheelbase')).toMatchObject({ code: 'looks-like-unit', names: [unit], choices: [metres] });
  });

  it('what no unit makes possible is out of range, and another unit does not fit', () => {
    expect(problem('99999', 'wheelbase')).toMatchObject({ code: 'out-of-range', limit: 6 });
    expect(problem('2500 kg', 'wheelbase').code).toBe('wrong-unit');
    expect(problem('8 ft 14 in', 'wheelbase').code).toBe('not-a-number');
  });

  it('is the same in every unit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1201, max: 5999 }), (mm) => {
        const metres = mm / 1000;
        expect(value(`${mm} mm`, 'wheelbase')).toBe(metres);
        expect(value(`${mm / 10} cm`, 'wheelbase')).toBeCloseTo(metres, 12);
        expect(value(`${metres} m`, 'wheelbase')).toBe(metres);
        const inches = mm / 25.4;
        expect(value(`${inches.toFixed(9)} in`, 'wheelbase')).toBeCloseTo(metres, 9);
        const feet = Math.floor(inches / 12);
        expect(value(`${feet} ft ${(inches - 12 * feet).toFixed(9)} in`, 'wheelbase')).toBeCloseTo(metres, 9);
        expect(problem(String(mm), 'wheelbase')).toMatchObject({ names: ['mm'], choices: [metres] });
      }),
      { seed: 1910 },
    );
  });
});
