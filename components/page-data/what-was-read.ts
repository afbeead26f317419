import { askedOf } from '../../core/document/asked-of-car.js';
import { type CarDocument, dropBy, isAnyEnd } from '../../core/document/car.js';
import { isFilled } from '../../core/document/provenance.js';
import type { Setup } from '../../core/document/setup.js';
import { formatNumber } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import { READ } from './read.words.js';

/** More than these are counted, and not named. */
const MOST_NAMED = 5;
/** As much of a text as shows which it is. */
const LONGEST = 40;

const SINGLES = ['loadedRadius', 'camber', 'toe'] as const;

/** What a page said of a car, in a few words: `8 hard points (±2 mm), loaded radius, static camber and static toe`. */
export function readText(car: CarDocument): string {
  const { given, whole, curve, setups = [], fit, loads, bumpTravel } = car;
  const { points, measures = {} } = given;
  const [pointCount, measureCount] = [points, measures].map((some) => Object.keys(some).length) as [number, number];
  const parts = [
    ...(pointCount > 0 ? [READ.points(pointCount) + sureText(given.plusMinus)] : []),
    ...(measureCount > 0 ? [READ.measures(measureCount)] : []),
    ...SINGLES.flatMap((key) => (given[key] === undefined ? [] : [READ.singles[key]])),
    ...(whole !== undefined && pointCount === 0 ? [READ.whole] : []),
    ...(curve?.kind === 'coefficients' ? [READ.curve(curve.coefficients.length)] : []),
    ...setsText(setups),
    ...(fit?.before ? [READ.before] : []),
    ...(fit?.after ? [READ.after] : []),
    ...(fit?.places ? [READ.places(fit.places.length)] : []),
    ...(fit && hasMargins(fit) ? [READ.margins] : []),
    ...(isAnyEnd(car) ? [READ.ends] : []),
    ...(loads ? [READ.loads] : []),
    ...(dropBy(car) === 'example' ? [] : [READ.drop]),
    ...(bumpTravel === undefined ? [] : [READ.bumpTravel]),
    ...(isFilled(askedOf(car)) ? [READ.settings] : []),
  ];
  return parts.length === 0 ? READ.nothing : inWords(parts);
}

const hasMargins = ({ before: _, after: __, places: ___, ...others }: NonNullable<CarDocument['fit']>): boolean =>
  isFilled(others);

function setsText(setups: readonly Setup[]): string[] {
  const read = setups.filter(({ readings }) => readings.length > 0);
  const bare = setups.filter(({ readings, parts }) => readings.length === 0 && parts !== undefined).length;
  const count = read.reduce((sum, { readings }) => sum + readings.length, 0);
  const passes = new Set(read.flatMap(({ readings }) => readings.map(({ pass }) => pass))).size;
  return [
    ...(read.length === 1 ? [READ.readings(count, passes)] : read.length > 1 ? [READ.sets(read.length, count)] : []),
    ...(bare > 0 ? [READ.parts(bare)] : []),
  ];
}

function sureText(plusMinus: CarDocument['given']['plusMinus']): string {
  const all = Object.values(plusMinus ?? {});
  if (all.length === 0) return '';
  return READ.plusMinus(formatNumber(Math.min(...all), 2), formatNumber(Math.max(...all), 2));
}

const inWords = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')}${READ.and}${parts.at(-1)}`;

/** What of a page's data is not understood, each by its place and what stands there; '' where all of it is. */
export function unreadText(problems: readonly Problem[]): string {
  const named = problems.slice(0, MOST_NAMED).map(placeText);
  const more = problems.length - named.length;
  return named.length === 0 ? '' : READ.notUnderstood([...named, ...(more > 0 ? [READ.more(more)] : [])].join('; '));
}

function placeText({ path, value }: Problem): string {
  const [, row, column] = /^table\.(\d+)\.(\d+)$/.exec(path) ?? [];
  const place = row === undefined ? READ.quoted(short(path)) : READ.cell(Number(row) + 1, Number(column) + 1);
  const text = value === undefined || value === '' ? '' : short(String(value));
  return text === '' || text === short(path) ? place : READ.given(place, text);
}

const short = (text: string): string => {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > LONGEST ? `${line.slice(0, LONGEST)}…` : line;
};
