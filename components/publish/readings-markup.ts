import type { Setup } from '../../core/document/setup.js';
import { readingsInUse } from '../../core/document/setup-in-use.js';
import { DOUBT_KEYS, type ReadingDoubts } from '../../core/readings/doubts.js';
import type { Reading } from '../../core/readings/reading.js';
import { readReadingSheet } from '../page-data/reading-sheet.js';
import { tableHtml, textsIn } from './markup-table.js';
import { canBeColumns, columnsOf, longOf, type ReadingsLayout } from './readings-layout.js';
import { isSameSets } from './same-readings.js';

/** Tables of readings, and what a page that reads them has of the sets. */
export interface ReadingsMarkup {
  html: string;
  /** Whether one table holds all that was read, so that an element reads the same from it: names of sets, readings, passes, directions, doubts. */
  isExact: boolean;
  /** Whether passes have other names in it than their own. */
  isRenamed: boolean;
  /** How many readings were set aside: they are left out. */
  aside: number;
}

/** Sets of parts with their readings as HTML tables, as elements read them from a page; without readings none. */
export const readingsTable = (setups: readonly Setup[], language: string): string =>
  readingsMarkup(setups, language).html;

/**
 * One table for all sets that were read alike, another for each other way: by other instruments, of the other angle. Of several ways to
 * write them down the first counts from which a page reads the same readings; what stands in a table without any is what was read all
 * the same.
 *
 * @param language whose decimal mark the figures have; the words are English
 */
export function readingsMarkup(setups: readonly Setup[], language: string): ReadingsMarkup {
  const read = setups.filter((setup) => readingsInUse(setup).length > 0);
  const alike = new Map<string, Setup[]>();
  for (const setup of read) {
    const { quantity, doubts, overBase } = setup;
    const key = JSON.stringify([quantity, DOUBT_KEYS.map((one) => doubts?.[one]), overBase]);
    const group = alike.get(key);
    if (group) group.push(setup);
    else alike.set(key, [setup]);
  }
  const tables = [...alike.values()].map((group) => tableOf(group, language));
  return {
    html: tables.map(({ html }) => html).join('\n'),
    isExact: tables.length < 2 && tables.every(({ isExact }) => isExact),
    isRenamed: tables.some(({ isRenamed }) => isRenamed),
    aside: setups.reduce((sum, { setAside = [] }) => sum + setAside.length, 0),
  };
}

/** In sets that were read alike: as few tries as it takes. */
function tableOf(setups: readonly Setup[], language: string): Omit<ReadingsMarkup, 'aside'> {
  const [{ quantity, doubts, overBase, name }] = setups as [Setup];
  const sets = setups.map((setup) => ({ name: setup.name, readings: readingsInUse(setup) }));
  const all = sets.flatMap(({ readings }) => readings);
  const isAnyOrder = all.some(({ going }) => going === undefined);
  const hasPairs = overBase !== undefined && all.every(({ pair }) => pair);
  const attributes = {
    ...(doubts && { 'data-doubts': doubtsText(doubts) }),
    ...(isAnyOrder && { 'data-order': 'any' }),
  };
  const ofPairs = overBase && {
    ...attributes,
    'data-base': String(overBase.base),
    'data-front': overBase.front,
  };
  const caption = setups.length === 1 ? name : '';
  let last: Omit<ReadingsMarkup, 'aside'> | undefined;
  for (const layout of layoutsOf(sets, { quantity, ...(hasPairs && { by: overBase.by }) }, language)) {
    const table = { caption, attributes: (layout.by && ofPairs) || attributes, ...layout.made };
    const found = readReadingSheet(
      { rows: textsIn(table), caption, attributes: bareNames(table.attributes), language },
      quantity,
    );
    const isExact = isSameSets(sets, found, caption, layout.by && overBase);
    last = { html: tableHtml(table, language), isExact, isRenamed: layout.isNumbered };
    if (isExact) return last;
  }
  return last!;
}

interface Tried extends ReadingsLayout {
  made: ReturnType<typeof columnsOf>;
  isNumbered: boolean;
}

/** The ways to write sets down, the one that reads best first. */
function* layoutsOf(
  sets: readonly { name: string; readings: readonly Reading[] }[],
  { by, quantity }: ReadingsLayout,
  language: string,
): Iterable<Tried> {
  const ways: ReadingsLayout[] = by ? [{ quantity, by }, { quantity }] : [{ quantity }];
  for (const way of ways) {
    for (const isNumbered of [false, true]) {
      const named = sets.map(({ name, readings }) => ({ name, readings: withPassNames(readings, isNumbered) }));
      const made = { ...way, isNumbered };
      if (canBeColumns(named)) yield { ...made, made: columnsOf(named, way, language) };
      yield { ...made, made: longOf(named, way, language, true) };
      yield { ...made, made: longOf(named, way, language, false) };
    }
  }
}

/** A name for every pass, where there are several: those without one, or all of them, are numbered. */
function withPassNames(readings: readonly Reading[], areAllNumbered: boolean): readonly Reading[] {
  const passes = [...new Set(readings.map(({ pass }) => pass))];
  if (passes.length < 2 && !(areAllNumbered && passes[0] !== undefined)) return readings;
  const names = new Map<string | undefined, string>();
  const taken = new Set(areAllNumbered ? [] : passes);
  let number = 1;
  for (const pass of passes) {
    if (!areAllNumbered && pass !== undefined) {
      names.set(pass, pass);
      continue;
    }
    while (taken.has(`Pass ${number}`)) number++;
    taken.add(`Pass ${number}`);
    names.set(pass, `Pass ${number}`);
  }
  return readings.map((reading) => ({ ...reading, pass: names.get(reading.pass)! }));
}

const UNITS = { gaugeScale: ' %', tapeScale: ' %', zeroHeight: ' mm', drift: '°' } as const;

/** As `readDoubts` reads it back. */
export const doubtsText = (doubts: ReadingDoubts): string =>
  DOUBT_KEYS.flatMap((key) => {
    const { [key]: size } = doubts;
    const name = key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
    return size === undefined ? [] : `${name} ${size}${UNITS[key]}`;
  }).join('; ');

const bareNames = (attributes: Readonly<Record<string, string>>): Record<string, string> =>
  Object.fromEntries(Object.entries(attributes).map(([name, value]) => [name.replace('data-', ''), value]));
