import type { LoweringAnswer } from '../../core/answers/lowering.js';
import { type CarDocument, givenPointCount, isWishbone } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import type { Setup } from '../../core/document/setup.js';
import { camberSetupOf, readingsInUse, sourceKindOf } from '../../core/document/setup-in-use.js';
import { STRUT_POINT_KEYS } from '../../core/linkage/corner.js';
import { worded } from '../../core/quantity/words.js';
import { correctedBy } from '../car/corrected-by.js';
import { DRIVEWAY_COUNT, measuredCount } from '../car/measured-count.js';
import { shownName } from '../car/shown-names.words.js';
import { standInName } from '../car/stand-in.js';
import { withPartsText } from '../car/with-parts.js';
import { dropText } from '../element/drop-words.js';
import { SHARED } from '../element/first.words.js';
import { limitName } from '../element/limits.words.js';
import { amount, counting, type Display, fill, lower, type Stretch as Quiet, say, show } from '../element/sentence.js';
import { FIRST, type FirstWords } from './first.words.js';

export type { Display };
export { FIRST, show };

/** `change`: the value that can be asked for the other way round. */
export type Stretch = Quiet<'change'>;

export const verb = (drop: number, words: FirstWords = FIRST): string => (drop < 0 ? words.raising : words.lowering);

/** "Lowering", "With lower joint on: lowering" */
export function opening(drop: number, car: CarDocument, words: FirstWords = FIRST): string {
  const parts = withPartsText(car);
  return parts ? `${parts}${lower(verb(drop, words))}` : verb(drop, words);
}

/**
 * What follows "Lowering 30 mm": one or two sentences, and a warning while the car is nobody's: part a user's, part what stood
 * there before. Its ± would be that of neither, so none is stated.
 */
export function sentence(
  answer: LoweringAnswer,
  car: CarDocument,
  display: Display,
  words: FirstWords = FIRST,
): Stretch[] {
  const missing = pointsMissing(car);
  const { plusMinus: _, ...alone } = answer.change;
  const stated = missing > 0 ? { ...answer, change: alone } : answer;
  const end = answer.budget?.bump.solid;
  // The stop may be pressed; what is solid may not.
  const past = answer.budget && !end ? 0 : -(answer.bumpLeft ?? 0);
  // Nothing stands below its solid stop: that comes first, and what the links would do only after.
  const isPast = past > (end?.plusMinus ?? 0);
  const said = isPast
    ? fill(words.pastStop, {
        past: show(past, 'travel', display, end?.plusMinus),
        change: changeWords(stated, words.would, words, display),
      })
    : fill(words.says, {
        change: changeWords(stated, words.does, words, display),
        camber: camberWords(answer, car, display, words),
        bump: bumpWords(answer, car, display, words),
        turn: turnWords(answer, display, words),
      });
  return [...said, ...otherWords(answer, car, display, words), ...missingWords(car, words)];
}

/** The whole sentence as it is spoken. */
export function spoken(answer: LoweringAnswer, car: CarDocument, display: Display, words: FirstWords = FIRST): string {
  const rest = sentence(answer, car, display, words);
  return say(words.spoken, { verb: opening(answer.drop, car, words), drop: dropText(answer.drop, display), rest });
}

function changeWords(
  { drop, change }: LoweringAnswer,
  verbs: FirstWords['does'],
  words: FirstWords,
  display: Display,
): Stretch[] {
  const size = Math.abs(change.value);
  if (drop === 0) return fill(words.nothing);
  const of = (amountOf: number) => amount(amountOf, change.plusMinus, 'camberChange', display);
  if (change.plusMinus !== undefined && size <= change.plusMinus) {
    return fill(verbs.notTold, { change: of(change.value) });
  }
  return change.value < 0
    ? fill(verbs.adds, { change: asked(of(size), drop) })
    : fill(verbs.takes, { change: of(size) });
}

/** Of a lowered car one can ask which drop gives another change. */
const asked = ([first, ...rest]: Stretch[], drop: number): Stretch[] =>
  first && drop > 0 ? [{ ...first, role: 'change' }, ...rest] : [first!, ...rest];

/** Where that puts it: for who read camber itself or gave a static camber of their own. */
function camberWords(
  { drop, camberAfter }: LoweringAnswer,
  car: CarDocument,
  display: Display,
  words: FirstWords,
): Stretch[] {
  const isKnown = sourceKindOf(car) === 'readings' || (isUsers(car, 'corner') && car.given.camber !== undefined);
  return drop === 0 || !isKnown ? [] : fill(words.camber, { camber: show(camberAfter, 'camber', display) });
}

function bumpWords(
  answer: LoweringAnswer,
  { lowered, stopGap }: CarDocument,
  display: Display,
  words: FirstWords,
): Stretch[] {
  const { bumpLeft, budget } = answer;
  if (bumpLeft === undefined) return [];
  const { plusMinus } = budget?.bump.solid ?? budget?.bump.touch ?? {};
  // Worked out from a gap on the rod, tenths would claim too much; a ± says itself how much may be claimed.
  const rounded = stopGap === undefined ? bumpLeft : Math.round(bumpLeft);
  const left = amount(plusMinus === undefined ? rounded : bumpLeft, plusMinus, 'travel', display);
  const end = endWords(answer, display, words);
  if (lowered === 'dampers') return fill(words.keeps, { left, end });
  if (rounded > 0) return fill(words.leaves, { left, end });
  if (budget && !budget.bump.solid) return fill(words.onStop);
  if (plusMinus === undefined) return fill(words.noBump);
  return fill(words.leavesMost, { left: show(Math.round(bumpLeft + plusMinus), 'travel', display), end });
}

/** Which limit governs, and when the stop is touched before. */
function endWords({ budget }: LoweringAnswer, display: Display, words: FirstWords): Stretch[] {
  const { touch, solid } = budget?.bump ?? {};
  if (touch && !solid) return fill(words.toTouch);
  if (!solid || (solid.governedBy === 'bumpTravel' && !touch)) return [];
  const by = solid.governedBy === 'bumpTravel' ? [] : fill(words.endedBy, { limit: limitName(solid.governedBy) });
  if (touch?.governedBy !== 'stop') return by;
  const at = Math.round(touch.left);
  const stop = at <= 0 ? fill(words.onStopAlready) : fill(words.touchedAfter, { travel: show(at, 'travel', display) });
  return [...by, ...stop];
}

/** Left and right further apart than this are said in the sentence, degrees: common practice, no source. */
const CROSS_CAMBER_TOLD = 0.25;

function otherWords({ other }: LoweringAnswer, car: CarDocument, display: Display, words: FirstWords): Stretch[] {
  if (!other || car.given.camber === undefined || Math.abs(other.difference) < CROSS_CAMBER_TOLD) return [];
  return fill(words.cross, { size: show(Math.abs(other.difference), 'camberChange', display) });
}

/** Where the change slows and turns back. */
function turnWords(
  { drop, change, reversal, rateBefore, rateAfter, isStraight, bumpLeft }: LoweringAnswer,
  display: Display,
  words: FirstWords,
): Stretch[] {
  // What cannot be told from nothing has no course.
  if (drop === 0 || Math.abs(change.value) <= (change.plusMinus ?? 0)) return [];
  if (drop < 0 || !reversal) {
    const grows = Math.abs(rateAfter.value) > Math.abs(rateBefore.value);
    const [grown, slowed] = drop < 0 ? [words.growsHigher, words.slowsHigher] : [words.growsLower, words.slowsLower];
    return isStraight ? [] : fill(grows ? grown : slowed);
  }
  const stop = bumpLeft === undefined ? undefined : bumpLeft + drop;
  const { travel } = reversal;
  if (drop <= travel.value && stop !== undefined && travel.value >= stop) return fill(words.slowsToStop);
  // Rounded as its own doubt allows.
  const at = amount(travel.value, travel.plusMinus, 'travel', display);
  return fill(drop > travel.value ? words.pastTurn : words.turns, { travel: at });
}

/** That a car is nobody's: part a user's, part what stood there before. */
export function missingWords(car: CarDocument, words: Pick<FirstWords, 'missing' | 'missingOne'>): Quiet[] {
  const missing = pointsMissing(car);
  if (missing === 0) return [];
  return fill(missing === 1 ? words.missingOne : words.missing, {
    count: String(missing),
    whose: standInName(car),
  });
}

/** How many hard points of a car that a user has begun to give, or a page has given in part, are still missing. */
export function pointsMissing(car: CarDocument): number {
  const isBegun = isUsers(car, 'corner') || givenPointCount(car) > 0;
  return isBegun && sourceKindOf(car) === 'points' && !car.curve && car.whole === undefined
    ? STRUT_POINT_KEYS.length - givenPointCount(car)
    : 0;
}

/** What an element about one corner at a drop says, by its own title and sentence. */
export const cornerWords = <Words extends object>({ title, step }: Record<'title' | 'step', string>, own: Words) => ({
  title,
  step,
  dropText,
  completeness,
  ownership,
  ...own,
});

/** How much of a car is given: by a user, or by a page. @param read the set whose readings the answer is made from */
export function completeness(
  car: CarDocument,
  read: Setup | undefined = sourceKindOf(car) === 'readings' ? camberSetupOf(car) : undefined,
): 'example' | 'incomplete' | 'ready' {
  if (read) return read.givenBy === 'example' ? 'example' : 'ready';
  const sourceKind = sourceKindOf(car);
  if (car.curve || car.whole !== undefined) return 'ready';
  const [count, all] =
    sourceKind === 'driveway' ? [measuredCount(car), DRIVEWAY_COUNT] : [givenPointCount(car), STRUT_POINT_KEYS.length];
  if (count === 0 && pointsMissing(car) === 0) return 'example';
  return count < all ? 'incomplete' : 'ready';
}

/** Whose numbers these are: the line above the sentence. */
export function ownership(car: CarDocument, words: FirstWords = FIRST): string {
  const corrected = sourceKindOf(car) === 'readings' ? undefined : correctedBy(car);
  return [ownershipAsMeasured(car, words), ...(corrected ? [corrected] : [])].join(', ');
}

/** The same of links as they were measured. */
export function ownershipAsMeasured(car: CarDocument, { whose: words }: FirstWords = FIRST): string {
  const sourceKind = sourceKindOf(car);
  if (sourceKind === 'readings') return readingsName(camberSetupOf(car)!, { whose: words });
  if (car.curve) return words.curve;
  const by = isUsers(car, 'corner') ? 'yours' : 'pages';
  const isWhole = car.whole !== undefined;
  const isDriveway = sourceKind === 'driveway' && !isWhole;
  const count = isDriveway ? measuredCount(car) : givenPointCount(car);
  const all = isDriveway ? DRIVEWAY_COUNT : STRUT_POINT_KEYS.length;
  if (isWhole && (by === 'pages' || isWishbone(car))) return words.all[by];
  if (count === 0 && (isDriveway || by === 'pages')) return SHARED.example;
  if (isDriveway || count < all)
    return say(words[isDriveway ? 'driveway' : 'points'][by], { count: String(count), all: String(all) });
  const { camber, toe } = car.given;
  if (camber !== undefined && toe !== undefined) return words.all[by];
  const rest = words[camber !== undefined ? 'toe' : toe !== undefined ? 'camber' : 'both'];
  return say(words.rest[by], { rest, whose: standInName(car) });
}

/** "from 49 readings in 3 passes, Standard arms" */
export function readingsName(setup: Setup, { whose: words }: Pick<FirstWords, 'whose'> = FIRST): string {
  const used = readingsInUse(setup);
  const aside = setup.readings.length - used.length;
  return say(words.readings, {
    count: counting(used.length, words.reading),
    passes: counting(new Set(used.map(({ pass }) => pass)).size, words.pass),
    aside: aside ? say(words.aside, { count: String(aside) }) : '',
    name: shownName(setup.name),
  });
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
