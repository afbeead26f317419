import type { LoweringAnswer } from '../../core/answers/lowering.js';
import { type CarDocument, givenPointCount } from '../../core/document/car.js';
import { givenBy } from '../../core/document/provenance.js';
import { camberSetupOf, readingsInUse, wayOf } from '../../core/document/setup-in-use.js';
import type { DrivewayKey } from '../../core/driveway/driveway.js';
import { STRUT_POINT_KEYS } from '../../core/linkage/corner.js';
import { limitName } from '../shared/limit-name.js';
import {
  amount,
  counted,
  plain,
  type Stretch as Quiet,
  type Reader as Reading,
  show,
  value,
} from '../shared/sentence.js';
import { standInName } from '../shared/stand-in.js';

export type { Reading };
export { show };

/** A stretch of the sentence. `change`: the value that can be asked for the other way round. */
export interface Stretch extends Omit<Quiet, 'role'> {
  role?: Quiet['role'] | 'change';
}

/** "30 mm", as it stands in the sentence. The drop is always said as a positive amount: the verb has the sign. */
export const dropText = (drop: number, reading: Reading): string => show(Math.abs(drop), 'drop', reading);

export const verb = (drop: number): string => (drop < 0 ? 'Raising' : 'Lowering');

/**
 * What follows "Lowering 30 mm": one or two sentences, and a warning while the car is nobody's: part a user's, part what stood
 * there before. Its ± would be that of neither, so none is stated.
 */
export function sentence(answer: LoweringAnswer, car: CarDocument, reading: Reading): Stretch[] {
  const missing = pointsMissing(car);
  const { plusMinus: _, ...alone } = answer.change;
  const stated = missing > 0 ? { ...answer, change: alone } : answer;
  const end = answer.budget?.bump.solid;
  // The stop may be pressed; what is solid may not.
  const past = answer.budget && !end ? 0 : -(answer.bumpLeft ?? 0);
  return [
    ...(past > (end?.plusMinus ?? 0)
      ? pastStopWords(stated, past, end?.plusMinus, reading)
      : [
          ...changeWords(stated, DOES, reading),
          ...camberWords(answer, car, reading),
          ...bumpWords(answer, car, reading),
          plain('.'),
          ...turnWords(answer, reading),
        ]),
    ...otherWords(answer, car, reading),
    ...(missing > 0
      ? [plain(` But ${counted(missing, 'point')} of this ${are(missing)} still ${standInName(car)}.`)]
      : []),
  ];
}

/** The whole sentence as it is spoken. */
export function spoken(answer: LoweringAnswer, car: CarDocument, reading: Reading): string {
  const text = sentence(answer, car, reading)
    .map((stretch) => stretch.text)
    .join('');
  return `${verb(answer.drop)} ${dropText(answer.drop, reading)}${text}`;
}

function changeWords({ drop, change }: LoweringAnswer, [adds, takes, changes]: Verbs, reading: Reading): Stretch[] {
  const size = Math.abs(change.value);
  if (drop === 0) return [plain(' changes nothing')];
  const of = (amountOf: number) => amount(amountOf, change.plusMinus, 'camberChange', reading);
  if (change.plusMinus !== undefined && size <= change.plusMinus) {
    return [plain(` ${changes} camber by `), ...of(change.value), plain(': cannot be told from nothing')];
  }
  return change.value < 0
    ? [plain(` ${adds} `), ...asked(of(size), drop), plain(' of negative camber')]
    : [plain(` ${takes} `), ...of(size), plain(' of negative camber away')];
}

/** Of a lowered car one can ask which drop gives another change. */
const asked = ([first, ...rest]: Stretch[], drop: number): Stretch[] =>
  first && drop > 0 ? [{ ...first, role: 'change' }, ...rest] : [first!, ...rest];

type Verbs = readonly [adds: string, takes: string, changes: string];
const DOES: Verbs = ['adds', 'takes', 'changes'];
const WOULD: Verbs = ['it would add', 'it would take', 'it would change'];

/** Where that puts it: for who read camber itself or gave a static camber of their own. */
function camberWords({ drop, camberAfter }: LoweringAnswer, car: CarDocument, reading: Reading): Stretch[] {
  const isKnown = wayOf(car) === 'readings' || (givenBy(car, 'corner') === 'user' && car.given.camber !== undefined);
  if (drop === 0 || !isKnown) return [];
  return [plain(', to '), value(show(camberAfter, 'camber', reading))];
}

function bumpWords(answer: LoweringAnswer, { lowered, stopGap }: CarDocument, reading: Reading): Stretch[] {
  const { bumpLeft, budget } = answer;
  if (bumpLeft === undefined) return [];
  const { plusMinus } = budget?.bump.solid ?? budget?.bump.touch ?? {};
  // Worked out from a gap on the rod, tenths would claim too much; a ± says itself how much may be claimed.
  const rounded = stopGap === undefined ? bumpLeft : Math.round(bumpLeft);
  const left = () => amount(plusMinus === undefined ? rounded : bumpLeft, plusMinus, 'travel', reading);
  if (lowered === 'dampers') {
    return [plain(' and keeps '), ...left(), plain(' of bump stroke'), ...endWords(answer, reading)];
  }
  if (rounded > 0) return [plain(' and leaves '), ...left(), plain(' of bump'), ...endWords(answer, reading)];
  if (budget && !budget.bump.solid) return [plain(' and '), value('stands on its bump stop')];
  if (plusMinus === undefined) return [plain(' and leaves '), value('no bump')];
  const most = show(Math.round(bumpLeft + plusMinus), 'travel', reading);
  return [plain(' and leaves '), value(`at most ${most}`), plain(' of bump'), ...endWords(answer, reading)];
}

/** Which limit governs, and when the stop is touched before. */
function endWords({ budget }: LoweringAnswer, reading: Reading): Stretch[] {
  const { touch, solid } = budget?.bump ?? {};
  if (touch && !solid) return [plain(' to the first touch of the stop')];
  if (!solid || (solid.governedBy === 'bumpTravel' && !touch)) return [];
  const by = solid.governedBy === 'bumpTravel' ? '' : `, ended by ${limitName(solid.governedBy)}`;
  if (touch?.governedBy !== 'stop') return [plain(by)];
  const at = Math.round(touch.left);
  if (at <= 0) return [plain(`${by}, which it stands on already`)];
  return [plain(`${by} and touched after `), value(show(at, 'travel', reading))];
}

/** Nothing stands below its solid stop: that comes first, and what the links would do only after. */
function pastStopWords(
  answer: LoweringAnswer,
  past: number,
  plusMinus: number | undefined,
  reading: Reading,
): Stretch[] {
  return [
    plain(' puts it '),
    value(`${show(past, 'travel', reading, plusMinus)} past its solid stop`),
    plain(', where it cannot stand. Without the stop'),
    ...changeWords(answer, WOULD, reading),
    plain('.'),
  ];
}

/** Left and right further apart than this are said in the sentence, degrees: common practice, no source. */
const CROSS_CAMBER_TOLD = 0.25;

function otherWords({ other }: LoweringAnswer, car: CarDocument, reading: Reading): Stretch[] {
  if (!other || car.given.camber === undefined || Math.abs(other.difference) < CROSS_CAMBER_TOLD) return [];
  const size = show(Math.abs(other.difference), 'camberChange', reading);
  return [plain(' Left and right differ by '), value(size), plain('.')];
}

/** Where the change slows and turns back. */
function turnWords(
  { drop, change, reversal, rateBefore, rateAfter, isStraight, bumpLeft }: LoweringAnswer,
  reading: Reading,
): Stretch[] {
  // What cannot be told from nothing has no course.
  if (drop === 0 || Math.abs(change.value) <= (change.plusMinus ?? 0)) return [];
  const grows = Math.abs(rateAfter.value) > Math.abs(rateBefore.value);
  const course = ` The change ${grows ? 'grows' : 'slows'} the ${drop < 0 ? 'higher' : 'lower'} it goes.`;
  if (drop < 0 || !reversal) return isStraight ? [] : [plain(course)];
  const stop = bumpLeft === undefined ? undefined : bumpLeft + drop;
  const { travel } = reversal;
  if (drop <= travel.value && stop !== undefined && travel.value >= stop) {
    return [plain(' The change slows all the way to the stop.')];
  }
  // Rounded as its own doubt allows.
  const at = amount(travel.value, travel.plusMinus, 'travel', reading);
  return drop > travel.value
    ? [plain(' Past '), ...at, plain(' it turns back.')]
    : [plain(' The change slows, and turns back '), ...at, plain(' lower.')];
}

const are = (amount: number): string => (amount === 1 ? 'is' : 'are');

/** How many hard points of a car that a user has begun to give, or a page has given in part, are still missing. */
export function pointsMissing(car: CarDocument): number {
  const isBegun = givenBy(car, 'corner') === 'user' || givenPointCount(car) > 0;
  return isBegun && wayOf(car) === 'points' && !car.curve && car.whole === undefined
    ? STRUT_POINT_KEYS.length - givenPointCount(car)
    : 0;
}

/** How much of a car is given: by a user, or by a page. */
export function completeness(car: CarDocument): 'example' | 'incomplete' | 'ready' {
  const by = wayOf(car);
  if (by === 'readings') return camberSetupOf(car)?.givenBy === 'example' ? 'example' : 'ready';
  if (car.curve || car.whole !== undefined) return 'ready';
  const [count, all] =
    by === 'driveway' ? [measuredCount(car), DRIVEWAY_COUNT] : [givenPointCount(car), STRUT_POINT_KEYS.length];
  if (count === 0 && pointsMissing(car) === 0) return 'example';
  return count < all ? 'incomplete' : 'ready';
}

/** Of the six: kingpin inclination counts in the lean's place; the rest is known of some cars only. */
function measuredCount({ given: { measures = {} } }: CarDocument): number {
  const own = (key: DrivewayKey) => measures[key] !== undefined;
  return SIX.filter((key) => own(key) || (key === 'damperLean' && own('kingpin'))).length;
}

const SIX = [
  'armLength',
  'pivotHeight',
  'ballHeight',
  'wheelCentreHeight',
  'topHeight',
  'damperLean',
] as const satisfies DrivewayKey[];
const DRIVEWAY_COUNT = SIX.length;

/** Whose numbers these are: the line above the sentence. */
export function ownership(car: CarDocument): string {
  const by = wayOf(car);
  if (by === 'readings') return readingsName(car);
  if (car.curve) return 'this page’s curve';
  if (by === 'driveway' && car.whole === undefined) {
    const own = measuredCount(car);
    if (own === 0) return 'Example';
    return `${own} of ${DRIVEWAY_COUNT} ${givenBy(car, 'corner') !== 'user' ? 'from this page' : 'are yours'}`;
  }
  const points = givenPointCount(car);
  const all = STRUT_POINT_KEYS.length;
  const isPages = givenBy(car, 'corner') !== 'user';
  if (isPages && (points === 0 || car.whole !== undefined))
    return car.whole === undefined ? 'Example' : 'this page’s points';
  if (points < all) return isPages ? `${points} of ${all} points from this page` : `${points} of ${all} points yours`;
  const others = (['camber', 'toe'] as const).filter((key) => car.given[key] === undefined);
  if (others.length === 0) return isPages ? 'this page’s points' : 'all yours';
  return `${isPages ? 'this page’s points' : 'points yours'}, ${others.join(' and ')} ${standInName(car)}`;
}

/** "from 49 readings in 3 passes, Standard arms" */
function readingsName(car: CarDocument): string {
  const setup = camberSetupOf(car)!;
  const used = readingsInUse(setup);
  const aside = setup.readings.length - used.length;
  const passes = counted(new Set(used.map(({ pass }) => pass)).size, 'pass', 'passes');
  return `from ${counted(used.length, 'reading')} in ${passes}${aside ? ` (${aside} set aside)` : ''}, ${setup.name}`;
}

/** Short texts that stand before the body of the sheet is there. */
export const FIRST = {
  title: 'What lowering does to camber',
  drop: 'Drop',
  waiting: 'Working it out …',
  noAnswer: ': no answer yet.',
  before: 'Before:',
  change: 'Camber change: find the drop that adds so much',
} as const;
