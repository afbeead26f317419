import type { CarDocument } from '../../core/document/car.js';
import { worded } from '../../core/quantity/words.js';
import { plusMinus95 } from '../../core/uncertainty/combine.js';
import { NORMAL_95 } from '../../core/uncertainty/normal.js';
import { cornerWords, missingWords, pointsMissing } from '../bumpline-lowering/bumpline-lowering.words.js';
import { shownName } from '../car/shown-names.words.js';
import { dropText, wayOf } from '../element/drop-words.js';
import { amount, type Display, fill, type Stretch, say, show, value } from '../element/sentence.js';
import type { TurnOnSheet } from './cornering-view.js';
import { FIRST, type FirstWords } from './first.words.js';

export { FIRST };

export const wayText = (drop: number, words: FirstWords = FIRST): string => wayOf(drop, words);

/** "3°", "3.5°": as it was given, and not finer than anybody measures it. */
export const rollText = (roll: number, display: Display): string =>
  show(roll, 'roll', display).replace(/[.,]0(?=°)|(?<=°)00′/, '');

/** Half-width of the 95 % interval of an inclination, where it is known. */
export function plusMinusOf({ doubt }: TurnOnSheet, wheel: 'outer' | 'inner'): number | undefined {
  if (!doubt || doubt.sources.length === 0) return undefined;
  return plusMinus95({ value: 0, parts: doubt[wheel] }, doubt.sources);
}

/**
 * What follows "With 3° of body roll, 30 mm lower": the outer wheel against the road, and which camber is held.
 *
 * @param solidShort how much more bump that takes than is left, mm
 */
export function sentence(
  answer: TurnOnSheet,
  car: CarDocument,
  display: Display,
  solidShort?: number,
  words: FirstWords = FIRST,
): Stretch[] {
  const { outer, camber, set } = answer;
  const plusMinus = pointsMissing(car) > 0 ? undefined : plusMinusOf(answer, 'outer');
  const said = fill(words.says, {
    parts: set ? say(words.parts, { set: shownName(set.setup.name) }) : '',
    way: outer.inclination < 0 ? words.in : words.out,
    inclination: amount(Math.abs(outer.inclination), plusMinus, 'camber', display),
    body: show(outer.camber, 'camber', display),
    held: camber === undefined ? words.asLeft : say(words.setAgain, { camber: show(camber, 'camber', display) }),
  });
  const solid =
    solidShort === undefined ? [] : fill(words.solid, { short: [value(show(solidShort, 'travel', display))] });
  return [...said, ...solid, ...missingWords(car, words)];
}

/** "3.4° ± 0.3°": a roll that was worked out, with its 95 % interval where that is known. */
export const rollWithDoubt = ({ suspensionRoll, request }: TurnOnSheet, display: Display): string =>
  request.rollUncertainty
    ? show(suspensionRoll, 'roll', display, NORMAL_95 * request.rollUncertainty)
    : rollText(suspensionRoll, display);

/** What follows the lateral acceleration: the roll that it makes. */
export const rollsText = (answer: TurnOnSheet | undefined, display: Display, words: FirstWords = FIRST): string =>
  answer?.load ? say(words.rolls, { roll: rollWithDoubt(answer, display) }) : words.rollsUnknown;

/** Of the car that the answer is of, g. */
export const lateralOf = ({ by }: TurnOnSheet): number | undefined =>
  by && 'load' in by ? by.load.lateral : undefined;

/** "With 3° of body roll, ", or "At 0.8 g, which rolls the body by 3.4° ± 0.3°, ". */
export function openingText(answer: TurnOnSheet, display: Display, words: FirstWords = FIRST): string {
  const lateral = lateralOf(answer);
  return lateral === undefined
    ? `${words.opening}${rollText(answer.suspensionRoll, display)}${words.ofRoll}`
    : `${words.at}${show(lateral, 'lateral', display)}${rollsText(answer, display, words)}`;
}

/** The whole sentence as it is spoken. */
export const spoken = (answer: TurnOnSheet, car: CarDocument, display: Display, words: FirstWords = FIRST): string =>
  say(words.spoken, {
    opening: openingText(answer, display, words),
    drop: dropText(answer.drop, display),
    way: wayText(answer.drop, words),
    rest: sentence(answer, car, display, undefined, words),
  });

/** What an element about one corner says. */
export const WORDS = worded(() => cornerWords(FIRST, { spoken }));
