import { QUANTITIES } from '../quantity/quantities.js';
import { CORNER_LOAD_KEYS, type CornerLoads, TRAVEL_LIMIT_KEYS, type TravelLimits } from '../travel/travel-limits.js';
import { FIXED_TO, type Place } from '../wheel/place.js';
import type { CarDocument } from './car.js';
import { type Fit, type GivenWheel, MOST_PLACES } from './fit.js';
import { numberIn, readName, type Take, writeNumber as write, writeName } from './link-text.js';

/*
 * What ends travel, what the corner carries, wheels and places in a link: mm, degrees, N, N/mm, kg by their names, a rim's width
 * in inches. A wheel as size, rim width, offset, each a tilde where nobody gave it; what else is known of it under keys of its
 * own. A place as name, what it is fixed to, what it is, then `clock` (or `outer`, `inner` where the sidewall was named), hours, distance, out; or `point`,x,y,z.
 *
 *     stopLength=60&springRate=25&stopPoints=10,400,20,1200&wheelBefore=205/55R16,6.5,45&wheelBefore.spacer=5
 *     &place1=arch.lip,body,bodywork,clock,11.5,330,12~5&place2=drop.link,between,chassis,point,0,640,300&place2.share=0.4
 */
const LIMIT_KEYS = TRAVEL_LIMIT_KEYS.filter((key): key is Exclude<keyof TravelLimits, 'stopGap'> => key !== 'stopGap');
const WHEEL_KEYS = ['spacer', 'sectionWidth', 'treadWidth', 'shoulderRadius'] as const;
const FIT_KEYS = ['lock', 'marginBodywork', 'marginChassis', 'allowance', 'sideways', 'camberBy'] as const;
const IS = ['bodywork', 'chassis'] as const;
const WAYS = ['clock', 'outer', 'inner', 'point'] as const;
export const MOST_STOP_POINTS = 12;
/** In place of a wheel's size, rim width or offset. */
const NOT_GIVEN = '~';

/** How far from 0, as wide as anything that an element shows to be corrected. Hours of a clock and inches of a rim are as ratios. */
const LENGTH = QUANTITIES.coordinate.max;
const ANGLE = QUANTITIES.linkAngle.max;
const RATIO = 100;
const LOAD = 100_000;
const WIDEST: Partial<Record<string, number>> = {
  stopUsable: RATIO,
  motionRatio: RATIO,
  loadFactor: RATIO,
  sideways: RATIO,
  share: RATIO,
  lock: ANGLE,
  camberBy: ANGLE,
};

const list = (values: readonly number[]): string => values.map(write).join(',');

/** The pairs that carry what the user gave of limits, loads, wheels and places; none of a page's. */
export function fitPairs({ limits, loads, fit = {}, fitGivenBy }: CarDocument): [string, string][] {
  if (fitGivenBy !== 'user') return [];
  const pairs: [string, string][] = [];
  const add = <K extends string>(keys: readonly K[], values: Partial<Record<K, number>> = {}, prefix = '') => {
    for (const key of keys) {
      const { [key]: value } = values as Partial<Record<string, number>>;
      if (value !== undefined) pairs.push([prefix + key, write(value)]);
    }
  };
  const addWheel = (key: string, wheel: GivenWheel | undefined) => {
    if (!wheel || Object.keys(wheel).length === 0) return;
    const { size, rimWidthInch, offset, rimProtector } = wheel;
    const name = size === undefined ? NOT_GIVEN : writeName(size).replaceAll('_2f_', '/');
    const figures = [rimWidthInch, offset].map((value) => (value === undefined ? NOT_GIVEN : write(value)));
    pairs.push([key, [name, ...figures].join(',')]);
    add(WHEEL_KEYS, wheel, `${key}.`);
    if (rimProtector !== undefined) pairs.push([`${key}.rimProtector`, rimProtector ? '1' : '0']);
  };
  add(LIMIT_KEYS, limits);
  add(CORNER_LOAD_KEYS, loads);
  if (loads?.stopPoints?.length) pairs.push(['stopPoints', list(loads.stopPoints.flat())]);
  addWheel('wheelBefore', fit.before);
  addWheel('wheelAfter', fit.after);
  fit.places?.forEach((place, i) => {
    const { name, fixedTo, is, at, plusMinus } = place;
    const where =
      'point' in at ? ['point', list(at.point)] : [at.from ?? 'clock', list([at.clock, at.distance, at.out])];
    const doubt = plusMinus === undefined ? '' : `~${write(plusMinus)}`;
    pairs.push([`place${i + 1}`, [writeName(name), fixedTo, is, ...where].join(',') + doubt]);
    add(['share'], place, `place${i + 1}.`);
  });
  add(FIT_KEYS, fit);
  return pairs;
}

type Taken = Pick<CarDocument, 'limits' | 'loads' | 'fit' | 'fitGivenBy'>;

/** Takes them out of the pairs; undefined where anything in them is wrong. Never throws. */
export function takeFit(take: Take): Taken | undefined {
  let isGood = true;
  const sound = <T>(value: T | undefined): T => {
    isGood &&= value !== undefined && !Number.isNaN(value);
    return value as T;
  };
  const number = (text: string | undefined, most: number, least = -most) => sound(numberIn(text, least, most));
  const numbers = <K extends string>(keys: readonly K[], widest: number, prefix = '') => {
    const found: Partial<Record<K, number>> = {};
    for (const key of keys) {
      const text = take(prefix + key);
      if (text !== undefined) found[key] = number(text, WIDEST[key] ?? widest);
    }
    return found;
  };
  const word = <T extends string>(text: string | undefined, words: readonly T[]): T =>
    sound(words.find((known) => known === text));

  const wheel = (key: string): GivenWheel | undefined => {
    const [size, width, offset, more] = take(key)?.split(',') ?? [];
    if (size === undefined) return undefined;
    isGood &&= more === undefined;
    const rib = take(`${key}.rimProtector`);
    return {
      ...(size !== NOT_GIVEN && { size: sound(readName(size.replaceAll('/', '_2f_'))) }),
      ...(width !== NOT_GIVEN && { rimWidthInch: number(width, RATIO) }),
      ...(offset !== NOT_GIVEN && { offset: number(offset, LENGTH) }),
      ...numbers(WHEEL_KEYS, LENGTH, `${key}.`),
      ...(rib !== undefined && { rimProtector: word(rib, ['0', '1']) === '1' }),
    };
  };
  const place = (text: string, key: string): Place => {
    const [body = '', doubt, rest] = text.split('~');
    const [name, fixedTo, is, wayText, a, b, c, more] = body.split(',');
    isGood &&= rest === undefined && more === undefined;
    const way = word(wayText, WAYS);
    const isPoint = way === 'point';
    const first = number(a, isPoint ? LENGTH : RATIO);
    const [second, third] = [number(b, LENGTH), number(c, LENGTH)];
    const from = way === 'outer' || way === 'inner' ? { from: way } : {};
    return {
      name: sound(readName(name)),
      fixedTo: word(fixedTo, FIXED_TO),
      is: word(is, IS),
      at: isPoint ? { point: [first, second, third] } : { clock: first, distance: second, out: third, ...from },
      ...(doubt !== undefined && { plusMinus: number(doubt, LENGTH, 0) }),
      ...numbers(['share'], RATIO, `${key}.`),
    };
  };

  const limits = numbers(LIMIT_KEYS, LENGTH);
  const loads: CornerLoads = numbers(CORNER_LOAD_KEYS, LOAD);
  const figures = take('stopPoints')?.split(',');
  if (figures) {
    const stopPoints: [number, number][] = [];
    // A force too few is no number.
    for (let i = 0; i < figures.length; i += 2)
      stopPoints.push([number(figures[i], LENGTH), number(figures[i + 1], LOAD)]);
    isGood &&= stopPoints.length <= MOST_STOP_POINTS;
    loads.stopPoints = stopPoints;
  }
  const before = wheel('wheelBefore');
  const after = wheel('wheelAfter');
  // A wheel of which nothing is given is none.
  isGood &&= [before, after].every((one) => !one || isFilled(one));
  const places: Place[] = [];
  while (places.length < MOST_PLACES) {
    const key = `place${places.length + 1}`;
    const text = take(key);
    if (text === undefined) break;
    places.push(place(text, key));
  }
  const fit: Fit = {
    ...(before && { before }),
    ...(after && { after }),
    ...(places.length > 0 && { places }),
    ...numbers(FIT_KEYS, LENGTH),
  };
  if (!isGood) return undefined;
  const taken: Taken = {
    ...(isFilled(limits) && { limits }),
    ...(isFilled(loads) && { loads }),
    ...(isFilled(fit) && { fit }),
  };
  return isFilled(taken) ? { ...taken, fitGivenBy: 'user' } : {};
}

const isFilled = (part: object): boolean => Object.keys(part).length > 0;
