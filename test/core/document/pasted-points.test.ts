import { describe, expect, it } from 'vitest';
import { readPastedPoints } from '../../../core/document/pasted-points.js';

/* The same corner in every way of writing a table; the invented example's points, whose figures are those of the article's own table. */

const POINTS: readonly [string, ...number[]][] = [
  ['Lower arm, front pivot', 24, 356, 193, 3],
  ['Lower arm, rear pivot', -268, 362, 198, 3],
  ['Lower ball joint', 0, 694, 176, 3],
  ['Top mount', -79, 574, 822, 3],
  ['Damper, low point', -38, 625, 462, 4],
  ['Tie rod, inner end', -124, 340, 256, 3],
  ['Tie rod, outer end', -128, 664, 245, 3],
  ['Wheel centre', 0, 738, 302, 3],
];
const REST: readonly [string, number][] = [
  ['Loaded radius', 302],
  ['Static camber', -0.6],
  ['Static toe', 0.08],
];
const GIVEN = {
  points: {
    'lowerArm.front': [24, 356, 193],
    'lowerArm.rear': [-268, 362, 198],
    'lowerArm.ball': [0, 694, 176],
    'strut.top': [-79, 574, 822],
    'strut.low': [-38, 625, 462],
    'tieRod.inner': [-124, 340, 256],
    'tieRod.outer': [-128, 664, 245],
    wheelCentre: [0, 738, 302],
  },
  plusMinus: {
    'lowerArm.front': 3,
    'lowerArm.rear': 3,
    'lowerArm.ball': 3,
    'strut.top': 3,
    'strut.low': 4,
    'tieRod.inner': 3,
    'tieRod.outer': 3,
    wheelCentre: 3,
  },
  loadedRadius: 302,
  camber: -0.6,
  toe: 0.08,
};

const HEAD = ['Point', 'x', 'y', 'z', '±'];
const table = (mark: string, write = String as (figure: number) => string, head: string[] | undefined = HEAD): string =>
  [...(head ? [head] : []), ...[...POINTS, ...REST].map(([name, ...figures]) => [name, ...figures.map(write)])]
    .map((cells) => cells.join(mark))
    .join('\n');
const withComma = (figure: number) => figure.toFixed(2).replace('.', ',');

const WAYS: Record<string, string> = {
  tabs: table('\t'),
  'tabs, no headings': table('\t', String, []).trimStart(),
  'tabs, lines that end as on Windows': table('\t').replaceAll('\n', '\r\n'),
  'semicolons and decimal commas': table(';', withComma),
  'commas, in unquoted names as well': table(','),
  'commas and blanks': table(', '),
  'commas, names quoted': table(',').replace(/^([A-Z][a-z ]+, [a-z ]+)/gm, '"$1"'),
  'commas, rows filled to one length': table(',').replace(/^((?:Loaded|Static)[^\n]*)$/gm, '$1,,,'),
  blanks: table('   '),
  'one blank, decimal commas': table(' ', withComma),
  'a Markdown table': table(' | ').replace(/^.*$/gm, '| $& |').replace('\n', '\n|---|---|---|---|---|\n'),
  'true minus signs': table('\t').replaceAll('-', '−'),
};

describe('readPastedPoints', () => {
  it.each(Object.entries(WAYS))('reads a corner by %s', (_, text) => {
    const { given, problems } = readPastedPoints(text, 'en');
    expect(problems).toEqual([]);
    expect(given).toEqual(GIVEN);
  });

  it('reads inches where a heading, or a line over the table, names them', () => {
    const inches = (figure: number) => (Math.abs(figure) < 1 ? `${figure}°` : (figure / 25.4).toFixed(4));
    for (const text of [
      table('\t', inches, ['Point', 'x (in)', 'y (in)', 'z (in)', '± (in)']),
      `Hard points in inches\n${table('\t', inches)}`,
    ]) {
      const { given } = readPastedPoints(text, 'en');
      expect(given.points['strut.top']![2]).toBeCloseTo(822, 2);
      expect(given.camber).toBe(-0.6);
    }
  });

  it('tells a row it does not know, a second of one name and a figure that is none by their names, and reads the others', () => {
    const text =
      'Top mount;-79;574;822\nAnti-roll bar;1;2;3\nTop mount;-78;574;822\nWheel centre;0;73x8;302\nLower ball joint;0;694';
    const { given, problems } = readPastedPoints(text, 'en');
    expect(given).toEqual({ points: { 'strut.top': [-79, 574, 822] } });
    expect(problems).toEqual([
      { code: 'wrong-shape', path: 'Anti-roll bar', value: '1 2 3' },
      { code: 'wrong-shape', path: 'Top mount', value: '-78 574 822', other: 'strut.top' },
      { code: 'not-a-number', path: 'wheelCentre.1', value: '73x8' },
      { code: 'missing', path: 'lowerArm.ball.2', value: '' },
    ]);
  });

  it('leaves to the other figures what 1,500 is, else to the language', () => {
    const radius = (text: string, language: string) => readPastedPoints(text, language).given.points['strut.top'];
    const row = 'Top mount;-79,125;574,000;822,250';
    expect(radius(row, 'de')).toEqual([-79.125, 574, 822.25]);
    expect(radius(`${row}\nStatic camber;-0,6`, 'en')).toEqual([-79.125, 574, 822.25]);
  });

  it('reads nothing of a text without any row of its own', () => {
    for (const text of ['', 'abc', 'One two three\nfour five']) {
      const { given, problems } = readPastedPoints(text, 'en');
      expect(given).toEqual({ points: {} });
      expect(problems.length).toBeLessThan(3);
    }
  });
});
