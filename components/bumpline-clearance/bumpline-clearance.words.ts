import type { ClearanceAnswer, GapAt, PlaceAnswer } from '../../core/answers/clearance.js';
import { verdictOf } from '../../core/answers/verdict.js';
import type { Place } from '../../core/wheel/place.js';
import { shownName } from '../car/shown-names.words.js';
import { amount, type Display, fill, type Stretch, say, show } from '../element/sentence.js';
import { FIRST, type FirstWords } from './first.words.js';

export { FIRST };

/** The verdict, in the words that stand everywhere: never a permission. */
export const VERDICTS = FIRST.verdicts;
export const verdictText = ({ verdict }: Pick<PlaceAnswer, 'verdict'>, words: FirstWords = FIRST): string =>
  verdict ? words.verdicts[verdict] : words.noVerdict;

/** "at 11 o’clock, forward": seen from outside. */
export function clockText(clock: number, isLeft: boolean, words: FirstWords = FIRST): string {
  const hour = clock === 0 ? 12 : clock;
  const whole = Math.floor(hour);
  const full = String(whole === 0 ? 12 : whole);
  const text = hour - whole >= 0.25 && hour - whole < 0.75 ? say(words.halfPast, { hour: full }) : full;
  return `${say(words.clock, { hour: text })}${sideOf(hour, isLeft, words)}`;
}

/** On a left wheel, seen from outside, the front of the car is on the viewer's left: 9 o'clock. */
export function sideOf(clock: number, isLeft: boolean, words: FirstWords = FIRST): string {
  const hour = clock % 12;
  if (hour === 0 || hour === 6) return '';
  return hour > 6 === isLeft ? words.forward : words.rearward;
}

/** "the arch lip at 11 o’clock forward" */
export function placeName({ name, at }: Place, isLeft: boolean, words: FirstWords = FIRST): string {
  const place = say(words.place, { name: shownName(name) || words.unnamed });
  if (!('clock' in at)) return place;
  return say(words.atClock, { name: place, clock: clockText(at.clock, isLeft, words) });
}

/** Where the tyre is when it decides. */
function when({ decisive }: PlaceAnswer, answer: ClearanceAnswer, display: Display, words: FirstWords): string {
  const { budget, drop } = answer;
  const at = decisive.travel - drop;
  if (budget.bump.solid && Math.abs(decisive.travel - budget.bump.solid.travel) < 0.01) return words.full;
  if (Math.abs(at) < 1) return words.ride;
  return say(at > 0 ? words.inBump : words.inDroop, { travel: whole(Math.abs(at), display) });
}

/** Steered further than this is said, degrees. */
const STEERED_TOLD = 3;

function steerText({ toe, isAhead }: GapAt, lock: number | undefined, words: FirstWords = FIRST): string {
  if (isAhead || Math.abs(toe) < STEERED_TOLD) return '';
  return lock !== undefined && Math.abs(toe) > 0.9 * lock
    ? words.fullLock
    : say(words.steered, { toe: String(Math.round(Math.abs(toe))) });
}

/** Distances along the travel are not known to tenths. */
const whole = (mm: number, display: Display): string => show(Math.round(mm), 'travel', display);

export interface Told {
  answer: ClearanceAnswer;
  /** Whether the steering was looked at, or is still to be. */
  isSteering: boolean;
  places: readonly Place[];
  isLeft: boolean;
  lock: number | undefined;
}

/** What follows "25 mm lower, wheels 10 mm further out:". */
export function sentence(
  { answer, places, isLeft, lock, isSteering }: Told,
  display: Display,
  words: FirstWords = FIRST,
): Stretch[] {
  const { worst, verdict, budget, contact } = answer;
  if (worst === undefined) return [...fill(words.nothing), ...travelWords(answer, display, words)];
  const found = answer.places[worst]!;
  const nameOf = (index: number) => placeName(places[index]!, isLeft, words);
  const { gap, plusMinus } = found.decisive;
  if (!budget.bump.solid || verdict === undefined) {
    if (!contact) return fill(words.noContact + words.noBump);
    const travel = whole(contact.travel - answer.drop, display);
    return fill(words.contact + words.noBump, { place: nameOf(contact.place), travel });
  }
  const steered = isSteering ? steerText(found.decisive, lock, words) : words.ahead;
  const pattern = verdict === 'close' && gap < 0 ? words.closeInside : words[verdict];
  const parts = {
    place: nameOf(worst),
    gap: amount(verdict === 'clears' ? gap : Math.abs(gap), plusMinus, 'travel', display),
    where: `${when(found, answer, display, words)}${steered}`,
    needed: whole(found.margin + answer.allowance, display),
  };
  return [
    ...fill(pattern, parts),
    ...orderWords(answer, nameOf, display, words),
    ...innerWords(answer, places, display, words),
  ];
}

/** Whether a place is on the wheel's inner side. */
export const isInner = ({ at }: Place): boolean => 'point' in at || at.from === 'inner';

/** Of a wheel that goes further in where nothing was measured nobody knows what it meets there. */
function innerWords(
  { verdict, wheels }: ClearanceAnswer,
  places: readonly Place[],
  display: Display,
  words: FirstWords,
): Stretch[] {
  const further = -wheels.innerEdge;
  if (verdict === 'touches' || further < INNER_TOLD_MM || places.some(isInner)) return [];
  return fill(words.innerSide, { travel: whole(further, display) });
}

const INNER_TOLD_MM = 0.5;

/** The order in which stop, contact and solid come. Only where its place is told to touch is a contact certain. */
function orderWords(
  { contact, budget, verdict, drop, worst, allowance, places: found }: ClearanceAnswer,
  nameOf: (index: number) => string,
  display: Display,
  words: FirstWords,
): Stretch[] {
  const { solid, touch } = budget.bump;
  if (!solid) return [];
  const met = contact && found[contact.place]!;
  const isSure = met?.verdict === 'touches';
  if (met && contact.travel <= drop) {
    const isSureThere = verdictOf(met.ride, met.margin + allowance) === 'touches';
    return fill(isSureThere ? words.touchesHere : words.mayTouchHere);
  }
  const along = (pattern: string, travel: number, place = '') =>
    fill(pattern, { travel: whole(travel, display), place });
  const early = contact ? solid.travel - contact.travel : Number.NEGATIVE_INFINITY;
  const isSaid = contact?.place === worst && verdict === 'touches';
  const other = contact && !isSaid ? nameOf(contact.place) : words.it;
  const isOnStop = touch !== undefined && touch.governedBy === 'stop' && touch.left <= 0;
  const before = touch && !isOnStop ? solid.left - touch.left : 0;
  return [
    ...(early > 0.5 ? along(isSure ? words.meets : words.mayMeet, early, other) : []),
    ...(isOnStop ? fill(words.onStop) : before < 0.5 ? [] : along(words.stop, before)),
    ...(early <= 0.5 && early > -FAR_BEYOND_MM ? along(words.beyond, Math.max(0, -early)) : []),
  ];
}

/** Contacts further beyond solid than this nobody needs to know of. */
const FAR_BEYOND_MM = 15;

const travelWords = ({ budget: { bump } }: ClearanceAnswer, display: Display, words: FirstWords): Stretch[] =>
  bump.solid ? fill(words.solid, { travel: whole(bump.solid.left, display) }) : [];

/** What stands before the colon, without the two numbers that are edited there. */
export const lowerWord = (drop: number, words: FirstWords = FIRST): string => (drop < 0 ? words.higher : words.lower);
export const outWord = (plane: number, words: FirstWords = FIRST): string =>
  plane < 0 ? words.furtherIn : words.furtherOut;

/** @param lead whose car it is not */
export function spoken(
  told: Told,
  lead: string,
  drop: string,
  plane: string,
  display: Display,
  words: FirstWords = FIRST,
): string {
  return say(words.lead, { lead, drop, plane, rest: sentence(told, display, words) });
}
