import fc from 'fast-check';
import { expect, it } from 'vitest';
import { InputError } from '../../../core/quantity/problem.js';
import { readTyreSize } from '../../../core/wheel/tyre-size.js';

const numbers = (sectionMm: number, aspectPercent: number, rimCode: number) => ({ sectionMm, aspectPercent, rimCode });

/** Ways of writing: common practice, no source; `-` and `D` for diagonal, `RF` for run-flat are UN Regulation No. 30, from memory. */
it.each([
  ['245/40R18', { text: '245/40R18', ...numbers(245, 40, 18), construction: 'R' }],
  ['P205/60R15', { text: 'P205/60R15', prefix: 'P', ...numbers(205, 60, 15), construction: 'R' }],
  [
    '255/35ZR18 94Y',
    { text: '255/35ZR18 94Y', ...numbers(255, 35, 18), construction: 'R', loadIndex: 94, speedSymbol: 'Y' },
  ],
  [
    '225/45 R 17 91W XL',
    { text: '225/45R17 91W', ...numbers(225, 45, 17), construction: 'R', loadIndex: 91, speedSymbol: 'W' },
  ],
  [
    ' lt245/75r16 120/116q ',
    {
      text: 'LT245/75R16 120/116Q',
      prefix: 'LT',
      ...numbers(245, 75, 16),
      construction: 'R',
      loadIndex: 120,
      speedSymbol: 'Q',
    },
  ],
  ['p 205 / 60 r 15', { text: 'P205/60R15', prefix: 'P', ...numbers(205, 60, 15), construction: 'R' }],
  [
    '225/45r1791wxl',
    { text: '225/45R17 91W', ...numbers(225, 45, 17), construction: 'R', loadIndex: 91, speedSymbol: 'W' },
  ],
  ['2254517', { text: '225/45R17', ...numbers(225, 45, 17), construction: 'R' }],
  ['225 45 17', { text: '225/45R17', ...numbers(225, 45, 17), construction: 'R' }],
  ['225/45/17', { text: '225/45R17', ...numbers(225, 45, 17), construction: 'R' }],
  ['225/45R17 91', { text: '225/45R17 91', ...numbers(225, 45, 17), construction: 'R', loadIndex: 91 }],
  [
    '255/35 ZR18 (94Y)',
    { text: '255/35ZR18 94Y', ...numbers(255, 35, 18), construction: 'R', loadIndex: 94, speedSymbol: 'Y' },
  ],
  ['P255/50VR16', { text: 'P255/50VR16', prefix: 'P', ...numbers(255, 50, 16), construction: 'R', speedSymbol: 'V' }],
  ['225/45RF17', { text: '225/45RF17', ...numbers(225, 45, 17), construction: 'R' }],
  ['165/80-13', { text: '165/80D13', ...numbers(165, 80, 13), construction: 'D' }],
  ['165/80B13', { text: '165/80B13', ...numbers(165, 80, 13), construction: 'B' }],
  [
    '195/70R15C 104/102R',
    { text: '195/70R15 104/102R', ...numbers(195, 70, 15), construction: 'R', loadIndex: 104, speedSymbol: 'R' },
  ],
])('%j says all that is written on it', (text, size) => {
  expect(readTyreSize(text)).toEqual(size);
});

it.each([
  ['', 'missing'],
  ['  ', 'missing'],
  [undefined, 'missing'],
  [null, 'missing'],
  [245, 'wrong-shape'],
  [{}, 'wrong-shape'],
  ['31x10.5R15', 'wrong-shape'],
  ['7.5', 'wrong-shape'],
  ['245/40', 'wrong-shape'],
  ['245/75R16.5', 'wrong-shape'],
  ['225/45R390', 'wrong-shape'],
  ['22 5/45R17', 'wrong-shape'],
  ['T125/70R17', 'wrong-shape'],
  ['225/45R17 on 8', 'wrong-shape'],
  ['225/45R17 235/40R18', 'wrong-shape'],
  ['225/45R17 999W', 'wrong-shape'],
] as const)('%j is no size: %s', (text, code) => {
  expect(problemsOf(text)).toMatchObject([{ code, path: 'size' }]);
});

it.each([
  ['120/60R15', [{ value: 120, limit: 125 }]],
  ['365/30R20', [{ value: 365, limit: 355 }]],
  ['225/15R17', [{ value: 15, limit: 20 }]],
  ['225/90R17', [{ value: 90, limit: 85 }]],
  ['225/45R09', [{ value: 9, limit: 10 }]],
  [
    '999/99R99',
    [
      { value: 999, limit: 355 },
      { value: 99, limit: 85 },
      { value: 99, limit: 24 },
    ],
  ],
])('%s: every number no car tyre has is named with its limit', (text, problems) => {
  expect(problemsOf(text)).toEqual(problems.map((p) => ({ code: 'out-of-range', path: 'size', ...p })));
});

it('names the path it was given', () => {
  expect(() => readTyreSize('round', 'after.size')).toThrow(expect.objectContaining({ field: 'after.size' }));
});

it('reads back whatever is written, however it is spaced, and its own text to the same size', () => {
  const spaces = fc.constantFrom('', ' ', '  ');
  fc.assert(
    fc.property(
      fc.record({
        prefix: fc.constantFrom('', 'P', 'LT'),
        section: fc.integer({ min: 125, max: 355 }),
        aspect: fc.integer({ min: 20, max: 85 }),
        construction: fc.constantFrom('R', 'D', 'B'),
        rim: fc.integer({ min: 10, max: 24 }),
        load: fc.option(fc.integer({ min: 50, max: 130 })),
        speed: fc.constantFrom(...'QRSTUHVWY'),
        lower: fc.boolean(),
      }),
      fc.array(spaces, { minLength: 7, maxLength: 7 }),
      ({ prefix, section, aspect, construction, rim, load, speed, lower }, s) => {
        const service = load === null ? '' : `${load}${s[6]}${speed}`;
        const written = [prefix, section, '/', aspect, construction, rim, service].map((part, i) => `${part}${s[i]}`);
        const text = written.join('');
        const size = readTyreSize(lower ? text.toLowerCase() : text);
        expect(size).toEqual({
          text: `${prefix}${section}/${aspect}${construction}${rim}${load === null ? '' : ` ${load}${speed}`}`,
          ...(prefix && { prefix }),
          ...numbers(section, aspect, rim),
          construction,
          ...(load !== null && { loadIndex: load, speedSymbol: speed }),
        });
        expect(readTyreSize(size.text)).toEqual(size);
      },
    ),
    { seed: 7, numRuns: 500, endOnFailure: true },
  );
});

it('answers garbage with a size within the limits or with InputError, never with anything else', () => {
  const near = fc.string({ unit: fc.constantFrom(...'0123456789/RDBZPLTXWY -.()ſé'), maxLength: 24 });
  const bent = fc
    .tuple(fc.nat(14), fc.string({ maxLength: 3 }))
    .map(([at, put]) => `255/35ZR18 94Y`.slice(0, at) + put + `255/35ZR18 94Y`.slice(at + 1));
  fc.assert(
    fc.property(fc.oneof(fc.string(), near, bent, fc.anything()), (given) => {
      const found = problemsOf(given);
      if (found) {
        expect(found.length).toBeGreaterThan(0);
        return;
      }
      const { sectionMm, aspectPercent, rimCode } = readTyreSize(given as string);
      expect(sectionMm >= 125 && sectionMm <= 355).toBe(true);
      expect(aspectPercent >= 20 && aspectPercent <= 85).toBe(true);
      expect(rimCode >= 10 && rimCode <= 24).toBe(true);
    }),
    { seed: 7, numRuns: 2000, endOnFailure: true },
  );
});

/** undefined where it could be read; whatever is not InputError flies on. */
function problemsOf(given: unknown) {
  try {
    readTyreSize(given as string);
    return undefined;
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
}
