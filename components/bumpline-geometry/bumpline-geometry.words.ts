import { type LinksOverTravel, outputAt, outputChange } from '../../core/answers/geometry-at.js';
import type { Doubted } from '../../core/answers/lowering.js';
import type { CarDocument } from '../../core/document/car.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { worded } from '../../core/quantity/words.js';
import { completeness, missingWords, ownership, pointsMissing } from '../bumpline-lowering/bumpline-lowering.words.js';
import { shownName } from '../car/shown-names.words.js';
import { dropText } from '../element/drop-words.js';
import { amount, type Display, fill, type Stretch, say, show, value } from '../element/sentence.js';
import { FIRST, type FirstWords } from './first.words.js';
import { isDoubtStated, type WorkbenchAnswer } from './geometry-view.js';

export { completeness, FIRST, ownership };

export const verb = (drop: number, words: FirstWords = FIRST): string => (drop < 0 ? words.raised : words.lowered);

interface Telling {
  display: Display;
  words: FirstWords;
  /** Of a car that is nobody's, part a user's and part the example's, no ± is stated. */
  hasDoubt: boolean;
}

/** What follows "Lowered 25 mm": the roll centre, what bump does to camber and toe, and what the set of parts makes of them. */
export function sentence(
  answer: WorkbenchAnswer,
  car: CarDocument,
  display: Display,
  words: FirstWords = FIRST,
): Stretch[] {
  const { bare, sets, shown, drop, over } = answer;
  const telling = { display, words, hasDoubt: pointsMissing(car) === 0 && isDoubtStated(answer) };
  const fitted = sets[shown];
  const parts = {
    over: show(over, 'travel', display),
    stock:
      drop === 0 ? '' : fill(words.stock, { height: heightText(outputAt(bare, 'rollCentreHeight', 0).value, display) }),
  };
  const height = (links: LinksOverTravel) => heightWords(outputAt(links, 'rollCentreHeight', drop), telling);
  const camber = (links: LinksOverTravel) => outputChange(links, 'camber', drop + over, drop);
  const said = fitted
    ? fill(words.fitted, {
        ...parts,
        set: shownName(fitted.set.setup.name),
        bareHeight: height(bare),
        height: height(fitted),
        camber: changeWords(camber(fitted), telling),
        bareCamber: signed(camber(bare).value, display),
        toe: toeWords(answer, fitted, telling),
      })
    : fill(words.bare, {
        ...parts,
        height: height(bare),
        camber: changeWords(camber(bare), telling),
        toe: toeWords(answer, undefined, telling),
      });
  return [...said, ...missingWords(car, words)];
}

/** The whole sentence as it is spoken. */
export const spoken = (answer: WorkbenchAnswer, car: CarDocument, display: Display): string =>
  say(FIRST.spoken, {
    verb: verb(answer.drop),
    drop: dropText(answer.drop, display),
    rest: sentence(answer, car, display),
  });

/** To whole millimetres: more would claim what no tape tells. */
const heightText = (height: number, display: Display): string => show(Math.round(height), 'travel', display);

function heightWords({ value: height, plusMinus }: Doubted, { display, words, hasDoubt }: Telling): Stretch[] {
  const stated = hasDoubt ? plusMinus : undefined;
  const size = Math.abs(stated === undefined ? Math.round(height) : height);
  return fill(height < 0 ? words.below : words.above, { height: amount(size, stated, 'travel', display) });
}

const signed = (change: number, { units, language }: Display): string =>
  formatQuantity(change, 'camberChange', units, { language, sign: 'always' }).text;

function changeWords({ value: change, plusMinus }: Doubted, { display, hasDoubt }: Telling): Stretch[] {
  if (!hasDoubt || plusMinus === undefined) return [value(signed(change, display))];
  const { units, language } = display;
  const text = formatQuantity(change, 'camberChange', units, { language, sign: 'always', plusMinus }).text;
  const [main, doubt] = text.split('\u202f±\u202f');
  return [
    value(main!),
    ...(doubt === undefined ? [] : [{ text: ' ' }, { text: `±\u202f${doubt}`, role: 'doubt' } as const]),
  ];
}

/** A driveway tells nothing of toe. */
function toeWords(
  answer: WorkbenchAnswer,
  fitted: LinksOverTravel | undefined,
  { display, words, hasDoubt }: Telling,
): Stretch[] {
  const { bare, drop, over } = answer;
  if (!bare.curves.outputs.toe) return fill(words.measureToe);
  const change = (links: LinksOverTravel): Doubted => outputChange(links, 'toe', drop + over, drop);
  const inOrOut = ({ value: toe, plusMinus }: Doubted) => {
    const stated = hasDoubt ? plusMinus : undefined;
    const isTold = Math.abs(toe) > (stated ?? 0);
    return fill(!isTold ? words.toeFlat : toe < 0 ? words.toeOut : words.toeIn, {
      size: amount(isTold ? Math.abs(toe) : toe, stated, 'toe', display),
    });
  };
  const plain = ({ value: toe }: Doubted): string =>
    say(toe < 0 ? words.toeOut : words.toeIn, { size: show(Math.abs(toe), 'toe', display) });
  return fitted
    ? fill(words.toeBoth, { toe: inOrOut(change(fitted)), bareToe: plain(change(bare)) })
    : fill(words.toe, { toe: inOrOut(change(bare)) });
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
