import { asLinks } from '../../core/document/as-links.js';
import type { CarDocument } from '../../core/document/car.js';
import { predictInUse } from '../../core/document/predict-in-use.js';
import { readSetsOf } from '../../core/document/read-sets.js';
import { ownerOf, readingsInUse } from '../../core/document/setup-in-use.js';
import { worded } from '../../core/quantity/words.js';
import { completeness as completenessOf, ownershipAsMeasured } from '../bumpline-lowering/bumpline-lowering.words.js';
import { shownName } from '../car/shown-names.words.js';
import { dropText, lengthText, wayOf } from '../element/drop-words.js';
import { SHARED } from '../element/first.words.js';
import { amount, counting, type Display, fill, lower, type Stretch, say, show } from '../element/sentence.js';
import { FIRST, type FirstWords } from './first.words.js';
import type { PredictOnSheet } from './predict-view.js';

export { FIRST, lengthText };

export const wayText = (drop: number, words: FirstWords = FIRST): string => wayOf(drop, words);

export const fromText = (over: number, words: FirstWords = FIRST): string => (over < 0 ? words.droop : words.bump);

/** What was read as the car stands: how many readings that count, and passes. */
export function readAsItStands(car: CarDocument): { readings: number; passes: number } {
  const { stock } = readSetsOf(predictInUse(car).car);
  const used = stock.map(readingsInUse);
  return {
    readings: used.reduce((sum, { length }) => sum + length, 0),
    passes: used.reduce((sum, readings) => sum + new Set(readings.map(({ pass }) => pass)).size, 0),
  };
}

/** "Measured once, 51 readings. With “22 mm joint”, " */
export function opening(car: CarDocument, set: string | undefined, words: FirstWords = FIRST): string {
  const { readings } = readAsItStands(car);
  const measured = readings > 0 ? say(words.measured, { count: counting(readings, words.reading) }) : '';
  return measured + (set === undefined ? words.asItStands : say(words.withSet, { set }));
}

/** A ± beside another: to the same place as that. */
export const plusMinusText = (plusMinus: number, display: Display, beside = plusMinus): string =>
  `±\u202f${show(Math.abs(plusMinus), 'camberChange', display, beside).split('\u202f±\u202f')[0]}`;

/** What follows "25 mm lower, over 40 mm of bump". */
export function sentence(answer: PredictOnSheet, display: Display, words: FirstWords = FIRST): Stretch[] {
  const { quantity, predicted, byTape, pulls, widened, slips, odd } = answer;
  const change = amount(predicted.value, predicted.plusMinus, quantity === 'toe' ? 'toe' : 'camberChange', display);
  const isDoubtful = widened > 1 || pulls.length > 0;
  return [
    ...fill(words[quantity], { change }),
    ...fill(isDoubtful ? words.tapeDoubtful : words.tape, {
      plusMinus: plusMinusText(byTape.plusMinus ?? 0, display, predicted.plusMinus),
    }),
    ...(odd ? fill(words.odd) : isDoubtful ? fill(words.doubtful) : slips.length > 0 ? fill(words.slipped) : []),
  ];
}

/** The whole sentence as it is spoken. */
export const spoken = (answer: PredictOnSheet, car: CarDocument, display: Display, words: FirstWords = FIRST): string =>
  say(words.spoken, {
    set: opening(car, answer.set && shownName(answer.set.setup.name), words),
    drop: dropText(answer.drop, display),
    way: wayText(answer.drop, words),
    over: lengthText(answer.over, display),
    from: fromText(answer.over, words),
    rest: sentence(answer, display, words),
  });

/** How much of what the answer rests on is given. */
export function completeness(car: CarDocument): 'example' | 'incomplete' | 'ready' {
  const { isExample, needs } = predictInUse(car);
  if (isExample) return 'example';
  return needs.length > 0 ? 'incomplete' : completenessOf(car, undefined);
}

/** Whose numbers these are: the line above the sentence. */
export function ownership(car: CarDocument, words: FirstWords = FIRST): string {
  const { isExample, needs } = predictInUse(car);
  if (isExample) return SHARED.example;
  const { stock } = readSetsOf(car);
  const { readings, passes } = readAsItStands(car);
  const counts = { count: counting(readings, words.reading), passes: counting(passes, words.pass) };
  const [first] = stock;
  const read = first ? say(words[ownerOf(car, first) === 'user' ? 'yours' : 'pages'], counts) : words.noReadings;
  if (needs.includes('links')) return say(words.owner, { links: read, readings: words.noLinks });
  return say(words.owner, { links: ownershipAsMeasured(asLinks(car)), readings: lower(read) });
}

/** What an element about one corner says. */
export const WORDS = worded(() => ({
  title: FIRST.title,
  step: FIRST.step,
  dropText,
  completeness,
  ownership,
  spoken,
}));
