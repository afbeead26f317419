import { goingMark, goingOf } from './cell-kind.js';
import type { Column } from './columns.js';
import { endsWhereItBegan, goingByOrder } from './going.js';
import { sectionSays } from './heading.js';
import { sideOf } from './heights.js';
import type { RowKind, Sheet } from './lay-out.js';
import { angleAt, type Place } from './places.js';
import type { Reading } from './reading.js';

/** A reading and the cell of its value. */
export interface Taken {
  reading: Reading;
  at: [row: number, column: number];
  place: Place;
  /** Row of the line that names its pass or direction. */
  section?: number;
}

const named = (text: string) => (/^\d+$/.test(text.trim()) ? `Pass ${text.trim()}` : text.trim());

/**
 * Puts the cells of each row together.
 *
 * @param values mm and degrees by cell, NaN where there is none; travel, not height
 * @param base mm
 * @param areSides whether "bump" and "droop" over values or rows say on which side of zero a height lies, and no direction
 */
export function takeReadings(
  sheet: Sheet,
  columns: readonly Column[],
  places: readonly Place[],
  values: readonly (readonly number[])[],
  base: number | undefined,
  areSides: boolean,
): Taken[] {
  const passAt = columns.findIndex(({ role }) => role === 'pass');
  const goingAt = columns.findIndex(({ role }) => role === 'going');
  const isOne =
    passAt < 0 && places.length === 1 && !columns[places[0]!.value]!.pass && !sheet.rows.includes('section');
  const blocks = isOne ? blocksOf(sheet.rows) : undefined;
  const taken: Taken[] = [];
  let section: { row: number; pass?: string; going?: 'up' | 'down' } | undefined;
  let [passText, goingText] = ['', ''];
  for (const [r, kind] of sheet.rows.entries()) {
    const texts = sheet.texts[r]!;
    if (kind === 'section') {
      const says = sectionSays(texts[0]!)!;
      // "Pass 1" holds for the lines "up" and "down" below it.
      section = { row: r, ...(!says.pass && section?.pass && { pass: section.pass }), ...says };
    }
    if (kind !== 'data') continue;
    // A merged cell stands in its first row only.
    if (texts[passAt]?.trim()) passText = texts[passAt];
    if (texts[goingAt]?.trim()) goingText = texts[goingAt];
    for (const place of places) {
      const travel = place.height === undefined ? Number.NaN : values[r]![place.height]!;
      const value = angleAt(place, values[r]!, base);
      if (Number.isNaN(travel) || Number.isNaN(value)) continue;
      const column = columns[place.value]!;
      const own = passAt >= 0 && passText.trim() ? named(passText) : column.pass;
      const pass = [section?.pass ?? blocks?.[r], own].filter((name) => name !== undefined).join(', ');
      const going =
        goingMark(goingText) ??
        goingOf(texts[place.value]!) ??
        goingOf(texts[place.height!]!) ??
        column.going ??
        section?.going;
      const label = [goingText, column.heading, section ? sheet.texts[section.row]![0]! : ''];
      const side = areSides ? label.map(sideOf).find(Boolean) : undefined;
      const body = place.body === undefined ? Number.NaN : values[r]![place.body]!;
      taken.push({
        reading: {
          travel: side ? travel * side + 0 : travel,
          value,
          ...(pass && { pass }),
          ...(going && !side && { going }),
          ...(!Number.isNaN(body) && { body }),
        },
        at: [r, place.value],
        place,
        ...(section && { section: section.row }),
      });
    }
  }
  tellDirections(taken);
  return taken;
}

/** Blocks parted by empty lines are passes; lines set far apart are not. By row. */
function blocksOf(rows: readonly RowKind[]): string[] | undefined {
  const blocks: number[][] = [[]];
  for (const [r, kind] of rows.entries()) {
    if (kind === 'data') blocks.at(-1)!.push(r);
    else if (kind === 'empty' && blocks.at(-1)!.length > 0) blocks.push([]);
  }
  const full = blocks.filter((block) => block.length > 0);
  if (full.length < 2 || full.some((block) => block.length < 3)) return undefined;
  const names: string[] = [];
  for (const [i, block] of full.entries()) for (const r of block) names[r] = `Pass ${i + 1}`;
  return names;
}

/**
 * Where no direction is marked, the order of heights tells it. In a table that several passes share the order of the rows is the
 * table's and not that of the readings, unless it turns. A pass that ends where it began was read there again.
 */
function tellDirections(taken: readonly Taken[]): void {
  const passes = new Map<string, number[]>();
  for (const [i, { reading, at }] of taken.entries()) {
    const key = `${reading.pass ?? ''}\n${at[1]}`;
    const own = passes.get(key);
    if (own) own.push(i);
    else passes.set(key, [i]);
  }
  for (const at of passes.values()) {
    const travels = at.map((i) => taken[i]!.reading.travel);
    const isBack = endsWhereItBegan(travels, taken[at[0]!]!.reading.going);
    if (isBack) taken[at.at(-1)!]!.reading.again = true;
    if (at.some((i) => taken[i]!.reading.going)) continue;
    const going = goingByOrder(isBack ? travels.slice(0, -1) : travels);
    // Nobody lists a height again below the others unless it was read last: there the order is that of the readings.
    const isShared = at.at(-1)! - at[0]! >= at.length && !isBack;
    if (!going || (isShared && new Set(going).size === 1)) continue;
    for (const [k, i] of at.entries()) taken[i]!.reading.going = going[Math.min(k, going.length - 1)]!;
  }
}
