import type { CarDocument } from '../../core/document/car.js';
import { plusMinus95 } from '../../core/uncertainty/combine.js';
import { cornerWords, missingWords, pointsMissing } from '../bumpline-lowering/bumpline-lowering.words.js';
import { dropText, wayOf } from '../element/drop-words.js';
import { amount, type Display, fill, type Stretch, say, show } from '../element/sentence.js';
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

/** What follows "With 3° of body roll, 30 mm lower": the outer wheel against the road, and which camber is held. */
export function sentence(
  answer: TurnOnSheet,
  car: CarDocument,
  display: Display,
  words: FirstWords = FIRST,
): Stretch[] {
  const { outer, camber, set } = answer;
  const plusMinus = pointsMissing(car) > 0 ? undefined : plusMinusOf(answer, 'outer');
  const said = fill(words.says, {
    parts: set ? say(words.parts, { set: set.setup.name }) : '',
    way: outer.inclination < 0 ? words.in : words.out,
    inclination: amount(Math.abs(outer.inclination), plusMinus, 'camber', display),
    body: show(outer.camber, 'camber', display),
    held: camber === undefined ? words.asLeft : say(words.setAgain, { camber: show(camber, 'camber', display) }),
  });
  return [...said, ...missingWords(car, words)];
}

/** The whole sentence as it is spoken. */
export const spoken = (answer: TurnOnSheet, car: CarDocument, display: Display, words: FirstWords = FIRST): string =>
  say(words.spoken, {
    opening: words.opening,
    roll: rollText(answer.suspensionRoll, display),
    ofRoll: words.ofRoll,
    drop: dropText(answer.drop, display),
    way: wayText(answer.drop, words),
    rest: sentence(answer, car, display, words),
  });

/** What an element about one corner says. */
export const WORDS = cornerWords(FIRST, { spoken });
