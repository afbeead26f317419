import { toeAcross, USUAL_ACROSS_MM } from '../../core/answers/toe.js';
import type { CarDocument } from '../../core/document/car.js';
import { toeSetupOf } from '../../core/document/setup-in-use.js';
import { worded } from '../../core/quantity/words.js';
import {
  completeness as completenessOf,
  missingWords,
  ownership as ownershipOf,
  pointsMissing,
  readingsName,
} from '../bumpline-lowering/bumpline-lowering.words.js';
import { shownName } from '../car/shown-names.words.js';
import { lengthText, wayOf } from '../element/drop-words.js';
import { amount, type Display, fill, type Stretch, say, show } from '../element/sentence.js';
import { FIRST, type FirstWords } from './first.words.js';
import type { ToeOnSheet } from './toe-view.js';

export { FIRST, lengthText };

export const wayText = (drop: number, words: FirstWords = FIRST): string => wayOf(drop, words);

export const fromText = (over: number, words: FirstWords = FIRST): string =>
  over < 0 ? words.droopFrom : words.bumpFrom;

/** What follows "Over 40 mm of bump from 30 mm lower": how far the wheel turns by itself. */
export function sentence(answer: ToeOnSheet, car: CarDocument, display: Display, words: FirstWords = FIRST): Stretch[] {
  const { change, set } = answer;
  const { wheels, across = USUAL_ACROSS_MM, steeringRatio } = car.toe ?? {};
  const times = wheels === 'both' ? 2 : 1;
  const toe = times * change.value;
  const missing = toeSetupInUse(answer) ? 0 : pointsMissing(car);
  // Of a car that is nobody's, part a user's and part the example's, no ± is stated.
  const plusMinus = missing > 0 || change.plusMinus === undefined ? undefined : times * change.plusMinus;
  const isTold = Math.abs(toe) > (plusMinus ?? 0);
  const one = isTold ? words.one : words.flat;
  const both = isTold ? words.both : words.bothFlat;
  const said = fill(wheels === 'both' ? both : one, {
    wheel: set ? say(words.withSet, { set: shownName(set.setup.name) }) : words.this,
    way: toe < 0 ? words.out : words.in,
    change: amount(isTold ? Math.abs(toe) : toe, plusMinus, 'toe', display),
    across: say(words.across, {
      length: show(toeAcross(Math.abs(toe), across), 'travel', display),
      diameter: show(across, 'diameter', display),
    }),
    // Both wheels turn alike, each by its own.
    steering:
      steeringRatio === undefined
        ? ''
        : say(words.steering, { angle: show(steeringRatio * Math.abs(change.value), 'steer', display) }),
  });
  return [...said, ...(missing > 0 ? missingWords(car, words) : [])];
}

/** The whole sentence as it is spoken. */
export const spoken = (answer: ToeOnSheet, car: CarDocument, display: Display, words: FirstWords = FIRST): string =>
  say(words.spoken, {
    over: lengthText(answer.over, display),
    from: fromText(answer.over, words),
    drop: lengthText(answer.drop, display),
    way: wayText(answer.drop, words),
    rest: sentence(answer, car, display, words),
  });

const toeSetupInUse = ({ source }: ToeOnSheet): boolean => source.kind === 'readings';

/** How much of what the answer rests on is given. */
export const completeness = (car: CarDocument): 'example' | 'incomplete' | 'ready' =>
  completenessOf(car, toeSetupOf(car));

/** Whose numbers these are: the line above the sentence. */
export function ownership(car: CarDocument): string {
  const setup = toeSetupOf(car);
  return setup ? readingsName(setup) : ownershipOf(car);
}

/** What an element about one corner says. */
export const WORDS = worded(() => ({
  title: FIRST.title,
  step: FIRST.step,
  dropText: lengthText,
  completeness,
  ownership,
  spoken,
}));
