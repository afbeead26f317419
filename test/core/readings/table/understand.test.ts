import { describe, expect, it } from 'vitest';
import { METRIC, type UnitSystem } from '../../../../core/quantity/units.js';
import { isSideways } from '../../../../core/readings/table/sideways.js';
import { understand } from '../../../../core/readings/table/understand.js';
import type { Understanding, UnderstandOptions } from '../../../../core/readings/table/understanding.js';

// All sheets are invented. How people write readings down: common practice, no source.

const rows = (text: string) => text.split('\n').map((line) => line.split('|').map((cell) => cell.trim()));
const read = (text: string, options: Partial<UnderstandOptions> = {}): Understanding =>
  understand(rows(text), { quantity: 'camber', units: METRIC, ...options });
const roles = ({ columns }: Understanding) => columns.map(({ role }) => role);
const travels = ({ readings }: Understanding) => readings.map(({ travel }) => travel);
const values = ({ readings }: Understanding) => readings.map(({ value }) => value);
const goings = ({ readings }: Understanding) => readings.map(({ going }) => going);
const passes = ({ readings }: Understanding) => readings.map(({ pass }) => pass);
const asked = ({ questions }: Understanding) => questions.map(({ id, chosen }) => [id, chosen]);
const INCHES: UnitSystem = { length: 'in', angle: 'degrees' };

describe('columns are known by their headings', () => {
  it('one a pass, headings over several columns', () => {
    const found = read(`| Pass 1 || Pass 2 |
      Travel (mm) | up | down | up | down
      -20 | 0.11 | 0.13 | 0.12 | 0.15
      20 | -0.95 | -0.9 | -0.93 | -0.91`);
    expect(roles(found)).toEqual(['travel', 'value', 'value', 'value', 'value']);
    expect(found.form).toBe('column-a-pass');
    expect(passes(found)).toEqual(['Pass 1', 'Pass 1', 'Pass 2', 'Pass 2', 'Pass 1', 'Pass 1', 'Pass 2', 'Pass 2']);
    expect(goings(found).slice(0, 4)).toEqual(['up', 'down', 'up', 'down']);
    expect(
      found.cells
        .slice(0, 2)
        .flat()
        .map(({ state }) => state)
        .sort(),
    ).toEqual([...Array(3).fill('empty'), ...Array(7).fill('heading')]);
  });

  it('a length in the name of a set of parts is no unit of its column, and stays in the name', () => {
    const found = read(`Wheel travel (mm) | Standard joints (°) | Joints 22 mm lower (°) | 0,5 in longer, pass 2
      -20 | -0.31 | -0.14 | -0.1
      0 | -0.62 | -0.51 | -0.4`);
    expect(roles(found)).toEqual(['travel', 'value', 'value', 'value']);
    expect(found.sets.map(({ name }) => name)).toEqual(['Standard joints', 'Joints 22 mm lower', '0,5 in longer']);
    expect(values(found)).toEqual([-0.31, -0.14, -0.1, -0.62, -0.51, -0.4]);
    expect(asked(found)).toEqual([]);
  });

  it('long form, with merged cells', () => {
    const found = read(`Pass | Direction | Hub to arch (mm) | Camber | Remarks
      1 | up | 385 | 0.15 |
      | | 365 | -0.5 | settled
      2 | down | 345 | -0.99 |
      | ↑ | 345 | -1 | `);
    expect(roles(found)).toEqual(['pass', 'going', 'height', 'value', 'other']);
    expect(found.form).toBe('long');
    expect(passes(found)).toEqual(['Pass 1', 'Pass 1', 'Pass 2', 'Pass 2']);
    expect(goings(found)).toEqual(['up', 'up', 'down', 'up']);
  });

  it('a word that stands in every row is no pass', () => {
    expect(passes(read('at|-20|gives|0.1\nat|20|gives|-0.5'))).toEqual([undefined, undefined]);
  });

  it('numbered passes, or none', () => {
    expect(passes(read('Travel|1|2\n-20|0.1|0.2\n20|-0.5|-0.6'))).toEqual(['Pass 1', 'Pass 2', 'Pass 1', 'Pass 2']);
    expect(passes(read('Travel|Camber\n-20|0.1\n20|-0.5'))).toEqual([undefined, undefined]);
    expect(passes(read('-20|0.1|0.2\n20|-0.5|'))).toEqual(['Pass 1', 'Pass 2', 'Pass 1']);
  });

  it('the other angle, notes and dates are kept and left out', () => {
    const found = read('Date|Travel|Toe|Camber|Temperature\n2|-20|0.1|0.2|20\n2|20|0.05|-0.5|21');
    expect(roles(found)).toEqual(['other', 'travel', 'other', 'value', 'other']);
    expect(found.cells[1]!.map(({ state, why }) => why ?? state)).toEqual([
      'other-column',
      'read',
      'other-column',
      'read',
      'other-column',
    ]);
    expect(values(read('Date|Travel|Toe|Camber\n2|-20|0.1|0.2\n2|20|0.05|-0.5', { quantity: 'toe' }))).toEqual([
      0.1, 0.05,
    ]);
  });

  it('a height column for each pass, a body reference for each row', () => {
    expect(travels(read('Travel|Camber|Travel|Camber\n-20|0.1|-19|0.12\n20|-0.5|21|-0.6'))).toEqual([-20, -19, 20, 21]);
    const [first, second] = read('Travel|Body|Camber\n-20|712|0.1\n20|x|-0.5').readings;
    expect(first!.body).toBe(712);
    expect(second).not.toHaveProperty('body');
  });

  it('passes that are headed by their number and way', () => {
    const found = read(`Travel (mm) | 1 up | 2 down | 3 up
      -20,00 | 0,11 | 0,13 | 0,12
      0,00 | -0,55 | -0,60 | -0,58
      20,00 | -0,95 | -0,90 | -0,93`);
    expect(found.readings).toHaveLength(9);
    expect(goings(found).slice(0, 3)).toEqual(['up', 'down', 'up']);
    expect(new Set(passes(found)).size).toBe(3);
    expect(
      isSideways([
        ['Travel', '1 up', '2 down'],
        ['-20', '1', '2'],
        ['0', '3', '4'],
      ]),
    ).toBe(false);
    expect(
      isSideways([
        ['Travel', '-20', '0'],
        ['Pass 1', '1', '2'],
        ['Pass 2', '3', '4'],
      ]),
    ).toBe(true);
  });

  it('heights along a line are not read down the columns', () => {
    const found = read('Travel|-20|0|20\nPass 1|0.1|-0.5|-0.9');
    expect(found.readings).toEqual([]);
    expect(found.problems).toEqual([{ code: 'wrong-shape', path: 'travel', value: 'Travel' }]);
  });

  it('without headings heights are the first column, unless only the second can be', () => {
    expect(travels(read('-20|0.13\n0|-0.51\n20|-0.94'))).toEqual([-20, 0, 20]);
    expect(travels(read('0.13|-20\n-0.51|0\n-0.94|20'))).toEqual([-20, 0, 20]);
  });

  it('the user’s word counts before heading and figures', () => {
    const found = read('A|Travel|C\n1|-20|0.1\n2|20|-0.5', {
      columns: {
        1: { role: 'other' },
        0: { role: 'travel', unit: 'cm' },
        2: { role: 'value', pass: 'Mine', going: 'up' },
      },
    });
    expect(found.readings).toEqual([
      { travel: 10, value: 0.1, pass: 'Mine', going: 'up' },
      { travel: 20, value: -0.5, pass: 'Mine', going: 'up' },
    ]);
    expect(found.columns.map(({ by }) => by)).toEqual(['user', 'user', 'user']);
  });
});

describe('lines between the readings', () => {
  it('name the pass and the direction of those below', () => {
    const found = read(
      'Front left, invented|\nPass 1, going up|\n-20|0.1\n20|-0.9\n|\nPass 2 down|\n20|-0.95\n-20|0.12',
    );
    expect(found.form).toBe('long');
    expect(passes(found)).toEqual(['Pass 1', 'Pass 1', 'Pass 2', 'Pass 2']);
    expect(goings(found)).toEqual(['up', 'up', 'down', 'down']);
    expect(found.cells[1]![0]).toEqual({ text: 'Pass 1, going up', state: 'read', reading: 0 });
  });

  it('of directions keep the pass that was named above them', () => {
    const found = read('Pass 1|\nup|\n-20|0.1\n20|-0.9\ndown|\n20|-0.91\n-20|0.12');
    expect(passes(found)).toEqual(Array(4).fill('Pass 1'));
    expect(goings(found)).toEqual(['up', 'up', 'down', 'down']);
  });

  it('that are empty part passes, unless every other one is', () => {
    const block = '-20|0.1\n0|-0.5\n20|-0.9';
    expect(passes(read(`${block}\n|\n${block}`))).toEqual([...Array(3).fill('Pass 1'), ...Array(3).fill('Pass 2')]);
    expect(passes(read(block.replaceAll('\n', '\n|\n')))).toEqual([undefined, undefined, undefined]);
  });

  it('of means and remarks are no readings, and headings may come again', () => {
    const found = read('Travel|Camber\n-20|0.1\nbrake hose moved|\nTravel|Camber\n20|-0.9\nMean|-0.4');
    expect(values(found)).toEqual([0.1, -0.9]);
    expect(found.cells.map(([first]) => first!.why ?? first!.state)).toEqual([
      'heading',
      'read',
      'not-a-reading',
      'heading',
      'read',
      'not-a-reading',
    ]);
    expect(found.cells[5]![1]).toEqual({ text: '-0.4', state: 'left-out', why: 'no-height', value: -0.4 });
  });
});

describe('cells', () => {
  it('gaps are gaps, slips are problems, and neither hides a reading beside it', () => {
    const found = read('Travel|Pass 1|Pass 2\n-20|-|0.1\n-10|n/a|0.o5\n0|x|-0.5\n1O|-0.7|-0.6\n500|-0.8|\n20|-99|-0.9');
    expect(
      found.cells.slice(1).map((row) => row.map(({ state, why, problem }) => why ?? problem?.code ?? state)),
    ).toEqual([
      ['read', 'empty', 'read'],
      ['no-value', 'empty', 'not-a-number'],
      ['read', 'empty', 'read'],
      ['not-a-number', 'no-height', 'no-height'],
      ['out-of-range', 'no-height', 'empty'],
      ['read', 'out-of-range', 'read'],
    ]);
    expect(found.cells[2]![2]!.problem).toEqual({ code: 'not-a-number', path: 'rows.2.2', value: '0.o5' });
    expect(values(found)).toEqual([0.1, -0.5, -0.9]);
  });

  it('any minus, a plus, an arrow, arc minutes, fractions of an inch, units of their own', () => {
    const found = read("Travel|Camber\n−1 1/2 in|+0°18′\n–2,5 cm|18'\n0|‐0°30'\n½\"|-0.75 ↓\n20 mm|−1°05′");
    expect(travels(found).map((mm) => Number(mm.toFixed(6)))).toEqual([-38.1, -25, 0, 12.7, 20]);
    expect(values(found).map((angle) => Number(angle.toFixed(6)))).toEqual([0.3, 0.3, -0.5, -0.75, -1.083333]);
    expect(goings(found)[3]).toBe('down');
  });

  it('say with what they count: heights as travel, angles with their sign', () => {
    const found = read('Height|Negative camber\n385|0.1\n345|0.9', { answers: { zero: '365' } });
    expect(found.cells[1]!.map(({ value }) => value)).toEqual([-20, -0.1]);
    expect(found.cells[2]!.map(({ reading }) => reading)).toEqual([1, 1]);
  });
});

describe('directions', () => {
  it('are told by the order where a column turns, or has only one pass', () => {
    const turning = read('-20|0.1\n0|-0.5\n20|-0.9\n10|-0.7\n-10|-0.2\n-20|0.12');
    expect(goings(turning)).toEqual(['up', 'up', 'up', 'down', 'down', 'down']);
    expect(goings(read('20|-0.9\n0|-0.5\n-20|0.1'))).toEqual(['down', 'down', 'down']);
    expect(goings(read('380|0.1\n365|-0.5\n340|-0.9'))).toEqual(['up', 'up', 'up']);
  });
  it('begin again with a sweep that starts over', () => {
    const again = read('-20|0.1\n0|-0.5\n20|-0.9\n-20|0.1\n0|-0.5\n20|-0.9');
    expect(goings(again)).toEqual(Array(6).fill('up'));
  });
  it('are not told by heights without order, nor by a sorted table that passes share', () => {
    expect(goings(read('-20|0.1\n20|-0.9\n0|-0.5\n10|-0.7\n-10|-0.2'))).toEqual(Array(5).fill(undefined));
    expect(goings(read('-20|0.1|0.1\n0|-0.5|-0.6\n20|-0.9|-0.9'))).toEqual(Array(6).fill(undefined));
  });
  it('by signs in a heading or a column', () => {
    expect(goings(read('Travel|Pass 1 +|Pass 1 −\n-20|0.1|0.2\n20|-0.5|-0.6'))).toEqual(['up', 'down', 'up', 'down']);
    expect(goings(read('Travel|Up/down|Camber\n-20|+|0.1\n20|-|-0.5'))).toEqual(['up', 'down']);
  });
});

describe('a first height that is read again at the end of its pass', () => {
  const again = ({ readings }: Understanding) => readings.map((reading) => reading.again === true);

  it('is known in a sheet of one pass, which tells the way as well', () => {
    const up = read('Travel | Camber\n-30 | 0.1\n-10 | -0.3\n10 | -0.7\n30 | -1\n-30 | 0.15');
    expect(again(up)).toEqual([false, false, false, false, true]);
    expect(goings(up)).toEqual(Array(5).fill('up'));
    const back = read('Travel | Camber\n30 | -1\n10 | -0.7\n-10 | -0.3\n-30 | 0.1\n30 | -0.9');
    expect(again(back).at(-1)).toBe(true);
    expect(goings(back)).toEqual(Array(5).fill('down'));
  });

  it('is known below a table that passes share, in those that have it; there the order is that of the readings', () => {
    const found = read(
      'Travel (mm) | 1 | 2\n-30 | 0.1 | 0.12\n-10 | -0.3 | -0.31\n10 | -0.7 | -0.68\n30 | -1 | -1.01\n-30 | 0.15 |',
    );
    expect(found.readings.filter((reading) => reading.again)).toMatchObject([
      { travel: -30, value: 0.15, going: 'up' },
    ]);
    expect(found.readings).toHaveLength(9);
  });

  it('is known of heights that came back to within a millimetre or two', () => {
    const found = read('Hub to arch (mm) | Camber (°)\n400 | 0.1\n380 | -0.3\n360 | -0.7\n340 | -1\n399 | 0.15', {
      answers: { zero: '360' },
    });
    expect(again(found).at(-1)).toBe(true);
  });

  it.each([
    ['a sheet sorted by height, where nothing tells which was last', '-30|0.1\n-30|0.15\n-10|-0.3\n10|-0.7\n30|-1'],
    ['a pass there and back', '-30|0.1\n-10|-0.3\n10|-0.7\n30|-1\n10|-0.71\n-10|-0.31\n-30|0.12'],
    ['another height at the end', '-30|0.1\n-10|-0.3\n10|-0.7\n30|-1\n-20|-0.1'],
    ['three readings', '-30|0.1\n30|-1\n-30|0.12'],
  ])('is not seen in %s', (_, text) => {
    expect(again(read(`Travel | Camber\n${text}`))).not.toContain(true);
  });

  it.each([
    ['up from the middle, then down from it', [0, 10, 20, 30, 40, 50, -10, -20, -30, -40, 0]],
    ['down from the middle, then up from it', [0, -10, -20, -30, -40, 10, 20, 30, 40, 50, 0]],
    ['up from the middle, then from the bottom up', [0, 10, 20, 30, 40, 50, -40, -30, -20, -10, 0]],
    ['round by the middle', [0, 20, 40, 20, 0, -20, -40, -20, 0]],
    ['in any order', [0, 20, -20, 10, -10, 30, 0]],
    ['two sweeps up', [-10, 0, 10, 20, -10, 0, 10, 20, -10]],
    ['from the middle, back to within two millimetres', [0, 10, 20, 30, 40, 50, -10, -20, -30, -40, 1.5]],
  ])('is known whatever way the pass went: %s', (_, travels) => {
    const text = (mark: string) =>
      travels.map((t, i) => `${t}${mark}${(-0.5 - 0.011 * t + 0.001 * (i % 3)).toFixed(3)}`);
    const only = (found: Understanding) => again(found).flatMap((is, i) => (is ? [i] : []));
    expect(only(read(['Travel | Camber', ...text(' | ')].join('\n')))).toEqual([travels.length - 1]);
    expect(only(read(text(' | ').join('\n')))).toEqual([travels.length - 1]);
    // The way at its end is that at its beginning: the same height, reached as it was at first.
    const ways = goings(read(text(' | ').join('\n')));
    expect(ways.at(-1)).toBe(ways[0]);
    expect(only(read(['Travel (mm) | Camber (°)', ...text(' | ')].join('\n'), { language: 'en' }))).toEqual([
      travels.length - 1,
    ]);
  });

  it.each([
    ['there and back twice', [-30, -10, 10, 30, 10, -10, -30, -10, 10, 30, 10, -10, -30]],
    ['another height near the first, in no order', [0, 20, -20, 12, -8, 30, 2]],
    ['a sorted list', [-30, -10, 0, 10, 30, 30]],
  ])('is not taken for one: %s', (_, travels) => {
    const rows = travels.map((t) => `${t} | ${(-0.5 - 0.011 * t).toFixed(3)}`);
    expect(again(read(['Travel | Camber', ...rows].join('\n')))).not.toContain(true);
  });

  it('is not seen where the pass is said to have begun at the other end', () => {
    const found = read('Travel | Camber, down\n-30 | 0.1\n-10 | -0.3\n10 | -0.7\n30 | -1\n-30 | 0.15');
    expect(again(found)).not.toContain(true);
  });
});

describe('1,500', () => {
  it('is asked about, once, with both readings', () => {
    const found = read('1,500|0.1\n-2,250|0.5\n1,750|0.2', { units: INCHES });
    expect(found.questions.map(({ id, cells, choices }) => [id, cells.length, choices])).toEqual([
      [
        'comma',
        3,
        [
          { id: 'decimal', value: 38.1 },
          { id: 'thousands', value: 38100 },
        ],
      ],
    ]);
    expect(found.cells[0]![0]).toEqual({ text: '1,500', state: 'asked', question: 'comma', value: 38.1, reading: 0 });
  });
  it('is settled by a decimal comma elsewhere, and by the answer', () => {
    expect(asked(read('12,500|-0,1\n-20|0,5\n7|0,2'))).toEqual([]);
    const answered = read('1,500|-0.1\n-20|0.5\n30|0.2', { answers: { comma: 'thousands' } });
    expect(answered.questions[0]!.isAnswered).toBe(true);
    expect(answered.cells[0]!.map(({ state }) => state)).toEqual(['problem', 'left-out']);
    expect(read('1,500|-0.1\n-20|0.5\n30|0.2', { answers: { comma: 'decimal' } }).cells[0]![0]).toEqual({
      text: '1,500',
      state: 'read',
      value: 1.5,
      reading: 0,
    });
  });
  it('follows the language of a published table', () => {
    expect(travels(read('-12,500|0.1\n20|-0.5', { language: 'fr' }))).toEqual([-12.5, 20]);
  });
});

describe('1.30', () => {
  const sheet = '-20|-0.30\n0|-0.45\n20|-1.15';
  it('is asked about, and the answer holds for the sheet', () => {
    const found = read(sheet);
    expect(asked(found)).toEqual([['minutes', 'decimal']]);
    expect(found.questions[0]!.choices).toEqual([
      { id: 'decimal', value: -0.3 },
      { id: 'minutes', value: -0.5 },
    ]);
    expect(found.questions[0]!.cells.length).toBe(3);
    expect(values(read(sheet, { answers: { minutes: 'minutes' } }))).toEqual([-0.5, -0.75, -1.25]);
    expect(values(found)).toEqual([-0.3, -0.45, -1.15]);
  });
  it.each(['-0.75', '-0.125', '-0.5'])('is decimal where %s stands in the same sheet', (value) => {
    expect(asked(read(`${sheet}\n25|${value}`))).toEqual([]);
  });
  it('is decimal under a degree sign, minutes under degrees and minutes, and decimal in print', () => {
    expect(asked(read(`Travel|Camber (°)\n${sheet}`))).toEqual([]);
    const headed = read(`Travel|Camber (° ′)\n${sheet}`);
    expect(asked(headed)).toEqual([]);
    expect(values(headed)).toEqual([-0.5, -0.75, -1.25]);
    expect(values(read(sheet, { language: 'en' }))).toEqual([-0.3, -0.45, -1.15]);
  });
  it('is likelier minutes for a reader of minutes', () => {
    expect(asked(read(sheet, { units: { length: 'mm', angle: 'arcminutes' } }))).toEqual([['minutes', 'minutes']]);
  });
});

describe('units that nobody names', () => {
  it('are the user’s where the figures can be that', () => {
    expect(asked(read('-50|0.1\n0|-0.5\n50|-0.9'))).toEqual([]);
    expect(travels(read('-1|0.1\n0|-0.5\n1|-0.9', { units: INCHES }))).toEqual([-25.4, 0, 25.4]);
  });
  it('are asked about where they cannot', () => {
    expect(asked(read('-50|0.1\n0|-0.5\n50|-0.9', { units: INCHES }))).toEqual([['unit:0', 'mm']]);
    expect(asked(read('-1 1/2|0.1\n0|-0.5\n1 1/2|-0.9'))).toEqual([['unit:0', 'in']]);
    expect(asked(read('Height|Camber\n36.5|0.1\n35|-0.5\n34|-0.9'))).toEqual([
      ['unit:0', 'cm'],
      ['zero', '350'],
    ]);
    const minutes = read('-20|12\n0|-31\n20|-55');
    expect(asked(minutes)).toEqual([['unit:1', 'arcminutes']]);
    expect(values(minutes).map((angle) => Math.round(angle * 6e9) / 1e8)).toEqual([12, -31, -55]);
    expect(read('-20|12\n0|-31\n20|-55', { answers: { 'unit:1': 'degrees' } }).readings.length).toBe(1);
  });
  it('of whole numbers, for a reader of minutes, are asked about whatever their size; parts of a minute are degrees', () => {
    const units: UnitSystem = { length: 'mm', angle: 'arcminutes' };
    expect(asked(read('-20|1\n0|-1\n20|-2', { units }))).toEqual([['unit:1', 'degrees']]);
    expect(asked(read('-20|12\n0|-1\n20|-2', { units }))).toEqual([['unit:1', 'arcminutes']]);
    expect(asked(read('-20|1.5\n0|-2.5\n20|-3.5', { units }))).toEqual([['unit:1', 'degrees']]);
    expect(asked(read('-20|0.5\n0|-2.5\n20|-3.5', { units }))).toEqual([]);
    expect(asked(read('Travel|Camber (°)\n-20|1\n0|-1\n20|-2', { units }))).toEqual([]);
    expect(asked(read('-20|5\n0|-1\n20|-3'))).toEqual([['unit:1', 'degrees']]);
  });
  it('of toe are asked about: degrees, minutes or mm over a base', () => {
    const toe = (text: string, answers = {}) => read(text, { quantity: 'toe', answers });
    expect(asked(toe('-20|0.1\n0|0.05\n20|-0.2'))).toEqual([['unit:1', 'degrees']]);
    expect(asked(toe('-20|5\n0|3\n20|-8'))).toEqual([['unit:1', 'arcminutes']]);
    expect(asked(toe('-20|2.5\n0|0.5\n20|-3'))).toEqual([
      ['unit:1', 'mm'],
      ['base', undefined],
    ]);
    expect(toe('-20|2.5\n0|0.5\n20|-3').questions[0]!.choices.map(({ id }) => id)).toEqual([
      'degrees',
      'arcminutes',
      'mm',
    ]);
    const inMm = toe('-20|1\n0|0.5\n20|-3', { 'unit:1': 'mm', base: '300' });
    // 1 mm over 300 mm: 0.190985224°, the row of test/reference/toe_gauge_cases.csv.
    expect(values(inMm)[0]).toBeCloseTo(0.190985224, 8);
    expect(asked(toe('Travel|Toe (°)\n-20|0.1\n0|0.05\n20|-0.2'))).toEqual([]);
  });
  it('total toe is of both wheels: asked, and half of it counts', () => {
    const text = 'Travel|Total toe (°)\n-20|0.2\n0|0.1\n20|-0.4';
    const found = read(text, { quantity: 'toe' });
    expect(asked(found)).toEqual([['total', 'both']]);
    expect(values(found)).toEqual([0.1, 0.05, -0.2]);
    expect(values(read(text, { quantity: 'toe', answers: { total: 'one' } }))).toEqual([0.2, 0.1, -0.4]);
    expect(values(read(text, { quantity: 'toe', language: 'en' }))).toEqual([0.1, 0.05, -0.2]);
  });
  it('are asked about once for all passes', () => {
    expect(read('-20|12|13\n0|-31|-30\n20|-55|-54').questions.map(({ id, cells }) => [id, cells.length])).toEqual([
      ['unit:1', 6],
    ]);
  });
});

describe('heights', () => {
  it('from hub to arch shrink in bump; which is zero is asked, the likeliest being the one in the middle, or called so', () => {
    const found = read('400|0.3\n365|-0.5\n341|-0.9');
    expect(roles(found)).toEqual(['height', 'value']);
    expect(asked(found)).toEqual([['zero', '365']]);
    expect(travels(found)).toEqual([-35, 0, 24]);
    expect(travels(read('400|0.3\n365|-0.5\n341|-0.9', { answers: { zero: '360.5' } }))).toEqual([-39.5, -4.5, 19.5]);
    expect(asked(read('Height|Camber|Notes\n400|0.3|\n365|-0.5|\n341|-0.9|ride height'))).toEqual([['zero', '341']]);
    expect(asked(read('Hub to arch (mm), ride height 352 mm|Camber\n400|0.3\n365|-0.5\n341|-0.9'))).toEqual([
      ['zero', '352'],
    ]);
  });
  it('an answer that is no number, or no height of a wheel, is no answer', () => {
    for (const zero of ['x', '', '3650', '-365']) {
      const found = read('400|0.3\n341|-0.9', { answers: { zero } });
      expect(found.questions[0]!.isAnswered).toBe(false);
      expect(Math.max(...travels(found).map(Math.abs))).toBeLessThan(60);
    }
  });
  it('called height but about zero are travel; figures far from zero called travel are asked about', () => {
    expect(roles(read('Wheel height|Camber\n-20|0.3\n20|-0.5'))).toEqual(['travel', 'value']);
    const called = read('Travel|Camber\n400|0.3\n365|-0.5\n341|-0.9');
    expect(asked(called)).toEqual([
      ['height-or-travel', 'height'],
      ['zero', '365'],
    ]);
    const growing = read('Travel|Camber\n400|0.3\n365|-0.5\n341|-0.9', {
      answers: { 'height-or-travel': 'travel', zero: '365' },
    });
    expect(travels(growing)).toEqual([35, 0, -24]);
  });
  it('of the hub above the floor grow in bump', () => {
    const found = read('Hub height above floor (mm)|Camber\n300|0.1\n320|-0.5\n340|-0.9');
    expect(asked(found)).toEqual([['zero', '320']]);
    expect(travels(found)).toEqual([-20, 0, 20]);
  });
  it('in print must say which is zero', () => {
    expect(read('400|0.3\n341|-0.9', { language: 'en' }).problems).toEqual([
      { code: 'missing', path: 'zero', value: undefined },
    ]);
    expect(read('400|0.3\n341|-0.9', { language: 'en', answers: { zero: '365' } }).problems).toEqual([]);
    expect(read('400|0.3\n341|-0.9', { language: 'en', answers: { zero: '3650' } }).problems[0]!.path).toBe('zero');
  });
});

describe('signs', () => {
  it('droop written positive is asked about', () => {
    const found = read('Droop|Camber\n0|-0.5\n10|-0.4\n30|0.1');
    expect(asked(found)).toEqual([['bump-sign', 'droop']]);
    expect(travels(found)).toEqual([0, -10, -30]);
    expect(asked(read('Travel, droop negative|Camber\n0|-0.5\n10|-0.6'))).toEqual([]);
  });
  it('bump and droop over values or rows are sides of zero where no height is negative, else directions', () => {
    const columns = 'Travel|Bump|Droop\n0|-0.5|-0.5\n10|-0.6|-0.3\n30|-0.9|0.1';
    expect(asked(read(columns))).toEqual([['bump-sign', 'droop']]);
    expect(travels(read(columns))).toEqual([0, 0, 10, -10, 30, -30]);
    expect(goings(read(columns, { answers: { 'bump-sign': 'bump' } }))).toEqual([
      'up',
      'down',
      'up',
      'down',
      'up',
      'down',
    ]);
    const lines = read('Bump|\n0|-0.5\n10|-0.6\n30|-0.9\nDroop|\n10|-0.3\n30|0.1');
    expect(travels(lines)).toEqual([0, 10, 30, -10, -30]);
    const signed = read('Travel|Bump|Droop\n-10|-0.3|-0.31\n10|-0.6|-0.61');
    expect(asked(signed)).toEqual([]);
    expect(goings(signed)).toEqual(['up', 'down', 'up', 'down']);
  });
  it('camber nowhere negative that grows in bump, or called negative, is asked about', () => {
    const found = read('-20|0.2\n0|0.5\n20|0.9');
    expect(asked(found)).toEqual([['value-sign', 'top-in']]);
    expect(values(found)).toEqual([-0.2, -0.5, -0.9]);
    expect(values(read('-20|0.2\n0|0.5\n20|0.9', { answers: { 'value-sign': 'top-out' } }))).toEqual([0.2, 0.5, 0.9]);
    expect(asked(read('Travel|Negative camber\n-20|0.9\n0|0.5\n20|0.2'))).toEqual([['value-sign', 'top-in']]);
    expect(asked(read('-20|0.9\n0|0.5\n20|0.2'))).toEqual([]);
    expect(asked(read('-20|0.2\n0|-0.5\n20|-0.9'))).toEqual([]);
    expect(values(read('-20|0.2\n0|0.5\n20|0.9', { language: 'en' }))).toEqual([0.2, 0.5, 0.9]);
  });
  it('toe-out in a heading turns the sign', () => {
    expect(values(read('Travel|Toe-out (°)\n-20|-0.1\n20|0.2', { quantity: 'toe' }))).toEqual([0.1, -0.2]);
  });
});

describe('a sheet that holds no readings says so', () => {
  it.each([
    ['', 'readings'],
    ['only words|here', 'readings'],
    ['350', 'camber'],
    ['Camber|Toe\n1|2\n3|4', 'travel'],
  ])('%s', (text, path) => {
    const found = read(text);
    expect(found.readings).toEqual([]);
    expect(found.problems.map((problem) => [problem.code, problem.path])).toContainEqual(['missing', path]);
  });
  it('more than can be fitted are a problem, and a long sheet is none', () => {
    const long = Array.from({ length: 5001 }, (_, i) => [String((i % 101) - 50), '-0.5']);
    expect(understand(long, { quantity: 'camber', units: METRIC }).problems).toEqual([
      { code: 'out-of-range', path: 'readings', value: 5001, limit: 5000 },
    ]);
  });
});
