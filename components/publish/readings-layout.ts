import type { OverBase } from '../../core/readings/over-base.js';
import type { Reading, ReadingQuantity } from '../../core/readings/reading.js';
import { upper } from '../element/sentence.js';
import { figureCell, freeFigure, type MarkupCell, type MarkupTable, placesOf } from './markup-table.js';
import { TABLES } from './publish.words.js';

interface NamedReadings {
  name: string;
  readings: readonly Reading[];
}

/** What stands in the columns of values. */
export interface ReadingsLayout {
  quantity: ReadingQuantity;
  /** Both figures of toe over a base, and what they were read with; without it the angle. */
  by?: OverBase['by'];
}

type Made = Pick<MarkupTable, 'head' | 'rows'>;

/** Places of an angle, of a length that was read with it, of a height. */
const ANGLE_PLACES = [2, 3] as const;
const FIGURE_PLACES = [0, 3] as const;
const TRAVEL_PLACES = 2;

type Going = Reading['going'];

/** Of what is read, and which way the wheel went. */
const named = (names: readonly string[], going: Going): string =>
  [...names, going ? TABLES.ways[going] : ''].filter(Boolean).join(', ');

/** Over the value of a pass, or over its two figures. */
function headsOf({ quantity, by }: ReadingsLayout, names: readonly string[], going: Going): string[] {
  const isNamed = names.some(Boolean);
  if (!by) return [TABLES.degrees(named(isNamed ? names : [TABLES[quantity]], going))];
  return TABLES.figures[by].map((figure) => {
    const own = named(names, going);
    return TABLES.millimetres(upper(own ? `${own}, ${figure}` : figure));
  });
}

const isSame = (one: Reading, other: Reading): boolean => one.pass === other.pass && one.going === other.going;

/** A reference on the body, row by row, has no place beside several passes. */
export const canBeColumns = (sets: readonly NamedReadings[]): boolean =>
  sets.every(({ readings }) => readings.every(({ body }) => body === undefined));

/** One column for each pass of each set and each way of it, heights down the side. A first height that was read again stands in a last row. */
export function columnsOf(sets: readonly NamedReadings[], layout: ReadingsLayout, language: string): Made {
  const columns = sets.flatMap(({ name, readings }) => {
    const found: { name: string; readings: Reading[] }[] = [];
    for (const reading of readings) {
      const own = found.find((one) => isSame(one.readings[0]!, reading));
      if (own) own.readings.push(reading);
      else found.push({ name: sets.length > 1 ? name : '', readings: [reading] });
    }
    return found;
  });
  const rows: { travel: number; cells: Map<number, Reading> }[] = [];
  const put = (reading: Reading, column: number, from: number) => {
    const row = rows.find(({ travel, cells }, i) => i >= from && travel === reading.travel && !cells.has(column));
    if (row) row.cells.set(column, reading);
    else rows.push({ travel: reading.travel, cells: new Map([[column, reading]]) });
  };
  const each = (isAgain: boolean, from: number) => {
    for (const [c, { readings }] of columns.entries())
      for (const reading of readings) if ((reading.again ?? false) === isAgain) put(reading, c, from);
  };
  each(false, 0);
  rows.sort((a, b) => a.travel - b.travel);
  each(true, rows.length);
  const values = valuesOf(layout, sets, language);
  return {
    head: [
      TABLES.travel,
      ...columns.flatMap(({ name, readings: [first] }) => headsOf(layout, [name, first!.pass ?? ''], first!.going)),
    ],
    rows: rows.map(({ travel, cells }) => [
      freeFigure(travel, TRAVEL_PLACES, language),
      ...columns.flatMap((_, c) => values(cells.get(c))),
    ]),
  };
}

/**
 * One row for each reading, with its set, pass and direction in columns of their own.
 *
 * @param isSorted whether heights follow one another as the wheel went; else as they were entered
 */
export function longOf(
  sets: readonly NamedReadings[],
  layout: ReadingsLayout,
  language: string,
  isSorted: boolean,
): Made {
  const all = sets.flatMap(({ readings }) => readings);
  const ways = all.filter(({ going }) => going).length;
  const has = {
    sets: sets.length > 1,
    passes: all.some(({ pass }) => pass !== undefined) || (ways > 0 && ways < all.length),
    // An empty cell would stand for what is above it: a direction that not all have is told with the pass.
    ways: ways > 0 && ways === all.length,
    body: all.some(({ body }) => body !== undefined),
  };
  const passText = ({ pass = '', going }: Reading) => (has.ways ? pass : named([pass], going));
  const values = valuesOf(layout, sets, language);
  const bodyPlaces = placesOf(
    all.flatMap(({ body }) => body ?? []),
    ...FIGURE_PLACES,
  );
  const rowOf = (name: string, reading: Reading): MarkupCell[] => [
    ...(has.sets ? [name] : []),
    ...(has.passes ? [passText(reading)] : []),
    ...(has.ways ? [reading.going!] : []),
    freeFigure(reading.travel, TRAVEL_PLACES, language),
    ...values(reading),
    ...(has.body ? [reading.body === undefined ? '' : figureCell(reading.body, bodyPlaces, language)] : []),
  ];
  return {
    head: [
      ...(has.sets ? [TABLES.parts] : []),
      ...(has.passes ? [TABLES.pass] : []),
      ...(has.ways ? [TABLES.direction] : []),
      TABLES.travel,
      ...headsOf(layout, [], undefined),
      ...(has.body ? [TABLES.body] : []),
    ],
    rows: sets.flatMap(({ name, readings }) => passesOf(readings, isSorted).map((reading) => rowOf(name, reading))),
  };
}

/** Pass by pass. */
function passesOf(readings: readonly Reading[], isSorted: boolean): Reading[] {
  const passes = [...new Set(readings.map(({ pass }) => pass))].map((name) =>
    readings.filter(({ pass }) => pass === name),
  );
  if (!isSorted) return passes.flat();
  return passes.flatMap((pass) => {
    const ways = [...new Set(pass.filter(({ again }) => !again).map(({ going }) => going))];
    const swept = ways.flatMap((way) => {
      const side = way === 'down' ? -1 : 1;
      const own = pass.filter(({ going, again }) => going === way && !again);
      return own.sort((a, b) => side * (a.travel - b.travel));
    });
    return [...swept, ...pass.filter(({ again }) => again)];
  });
}

/** The cells of one reading; empty ones where it was not taken. */
function valuesOf({ by }: ReadingsLayout, sets: readonly NamedReadings[], language: string) {
  const all = sets.flatMap(({ readings }) => readings);
  const figures = all.map(({ value, pair }) => (by ? (pair ?? []) : [value]));
  const [fewest, most] = by ? FIGURE_PLACES : ANGLE_PLACES;
  const places = placesOf(figures.flat(), fewest, most);
  return (reading: Reading | undefined): MarkupCell[] => {
    if (!reading) return by ? ['', ''] : [''];
    return (by ? [...reading.pair!] : [reading.value]).map((figure) => figureCell(figure, places, language));
  };
}
