import type { ReadingsAnswer } from '../../core/answers/readings.js';
import type { CarDocument } from '../../core/document/car.js';
import type { Setup } from '../../core/document/setup.js';
import { indexInUse, setupsBy } from '../../core/document/setup-in-use.js';
import { setupOf } from '../../core/document/setups.js';
import { shownName } from '../car/shown-names.words.js';
import { exampleText } from '../car/stand-in.js';
import {
  amount,
  counting,
  type Display,
  fill,
  plain,
  type Stretch,
  say,
  show,
  textOf,
  value,
} from '../element/sentence.js';
import { FIRST, type FirstWords } from './first.words.js';

export { FIRST };

/** Heights that a curve asks for at the least: two make a line, and say nothing of its bend. */
export const FEWEST_HEIGHTS = 3;

/** "25 mm", as it stands in the sentence: the amount, whichever way; the words after it say bump or droop. */
export const overText = (over: number, display: Display): string => show(Math.abs(over), 'travel', display);

/** "From 49 readings in 3 passes: ", before the travel. */
export function opening({ used, passes }: ReadingsAnswer, words: FirstWords = FIRST): Stretch[] {
  const readings = counting(used.length, words.readings);
  return fill(passes > 1 ? words.passes : words.onePass, {
    readings,
    passes: say(words.passCount, { count: String(passes) }),
  });
}

/** What follows the travel. */
export function ending(answer: ReadingsAnswer, display: Display, words: FirstWords = FIRST): Stretch[] {
  return [
    ...fill(answer.over < 0 ? words.ofDroop : words.ofBump),
    ...changeWords(answer, display, words),
    ...repeatedWords(answer, display, words),
    ...fill(words.end),
  ];
}

/** The whole sentence as it is spoken. */
export const spoken = (answer: ReadingsAnswer, display: Display, words: FirstWords = FIRST): string =>
  textOf([...opening(answer, words), plain(overText(answer.over, display)), ...ending(answer, display, words)]);

function changeWords({ change, quantity, fit }: ReadingsAnswer, display: Display, words: FirstWords): Stretch[] {
  if (!change) {
    const [low, high] = fit.curve.domain.map((end) => show(end, 'travel', display)) as [string, string];
    return fill(words.unknown, { reach: [value(say(words.reach, { low, high }))] });
  }
  const size = Math.abs(change.value);
  const isTold = change.plusMinus === undefined || size > change.plusMinus;
  const parts = {
    quantity: words[quantity],
    change: amount(isTold ? size : change.value, change.plusMinus, 'camberChange', display),
  };
  if (!isTold) return fill(words.notTold, parts);
  const isLess = change.value < 0;
  if (quantity === 'toe') return fill(isLess ? words.toeOut : words.toeIn, parts);
  return fill(isLess ? words.adds : words.takes, parts);
}

/** A gauge shows hundredths: finer than that is not claimed. */
const FINEST_REPEAT = 0.01;

function repeatedWords({ repeated, fit }: ReadingsAnswer, display: Display, words: FirstWords): Stretch[] {
  // Of heights that were read again to tell the drift nothing is left over.
  if (repeated === undefined) return fit.drift ? [] : fill(words.once);
  return fill(words.repeated, { within: show(Math.max(FINEST_REPEAT, repeated), 'camberChange', display) });
}

/** What stands in the sentence's place while there is no curve yet. */
export function soFar({ readings, quantity }: Setup, words: FirstWords = FIRST): string {
  const parts = {
    quantity: words[quantity],
    readings: counting(readings.length, words.readings),
    heights: counting(new Set(readings.map(({ travel }) => travel)).size, words.heights),
    fewest: String(FEWEST_HEIGHTS),
  };
  return say(readings.length === 0 ? words.noReadings : words.soFar, parts);
}

/** Whose the readings are, and which of how many sets: the line above the sentence. */
export function ownership(car: CarDocument, words: FirstWords = FIRST): string {
  if (setupsBy(car) === undefined) return exampleText(car);
  const { setup, by } = setupOf(car);
  const count = car.setups?.length ?? 0;
  const whose = by === 'user' ? say(words.yours, { name: shownName(setup.name) }) : shownName(setup.name);
  if (count < 2) return whose;
  return say(words.which, { name: whose, index: String(indexInUse(car) + 1), count: String(count) });
}
