import { QUANTITIES } from '../quantity/quantities.js';
import { DOUBT_KEYS, MOST_DOUBTS, type ReadingDoubts } from '../readings/doubts.js';
import { MOST_READINGS, type Reading } from '../readings/reading.js';
import { type CarDocument, CORNER_NAMES } from './car.js';
import { cornerSlug, numberIn, readName, type Take, writeNumber as write, writeName } from './link-text.js';
import type { Setup } from './setup.js';
import { indexInUse, MOST_SETUPS, ownSetups } from './setup-in-use.js';

/*
 * Sets of parts in a link, numbered from 1; one key for each pass, or each way of one: its name, way (`.again` behind it: the first height
 * read again), heights, values, body references. Equal steps are written as such, and a space in a name as a dot.
 *
 *     setup1=Standard.arms&setup1.at=front-left&setup1.p1=Pass.1~up~-30to15by5,25~0.03,-0.1,…&setup=1
 *
 * Readings that were entered across the passes: `order` names the pass of each, a letter or digit.
 */
const LETTERS = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789';
/** As wide as anything that the element shows to be corrected. */
const WIDEST_MM = QUANTITIES.coordinate.max;
const WIDEST_DEGREES = QUANTITIES.linkAngle.max;
const LARGEST_DEGREE = 10;
const WAYS = ['', 'up', 'down'] as const;
/** Behind the way of readings that are the first height of their pass read again. */
const AGAIN = '.again';

/** The pairs that carry the user's sets; none of a page's. */
export function setupPairs(car: CarDocument): [string, string][] {
  const own = ownSetups(car);
  if (own.length === 0) return [];
  return [...own.flatMap((setup, i) => pairsOf(setup, `setup${i + 1}`)), ['setup', String(indexInUse(car) + 1)]];
}

function pairsOf(setup: Setup, key: string) {
  const { name, cornerName, quantity, readings, setAside = [], degree, zeroAt, doubts, givenBy } = setup;
  const pairs: [string, string][] = [
    [key, writeName(name)],
    [`${key}.at`, cornerSlug(cornerName)],
  ];
  const add = (part: string, value: string | undefined) => value !== undefined && pairs.push([`${key}.${part}`, value]);
  add('read', quantity === 'toe' ? quantity : undefined);
  add('from', givenBy);
  add('degree', degree?.toFixed(0));
  add('zeroAt', zeroAt === undefined ? undefined : write(zeroAt));
  for (const doubt of DOUBT_KEYS) if (doubts?.[doubt] !== undefined) add(doubt, write(doubts[doubt]));
  const { groups, order } = grouped(readings);
  groups.forEach((group, i) => {
    const { pass, going = '', again } = group[0]!;
    const body = group.some((reading) => reading.body !== undefined)
      ? [group.map((reading) => (reading.body === undefined ? '' : write(reading.body))).join(',')]
      : [];
    const parts = [
      pass === undefined ? '' : writeName(pass),
      again ? going + AGAIN : going,
      writeSteps(group.map(({ travel }) => travel)),
      group.map(({ value }) => write(value)).join(','),
      ...body,
    ];
    add(`p${i + 1}`, parts.join('~'));
  });
  add('order', order);
  add('aside', setAside.length > 0 ? setAside.join(',') : undefined);
  return pairs;
}

/** Readings of one pass and one way together; where there are too many of those, as they come. */
function grouped(readings: readonly Reading[]): { groups: Reading[][]; order: string | undefined } {
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
  if (runs.length === byKey.size || byKey.size > LETTERS.length) return { groups: runs, order: undefined };
  const keys = [...byKey.keys()];
  return {
    groups: [...byKey.values()],
    order: readings.map((reading) => LETTERS[keys.indexOf(keyOf(reading))]).join(''),
  };
}

const rounded = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;

/** Three or more in equal steps as `-30to15by5`. */
function writeSteps(values: readonly number[]): string {
  const items: string[] = [];
  for (let i = 0; i < values.length; ) {
    const first = Number(write(values[i]!));
    const step = rounded(values[i + 1]! - values[i]!);
    let count = 1;
    while (i + count < values.length && write(rounded(first + count * step)) === write(values[i + count]!)) count++;
    if (count > 2 && step !== 0) items.push(`${write(first)}to${write(values[i + count - 1]!)}by${write(step)}`);
    else items.push(...values.slice(i, i + count).map(write));
    i += count;
  }
  return items.join(',');
}

type Taken = Pick<CarDocument, 'setups' | 'setup'>;

/** Takes the sets out of the pairs; undefined where anything in them is wrong. Never throws. */
export function takeSetups(take: Take): Taken | undefined {
  const setups: Setup[] = [];
  for (let n = 1; n <= MOST_SETUPS; n++) {
    const name = take(`setup${n}`);
    if (name === undefined) break;
    const setup = takeSetup(take, name, `setup${n}.`);
    if (!setup) return undefined;
    setups.push(setup);
  }
  const inUse = take('setup');
  if (setups.length === 0) return inUse === undefined ? {} : undefined;
  const at = wholeIn(inUse, 1, setups.length);
  if (at === undefined) return undefined;
  return { setups, ...(at > 1 && { setup: at - 1 }) };
}

function takeSetup(take: Take, nameText: string, key: string): Setup | undefined {
  const name = readName(nameText);
  const at = take(`${key}at`);
  const cornerName = CORNER_NAMES.find((corner) => cornerSlug(corner) === at);
  const read = take(`${key}read`) ?? 'camber';
  const from = take(`${key}from`);
  const degreeText = take(`${key}degree`);
  const degree = wholeIn(degreeText, 1, LARGEST_DEGREE);
  const zeroText = take(`${key}zeroAt`);
  const zeroAt = numberIn(zeroText, QUANTITIES.drop.min, QUANTITIES.drop.max);
  const doubts = takeDoubts(take, key);
  const groups: Reading[][] = [];
  let count = 0;
  for (let text = take(`${key}p1`); text !== undefined; text = take(`${key}p${groups.length + 1}`)) {
    const group = readGroup(text);
    count += group?.length ?? 0;
    if (!group || count > MOST_READINGS) return undefined;
    groups.push(group);
  }
  const readings = inOrder(groups, take(`${key}order`));
  const asideText = take(`${key}aside`);
  const setAside = asideText?.split(',').map((text) => wholeIn(text, 0, count - 1));
  const isGood =
    name !== undefined &&
    cornerName &&
    (read === 'camber' || read === 'toe') &&
    (from === undefined || from === 'page' || from === 'example') &&
    (degreeText === undefined || degree !== undefined) &&
    (zeroText === undefined || !Number.isNaN(zeroAt)) &&
    readings &&
    doubts &&
    (!setAside || (!setAside.includes(undefined) && new Set(setAside).size === setAside.length));
  if (!isGood) return undefined;
  return {
    name,
    cornerName,
    quantity: read,
    readings,
    ...(from && { givenBy: from as 'page' | 'example' }),
    ...(setAside && { setAside: setAside as number[] }),
    ...(degree !== undefined && { degree }),
    ...(zeroText !== undefined && { zeroAt }),
    ...(Object.keys(doubts).length > 0 && { doubts }),
  };
}

/** undefined where one of them is no share or length. */
function takeDoubts(take: Take, key: string): ReadingDoubts | undefined {
  const doubts: { -readonly [K in keyof ReadingDoubts]: number } = {};
  for (const doubt of DOUBT_KEYS) {
    const text = take(`${key}${doubt}`);
    if (text !== undefined) doubts[doubt] = numberIn(text, 0, MOST_DOUBTS[doubt]);
  }
  return Object.values(doubts).some(Number.isNaN) ? undefined : doubts;
}

function wholeIn(text: string | undefined, least: number, most: number): number | undefined {
  const value = numberIn(text, least, most);
  return Number.isInteger(value) ? value : undefined;
}

function readGroup(text: string): Reading[] | undefined {
  const [passText, goingText, heights = '', values = '', bodies, more] = text.split('~');
  const pass = passText === '' ? undefined : readName(passText);
  const isAgain = goingText?.endsWith(AGAIN) ?? false;
  const wayText = isAgain ? goingText!.slice(0, -AGAIN.length) : goingText;
  const going = WAYS.find((way) => way === wayText);
  const travels = readSteps(heights);
  const valueTexts = values.split(',');
  const bodyTexts = bodies?.split(',') ?? [];
  const isGood =
    (passText === '' || pass !== undefined) &&
    going !== undefined &&
    travels?.length === valueTexts.length &&
    (bodies === undefined || bodyTexts.length === valueTexts.length) &&
    more === undefined;
  if (!isGood) return undefined;
  const readings = valueTexts.map((valueText, i): Reading => {
    const bodyText = bodyTexts[i] || undefined;
    return {
      travel: travels[i]!,
      value: numberIn(valueText, -WIDEST_DEGREES, WIDEST_DEGREES),
      ...(pass !== undefined && { pass }),
      ...(going && { going }),
      ...(isAgain && { again: true as const }),
      ...(bodyText && { body: numberIn(bodyText, -WIDEST_MM, WIDEST_MM) }),
    };
  });
  const numbers = readings.flatMap(({ travel, value, body = 0 }) => [travel, value, body]);
  return numbers.some(Number.isNaN) ? undefined : readings;
}

function readSteps(text: string): number[] | undefined {
  const travels: number[] = [];
  const number = (figure: string | undefined) => numberIn(figure, -WIDEST_MM, WIDEST_MM);
  for (const item of text.split(',')) {
    const [, first, last, by] = /^([^tb]+)to([^tb]+)by([^tb]+)$/.exec(item) ?? [undefined, item, item, '1'];
    const [from, to] = [number(first), number(last)];
    const step = numberIn(by, -2 * WIDEST_MM, 2 * WIDEST_MM);
    const steps = Math.round((to - from) / step);
    // Not a NaN, no step of nothing, and the last one is met.
    if (!(steps >= 0 && travels.length + steps < MOST_READINGS && rounded(from + steps * step) === to))
      return undefined;
    for (let k = 0; k <= steps; k++) travels.push(rounded(from + k * step));
  }
  return travels;
}

function inOrder(groups: Reading[][], order: string | undefined): Reading[] | undefined {
  if (order === undefined) return groups.flat();
  const rest = groups.map((group) => group[Symbol.iterator]());
  const readings = [...order].map((letter) => rest[LETTERS.indexOf(letter)]?.next().value as Reading | undefined);
  const isWhole = !readings.includes(undefined) && rest.every((group) => group.next().done);
  return isWhole ? (readings as Reading[]) : undefined;
}
