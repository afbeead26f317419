import { describe, expect, it } from 'vitest';
import { dataWarningText } from '../../../components/bumpline-readings/data-warnings.words.js';
import type { UnitSystem } from '../../../core/quantity/units.js';
import type { Reading } from '../../../core/readings/reading.js';
import { DATA_WARNING_KINDS, type DataWarning } from '../../../core/readings/warnings/data-warning.js';

const METRIC: UnitSystem = { length: 'mm', angle: 'degrees' };
const INCHES: UnitSystem = { length: 'in', angle: 'arcminutes' };
/** Spaces of any width as one plain space: what the eye reads. */
const plain = (text: string) => text.replace(/[\s\u202f]+/g, ' ').trim();

/** Invented. */
const READINGS: Reading[] = [
  { travel: 25.4, value: -0.85, pass: 'Pass 2' },
  { travel: 30, value: -0.15, pass: 'Pass 2' },
  { travel: 35, value: 1.05, pass: 'Pass 2' },
  { travel: -20, value: -0.4, pass: '3' },
  { travel: 0, value: -0.5 },
];
const PASS = 'Pass 2';

const say = (warning: DataWarning, units = METRIC, language = 'en') => {
  const { text, remedy, fix } = dataWarningText(warning, READINGS, { units, language });
  return { text: plain(text), remedy: plain(remedy), ...(fix && { label: plain(fix.label) }) };
};

/** One of each kind, or more. */
const EACH: [DataWarning, metric: string, inches: string, label?: string][] = [
  [
    { kind: 'decimal-slip', readings: [1], of: 'value', proposed: -1.5 },
    'Pass 2, +30 mm: −0.15° does not fit; −1.5° would.',
    'Pass 2, +1.18 in: −0°09′ does not fit; −1°30′ would.',
    'Make it −1.5°',
  ],
  [
    { kind: 'wrong-sign', readings: [2], of: 'value', proposed: -1.05 },
    'Pass 2, +35 mm: 1.05° does not fit; −1.05° would.',
    'Pass 2, +1.38 in: 1°03′ does not fit; −1°03′ would.',
    'Make it −1.05°',
  ],
  [
    { kind: 'wrong-sign', readings: [3], of: 'travel', proposed: 20 },
    'Pass 3, −20 mm: its height of −20 mm does not fit; +20 mm would.',
    'Pass 3, −0.79 in: its height of −0.79 in does not fit; +0.79 in would.',
    'Make it +20 mm',
  ],
  [
    {
      kind: 'mixed-units',
      readings: [0, 1, 2],
      of: 'value',
      unit: 'arcminutes',
      factor: 1 / 60,
      isWholePass: false,
      pass: PASS,
    },
    'Pass 2, +25.4 mm to +35 mm: 3 values look like arc minutes among degrees; so read, they fit.',
    'Pass 2, +1 in to +1.38 in: 3 values look like arc minutes among degrees; so read, they fit.',
    'Read as arc minutes',
  ],
  [
    { kind: 'mixed-units', readings: [1], of: 'travel', unit: 'in', factor: 25.4, isWholePass: false, pass: PASS },
    'Pass 2, +30 mm: the height looks like inches among millimetres; so read, it fits.',
    'Pass 2, +1.18 in: the height looks like inches among millimetres; so read, it fits.',
    'Read as inches',
  ],
  [
    { kind: 'mixed-units', readings: [3], of: 'travel', unit: 'mm', factor: 1 / 25.4, isWholePass: true, pass: '3' },
    'Pass 3: all heights look like millimetres among inches; so read, they fit.',
    'Pass 3: all heights look like millimetres among inches; so read, they fit.',
    'Read as millimetres',
  ],
  [
    { kind: 'swapped', readings: [0, 1] },
    'Pass 2, +25.4 mm and +30 mm: the values (−0.85° and −0.15°) fit if they are swapped.',
    'Pass 2, +1 in and +1.18 in: the values (−0°51′ and −0°09′) fit if they are swapped.',
    'Swap them',
  ],
  [
    { kind: 'reversed-pass', readings: [0, 1, 2], of: 'travel', pass: PASS },
    'Pass 2 runs the other way from the rest; with the sign of its heights turned it fits.',
    'Pass 2 runs the other way from the rest; with the sign of its heights turned it fits.',
    'Change the sign of its heights',
  ],
  [
    { kind: 'reversed-pass', readings: [0, 1, 2], of: 'value', pass: PASS, other: '' },
    'Pass 2 and the pass without a name run opposite ways; with the sign of the values of one of them turned they agree.',
    'Pass 2 and the pass without a name run opposite ways; with the sign of the values of one of them turned they agree.',
  ],
  [
    { kind: 'slipped-within', readings: [1, 2], pass: PASS, shift: -0.4, before: 25.4, from: 30 },
    'Pass 2: between +25.4 mm and +30 mm the readings jump by 0.40° and stay there (2 readings).',
    'Pass 2: between +1 in and +1.18 in the readings jump by 0°24′ and stay there (2 readings).',
    'Make it a pass of its own',
  ],
  [
    { kind: 'slipped-between', readings: [3], pass: '3', offset: -1.2 },
    'Pass 3 lies 1.20° below the other passes.',
    'Pass 3 lies 1°12′ below the other passes.',
  ],
  [
    { kind: 'slipped-between', readings: [3], pass: '3', offset: 1.2, other: PASS },
    'Pass 3 lies 1.20° above Pass 2.',
    'Pass 3 lies 1°12′ above Pass 2.',
  ],
  [
    { kind: 'body-moved', readings: [0, 1, 2], pass: PASS, isWithin: true, mm: -3, degrees: 0.061 },
    'Pass 2: the body sank by 3 mm while it was taken, worth up to 0.06°.',
    'Pass 2: the body sank by 0.12 in while it was taken, worth up to 0°04′.',
  ],
  [
    { kind: 'body-moved', readings: [3], pass: '3', isWithin: false, other: PASS, mm: 2.5, degrees: 0.05 },
    'Between Pass 2 and Pass 3 the body rose by 2.5 mm, worth up to 0.05°.',
    'Between Pass 2 and Pass 3 the body rose by 0.1 in, worth up to 0°03′.',
  ],
  [
    { kind: 'outlier', readings: [2], expected: -0.412 },
    'Pass 2, +35 mm: 1.05° does not fit the others, which make it about −0.41°.',
    'Pass 2, +1.38 in: 1°03′ does not fit the others, which make it about −0°25′.',
    'Set 1.05° aside',
  ],
  [
    { kind: 'duplicate', readings: [0, 1], isSameValue: false, odd: 1 },
    'Pass 2, +25.4 mm is there twice: −0.85° and −0.15°; −0.15° does not fit there.',
    'Pass 2, +1 in is there twice: −0°51′ and −0°09′; −0°09′ does not fit there.',
    'Set −0.15° aside',
  ],
  [
    { kind: 'duplicate', readings: [3, 3], isSameValue: true },
    'Pass 3, −20 mm is there twice, each with −0.4°.',
    'Pass 3, −0.79 in is there twice, each with −0°24′.',
    'Set −0.4° aside',
  ],
  [
    { kind: 'few-readings', readings: [], dof: 3, more: 5 },
    'Only 3 readings more than the curve needs: it cannot be trusted far.',
    'Only 3 readings more than the curve needs: it cannot be trusted far.',
  ],
  [
    { kind: 'short-pass', readings: [4], pass: '' },
    'The pass without a name has one reading only, which tells the curve nothing.',
    'The pass without a name has one reading only, which tells the curve nothing.',
  ],
  [
    { kind: 'gap', readings: [3, 2], from: -20, to: 35, bend: 0.14 },
    'Nothing was read between −20 mm and +35 mm, where the curve bends by 0.14°.',
    'Nothing was read between −0.79 in and +1.38 in, where the curve bends by 0°08′.',
  ],
  [
    { kind: 'pattern', readings: [], degree: 1, better: 2 },
    'The readings wander around the curve of degree 1: it is too stiff for them.',
    'The readings wander around the curve of degree 1: it is too stiff for them.',
  ],
  [
    { kind: 'up-down', readings: [], upLessDown: -0.15 },
    'Going up reads 0.15° lower than going down, more than the gauge scatters.',
    'Going up reads 0°09′ lower than going down, more than the gauge scatters.',
  ],
  [
    { kind: 'repeatability', readings: [], sd: 0.31, limit: 0.16 },
    'Repeated readings scatter by 0.31°; a gauge on the hub seldom does by more than 0.16°.',
    'Repeated readings scatter by 0°19′; a gauge on the hub seldom does by more than 0°10′.',
  ],
  [
    { kind: 'drift', readings: [], drift: -0.12 },
    'The gauge drifted by 0.12° from the first reading of each pass to its last. The curve is without it.',
    'The gauge drifted by 0°07′ from the first reading of each pass to its last. The curve is without it.',
  ],
  [
    { kind: 'pass-apart', readings: [0, 1, 2], pass: PASS, degrees: 0.2, mm: 7.62 },
    'Pass 2 runs apart from the others by 0.20° over its travel, as if its heights were 7.6 mm too low. The ± is wider for it.',
    'Pass 2 runs apart from the others by 0°12′ over its travel, as if its heights were 0.3 in too low. The ± is wider for it.',
  ],
  [
    { kind: 'pass-apart', readings: [0, 1, 2], pass: PASS, degrees: -0.2, other: '' },
    'Pass 2 runs apart from the pass without a name by 0.20° over its travel. The ± is wider for it.',
    'Pass 2 runs apart from the pass without a name by 0°12′ over its travel. The ± is wider for it.',
  ],
  [
    { kind: 'two-sets', readings: [0, 1], passes: ['1', '3'], others: [PASS], degrees: 0.3 },
    'Pass 2 makes a different curve from Pass 1 and Pass 3: 0.30° apart over their travel.',
    'Pass 2 makes a different curve from Pass 1 and Pass 3: 0°18′ apart over their travel.',
    'Make it a set of its own',
  ],
  [
    { kind: 'drift', readings: [], drift: 0.2, apart: { passes: ['2', '3'], readings: [0, 1] } },
    'The gauge drifted by 0.20° from the first reading of each pass to its last. The curve is without it.',
    'The gauge drifted by 0°12′ from the first reading of each pass to its last. The curve is without it.',
    'Make them a set of their own',
  ],
  [
    { kind: 'correlated', readings: [], count: 49, effective: 18 },
    'Readings next to each other are off together: 49 readings tell no more than 18 independent ones would. The ± is wider for it.',
    'Readings next to each other are off together: 49 readings tell no more than 18 independent ones would. The ± is wider for it.',
  ],
  [
    { kind: 'coarse', readings: [], step: 0.5 },
    'Every value is a multiple of 0.50°, which is coarse for a curve.',
    'Every value is a multiple of 0°30′, which is coarse for a curve.',
  ],
];

describe('what looks wrong, in words', () => {
  it.each(EACH)('$kind', (warning, metric, inches, label) => {
    const said = say(warning);
    expect(said.text).toBe(metric);
    expect(said.label).toBe(label);
    expect(say(warning, INCHES).text).toBe(inches);
    expect(said.remedy).toMatch(/[.?]$/);
  });
  it('knows every kind', () => {
    const said = new Set(EACH.map(([{ kind }]) => kind));
    expect(DATA_WARNING_KINDS.filter((kind) => !said.has(kind))).toEqual([]);
  });
  it('in the decimal mark of the language, everywhere', () => {
    for (const [warning] of EACH) {
      const { text, remedy, label = '' } = say(warning, METRIC, 'de');
      expect(`${text} ${remedy} ${label}`).not.toMatch(/\d\.\d/);
    }
    const slip: DataWarning = { kind: 'decimal-slip', readings: [1], of: 'value', proposed: -1.5 };
    expect(say(slip, METRIC, 'de').text).toBe('Pass 2, +30 mm: −0,15° does not fit; −1,5° would.');
    expect(say(slip, METRIC, 'de').remedy).toBe('Check whether a figure slipped.');
  });
  it('names toe where toe was read', () => {
    const warning: DataWarning = { kind: 'slipped-between', readings: [3], pass: '3', offset: 1.2 };
    const { remedy } = dataWarningText(warning, READINGS, { units: METRIC, language: 'en', quantity: 'toe' });
    expect(remedy).toContain('static toe');
  });
  it('names dials or tape, and no gauge, where toe was read over a base', () => {
    const pairs = READINGS.map((reading) => ({ ...reading, pair: [6, 6] as const }));
    const options = { units: METRIC, language: 'en', quantity: 'toe' } as const;
    const { text, remedy } = dataWarningText({ kind: 'drift', readings: [], drift: 0.2 }, pairs, options);
    expect(text).toMatch(/^The dials or tape drifted by/);
    expect(text + remedy).not.toContain('gauge');
  });
  it('gives the fix as data, and none where only the user can know', () => {
    const of = (warning: DataWarning) => dataWarningText(warning, READINGS, { units: METRIC, language: 'en' }).fix;
    expect(of(EACH[0]![0])).toMatchObject({ kind: 'value', index: 1, value: -1.5 });
    expect(of({ kind: 'reversed-pass', readings: [0], of: 'travel', pass: PASS })).toMatchObject({
      kind: 'negate-pass',
      pass: PASS,
      of: 'travel',
    });
    expect(of({ kind: 'slipped-within', readings: [1], pass: PASS, shift: 1, before: 0, from: 5 })).toMatchObject({
      kind: 'new-pass',
      indexes: [1],
      pass: 'Pass 2 (2)',
    });
    expect(of({ kind: 'duplicate', readings: [0, 1], isSameValue: false })).toBeUndefined();
    expect(of({ kind: 'gap', readings: [], from: 0, to: 10, bend: 1 })).toBeUndefined();
  });
});
