import type { OverBase } from '../../core/readings/over-base.js';
import type { Reading } from '../../core/readings/reading.js';
import type { Understanding } from '../../core/readings/table/understanding.js';
import { tableProblems } from '../page-data/table-problems.js';

interface NamedReadings {
  name: string;
  readings: readonly Reading[];
}

/** Places to which figures are written, and to which they are the same. */
const PLACES = 6;
const rounded = (figure: number | undefined): number | undefined =>
  figure === undefined ? undefined : Number(figure.toFixed(PLACES)) + 0;

/** The passes of a set without their names: these change no answer. */
function passesIn(readings: readonly Reading[], hasPairs: boolean): string[] {
  const passes = new Map<string | undefined, string[]>();
  for (const { travel, value, pass, going, again, body, pair } of readings) {
    const figures = [travel, value, body, ...(hasPairs && pair ? pair : [])].map(rounded);
    const own = passes.get(pass);
    const text = JSON.stringify([figures, going, again]);
    if (own) own.push(text);
    else passes.set(pass, [text]);
  }
  return [...passes.values()].map((own) => own.sort().join()).sort();
}

/**
 * Whether a page that reads a table has the same sets: their names, and their readings, in whatever order, in passes of whatever name.
 *
 * @param caption over it, which names a set that stands alone
 * @param overBase how both figures of each reading were read, where they are to be kept
 */
export function isSameSets(
  sets: readonly NamedReadings[],
  found: Understanding,
  caption: string,
  overBase: OverBase | undefined,
): boolean {
  if (tableProblems(found).length > 0 || found.sets.length !== sets.length) return false;
  if (overBase && JSON.stringify(found.overBase) !== JSON.stringify(inOrder(overBase))) return false;
  return sets.every(({ name, readings }, i) => {
    const read = found.sets[i]!;
    const isNamed = sets.length > 1 ? read.name === name : caption === name;
    const own = read.readings.map((index) => found.readings[index]!);
    const [one, other] = [readings, own].map((some) => passesIn(some, overBase !== undefined));
    return isNamed && JSON.stringify(one) === JSON.stringify(other);
  });
}

const inOrder = ({ by, base, front }: OverBase): OverBase => ({ by, base, front });
