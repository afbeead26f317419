import { describe, expect, it } from 'vitest';
import { METRIC } from '../../../../core/quantity/units.js';
import { splitText } from '../../../../core/readings/table/split-text.js';
import { understand } from '../../../../core/readings/table/understand.js';
import type { Understanding, UnderstandOptions } from '../../../../core/readings/table/understanding.js';
import { averageOf, type Curve, columnsOf, HEIGHTS, sheetOf } from './invented-sheet.js';

// All sheets are invented. How people write readings of several parts down: common practice, no source.

const read = (text: string, options: Partial<UnderstandOptions> = {}): Understanding =>
  understand(splitText(text), { quantity: 'camber', units: METRIC, ...options });
/** Sets with the passes in each, and how many readings. */
const sets = ({ sets: all, readings }: Understanding) =>
  all.map(({ name, readings: own }) => [name, [...new Set(own.map((i) => readings[i]!.pass))], own.length]);
const asked = ({ questions }: Understanding) => questions.map(({ id, chosen }) => [id, chosen]);
const goings = ({ readings }: Understanding) => [...new Set(readings.map(({ going }) => going))];
const S: Curve = 'stock';
const L: Curve = 'lowered';
const six = columnsOf([S, S, S, L, L, L]);
const [stock, lowered] = [six.slice(0, 3), six.slice(3)];
const N = HEIGHTS.length;

describe('sets and passes are told apart by the common stem of their names', () => {
  const inches = HEIGHTS.map((t) => 14.25 - t / 25.4).map((height) => height.toFixed(3));
  const text = sheetOf(
    [
      'Hub to arch (in)',
      'Stock 1',
      'Stock 2',
      'Stock 3',
      'Stock avg',
      'Lowered joint 1',
      'Lowered joint 2',
      'Lowered joint 3',
      'avg',
    ],
    [...stock, averageOf(stock), ...lowered, averageOf(lowered)],
    inches,
  );

  it('with averages beside them, which are left out and said', () => {
    const found = read(text);
    expect(sets(found)).toEqual([
      ['Stock', ['Pass 1', 'Pass 2', 'Pass 3'], 3 * N],
      ['Lowered joint', ['Pass 1', 'Pass 2', 'Pass 3'], 3 * N],
    ]);
    expect(goings(found)).toEqual([undefined]);
    expect(found.derived).toEqual([
      { kind: 'average', label: 'Stock avg', column: 4, of: [1, 2, 3] },
      { kind: 'average', label: 'avg', column: 8, of: [5, 6, 7] },
    ]);
    expect(found.columns.map(({ role, set, pass }) => [role, set, pass])).toEqual([
      ['height', undefined, undefined],
      ...[1, 2, 3].map((n) => ['value', 'Stock', `Pass ${n}`]),
      ['derived', undefined, undefined],
      ...[1, 2, 3].map((n) => ['value', 'Lowered joint', `Pass ${n}`]),
      ['derived', undefined, undefined],
    ]);
    expect(found.cells[1]!.map(({ state, why }) => why ?? state)).toEqual([
      'read',
      'read',
      'read',
      'read',
      'derived',
      'read',
      'read',
      'read',
      'derived',
    ]);
    expect(asked(found)).toEqual([['zero', '351.9424']]);
  });

  it.each([
    ['stock a|stock b|stock c|lowered a|lowered b|lowered c', 'stock', 'lowered'],
    ['Run 1 std|Run 2 std|Run 3 std|Run 1 ext|Run 2 ext|Run 3 ext', 'std', 'ext'],
    ['std #1|std #2|std #3|dropped #1|dropped #2|dropped #3', 'std', 'dropped'],
    ['OEM pass 1|OEM pass 2|OEM pass 3|RC kit pass 1|RC kit pass 2|RC kit pass 3', 'OEM', 'RC kit'],
    ['Pass 1 (stock)|Pass 2 (stock)|Pass 3 (stock)|Pass 1 (down)|Pass 2 (down)|Pass 3 (down)', 'stock', 'down'],
    [
      'Camber stock 1 (°)|Camber stock 2 (°)|Camber stock 3 (°)|Camber 20 mm down 1 (°)|Camber 20 mm down 2 (°)|Camber 20 mm down 3 (°)',
      'stock',
      '20 mm down',
    ],
    ['Serie 1|Serie 2|Serie 3|Tiefer 1|Tiefer 2|Tiefer 3', 'Serie', 'Tiefer'],
    [
      'Sturz Serie, 1. Durchgang|Sturz Serie, 2. Durchgang|Sturz Serie, 3. Durchgang|Sturz tief, 1. Durchgang|Sturz tief, 2. Durchgang|Sturz tief, 3. Durchgang',
      'Serie',
      'tief',
    ],
    [
      'origine 1|origine 2|origine 3|rotule abaissée 1|rotule abaissée 2|rotule abaissée 3',
      'origine',
      'rotule abaissée',
    ],
    ['Reference 1|Reference 2|Reference 3|Track arms 1|Track arms 2|Track arms 3', 'Reference', 'Track arms'],
    [
      'Stock height 1|Stock height 2|Stock height 3|Extended joints 1|Extended joints 2|Extended joints 3',
      'Stock height',
      'Extended joints',
    ],
    ['S1|S2|S3|L1|L2|L3', 'S', 'L'],
  ])('%s', (headings, first, second) => {
    const found = read(sheetOf(['Travel (mm)', ...headings.split('|')], six));
    expect(found.sets.map(({ name, readings }) => [name, readings.length])).toEqual([
      [first, 3 * N],
      [second, 3 * N],
    ]);
    expect(asked(found)).toEqual([]);
    expect(goings(found)).toEqual([undefined]);
  });

  it('in the order of their columns, wherever the first reading of each stands', () => {
    const late = stock.map((column) => column.map((cell, i) => (i < 2 ? '' : cell)));
    const heads = [
      'Travel (mm)',
      'Stock 1',
      'Stock 2',
      'Stock 3',
      'Lowered joint 1',
      'Lowered joint 2',
      'Lowered joint 3',
    ];
    const found = read(sheetOf(heads, [...late, ...lowered]));
    expect(found.sets.map(({ name }) => name)).toEqual(['Stock', 'Lowered joint']);
  });

  it('with the set’s name over its passes, in merged cells or without numbers below', () => {
    for (const top of [
      'Travel (mm)\tStock\t\t\tLowered joints\t\t\n\t1\t2\t3\t1\t2\t3',
      '\tStock\t\t\tLowered joints\t\t\nTravel (mm)\tPass 1\tPass 2\tPass 3\tPass 1\tPass 2\tPass 3',
      'Travel (mm)\tStock\t\t\tLowered joints\t\t',
      'Travel (mm)\tStock\tStock\tStock\tLowered joints\tLowered joints\tLowered joints',
    ]) {
      expect(sets(read(sheetOf(top, six)))).toEqual([
        ['Stock', ['Pass 1', 'Pass 2', 'Pass 3'], 3 * N],
        ['Lowered joints', ['Pass 1', 'Pass 2', 'Pass 3'], 3 * N],
      ]);
    }
  });

  it('up and down of one pass share its zero, in each set', () => {
    const found = read(
      sheetOf(['Travel', 'stock - up', 'stock - down', 'lowered - up', 'lowered - down'], columnsOf([S, S, L, L])),
    );
    expect(sets(found)).toEqual([
      ['stock', [undefined], 2 * N],
      ['lowered', [undefined], 2 * N],
    ]);
    expect(found.readings.slice(0, 4).map(({ going }) => going)).toEqual(['up', 'down', 'up', 'down']);
  });

  it('one set keeps its name and its passes', () => {
    expect(sets(read(sheetOf(['Travel', 'Longer arms, pass 1', 'Longer arms, pass 2'], columnsOf([S, S]))))).toEqual([
      ['Longer arms', ['pass 1', 'pass 2'], 2 * N],
    ]);
    expect(sets(read(sheetOf(['Travel', 'Camber, front left'], columnsOf([S]))))).toEqual([['', [undefined], N]]);
  });

  it('in rows: a column of names, merged cells, or lines of their own', () => {
    const rowsOf = (column: readonly number[]) => HEIGHTS.map((t, r) => `${t}\t${column[r]}`);
    const [a, b] = columnsOf([S, L]);
    const long = [...rowsOf(a!).map((row) => `Stock\t${row}`), ...rowsOf(b!).map((row) => `Lowered\t${row}`)];
    const merged = [...rowsOf(a!), ...rowsOf(b!)].map(
      (row, r) => `${r === 0 ? 'Stock' : r === N ? 'Lowered' : ''}\t${row}`,
    );
    const numbered = [stock[0]!, stock[1]!, lowered[0]!, lowered[1]!].flatMap((column, k) =>
      rowsOf(column).map((row) => `${k < 2 ? 'Stock' : 'Lowered'}\t${(k % 2) + 1}\t${row}`),
    );
    const expected = [
      ['Stock', [undefined], N],
      ['Lowered', [undefined], N],
    ];
    expect(sets(read(long.join('\n')))).toEqual(expected);
    expect(sets(read(`Parts\tTravel\tCamber\n${long.join('\n')}`))).toEqual(expected);
    expect(sets(read(merged.join('\n')))).toEqual(expected);
    expect(sets(read(`Stock\t\n${rowsOf(a!).join('\n')}\nLowered\t\n${rowsOf(b!).join('\n')}`))).toEqual(expected);
    expect(
      sets(
        read(
          `Invented car\t\nTravel\tCamber\nStock\t\n${rowsOf(a!).join('\n')}\n\t\nLowered\t\n${rowsOf(b!).join('\n')}`,
        ),
      ),
    ).toEqual(expected);
    expect(sets(read(`Travel\tStock\n${rowsOf(a!).join('\n')}\nTravel\tLowered\n${rowsOf(b!).join('\n')}`))).toEqual(
      expected,
    );
    expect(sets(read(`Parts\tPass\tTravel\tCamber\n${numbered.join('\n')}`))).toEqual([
      ['Stock', ['Pass 1', 'Pass 2'], 2 * N],
      ['Lowered', ['Pass 1', 'Pass 2'], 2 * N],
    ]);
    const lines = [
      'Stock joints',
      'Pass 1',
      ...rowsOf(stock[0]!),
      'Pass 2',
      ...rowsOf(stock[1]!),
      'Lowered joints',
      'Pass 1',
      ...rowsOf(lowered[0]!),
    ];
    expect(sets(read(lines.map((line) => (line.includes('\t') ? line : `${line}\t`)).join('\n')))).toEqual([
      ['Stock joints', ['Pass 1', 'Pass 2'], 2 * N],
      ['Lowered joints', ['Pass 1'], N],
    ]);
  });

  it('in rows that were read at other heights', () => {
    const text = [
      'Stock',
      '-40\t0.1',
      '-20\t-0.3',
      '0\t-0.6',
      '20\t-0.8',
      '40\t-1',
      'Lowered joints',
      '-36\t0.2',
      '-18\t-0.2',
      '2\t-0.6',
      '19\t-0.9',
      '38\t-1.1',
    ];
    expect(read(text.join('\n')).sets.map(({ name, readings }) => [name, readings.length])).toEqual([
      ['Stock', 5],
      ['Lowered joints', 5],
    ]);
  });

  it('side by side with heights of their own', () => {
    const [a, b] = columnsOf([S, L]);
    const rows = HEIGHTS.map((t, r) => `${t}\t${a![r]}\t\t${t + 1}\t${b![r]}`);
    const found = read(`Stock\t\t\tLowered\t\nTravel\tCamber\t\tTravel\tCamber\n${rows.join('\n')}`);
    expect(sets(found)).toEqual([
      ['Stock', [undefined], N],
      ['Lowered', [undefined], N],
    ]);
    expect(found.readings[1]!.travel).toBe(HEIGHTS[0] + 1);
  });

  it('in lines of running text', () => {
    const line = (name: string, column: readonly number[]) =>
      `${name}: ${HEIGHTS.map((t, r) => `${t}:${column[r]}`).join(', ')}`;
    const [a, b] = columnsOf([S, L]);
    expect(sets(read(`${line('Stock', a!)}\n${line('20 mm lower', b!)}`))).toEqual([
      ['Stock', [undefined], N],
      ['20 mm lower', [undefined], N],
    ]);
  });

  it('typed line by line, with names above or nothing but the heights that begin again', () => {
    const [a, b] = columnsOf([S, L]);
    const lines = (column: readonly number[], between = ' ') =>
      HEIGHTS.map((t, r) => `${t}${between}${column[r]}`).join('\n');
    const named = (text: string) => read(text).sets.map(({ name, readings }) => [name, readings.length]);
    const expected = (first: string, second: string) => [
      [first, N],
      [second, N],
    ];
    expect(named(`stock\n${lines(a!)}\n\n20 mm lower\n${lines(b!)}`)).toEqual(expected('stock', '20 mm lower'));
    expect(named(`Stock:\n${lines(a!, ': ')}\nLowered joints:\n${lines(b!, ': ')}`)).toEqual(
      expected('Stock', 'Lowered joints'),
    );
    expect(named(`# Stock #\n${lines(a!)}\n# Lowered #\n${lines(b!)}`)).toEqual(expected('Stock', 'Lowered'));
    const bare = read(`${lines(a!)}\n${lines(b!)}`);
    expect(asked(bare)).toEqual([['sets', 'sets']]);
    expect(bare.questions[0]!.groups).toEqual([
      { columns: [1], rows: [0, N - 1] },
      { columns: [1], rows: [N, 2 * N - 1] },
    ]);
    // Two sweeps of one set are one pass still.
    const again = columnsOf([S], 7)[0]!.map((value, r) =>
      (value + a![0]! - columnsOf([S], 7)[0]![0]! + (r % 2) * 0.01).toFixed(2),
    );
    const one = read(`${lines(a!)}\n${lines(again.map(Number))}`);
    expect(asked(one)).toEqual([]);
    expect(sets(one)).toEqual([['', [undefined], 2 * N]]);
  });

  it('along lines, with names before them', () => {
    const [a, b, c] = columnsOf([S, S, L]);
    for (const first of ['Travel (mm)', '']) {
      const text = [
        [first, ...HEIGHTS],
        ['Stock 1', ...a!],
        ['Stock 2', ...b!],
        ['mean', ...averageOf([a!, b!])],
        ['Lowered', ...c!],
      ]
        .map((line) => line.join('\t'))
        .join('\n');
      expect(read(text).sets.map(({ name, readings }) => [name, readings.length])).toEqual([
        ['Stock', 2 * N],
        ['Lowered', N],
      ]);
      expect(read(text).derived).toHaveLength(1);
    }
  });

  it('a remark between readings of one pass parts nothing', () => {
    const [a] = columnsOf([S]);
    const rows = HEIGHTS.map((t, r) => `${t}\t${a![r]}`);
    rows.splice(5, 0, 'brake hose moved\t', '\t');
    expect(sets(read(rows.join('\n')))).toEqual([['', [undefined], N]]);
  });

  it('what the user says of a column counts before its heading', () => {
    const text = sheetOf(['Travel', 'Stock 1', 'Stock 2', 'Lowered 1'], columnsOf([S, S, L]));
    const found = read(text, { columns: { 3: { set: 'stock', pass: 'Third' } } });
    expect(sets(found)).toEqual([['Stock', ['Pass 1', 'Pass 2', 'Third'], 3 * N]]);
    expect(read(text, { columns: { 2: { set: 'Other arms' } } }).sets.map(({ name }) => name)).toEqual([
      'Stock',
      'Other arms',
      'Lowered',
    ]);
  });
});

describe('where no name parts them the figures are asked', () => {
  it('two columns that differ by more than their scatter allows: two sets of parts, or passes of one?', () => {
    const text = sheetOf(undefined, columnsOf([S, L]));
    const found = read(text);
    expect(asked(found)).toEqual([['sets', 'sets']]);
    expect(found.questions[0]!.groups).toEqual([{ columns: [1] }, { columns: [2] }]);
    expect(sets(found)).toEqual([
      ['Set 1', [undefined], N],
      ['Set 2', [undefined], N],
    ]);
    const passes = read(text, { answers: { sets: 'passes' } });
    expect(sets(passes)).toEqual([['', ['Pass 1', 'Pass 2'], 2 * N]]);
    expect(passes.questions[0]!.isAnswered).toBe(true);
    expect(sets(read(text, { answers: { sets: 'sets' } }))).toEqual(sets(found));
  });
  it('and several columns of each are parted between them', () => {
    const found = read(sheetOf(undefined, columnsOf([S, S, S, L, L, L])));
    expect(found.questions[0]!.groups).toEqual([{ columns: [1, 2, 3] }, { columns: [4, 5, 6] }]);
    expect(found.sets.map(({ readings }) => readings.length)).toEqual([3 * N, 3 * N]);
    expect(read(sheetOf(undefined, columnsOf([S, L, S, L]))).questions[0]!.groups).toEqual([
      { columns: [1, 3] },
      { columns: [2, 4] },
    ]);
  });
  it('passes of one set are not asked about', () => {
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      expect(asked(read(sheetOf(undefined, columnsOf([S, S, S], seed))))).toEqual([]);
      expect(asked(read(sheetOf(['Travel', 'Pass 1', 'Pass 2'], columnsOf([L, L], seed))))).toEqual([]);
    }
  });
  it('a zero further off than a gauge is put on again is asked about too', () => {
    const [a, b] = columnsOf([S, S]);
    const text = sheetOf(undefined, [a!, b!.map((value) => (value - 1.1).toFixed(2))]);
    expect(asked(read(text))).toEqual([['sets', 'sets']]);
  });
  it('numbers and letters may be of parts or of passes; a word for a pass, or others counted alike, make it likelier one', () => {
    const at = (headings: string[]) => asked(read(sheetOf(['Travel', ...headings], columnsOf([S, L]))));
    expect(at(['Joint A', 'Joint B'])).toEqual([['sets', 'sets']]);
    expect(asked(read(sheetOf(['Travel', 'Stock 1', 'Stock 2', 'Arms 1', 'Arms 2'], columnsOf([S, L, L, L]))))).toEqual(
      [['sets', 'passes']],
    );
    expect(at(['Pass 1', 'Pass 2'])).toEqual([['sets', 'passes']]);
    expect(at(['1', '2'])).toEqual([['sets', 'sets']]);
    expect(at(['A', 'B'])).toEqual([['sets', 'sets']]);
  });
  it('what told them apart is in their names then', () => {
    const named = (headings: string[]) =>
      read(sheetOf(['Travel', ...headings], columnsOf([S, L])), { answers: { sets: 'sets' } });
    expect(sets(named(['Joint A', 'Joint B']))).toEqual([
      ['Joint A', [undefined], N],
      ['Joint B', [undefined], N],
    ]);
    expect(named(['Pass 1', 'Pass 2']).sets.map(({ name }) => name)).toEqual(['Pass 1', 'Pass 2']);
    expect(named(['A', 'B']).sets.map(({ name }) => name)).toEqual(['A', 'B']);
    expect(named(['1', '2']).sets.map(({ name }) => name)).toEqual(['Set 1', 'Set 2']);
  });
  it('blocks of rows parted by nothing but an empty line, or by their headings again', () => {
    const [a, b] = columnsOf([S, L]);
    const rows = (column: readonly number[]) => HEIGHTS.map((t, r) => `${t}\t${column[r]}`).join('\n');
    for (const text of [`${rows(a!)}\n\t\n${rows(b!)}`, `Travel\tCamber\n${rows(a!)}\nTravel\tCamber\n${rows(b!)}`]) {
      const found = read(text);
      expect(asked(found)).toEqual([['sets', 'sets']]);
      expect(found.questions[0]!.groups!.map(({ rows: at }) => at![1] - at![0])).toEqual([N - 1, N - 1]);
      expect(found.sets.map(({ readings }) => readings.length)).toEqual([N, N]);
    }
  });
  it('a table that says its rows stand in any order tells no direction by it', () => {
    const [column] = stock;
    const text = sheetOf(['Travel (mm)', 'Camber (°)'], [column!]);
    expect(goings(read(text, { language: 'en' }))).toEqual(['up']);
    expect(goings(read(text, { language: 'en', answers: { order: 'any' } }))).toEqual([undefined]);
    const told = sheetOf(['Travel (mm)', 'Pass 1, going down (°)'], [column!]);
    expect(goings(read(told, { language: 'en', answers: { order: 'any' } }))).toEqual(['down']);
  });

  it('a published table is asked about by nobody: its headings decide', () => {
    const columns = columnsOf([S, L]);
    const table = (headings: string[]) => read(sheetOf(['Travel (mm)', ...headings], columns), { language: 'en' });
    expect(table(['Pass 1', 'Pass 2']).sets).toHaveLength(1);
    expect(table(['Standard joints', 'Lowered joints']).sets.map(({ name }) => name)).toEqual([
      'Standard joints',
      'Lowered joints',
    ]);
    expect(table(['Pass 1', 'Pass 2']).questions).toEqual([]);
  });
});

describe('columns that others give are left out', () => {
  const three = columnsOf([S, S, S]);
  const average = averageOf(three);
  const derived = (found: Understanding) => found.derived.map(({ kind, column, of }) => [kind, column, of]);

  it.each(['avg', 'Mean', 'Mittelwert', 'Ø', 'moyenne', 'Stock average', 'median?'])('an average called %s', (name) => {
    const found = read(sheetOf(['Travel', 'Stock 1', 'Stock 2', 'Stock 3', name], [...three, average]));
    expect(derived(found)).toEqual([['average', 4, [1, 2, 3]]]);
    expect(found.readings).toHaveLength(3 * N);
    expect(asked(found)).toEqual([]);
  });
  it('an average before its columns, and one of each direction', () => {
    expect(derived(read(sheetOf(['Travel', 'Mean', 'Stock 1', 'Stock 2', 'Stock 3'], [average, ...three])))).toEqual([
      ['average', 1, [2, 3, 4]],
    ]);
    const [a, b, c, d] = columnsOf([S, S, S, S], 3);
    const found = read(
      sheetOf(
        ['Travel', '1 up', '1 down', '2 up', '2 down', 'avg up', 'avg down'],
        [a!, b!, c!, d!, averageOf([a!, c!]), averageOf([b!, d!])],
      ),
    );
    expect(derived(found)).toEqual([
      ['average', 5, [1, 3]],
      ['average', 6, [2, 4]],
    ]);
    expect(found.readings).toHaveLength(4 * N);
  });
  it('whatever it is called, or without any name', () => {
    expect(derived(read(sheetOf(['Travel', 'a', 'b', 'c', 'used'], [...three, average])))).toEqual([
      ['average', 4, [1, 2, 3]],
    ]);
    expect(derived(read(sheetOf(undefined, [...three, average])))).toEqual([['average', 4, [1, 2, 3]]]);
  });
  it('honest passes beside one another are no averages', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const found = read(sheetOf(undefined, columnsOf([S, S, S], seed)));
      expect(found.derived).toEqual([]);
      expect(asked(found)).toEqual([]);
    }
    // Exactly half-way between two others, and alike to the last figure: nothing in their scatter says that it is worked out.
    const exact = HEIGHTS.map((t) => -0.5 - 0.01 * t);
    const even = [-0.02, 0, 0.02].map((zero) => exact.map((value) => (value + zero).toFixed(2)));
    expect(read(sheetOf(['Travel', 'Stock 1', 'Stock 2', 'Stock 3'], even)).readings).toHaveLength(3 * N);
    expect(read(sheetOf(undefined, even)).readings).toHaveLength(3 * N);
  });
  it('what is called an average and is none of what stands beside it is asked about', () => {
    const text = sheetOf(
      ['Travel', 'Stock 1', 'Stock 2', 'avg'],
      [three[0]!, three[1]!, average.map((value) => (value + 0.07).toFixed(2))],
    );
    const found = read(text);
    expect(asked(found)).toEqual([['average:2', 'leave-out']]);
    expect(found.readings).toHaveLength(2 * N);
    expect(read(text, { answers: { 'average:2': 'use' } }).readings).toHaveLength(3 * N);
  });
  it('averages are readings where nothing else is there', () => {
    const found = read(sheetOf(['Travel', 'Stock avg', 'Lowered avg'], columnsOf([S, L])));
    expect(found.sets.map(({ name, readings }) => [name, readings.length])).toEqual([
      ['Stock', N],
      ['Lowered', N],
    ]);
  });
  it('changes are readings where nothing else is there, averages of parts under another name are found', () => {
    const found = read(sheetOf(['Travel', 'Stock change', 'Lowered change'], columnsOf([S, L])));
    expect(found.sets.map(({ name }) => name)).toEqual(['Stock change', 'Lowered change']);
    const [a, b, c, d] = columnsOf([S, L, S, L]);
    const sheet = sheetOf(
      ['Travel', 'Stock 1', 'Lowered 1', 'Stock 2', 'Lowered 2', 'avg std', 'avg low'],
      [a!, b!, c!, d!, averageOf([a!, c!]), averageOf([b!, d!])],
    );
    expect(derived(read(sheet))).toEqual([
      ['average', 5, [1, 3]],
      ['average', 6, [2, 4]],
    ]);
  });
  it('gaps in the columns are none in their average', () => {
    const gappy = three.map((column, k) => column.map((value, r) => (r === 2 * k ? '' : value)));
    const means = HEIGHTS.map((_, r) => {
      const there = gappy.map((column) => column[r]).filter((value) => value !== '') as number[];
      return (there.reduce((sum, value) => sum + value, 0) / there.length).toFixed(3);
    });
    expect(derived(read(sheetOf(['Travel', 'Stock 1', 'Stock 2', 'Stock 3', 'avg'], [...gappy, means])))).toEqual([
      ['average', 4, [1, 2, 3]],
    ]);
  });
  it('spreads, differences, and a column less its own value at one height', () => {
    const sd = HEIGHTS.map((_, r) => {
      const at = three.map((column) => column[r]!);
      const mean = at.reduce((sum, value) => sum + value, 0) / 3;
      return Math.sqrt(at.reduce((sum, value) => sum + (value - mean) ** 2, 0) / 2).toFixed(3);
    });
    const found = read(sheetOf(['Travel', 'Stock 1', 'Stock 2', 'Stock 3', 'avg', 'sd'], [...three, average, sd]));
    expect(derived(found)).toEqual([
      ['average', 4, [1, 2, 3]],
      ['spread', 5, []],
    ]);
    // It is of angles, and its heading names no unit: never mm.
    expect(found.columns[5]).not.toHaveProperty('unit');
    const least = HEIGHTS.map((_, r) => Math.min(...three.map((column) => column[r]!)).toFixed(2));
    expect(
      derived(
        read(sheetOf(['Travel', 'Stock 1', 'Stock 2', 'Stock 3', 'min', 'n'], [...three, least, least.map(() => 3)])),
      ),
    ).toEqual([
      ['spread', 4, []],
      ['spread', 5, []],
    ]);
    const [a, b] = columnsOf([S, L]);
    const off = a!.map((value, r) => (b![r]! - value).toFixed(2));
    for (const headings of [
      ['Travel', 'Stock', 'Lowered', 'Difference'],
      ['Travel', 'Stock', 'Lowered', 'gained'],
    ]) {
      const found = read(sheetOf(headings, [a!, b!, off]));
      expect(derived(found)).toEqual([['difference', 3, [1, 2]]]);
      expect(found.sets.map(({ name }) => name)).toEqual(['Stock', 'Lowered']);
    }
    const change = a!.map((value) => (value - a![4]!).toFixed(2));
    expect(derived(read(sheetOf(['Travel', 'Camber', 'Change'], [a!, change])))).toEqual([['copy', 2, [1]]]);
  });
  it('in rows called so, too', () => {
    const rows = [...three, average].flatMap((column, k) =>
      HEIGHTS.map((t, r) => `${k < 3 ? k + 1 : 'mean'}\t${t}\t${column[r]}`),
    );
    const found = read(`Pass\tTravel\tCamber\n${rows.join('\n')}`);
    expect(found.readings).toHaveLength(3 * N);
    expect(found.derived.map(({ kind }) => kind)).toEqual(['average']);
    expect(found.cells.at(-1)!.map(({ why }) => why)).toEqual(['derived', 'derived', 'derived']);
  });
  it('the user can say that a column holds readings after all', () => {
    const text = sheetOf(['Travel', 'Stock 1', 'Stock 2', 'Stock 3', 'avg'], [...three, average]);
    const found = read(text, { columns: { 4: { role: 'value', pass: 'Fourth' } } });
    expect(found.readings).toHaveLength(4 * N);
    expect(found.derived).toEqual([]);
  });
});
