import type { ClearanceAnswer, GapAt, PlaceAnswer, Verdict } from '../../core/answers/clearance.js';
import type { CarDocument } from '../../core/document/car.js';
import { givenParts } from '../../core/document/fit-in-use.js';
import { wayOf } from '../../core/document/setup-in-use.js';
import type { Place } from '../../core/wheel/place.js';
import { amount, plain, type Reader, type Stretch, show, textOf, value } from '../shared/sentence.js';

export type ElementState = 'example' | 'incomplete' | 'ready' | 'stale' | 'problem' | 'fault' | 'waiting';

/** The verdict, in the words that stand everywhere: never a permission. */
export const VERDICTS: Record<Verdict, string> = {
  clears: 'clears by the numbers',
  close: 'too close to tell',
  touches: 'touches',
};

/** "at 11 o’clock, forward": seen from outside. */
export function clockText(clock: number, isLeft: boolean): string {
  const hour = clock === 0 ? 12 : clock;
  const whole = Math.floor(hour);
  const half = hour - whole >= 0.25 && hour - whole < 0.75 ? ' 30' : '';
  return `${whole === 0 ? 12 : whole}${half} o’clock${sideOf(hour, isLeft)}`;
}

/** On a left wheel, seen from outside, the front of the car is on the viewer's left: 9 o'clock. */
export function sideOf(clock: number, isLeft: boolean): string {
  const hour = clock % 12;
  if (hour === 0 || hour === 6) return '';
  return hour > 6 === isLeft ? ' forward' : ' rearward';
}

/** "the arch lip at 11 o’clock forward" */
export function placeName(place: Place, isLeft: boolean): string {
  const name = `the ${place.name || 'place'}`;
  return 'clock' in place.at ? `${name} at ${clockText(place.at.clock, isLeft)}` : name;
}

/** Where the tyre is when it is nearest. */
function when({ worst }: PlaceAnswer, answer: ClearanceAnswer, reader: Reader): string {
  const { budget, drop } = answer;
  const at = worst.travel - drop;
  if (budget.bump.solid && Math.abs(worst.travel - budget.bump.solid.travel) < 0.01) return 'at full bump';
  if (Math.abs(at) < 1) return 'at ride height';
  return `at ${whole(Math.abs(at), reader)} of ${at > 0 ? 'bump' : 'droop'}`;
}

/** Steered further than this is said, degrees. */
const STEERED_TOLD = 3;

export function steerText({ toe, isAhead }: GapAt, lock: number | undefined): string {
  if (isAhead || Math.abs(toe) < STEERED_TOLD) return '';
  return lock !== undefined && Math.abs(toe) > 0.9 * lock
    ? ' and full lock'
    : `, steered ${Math.round(Math.abs(toe))}°`;
}

/** Distances along the travel are not known to tenths. */
const whole = (mm: number, reader: Reader): string => show(Math.round(mm), 'travel', reader);

export interface Told {
  answer: ClearanceAnswer;
  /** Whether the steering was looked at, or is still to be. */
  isSteering: boolean;
  places: readonly Place[];
  isLeft: boolean;
  lock: number | undefined;
}

/** What follows "25 mm lower, wheels 10 mm further out:". */
export function sentence({ answer, places, isLeft, lock, isSteering }: Told, reader: Reader): Stretch[] {
  const { worst, verdict, budget, contact } = answer;
  if (worst === undefined) {
    return [plain(' nothing in the arch was measured yet. '), ...travelWords(answer, reader)];
  }
  const found = answer.places[worst]!;
  const place = places[worst]!;
  const name = placeName(place, isLeft);
  const { gap, plusMinus } = found.worst;
  const solid = budget.bump.solid;
  if (!solid || verdict === undefined) {
    const ends = ' How much bump is left nobody has said.';
    if (!contact) return [plain(` the tyre touches nothing that was measured.${ends}`)];
    const at = placeName(places[contact.place]!, isLeft);
    return [
      plain(` the tyre meets ${at} after `),
      value(whole(contact.travel - answer.drop, reader)),
      plain(` of bump.${ends}`),
    ];
  }
  const steered = isSteering ? steerText(found.worst, lock) : ', straight ahead';
  const where = `${when(found, answer, reader)}${steered}`;
  const size = (mm: number) => amount(mm, plusMinus, 'travel', reader);
  const first: Record<Verdict, Stretch[]> = {
    clears: [plain(' the tyre '), value('clears'), plain(` ${name} by `), ...size(gap), plain(` ${where}.`)],
    close: [
      plain(' '),
      value('too close to tell'),
      plain(gap >= 0 ? `. ${upper(where)}, ${name} is ` : `. ${upper(where)}, the tyre is `),
      ...size(Math.abs(gap)),
      plain(gap >= 0 ? ` away; ${whole(found.margin + answer.allowance, reader)} should stay free.` : ` into ${name}.`),
    ],
    touches: [
      plain(' the tyre '),
      value('touches'),
      plain(` ${name}: `),
      ...size(Math.abs(gap)),
      plain(` too much ${where}.`),
    ],
  };
  return [...first[verdict], ...orderWords(answer, places, isLeft, reader)];
}

/** The order in which stop, contact and solid come. */
function orderWords(
  { contact, budget, verdict, drop }: ClearanceAnswer,
  places: readonly Place[],
  isLeft: boolean,
  reader: Reader,
): Stretch[] {
  const { solid, touch } = budget.bump;
  if (!solid) return [];
  if (contact && contact.travel <= drop) return [plain(' It touches where the car stands.')];
  const early = contact ? solid.travel - contact.travel : Number.NEGATIVE_INFINITY;
  const other = contact && verdict !== 'touches' ? ` ${placeName(places[contact.place]!, isLeft)}` : ' it';
  const first: Stretch[] =
    early > 0.5
      ? [plain(` It meets${other} `), value(whole(early, reader)), plain(' before the suspension is solid.')]
      : [];
  const isOnStop = touch !== undefined && touch.governedBy === 'stop' && touch.left <= 0;
  const before = touch && !isOnStop ? solid.left - touch.left : 0;
  const stop: Stretch[] = isOnStop
    ? [plain(' The car stands on its bump stop.')]
    : before < 0.5
      ? []
      : [plain(' The stop is touched '), value(whole(before, reader)), plain(' before that')];
  const beyond: Stretch[] =
    early <= 0.5 && early > -FAR_BEYOND_MM
      ? [
          plain(stop.length > 1 ? ', contact would be ' : ' Contact would be '),
          value(whole(-early, reader)),
          plain(' after'),
        ]
      : [];
  const isOpen = stop.length > 1 || beyond.length > 0;
  return [...first, ...stop, ...beyond, ...(isOpen ? [plain('.')] : [])];
}

/** Contacts further beyond solid than this nobody needs to know of. */
const FAR_BEYOND_MM = 15;

function travelWords({ budget: { bump } }: ClearanceAnswer, reader: Reader): Stretch[] {
  const { solid } = bump;
  return solid ? [plain('The suspension is solid after '), value(whole(solid.left, reader)), plain(' of bump.')] : [];
}

export const upper = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** What stands before the colon, without the two numbers that are edited there. */
export const lowerWord = (drop: number): string => (drop < 0 ? 'higher' : 'lower');
export const outWord = (plane: number): string => (plane < 0 ? 'further in' : 'further out');

export function spoken(told: Told, drop: string, plane: string, reader: Reader): string {
  return `${drop}, wheels ${plane}:${textOf(sentence(told, reader))}`;
}

/** Whose numbers these are. */
export function ownership(car: CarDocument): string {
  const names = givenNames(car);
  const by = car.fitGivenBy === 'page' && car.givenBy === 'page' ? 'given' : 'yours';
  if (names.length === 0) return 'Example';
  return names.length === Object.keys(PARTS).length ? `all ${by}` : `${names.join(', ')} ${by}`;
}

/** Short names of what somebody gave. */
function givenNames(car: CarDocument): string[] {
  const given = { motion: isMotionGiven(car), ...givenParts(car) };
  return (Object.keys(PARTS) as (keyof typeof PARTS)[]).flatMap((part) => (given[part] ? [SHORT[part]] : []));
}

const isMotionGiven = (car: CarDocument): boolean =>
  wayOf(car) === 'readings' ||
  car.givenBy === 'user' ||
  car.curve !== undefined ||
  car.whole !== undefined ||
  Object.keys(car.given.points).length > 0;

const PARTS = { motion: 'how the wheel moves', wheels: 'the wheels', places: 'the places', limits: 'the bump travel' };

const SHORT = { motion: 'motion', wheels: 'wheels', places: 'places', limits: 'bump travel' };

/** A warning while the car is nobody's: what of it is still the example's, or the page's. */
export function standInWords(car: CarDocument): string {
  if (completeness(car) !== 'incomplete' || (car.fitGivenBy === 'page' && car.givenBy === 'page')) return '';
  const given = { motion: isMotionGiven(car), ...givenParts(car) };
  const names = (Object.keys(PARTS) as (keyof typeof PARTS)[]).flatMap((part) => (given[part] ? [] : [PARTS[part]]));
  const last = names.pop();
  const list = names.length > 0 ? `${names.join(', ')} and ${last}` : last;
  const isMany = names.length > 0 || last === PARTS.wheels || last === PARTS.places;
  return ` ${upper(list!)} ${isMany ? 'are' : 'is'} still ${car.fitStandIn || car.standIn ? 'the page’s' : 'the example’s'}.`;
}

export function completeness(car: CarDocument): 'example' | 'incomplete' | 'ready' {
  const count = givenNames(car).length;
  return count === 0 ? 'example' : count === Object.keys(PARTS).length ? 'ready' : 'incomplete';
}

/** Short texts that stand before the body of the sheet is there. */
export const FIRST = {
  title: 'Does the tyre clear at full bump?',
  drop: 'Drop',
  plane: 'Wheels further out',
  waiting: 'Working it out …',
  noAnswer: ' no answer yet.',
  none: 'No answer yet.',
  before: 'Last answer:',
} as const;
