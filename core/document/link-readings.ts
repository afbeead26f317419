import { MOST_READINGS, type Reading } from '../readings/reading.js';
import { LENGTH, READING_RANGES } from './field-ranges.js';
import { name, number, sound, type Text, word, writeNumber as write } from './link-text.js';

/*
 * The readings of one pass, or of one way of it: its name, way (`.again` behind it: the first height read again), heights, values,
 * body references, the two figures of toe over a base. Equal steps are written as such.
 *
 *     Pass.1~up~-30to15by5,25~0.03,-0.1,…
 *
 * Readings that were entered across the passes: `order` names the pass of each, a letter or digit.
 */
const LETTERS = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789';
const WAYS = ['', '.again', 'up', 'up.again', 'down', 'down.again'] as const;
const way = word(WAYS);
const travel = number(READING_RANGES.travel);
const value = number(READING_RANGES.value);
const body = number(READING_RANGES.body);
const figure = number(LENGTH);
const step = number([2 * READING_RANGES.travel[0], 2 * READING_RANGES.travel[1]]);

export interface Grouped {
  groups: readonly (readonly Reading[])[];
  order?: string | undefined;
}

/** Readings of one pass and one way together; where there are too many of those, as they come. */
export function grouped(readings: readonly Reading[]): Grouped {
  const keyOf = ({ pass, going, again }: Reading) => JSON.stringify([pass, going, again]);
  const byKey = new Map<string, Reading[]>();
  const runs: Reading[][] = [];
  readings.forEach((reading, i) => {
    const key = keyOf(reading);
    const previous = readings[i - 1];
    if (previous && keyOf(previous) === key) runs.at(-1)!.push(reading);
    else runs.push([reading]);
    const group = byKey.get(key);
    if (group) group.push(reading);
    else byKey.set(key, [reading]);
  });
  if (runs.length === byKey.size || byKey.size > LETTERS.length) return { groups: runs };
  const keys = [...byKey.keys()];
  return {
    groups: [...byKey.values()],
    order: readings.map((reading) => LETTERS[keys.indexOf(keyOf(reading))]).join(''),
  };
}

/** The readings in the order in which they were entered. */
export function ungrouped({ groups, order }: Grouped): Reading[] {
  const readings = groups.flat();
  sound(readings.length <= MOST_READINGS || undefined);
  if (order === undefined) return readings;
  const rest = groups.map((group) => group[Symbol.iterator]());
  sound(order.length === readings.length || undefined);
  return [...order].map((letter) => sound(rest[LETTERS.indexOf(letter)]?.next().value as Reading | undefined));
}

/** Any text: what it names is looked up by `ungrouped`. */
export const order: Text<string> = { write: String, read: String };

export const group: Text<readonly Reading[]> = {
  write(readings) {
    const { pass, going = '', again } = readings[0]!;
    const bodies = readings.map((reading) => (reading.body === undefined ? '' : write(reading.body)));
    const hasPairs = readings.some(({ pair }) => pair);
    return [
      pass === undefined ? '' : name.write(pass),
      going + (again ? '.again' : ''),
      writeSteps(readings.map((reading) => reading.travel)),
      readings.map((reading) => write(reading.value)).join(','),
      ...(bodies.some(Boolean) || hasPairs ? [bodies.some(Boolean) ? bodies.join(',') : ''] : []),
      ...(hasPairs ? [0, 1].map((at) => readings.map(({ pair }) => (pair ? write(pair[at]!) : '')).join(',')) : []),
    ].join('~');
  },
  read(text) {
    const [passText = '', wayText = '', heights = '', values = '', bodyText, fronts, rears, more] = text.split('~');
    const [going, again] = way.read(wayText).split('.');
    const travels = readSteps(heights);
    const valueTexts = values.split(',');
    const listOf = (list: string | undefined): string[] => (list ? list.split(',') : []);
    const [bodies, front, rear] = [bodyText, fronts, rears].map(listOf) as [string[], string[], string[]];
    const isEven = (list: readonly string[]) => list.length === 0 || list.length === travels.length;
    const arePairs = front.length === rear.length && front.every((one, i) => (one === '') === (rear[i] === ''));
    const areEven = travels.length === valueTexts.length && [bodies, front].every(isEven) && arePairs;
    sound((areEven && more === undefined) || undefined);
    const shared: Partial<Reading> = {
      ...(passText !== '' && { pass: name.read(passText) }),
      ...(going && { going: going as 'up' | 'down' }),
      ...(again && { again: true }),
    };
    return travels.map((at, i) => ({
      travel: at,
      value: value.read(valueTexts[i]!),
      ...shared,
      ...(bodies[i] && { body: body.read(bodies[i]) }),
      ...(front[i] && { pair: [figure.read(front[i]), figure.read(rear[i]!)] as const }),
    }));
  },
};

const rounded = (figure: number): number => Math.round(figure * 1e6) / 1e6 + 0;

/** Three or more in equal steps as `-30to15by5`. */
function writeSteps(values: readonly number[]): string {
  const items: string[] = [];
  for (let i = 0; i < values.length; ) {
    const first = Number(write(values[i]!));
    const by = rounded(values[i + 1]! - values[i]!);
    let count = 1;
    while (i + count < values.length && write(rounded(first + count * by)) === write(values[i + count]!)) count++;
    if (count > 2 && by !== 0) items.push(`${write(first)}to${write(values[i + count - 1]!)}by${write(by)}`);
    else items.push(...values.slice(i, i + count).map(write));
    i += count;
  }
  return items.join(',');
}

function readSteps(text: string): number[] {
  const travels: number[] = [];
  for (const item of text.split(',')) {
    const [, first, last, byText] = /^([^tb]+)to([^tb]+)by([^tb]+)$/.exec(item) ?? [undefined, item, item, '1'];
    const [from, to, by] = [travel.read(first!), travel.read(last!), step.read(byText!)];
    const steps = Math.round((to - from) / by);
    // Not a NaN, no step of nothing, and the last one is met.
    const isMet = steps >= 0 && travels.length + steps < MOST_READINGS && rounded(from + steps * by) === to;
    sound(isMet || undefined);
    for (let k = 0; k <= steps; k++) travels.push(rounded(from + k * by));
  }
  return travels;
}
