import type { ReadingsAnswer } from '../../core/answers/readings.js';
import type { CarDocument } from '../../core/document/car.js';
import type { Setup } from '../../core/document/setup.js';
import { indexInUse, setupsBy } from '../../core/document/setup-in-use.js';
import { setupOf } from '../../core/document/setups.js';
import { amount, counted, plain, type Reader, type Stretch, show, textOf, value } from '../shared/sentence.js';
import { exampleText } from '../shared/stand-in.js';

/** Heights that a curve asks for at the least: two make a line, and say nothing of its bend. */
export const FEWEST_HEIGHTS = 3;

/** "25 mm", as it stands in the sentence: the amount, whichever way; the words after it say bump or droop. */
export const overText = (over: number, reader: Reader): string => show(Math.abs(over), 'travel', reader);

const way = (over: number): string => (over < 0 ? 'droop' : 'bump');

/** "From 49 readings in 3 passes: ", before the travel. */
export function opening({ used, passes }: ReadingsAnswer): Stretch[] {
  return [
    plain('From '),
    value(counted(used.length, 'reading')),
    plain(passes > 1 ? ' in ' : ' in one pass: '),
    ...(passes > 1 ? [value(`${passes} passes`), plain(': ')] : []),
  ];
}

/** What follows the travel. */
export function ending(answer: ReadingsAnswer, reader: Reader): Stretch[] {
  return [...changeWords(answer, reader), ...repeatedWords(answer, reader), plain('.')];
}

/** The whole sentence as it is spoken. */
export const spoken = (answer: ReadingsAnswer, reader: Reader): string =>
  textOf([...opening(answer), plain(overText(answer.over, reader)), ...ending(answer, reader)]);

function changeWords({ change, over, quantity, fit }: ReadingsAnswer, reader: Reader): Stretch[] {
  const of = plain(` of ${way(over)} `);
  if (!change) {
    const [low, high] = fit.curve.domain;
    const reach = `${show(low, 'travel', reader)} to ${show(high, 'travel', reader)}`;
    return [of, plain('is not known: the readings span '), value(reach), plain(', and a curve is not extended')];
  }
  const size = (sized: number) => amount(sized, change.plusMinus, 'camberChange', reader);
  if (change.plusMinus !== undefined && Math.abs(change.value) <= change.plusMinus) {
    return [of, plain(`changes ${quantity} by `), ...size(change.value), plain(': cannot be told from nothing')];
  }
  const amountOf = size(Math.abs(change.value));
  if (quantity === 'toe')
    return [of, plain('adds '), ...amountOf, plain(change.value < 0 ? ' of toe-out' : ' of toe-in')];
  return change.value < 0
    ? [of, plain('adds '), ...amountOf, plain(' of negative camber')]
    : [of, plain('takes '), ...amountOf, plain(' of negative camber away')];
}

/** A gauge shows hundredths: finer than that is not claimed. */
const FINEST_REPEAT = 0.01;

function repeatedWords({ repeated, fit }: ReadingsAnswer, reader: Reader): Stretch[] {
  // Of heights that were read again to tell the drift nothing is left over.
  if (repeated === undefined) return fit.drift ? [] : [plain('; no height was read twice')];
  const within = Math.max(FINEST_REPEAT, repeated);
  return [plain('; the gauge repeated within '), value(show(within, 'camberChange', reader))];
}

/** What stands in the sentence's place while there is no curve yet. */
export function soFar({ readings, quantity }: Setup): string {
  if (readings.length === 0) return `No ${quantity} readings yet. Type them in, or paste them from a sheet.`;
  const heights = new Set(readings.map(({ travel }) => travel)).size;
  return `${counted(readings.length, 'reading')} at ${counted(heights, 'height')} so far. ${FEWEST_HEIGHTS} heights make a curve; every few millimetres make a good one.`;
}

/** Whose the readings are, and which of how many sets: the line above the sentence. */
export function ownership(car: CarDocument): string {
  const { setup, by } = setupOf(car);
  const { name } = setup;
  const count = car.setups?.length ?? 0;
  const which = count > 1 ? `, ${indexInUse(car) + 1} of ${count} sets of parts` : '';
  if (setupsBy(car) === undefined) return exampleText(car);
  return `${name}${by === 'user' ? ', yours' : ''}${which}`;
}

export const FIRST = {
  title: 'The curve that readings make',
  over: 'Travel from zero',
  waiting: 'Working it out …',
  noAnswer: 'No answer yet.',
  before: 'Before:',
} as const;
