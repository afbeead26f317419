import type { LoweringAnswer } from '../../core/answers/lowering.js';
import { type CarDocument, givenPointCount } from '../../core/document/car.js';
import { STRUT_POINT_KEYS } from '../../core/linkage/corner.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { UnitSystem } from '../../core/quantity/units.js';

/** How a reader wants numbers. */
export interface Reading {
  units: UnitSystem;
  language: string;
}

/** A stretch of a sentence. Values are set in bold, doubt quieter. */
export interface Stretch {
  text: string;
  role?: 'value' | 'doubt';
}

export type ElementState = 'example' | 'incomplete' | 'ready' | 'stale' | 'problem' | 'fault' | 'waiting';

const plain = (text: string): Stretch => ({ text });
const value = (text: string): Stretch => ({ text, role: 'value' });

export const show = (amount: number, quantity: Quantity, { units, language }: Reading, plusMinus?: number) =>
  formatQuantity(amount, quantity, units, { language, plusMinus });

/** "30 mm", as it stands in the sentence. The drop is always said as a positive amount: the verb has the sign. */
export const dropText = (drop: number, reading: Reading): string => show(Math.abs(drop), 'drop', reading).text;

export const verb = (drop: number): string => (drop < 0 ? 'Raising' : 'Lowering');

/** What follows "Lowering 30 mm": one or two sentences. */
export function sentence(answer: LoweringAnswer, reading: Reading): Stretch[] {
  return [...changeWords(answer, reading), ...bumpWords(answer, reading), plain('.'), ...turnWords(answer, reading)];
}

/** The whole sentence as it is spoken. */
export function spoken(answer: LoweringAnswer, reading: Reading): string {
  const text = sentence(answer, reading)
    .map((stretch) => stretch.text)
    .join('');
  return `${verb(answer.drop)} ${dropText(answer.drop, reading)}${text}`;
}

function amount(size: number, plusMinus: number | undefined, reading: Reading): Stretch[] {
  const shown = show(size, 'camberChange', reading, plusMinus);
  const [main, doubt] = shown.text.split('\u202f±\u202f');
  return doubt === undefined
    ? [value(shown.text)]
    : [value(main!), plain(' '), { text: `±\u202f${doubt}`, role: 'doubt' }];
}

function changeWords({ drop, change }: LoweringAnswer, reading: Reading): Stretch[] {
  const size = Math.abs(change.value);
  if (drop === 0) return [plain(' changes nothing')];
  if (change.plusMinus !== undefined && size <= change.plusMinus) {
    return [
      plain(' changes camber by '),
      ...amount(change.value, change.plusMinus, reading),
      plain(': cannot be told from nothing'),
    ];
  }
  if (change.value < 0)
    return [plain(' adds '), ...amount(size, change.plusMinus, reading), plain(' of negative camber')];
  return [plain(' takes '), ...amount(size, change.plusMinus, reading), plain(' of negative camber away')];
}

function bumpWords({ bumpLeft }: LoweringAnswer, reading: Reading): Stretch[] {
  if (bumpLeft === undefined) return [];
  if (bumpLeft > 0) return [plain(' and leaves '), value(show(bumpLeft, 'travel', reading).text), plain(' of bump')];
  const short =
    bumpLeft < 0
      ? [plain(': the stop is solid '), value(show(-bumpLeft, 'travel', reading).text), plain(' before')]
      : [];
  return [plain(' and leaves '), value('no bump'), ...short];
}

/** Where the change slows and turns back. */
function turnWords({ drop, reversal, rateBefore, rateAfter, bumpLeft }: LoweringAnswer, reading: Reading): Stretch[] {
  const stop = bumpLeft === undefined ? undefined : bumpLeft + drop;
  if (reversal) {
    // Rounded as its own doubt allows, the doubt itself left for "Why ±".
    const { value: figure, unit } = show(reversal.travel.value, 'travel', reading, reversal.travel.plusMinus);
    const at = value(`${figure}\u202f${unit}`);
    if (drop > reversal.travel.value) return [plain(' Past '), at, plain(' it turns back.')];
    if (stop !== undefined && reversal.travel.value >= stop) {
      return [plain(' It adds ever less, up to the stop.')];
    }
    return [plain(' It adds ever less and turns back at '), at, plain('.')];
  }
  if (drop === 0) return [];
  const slows = Math.abs(rateAfter.value) < Math.abs(rateBefore.value);
  return [plain(slows ? ' It adds ever less.' : ' It adds ever more.')];
}

/** Whose numbers these are: the line above the sentence. */
export function ownership(car: CarDocument): string {
  if (car.curve) return 'curve given';
  const count = givenPointCount(car);
  const all = STRUT_POINT_KEYS.length;
  if (car.whole !== undefined || count === all) return car.givenBy === 'user' ? 'All points are yours' : 'points given';
  if (count === 0) return 'Example';
  return `${count} of ${all} ${car.givenBy === 'user' ? 'are yours' : 'given'}`;
}

/** Short texts that stand before the body of the sheet is there. */
export const FIRST = {
  drop: 'Drop',
  waiting: 'Working it out …',
} as const;
