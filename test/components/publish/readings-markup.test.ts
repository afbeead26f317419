import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDoubts } from '../../../components/page-data/doubts-attribute.js';
import { readReadingSheet } from '../../../components/page-data/reading-sheet.js';
import { tableProblems } from '../../../components/page-data/table-problems.js';
import { readingsMarkup, readingsTable } from '../../../components/publish/readings-markup.js';
import { readings as answerOf } from '../../../core/answers/readings.js';
import { EXAMPLE_SETUPS } from '../../../core/document/example-setups.js';
import type { Setup } from '../../../core/document/setup.js';
import { EXAMPLE_SETUP } from '../../../core/document/setups.js';
import { toeOfPair } from '../../../core/readings/over-base.js';
import type { Reading } from '../../../core/readings/reading.js';
import { readCars } from '../../core/document/random-setups.js';
import { randomNumbers } from '../../core/driveway/random-car.js';
import { randomReadings } from '../../core/readings/warnings/random-readings.js';
import { nastyText } from './nasty-text.js';
import { elementsIn, type ReadTable, tablesIn } from './read-markup.js';

/** The sets in a piece of HTML as a page reads them: by a standard's parser, then by the reader of published tables. */
function setsIn(html: string, quantity: Setup['quantity'] = 'camber') {
  const [table] = tablesIn(html);
  const { lang, ...data } = table!.attributes;
  const attributes = Object.fromEntries(
    Object.entries(data).map(([name, value]) => [name.slice('data-'.length), value]),
  );
  const found = readReadingSheet({ ...table!, attributes, language: lang! }, quantity);
  const problems = [...tableProblems(found)];
  const doubts = readDoubts(data['data-doubts'], problems);
  expect(problems).toEqual([]);
  return {
    table: table!,
    overBase: found.overBase,
    sets: found.sets.map(({ name, readings }) => ({
      name: name || table!.caption,
      quantity,
      readings: readings.map((i) => found.readings[i]!),
      ...(doubts && { doubts }),
    })),
  };
}

/** What the element of readings says of a set. */
const said = ({ quantity, readings, doubts }: Pick<Setup, 'quantity' | 'readings' | 'doubts'>) => {
  const { change, fit } = answerOf({ quantity, readings, doubts, over: 20 });
  return [change!.value, change!.plusMinus, fit.degree];
};

function expectSame(found: readonly Pick<Setup, 'name' | 'quantity' | 'readings'>[], setups: readonly Setup[]): void {
  expect(found.map(({ name }) => name)).toEqual(setups.map(({ name }) => name));
  for (const [i, setup] of setups.entries()) {
    const [before, after] = [said(setup), said(found[i]!)];
    for (const [k, figure] of before.entries()) expect(after[k]).toBeCloseTo(figure!, 6);
  }
}

/** Each pass begins and ends at the same height, as somebody reads who looks for drift. */
function withReturn(readings: readonly Reading[]): Reading[] {
  const passes = [...new Set(readings.map(({ pass }) => pass))];
  return passes.flatMap((name) => {
    const pass = readings.filter((reading) => reading.pass === name);
    const [first] = pass;
    return [...pass, { ...first!, value: Number((first!.value + 0.03).toFixed(4)), again: true as const }];
  });
}

/** A string along the car, read at both edges of the rim; toe is what they give. */
function byString(readings: readonly Reading[]): Pick<Setup, 'quantity' | 'readings' | 'overBase'> {
  const overBase = { by: 'tape', base: 420, front: 'inboard' } as const;
  return {
    quantity: 'toe',
    overBase,
    readings: readings.map(({ value: _, ...reading }, i) => {
      const pair = [80 + (i % 7) / 2, 79.5] as const;
      return { ...reading, pair, value: toeOfPair(pair, overBase) };
    }),
  };
}

const NAMES = ['Standard arms', 'Joint 20 mm lower', 'Längslenker', 'Plates, +15 mm'];

describe('readingsTable', () => {
  it('writes one column for each pass with its direction, heights down the side, in the language’s notation', () => {
    const html = readingsTable([EXAMPLE_SETUP], 'de');
    const [{ rows, caption, attributes }] = tablesIn(html) as [ReadTable];
    expect(caption).toBe(EXAMPLE_SETUP.name);
    expect(attributes).toEqual({ lang: 'de' });
    expect(rows[0]).toEqual([
      'Wheel travel (mm)',
      'Pass 1, going up (°)',
      'Pass 2, going down (°)',
      'Pass 3, going up (°)',
    ]);
    expect(rows[2]).toEqual(['−30', '0,03', '−0,09', '0,06']);
    expect(rows[1]).toEqual(['−35', '', '', '0,15']);
  });

  it('puts sets that were read alike into one table, and others into tables of their own', () => {
    expect(tablesIn(readingsTable(EXAMPLE_SETUPS, 'en'))).toHaveLength(1);
    const [one, other] = EXAMPLE_SETUPS as [Setup, Setup];
    const unlike = [one, { ...other, doubts: { gaugeScale: 3 } }];
    expect(tablesIn(readingsTable(unlike, 'en')).map(({ caption }) => caption)).toEqual([one.name, other.name]);
    expect(readingsMarkup(unlike, 'en').isExact).toBe(false);
    expect(readingsTable([], 'en')).toBe('');
  });

  it('leaves out what was set aside, and says how much that is', () => {
    const setup = { ...EXAMPLE_SETUP, setAside: [0, 3] };
    const { html, aside, isExact } = readingsMarkup([setup], 'en');
    expect([aside, isExact]).toEqual([2, true]);
    expect(setsIn(html).sets[0]!.readings).toHaveLength(EXAMPLE_SETUP.readings.length - 2);
  });
});

describe('what a page reads from it is what was read', () => {
  const random = randomNumbers(71);
  const cases = Array.from({ length: 60 }, (_, i) => ({ i, language: ['en', 'de', 'fr'][i % 3]!, random }));

  it.each(cases)(
    'of one set: passes, directions, heights read twice, a body reference, doubts: $i',
    ({ i, language }) => {
      const read = randomReadings(random, { hasBody: i % 5 === 4, passes: [1, 4] });
      const readings = i % 3 === 1 ? withReturn(read) : read;
      const setup: Setup = {
        ...EXAMPLE_SETUP,
        name: NAMES[i % NAMES.length]!,
        readings,
        ...(i % 4 === 0 && { doubts: { gaugeScale: 2.5, zeroHeight: 4, drift: 0.1 } }),
      };
      const { html, isExact } = readingsMarkup([setup], language);
      expect(isExact).toBe(true);
      const { sets } = setsIn(html);
      expectSame(sets, [setup]);
      const ways = (some: readonly Reading[]) =>
        some.map(({ going, again, body }) => `${going} ${again} ${body}`).sort();
      expect(ways(sets[0]!.readings)).toEqual(ways(readings));
    },
  );

  it.each(cases.slice(0, 20))('of several sets of parts: $i', ({ i, language }) => {
    const setups = NAMES.slice(0, 2 + (i % 3)).map(
      (name): Setup => ({ ...EXAMPLE_SETUP, name, readings: randomReadings(random, { passes: [1, 3] }) }),
    );
    const { html, isExact } = readingsMarkup(setups, language);
    expect(isExact).toBe(true);
    expectSame(setsIn(html).sets, setups);
  });

  it.each(cases.slice(0, 10))('of toe by two figures over a base: $i', ({ language }) => {
    const setup: Setup = { ...EXAMPLE_SETUP, ...byString(randomReadings(random, { passes: [1, 2] })) };
    const { html, isExact } = readingsMarkup([setup], language);
    expect(isExact).toBe(true);
    const { sets, overBase } = setsIn(html, 'toe');
    expect(overBase).toEqual(setup.overBase);
    expectSame(sets, [setup]);
    expect(sets[0]!.readings.every(({ pair }) => pair)).toBe(true);
  });

  it('where it says that it is, whatever the documents hold; and every figure stands in it all the same', () => {
    let exact = 0;
    fc.assert(
      fc.property(readCars, ({ setups = [] }) => {
        const one = setups.filter(({ readings, setAside = [] }) => readings.length > setAside.length).slice(0, 1);
        const { html, isExact } = readingsMarkup(one, 'en');
        if (one.length === 0) return;
        const [{ rows }] = tablesIn(html) as [ReadTable];
        expect(rows.length).toBeGreaterThan(1);
        if (!isExact) return;
        exact++;
        const [{ quantity, setAside = [], readings }] = one as [Setup];
        const inUse = readings.filter((_, i) => !setAside.includes(i));
        const { sets } = setsIn(html, quantity);
        const figures = (some: readonly Reading[]) =>
          some.map(({ travel, value }) => `${travel.toFixed(4)} ${value.toFixed(4)}`).sort();
        expect(figures(sets[0]!.readings)).toEqual(figures(inUse));
      }),
      { seed: 5, numRuns: 40 },
    );
    expect(exact).toBeGreaterThan(0);
  });
});

describe('the HTML', () => {
  const nasty = nastyText;
  const TAGS = ['table', 'caption', 'thead', 'tbody', 'tr', 'th', 'td', 'data'];

  it('holds nothing but a table, on lines that Markdown leaves alone, whatever sets and passes are called', () => {
    fc.assert(
      fc.property(nasty, nasty, nasty, (name, pass, other) => {
        const readings = EXAMPLE_SETUP.readings.map((reading) => ({
          ...reading,
          pass: reading.pass === 'Pass 1' ? pass : `${other}${reading.pass}`,
        }));
        const setups = [{ ...EXAMPLE_SETUP, name, readings }, EXAMPLE_SETUPS[1]!];
        for (const html of [readingsTable(setups, 'en'), readingsTable(setups.slice(0, 1), 'en')]) {
          expect(elementsIn(html).filter(({ tagName }) => !TAGS.includes(tagName))).toEqual([]);
          const lines = html.split('\n');
          expect(lines.filter((line) => line.trim() === '' || /^ {4}/.test(line))).toEqual([]);
          expect(lines.filter((line) => line.lastIndexOf('<') > line.lastIndexOf('>'))).toEqual([]);
          expect(html).not.toMatch(/<!--|<\/script/);
        }
        const [{ caption }] = tablesIn(readingsTable(setups.slice(0, 1), 'en')) as [ReadTable];
        expect(caption).toBe(name.replace(/\s+/g, ' ').trim());
      }),
      { seed: 8, numRuns: 25 },
    );
  });
});
