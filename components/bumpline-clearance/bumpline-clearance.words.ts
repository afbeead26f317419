import type { ClearanceAnswer, GapAt, PlaceAnswer, Verdict } from '../../core/answers/clearance.js';
import { verdictOf } from '../../core/answers/verdict.js';
import type { Place } from '../../core/wheel/place.js';
import { amount, plain, type Reader, type Stretch, show, textOf, value } from '../shared/sentence.js';

/** The verdict, in the words that stand everywhere: never a permission. */
export const VERDICTS: Record<Verdict, string> = {
  clears: 'clears by the numbers',
  close: 'too close to tell',
  touches: 'touches',
};
const NO_VERDICT = 'no verdict until bump travel is known';
export const verdictText = ({ verdict }: Pick<PlaceAnswer, 'verdict'>): string =>
  verdict ? VERDICTS[verdict] : NO_VERDICT;

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

/** Where the tyre is when it decides. */
function when({ decisive }: PlaceAnswer, answer: ClearanceAnswer, reader: Reader): string {
  const { budget, drop } = answer;
  const at = decisive.travel - drop;
  if (budget.bump.solid && Math.abs(decisive.travel - budget.bump.solid.travel) < 0.01) return 'at full bump';
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
  const { gap, plusMinus } = found.decisive;
  const solid = budget.bump.solid;
  if (!solid || verdict === undefined) {
    const ends = ' Bump travel has not been entered.';
    if (!contact) return [plain(` the tyre touches nothing that was measured.${ends}`)];
    const at = placeName(places[contact.place]!, isLeft);
    return [
      plain(` the tyre would meet ${at} after `),
      value(whole(contact.travel - answer.drop, reader)),
      plain(` of bump.${ends}`),
    ];
  }
  const steered = isSteering ? steerText(found.decisive, lock) : ', straight ahead';
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
  return [...first[verdict], ...orderWords(answer, places, isLeft, reader), ...innerWords(answer, places, reader)];
}

/** Whether a place is on the wheel's inner side. */
export const isInner = ({ at }: Place): boolean => 'point' in at || at.from === 'inner';

/** Of a wheel that goes further in where nothing was measured nobody knows what it meets there. */
function innerWords({ verdict, wheels }: ClearanceAnswer, places: readonly Place[], reader: Reader): Stretch[] {
  const further = -wheels.innerEdge;
  if (verdict === 'touches' || further < INNER_TOLD_MM || places.some(isInner)) return [];
  return [plain(` Not looked at: the inner side, where the tyre goes ${whole(further, reader)} further in.`)];
}

const INNER_TOLD_MM = 0.5;

/** The order in which stop, contact and solid come. Only where its place is told to touch is a contact certain. */
function orderWords(
  { contact, budget, verdict, drop, worst, allowance, places: found }: ClearanceAnswer,
  places: readonly Place[],
  isLeft: boolean,
  reader: Reader,
): Stretch[] {
  const { solid, touch } = budget.bump;
  if (!solid) return [];
  const met = contact && found[contact.place]!;
  const isSure = met?.verdict === 'touches';
  if (met && contact.travel <= drop) {
    const isSureThere = verdictOf(met.ride, met.margin + allowance) === 'touches';
    return [plain(isSureThere ? ' It touches where the car stands.' : ' It may touch where the car stands.')];
  }
  const early = contact ? solid.travel - contact.travel : Number.NEGATIVE_INFINITY;
  const isSaid = contact?.place === worst && verdict === 'touches';
  const other = contact && !isSaid ? ` ${placeName(places[contact.place]!, isLeft)}` : ' it';
  const first: Stretch[] =
    early > 0.5
      ? [
          plain(` It ${isSure ? 'meets' : 'may meet'}${other} `),
          value(whole(early, reader)),
          plain(' before the suspension is solid.'),
        ]
      : [];
  const isOnStop = touch !== undefined && touch.governedBy === 'stop' && touch.left <= 0;
  const before = touch && !isOnStop ? solid.left - touch.left : 0;
  const stop: Stretch[] = isOnStop
    ? [plain(' The car stands on its bump stop.')]
    : before < 0.5
      ? []
      : [plain(' The stop is touched '), value(whole(before, reader)), plain(' before that.')];
  const beyond: Stretch[] =
    early <= 0.5 && early > -FAR_BEYOND_MM
      ? [plain(' The tyre would touch '), value(whole(Math.max(0, -early), reader)), plain(' beyond full bump.')]
      : [];
  return [...first, ...stop, ...beyond];
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

/** @param lead whose car it is not */
export function spoken(told: Told, lead: string, drop: string, plane: string, reader: Reader): string {
  return `${lead}${drop}, wheels ${plane}:${textOf(sentence(told, reader))}`;
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
