import { DRIVEWAY_KEYS, type DrivewayKey, type DrivewayMeasurements, isAngle } from '../driveway/driveway.js';
import { type PlusMinus, STRUT_POINT_KEYS, type StrutPointKey, type Vector3 } from '../linkage/corner.js';
import { QUANTITIES, type Quantity } from '../quantity/quantities.js';
import { bumpTravelOf, type CarDocument, CORNER_NAMES, EMPTY_CAR, type GivenCorner } from './car.js';
import { fitPairs, takeFit } from './link-fit.js';
import { setupPairs, takeSetups } from './link-setups.js';
import { numberIn, cornerSlug as slug, type Take, writeNumber as write } from './link-text.js';

/*
 * A car in the fragment of a link, to be read by people as well: names and values joined by & and =, mm and degrees, `~` before
 * a ±, points as x,y,z. Only what somebody gave: what stands in belongs to the page or is the example's.
 *
 *     car=1&corner=front-left&by=driveway&drop=30&armLength=338~3&check=…
 */
const VERSION = '1';

export type CarFromLink = { ok: true; car: CarDocument } | { ok: false; reason: 'not-a-car' | 'newer' | 'damaged' };

const withDoubt = (text: string, plusMinus: number | undefined): string =>
  plusMinus === undefined ? text : `${text}~${write(plusMinus)}`;
/** Static camber is one value for both ways, under its own name. */
const MEASURES = DRIVEWAY_KEYS.filter((key): key is Exclude<DrivewayKey, 'camber'> => key !== 'camber');

/** The fragment of a link that carries the car, without its #. */
export function carToLink(car: CarDocument): string {
  const { given, drop, dropPlusMinus, stopGap, lowered, measuredAt, camberReadLower, other } = car;
  const { points, plusMinus = {}, measures = {}, camber, toe, loadedRadius } = given;
  const pairs: [string, string][] = [
    ['car', VERSION],
    ['corner', slug(car.cornerName)],
    ['by', car.by],
    ['drop', withDoubt(write(drop), dropPlusMinus)],
  ];
  const add = (key: string, value: number | string | undefined) => {
    if (value !== undefined) pairs.push([key, typeof value === 'number' ? write(value) : value]);
  };
  add('bumpTravel', car.bumpTravelGivenBy === 'user' ? bumpTravelOf(car) : undefined);
  add('stopGap', stopGap);
  add('lowered', lowered);
  add('measuredAt', measuredAt);
  if (car.givenBy === 'user') {
    for (const key of MEASURES) {
      const { [key]: found } = measures;
      if (found) add(key, withDoubt(write(found.value), found.plusMinus));
    }
    for (const key of STRUT_POINT_KEYS) {
      const { [key]: found } = points;
      if (found) add(key, withDoubt(found.map(write).join(','), plusMinus[key] ?? plusMinus.other));
    }
    add('camber', camber);
    add('camberReadLower', camberReadLower);
    add('toe', toe);
    add('loadedRadius', loadedRadius);
  }
  if (other) add('other', [other.drop, other.camber].map(write).join(','));
  if (car.compare?.heights) add('heights', car.compare.heights.map(write).join(','));
  add('compareOver', car.compare?.over);
  pairs.push(...setupPairs(car), ...fitPairs(car));
  const text = pairs.map((pair) => pair.join('=')).join('&');
  return `${text}&check=${check(text)}`;
}

/** FNV-1a (Fowler, Noll, Vo; 32 bit): one character changed always changes it. */
function check(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(36);
}

/** What a link carries. Never throws, whatever the text is; a leading # does not matter. */
export function carFromLink(link: string): CarFromLink {
  // Mail and messengers escape marks that need no escaping.
  const text = link.replace(/^#/, '').replace(/%(7e|2c|2f)/gi, decodeURIComponent);
  if (!text.startsWith('car=')) return { ok: false, reason: 'not-a-car' };
  const [, body, sum] = /^(.*)&check=([0-9a-z]*)$/s.exec(text) ?? [];
  const version = /^car=([1-9]\d{0,3})(&|$)/.exec(text)?.[1];
  if (body === undefined || sum !== check(body) || version === undefined) return { ok: false, reason: 'damaged' };
  if (version !== VERSION) return { ok: false, reason: 'newer' };
  const car = readPairs(body.split('&').slice(1));
  return car ? { ok: true, car } : { ok: false, reason: 'damaged' };
}

/** Heights that one comparison can have. */
export const MOST_HEIGHTS = 8;

const LARGEST_DOUBT = 200;

function readPairs(pairs: readonly string[]): CarDocument | undefined {
  const found = new Map<string, string>();
  for (const pair of pairs) {
    const [key, value, more] = pair.split('=');
    if (!key || value === undefined || more !== undefined || found.has(key)) return undefined;
    found.set(key, value);
  }
  let isGood = true;
  const take: Take = (key) => {
    const text = found.get(key);
    found.delete(key);
    return text;
  };
  const sound = (value: number): number => {
    isGood &&= !Number.isNaN(value);
    return value;
  };
  const optional = (key: string, quantity: Quantity): number | undefined => {
    const text = take(key);
    const { min, max } = QUANTITIES[quantity];
    return text === undefined ? undefined : sound(numberIn(text, min, max));
  };
  const word = <T extends string>(key: string, words: readonly T[]): T | undefined => {
    const text = take(key);
    isGood &&= text === undefined || words.includes(text as T);
    return text as T | undefined;
  };
  /** So many values, and what stands behind the ~. */
  const split = (text: string, count: number): [values: string[], plusMinus: number | undefined] => {
    const [list = '', doubt, more] = text.split('~');
    const values = list.split(',');
    isGood &&= more === undefined && values.length === count;
    return [values, doubt === undefined ? undefined : sound(numberIn(doubt, 0, LARGEST_DOUBT))];
  };

  const corner = word('corner', CORNER_NAMES.map(slug));
  const by = word('by', ['driveway', 'points', 'readings'] as const);
  const [[dropText], dropPlusMinus] = split(take('drop') ?? '', 1);
  const drop = sound(numberIn(dropText, QUANTITIES.drop.min, QUANTITIES.drop.max));
  const bumpTravel = optional('bumpTravel', 'travel');
  const stopGap = optional('stopGap', 'travel');
  const lowered = word('lowered', ['springs', 'dampers'] as const);
  const measuredAt = optional('measuredAt', 'drop');
  const { measures, points, plusMinus } = readMeasured(take, split, sound);
  const given: GivenCorner = { points };
  if (Object.keys(measures).length > 0) given.measures = measures;
  if (Object.keys(plusMinus).length > 0) given.plusMinus = plusMinus;
  for (const key of ['camber', 'toe', 'loadedRadius'] as const) {
    const value = optional(key, key);
    if (value !== undefined) given[key] = value;
  }
  const camberReadLower = optional('camberReadLower', 'plusMinusLength');
  const otherText = take('other')?.split(',');
  const other = otherText && {
    drop: sound(numberIn(otherText[0], QUANTITIES.drop.min, QUANTITIES.drop.max)),
    camber: sound(numberIn(otherText[1], QUANTITIES.camber.min, QUANTITIES.camber.max)),
  };
  const heights = take('heights')
    ?.split(',')
    .map((text) => sound(numberIn(text, QUANTITIES.drop.min, QUANTITIES.drop.max)));
  isGood &&= (heights?.length ?? 1) <= MOST_HEIGHTS;
  const over = optional('compareOver', 'travel');
  const sets = takeSetups(take);
  const fit = takeFit(take);
  if (!isGood || !sets || !fit || found.size > 0 || !by || !corner || (otherText && otherText.length !== 2))
    return undefined;
  const isGiven = Object.keys(given).length > 1 || Object.keys(points).length > 0;
  return {
    ...EMPTY_CAR,
    cornerName: CORNER_NAMES.find((name) => slug(name) === corner)!,
    by,
    givenBy: isGiven || other || sets.setups ? 'user' : 'page',
    given,
    drop,
    ...(dropPlusMinus !== undefined && { dropPlusMinus }),
    ...(bumpTravel !== undefined && { bumpTravel, bumpTravelGivenBy: 'user' as const }),
    ...(stopGap !== undefined && { stopGap }),
    ...(lowered && { lowered }),
    ...(measuredAt !== undefined && { measuredAt }),
    ...(camberReadLower !== undefined && { camberReadLower }),
    ...(other && { other }),
    ...((heights || over !== undefined) && {
      compare: { ...(heights && { heights }), ...(over !== undefined && { over }) },
    }),
    ...sets,
    ...fit,
  };
}

function readMeasured(
  take: Take,
  split: (text: string, count: number) => [string[], number | undefined],
  sound: (value: number) => number,
) {
  const measures: DrivewayMeasurements = {};
  const points: Partial<Record<StrutPointKey, Vector3>> = {};
  const plusMinus: PlusMinus = {};
  for (const key of MEASURES) {
    const text = take(key);
    if (text === undefined) continue;
    const [[value], doubt] = split(text, 1);
    // As wide as the fields read: what is impossible is told by the solver, in the field where it can be corrected.
    const { min, max } = QUANTITIES[isAngle(key) ? 'lean' : 'coordinate'];
    measures[key] = { value: sound(numberIn(value, min, max)), plusMinus: sound(doubt ?? Number.NaN) };
  }
  const { min, max } = QUANTITIES.coordinate;
  for (const key of STRUT_POINT_KEYS) {
    const text = take(key);
    if (text === undefined) continue;
    const [values, doubt] = split(text, 3);
    const [x, y, z] = [0, 1, 2].map((axis) => sound(numberIn(values[axis], min, max))) as [number, number, number];
    points[key] = [x, y, z];
    if (doubt !== undefined) plusMinus[key] = doubt;
  }
  return { measures, points, plusMinus };
}
