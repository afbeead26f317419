import { describe, expect, it } from 'vitest';
import { METRIC } from '../../../../core/quantity/units.js';
import { splitText } from '../../../../core/readings/table/split-text.js';
import { understand } from '../../../../core/readings/table/understand.js';
import type { Understanding, UnderstandOptions } from '../../../../core/readings/table/understanding.js';

// All sheets are invented. How people write readings down: common practice, no source.

const read = (text: string, options: Partial<UnderstandOptions> = {}): Understanding =>
  understand(splitText(text), { quantity: 'toe', units: METRIC, ...options });
const asked = ({ questions }: Understanding) => questions.map(({ id, chosen }) => [id, chosen]);
const roles = ({ columns }: Understanding) => columns.map(({ role }) => role);
/** Front and rear, mm, at each height. */
const ROWS = [
  [-20, 6.4, 5.9],
  [-10, 6.2, 5.95],
  [0, 6, 5.99],
  [10, 5.7, 6.02],
  [20, 5.3, 6.05],
] as const;
const fixed = (value: number) => value.toFixed(2);
const tabbed = ROWS.map(([t, ...pair]) => [t, ...pair.map(fixed)].join('\t')).join('\n');
const twice = ROWS.map(([t, ...pair]) => [t, ...[...pair, ...pair.map((one) => one + 1)].map(fixed)].join('\t')).join(
  '\n',
);
const degrees = (mm: number, base = 300) => (Math.atan(mm / base) * 180) / Math.PI;
const SAID = { pairs: 'dials', base: '300', 'front-sign': 'inboard' };

describe('columns of toe that nothing names', () => {
  it.each([
    ['tabs', tabbed],
    ['commas', tabbed.replaceAll('\t', ',')],
    ['decimal commas', tabbed.replaceAll('.', ',').replaceAll('\t', ';')],
    ['blanks', tabbed.replaceAll('\t', '  ')],
    ['units over them', `Travel (mm)\tmm\tmm\n${tabbed}`],
    [
      'units in the cells',
      ROWS.map(([t, ...pair]) => [t, ...pair.map((one) => `${fixed(one)} mm`)].join('\t')).join('\n'),
    ],
    ['dials that are only numbered', `Travel\tDial 1\tDial 2\n${tabbed}`],
    ['rows in another order', [...tabbed.split('\n')].reverse().join('\n')],
    ['two rows', tabbed.split('\n').slice(0, 2).join('\n')],
    ['figures that may be degrees', '-20\t0.10\t0.12\n0\t0.05\t0.06\n20\t-0.02\t0.01'],
    ['a direction beside them', ROWS.map(([t, ...pair]) => [t, 'up', ...pair.map(fixed)].join('\t')).join('\n')],
  ])('are asked about before all else, and count for nothing until then: %s', (_, text) => {
    const found = read(text);
    expect(asked(found)).toEqual([['pairs', undefined]]);
    expect(found.questions[0]!.choices.map(({ id }) => id)).toEqual(['dials', 'tape', 'passes', 'sets']);
    expect(found.readings).toEqual([]);
    expect(found.problems).toEqual([]);
    expect(found.cells.flat().filter(({ state }) => state === 'asked')).toHaveLength(found.questions[0]!.cells.length);
    const next = read(text, { answers: { pairs: 'dials' } });
    expect(asked(next).map(([id]) => id)).toEqual(expect.arrayContaining(['pairs', 'base', 'front-sign']));
    expect(next.readings).toEqual([]);
  });

  it('as front and rear give the angle of both over the base, and say what they were read with', () => {
    for (const by of ['dials', 'tape'] as const) {
      const found = read(tabbed, { answers: { ...SAID, pairs: by } });
      expect(roles(found)).toEqual(['travel', 'dialFront', 'dialRear']);
      expect(found.questions.find(({ id }) => id === 'front-sign')!.by).toBe(by);
      expect(found.overBase).toEqual({ by, base: 300, front: 'inboard' });
      expect(found.readings.map(({ value }) => value)).toEqual(
        ROWS.map(([, front, rear]) => expect.closeTo(degrees(front - rear), 9)),
      );
      expect(found.sets).toHaveLength(1);
    }
  });

  it('as passes are one set, and as sets are several, without being asked again', () => {
    const passes = read(tabbed, { answers: { pairs: 'passes', 'unit:1': 'arcminutes' } });
    expect(passes.sets).toHaveLength(1);
    expect(new Set(passes.readings.map(({ pass }) => pass)).size).toBe(2);
    const sets = read(tabbed, { answers: { pairs: 'sets', 'unit:1': 'arcminutes' } });
    expect(sets.sets.map(({ name }) => name)).toEqual(['Set 1', 'Set 2']);
    for (const found of [passes, sets]) expect(asked(found).map(([id]) => id)).toEqual(['pairs', 'unit:1']);
  });

  it('four of them are taken two by two: two passes of front and rear', () => {
    expect(asked(read(twice))).toEqual([['pairs', undefined]]);
    const found = read(twice, { answers: SAID });
    expect(roles(found)).toEqual(['travel', 'dialFront', 'dialRear', 'dialFront', 'dialRear']);
    expect(found.sets).toHaveLength(1);
    expect(new Set(found.readings.map(({ pass }) => pass))).toEqual(new Set(['Pass 1', 'Pass 2']));
    for (const [i, { value }] of found.readings.entries()) {
      const [, front, rear] = ROWS[i >> 1]!;
      expect(value).toBeCloseTo(degrees(front - rear), 9);
    }
  });

  it('keep the answer when more is said of one of them', () => {
    const columns = { 1: { pass: 'Morning', going: 'up' as const } };
    const found = read(tabbed, { answers: SAID, columns });
    expect(roles(found)).toEqual(['travel', 'dialFront', 'dialRear']);
    expect(found.readings[0]).toMatchObject({ pass: 'Morning', going: 'up' });
    const named = read(tabbed, {
      answers: { pairs: 'sets', 'unit:1': 'arcminutes' },
      columns: { 1: { set: 'Stock' } },
    });
    expect(named.sets).toHaveLength(2);
  });

  it.each([
    ['camber', tabbed, 'camber'],
    ['a gauge that gives degrees', `Travel\t°\t°\n${tabbed}`, 'toe'],
    ['degrees in the cells', '-20\t0.10°\t0.12°\n0\t0.05°\t0.06°\n20\t0.02°\t0.01°', 'toe'],
    ['passes by name', `Travel\tPass 1\tPass 2\n${tabbed}`, 'toe'],
    ['sets by name', `Travel\tStock\tLower joint\n${tabbed}`, 'toe'],
    ['one column', ROWS.map(([t, front]) => `${t}\t${fixed(front)}`).join('\n'), 'toe'],
  ] as const)('are not asked about: %s', (_, text, quantity) => {
    expect(asked(read(text, { quantity })).map(([id]) => id)).not.toContain('pairs');
  });

  it('in a published table are front and rear where it says how the front counts', () => {
    const { pairs: _, ...said } = SAID;
    expect(read(tabbed, { language: 'en', answers: said }).readings[0]!.value).toBeCloseTo(degrees(0.5), 9);
    expect(read(tabbed, { language: 'en' }).questions).toEqual([]);
  });
});
