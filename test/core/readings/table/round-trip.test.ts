import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { METRIC } from '../../../../core/quantity/units.js';
import { splitText } from '../../../../core/readings/table/split-text.js';
import { understand } from '../../../../core/readings/table/understand.js';
import type { Understanding } from '../../../../core/readings/table/understanding.js';
import { setWays, taken, takenSets, type Way, type Written, ways, write, writeSets } from './write-sheet.js';

/** What the writer of the sheet would answer. */
const answersFor = ({ zero }: Way) => ({
  comma: 'decimal',
  minutes: 'decimal',
  sets: 'passes',
  'value-sign': 'top-out',
  'height-or-travel': zero === undefined ? 'travel' : 'height',
  ...(zero !== undefined && { zero: String(zero) }),
});

const read = (rows: string[][], way: Way): Understanding =>
  understand(rows, { quantity: 'camber', units: METRIC, answers: answersFor(way) });

function expectSame(found: Understanding, { readings }: Pick<Written, 'readings'>, hasMarks: boolean): void {
  expect(found.readings.length).toBe(readings.length);
  for (const [i, reading] of readings.entries()) {
    const { travel, value, pass, going } = found.readings[i]!;
    expect(travel).toBeCloseTo(reading.travel, 4);
    expect(value).toBeCloseTo(reading.value, 5);
    expect(pass).toBe(reading.pass);
    // Without marks the order may tell it.
    if (hasMarks) expect(going).toBe(reading.going);
  }
}

const examples = { seed: 21, numRuns: 300, endOnFailure: true };
const marked = (way: Way) => way.direction !== 'none' && (way.headings || way.form === 'long');

describe('readings written out and read back are the same readings', () => {
  it('in every notation, as cells', () => {
    fc.assert(
      fc.property(taken, ways, (given, way) => {
        const written = write(given, way);
        const found = read(written.rows, way);
        expect(found.problems).toEqual([]);
        expectSame(found, written, marked(way));
      }),
      examples,
    );
  });

  it('in every notation, as text', () => {
    fc.assert(
      fc.property(taken, ways, (given, way) => {
        const written = write(given, way);
        expectSame(read(splitText(written.text), way), written, marked(way));
      }),
      examples,
    );
  });

  it('through inches and back, nothing changes', () => {
    fc.assert(
      fc.property(taken, ways, (given, way) => {
        const [mm, inches] = (['mm', 'in'] as const).map(
          (length) => read(write(given, { ...way, length }).rows, way).readings,
        );
        expect(inches!.length).toBe(mm!.length);
        for (const [i, reading] of mm!.entries()) {
          const { travel, ...rest } = inches![i]!;
          expect(travel).toBeCloseTo(reading.travel, 4);
          expect({ ...rest, travel: reading.travel }).toEqual(reading);
        }
      }),
      examples,
    );
  });
});

describe('several sets written into one sheet come back as exactly those sets', () => {
  const readSets = (rows: string[][], language?: string) =>
    understand(rows, {
      quantity: 'camber',
      units: METRIC,
      answers: { 'value-sign': 'top-out' },
      ...(language && { language }),
    });

  it('by their names alone, with averages, spreads and differences beside them or without', () => {
    fc.assert(
      fc.property(takenSets, setWays, fc.boolean(), (given, way, isPublished) => {
        const { rows, expected, averages } = writeSets(given, way);
        const found = readSets(rows, isPublished ? 'en' : undefined);
        expect(found.problems).toEqual([]);
        expect(found.sets.map(({ name }) => name)).toEqual(expected.map(({ name }) => name));
        expect(found.derived.filter(({ kind }) => kind === 'average')).toHaveLength(averages);
        expect(found.readings.every(({ going }) => going === undefined || way.form !== 'columns')).toBe(true);
        for (const [s, set] of expected.entries()) {
          const own = found.sets[s]!.readings.map((i) => found.readings[i]!);
          const passes = [...new Set(own.map(({ pass }) => pass))].map((name) =>
            own.filter(({ pass }) => pass === name).map(({ travel, value }) => ({ travel, value })),
          );
          expect(passes).toEqual(set.passes);
        }
      }),
      { ...examples, numRuns: 300 },
    );
  });

  it('as text, with any separator', () => {
    fc.assert(
      fc.property(takenSets, setWays, fc.constantFrom('\t', ';', ' | '), (given, way, separator) => {
        const { rows, expected } = writeSets(given, way);
        const found = readSets(splitText(rows.map((row) => row.join(separator)).join('\n')));
        expect(found.sets.map(({ name, readings }) => [name, readings.length])).toEqual(
          expected.map(({ name, passes }) => [name, passes.flat().length]),
        );
      }),
      { ...examples, numRuns: 100 },
    );
  });
});

describe('the order of rows', () => {
  it('changes nothing but the order of the readings, where directions are marked', () => {
    fc.assert(
      fc.property(taken, ways, fc.infiniteStream(fc.nat()), (given, some, keys) => {
        const way: Way = { ...some, headings: true, direction: some.direction === 'none' ? 'words' : some.direction };
        const { rows } = write(given, way);
        const top = way.unitAt === 'second-heading' ? 2 : 1;
        const order = rows.slice(top).map((row) => ({ row, key: keys.next().value as number }));
        const mixed = order.sort((a, b) => a.key - b.key).map(({ row }) => row);
        const sorted = (found: Understanding) => found.readings.map((reading) => JSON.stringify(reading)).sort();
        expect(sorted(read([...rows.slice(0, top), ...mixed], way))).toEqual(sorted(read(rows, way)));
      }),
      examples,
    );
  });
});

describe('no cell is lost', () => {
  const cell = fc.oneof(
    fc.constantFrom(
      '',
      '-',
      '−20',
      '0',
      '1,500',
      '1.30',
      '-0,25',
      "0°18'",
      '1 1/2',
      '↑',
      'up',
      'Pass 1',
      'Travel (mm)',
      'Camber (°)',
      'x',
      '365',
      '20 mm',
      '-.5 ↓',
      '99',
      'Mean',
      '1e5',
      '٣',
      '"',
      '= A1',
      '0.1.2',
    ),
    fc.string({ maxLength: 6 }),
    fc.double({ min: -400, max: 400, noNaN: true }).map(String),
  );
  const sheets = fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 12 });
  const options = fc.record({
    quantity: fc.constantFrom('camber' as const, 'toe' as const),
    units: fc.constantFrom(METRIC, { length: 'in' as const, angle: 'arcminutes' as const }),
    answers: fc.dictionary(
      fc.constantFrom('zero', 'comma', 'minutes', 'base', 'value-sign', 'unit:0'),
      fc.constantFrom('decimal', 'thousands', '300', 'minutes', 'in', '', 'x'),
    ),
    columns: fc.dictionary(
      fc.constantFrom('0', '1', '2'),
      fc.record({
        role: fc.constantFrom(
          'travel' as const,
          'height' as const,
          'value' as const,
          'dialFront' as const,
          'dialRear' as const,
          'body' as const,
          'pass' as const,
          'going' as const,
          'other' as const,
        ),
      }),
    ),
  });

  it('every cell of any sheet has a state that fits, and nothing throws', () => {
    fc.assert(
      fc.property(
        sheets,
        options,
        fc.option(fc.constantFrom('en', 'de'), { nil: undefined }),
        (rows, given, language) => {
          const found = understand(rows, { ...given, ...(language && { language }) });
          const width = Math.max(0, ...rows.map((row) => row.length));
          expect(found.cells.map((row) => row.map(({ text }) => text))).toEqual(
            rows.map((row) => Array.from({ length: width }, (_, i) => row[i] ?? '')),
          );
          expect(found.columns.length).toBe(width);
          if (language) expect(found.questions).toEqual([]);
          const ids = found.questions.map(({ id }) => id);
          expect(new Set(ids).size).toBe(ids.length);
          for (const reading of found.readings)
            expect(Number.isFinite(reading.travel) && Number.isFinite(reading.value)).toBe(true);
          for (const [r, row] of found.cells.entries())
            for (const [c, one] of row.entries()) {
              if (one.state === 'read') expect(found.readings[one.reading!]).toBeDefined();
              if (one.state === 'left-out') expect(one.why).toBeDefined();
              if (one.state === 'problem') expect(one.problem!.code).toBeDefined();
              if (one.state === 'asked') {
                expect(found.questions.find(({ id }) => id === one.question)!.cells).toContainEqual([r, c]);
              }
            }
        },
      ),
      { seed: 22, numRuns: 1000, endOnFailure: true },
    );
  });
});
