import { type ToeCure, toeAtAmount } from '../../core/answers/toe-cure.js';
import type { ToeCureDoubt } from '../../core/answers/toe-cure-doubt.js';
import type { IdealRod } from '../../core/linkage/ideal-rod.js';
import type { Correction } from '../../core/linkage/toe-correction.js';
import { decimalMark, formatQuantity } from '../../core/quantity/format.js';
import { ARCMINUTES_PER_DEGREE } from '../../core/quantity/units.js';
import type { Fact } from '../element/facts.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-toe.labels.js';
import { RANGE_MM } from './cure.js';

const { cure: WORDS } = NAMES;

/** A rod that suits to so much of its length is not told to be wrong: nothing of it shows in toe. */
const SUITS = 0.03;
/** Less than this a wheel turns by nobody's gauge, degrees. */
const FLAT = 0.02;
/** Of shims in inches, one plate: a sixteenth. */
const PLATE_INCH_MM = 25.4 / 16;

/** "rod end 22 mm lower" */
export function amountText(adjust: ToeCure['adjust'], amount: number, display: Display, plusMinus?: number): string {
  const size = show(Math.abs(amount), 'partLength', display, plusMinus);
  return WORDS.what[adjust](size, amount < 0 ? WORDS.down : WORDS.up);
}

/** "−15 mm" */
export const movedText = (amount: number, { units, language }: Display): string =>
  formatQuantity(amount, 'partLength', units, { language, sign: 'always' }).text;

const degrees = (size: number, display: Display): string => show(size, 'toe', display);

/** To the third place, as a dial tells it. */
const fine = (size: number, { units, language }: Display): string =>
  units.angle === 'arcminutes'
    ? `${fixed(size * ARCMINUTES_PER_DEGREE, 1, language)}′`
    : `${fixed(size, 3, language)}°`;

const fixed = (size: number, places: number, language: string): string =>
  size.toFixed(places).replace('.', decimalMark(language));

const windowText = ({ window: [low, high] }: ToeCure, { units, language }: Display): string => {
  const at = (travel: number) => formatQuantity(travel, 'travel', units, { language, sign: 'always' }).text;
  return WORDS.fromTo(at(low), at(high));
};

/** What flattens toe the most, and what that leaves. */
export function cureLines(cure: ToeCure, doubt: ToeCureDoubt | undefined, display: Display): string[] {
  const { correction, adjust } = cure;
  const { minimax, slope } = correction;
  const { before, after } = minimax;
  const window95 = windowText(cure, display);
  const what = amountText(adjust, minimax.amount, display, doubt?.minimax?.amount.plusMinus);
  const range = show(RANGE_MM, 'partLength', display);
  return [
    isFlatter(minimax)
      ? WORDS.best(what, window95, degrees(after, display), degrees(before, display))
      : WORDS.none(degrees(before, display), window95),
    ...(slope ? [] : [WORDS.outOfRange(range)]),
    ...(isAtEnd(minimax.amount) ? [WORDS.atEnd(range)] : []),
  ];
}

/** Why not all of it goes. */
export function remainsLines({ correction: { minimax }, rods, motion }: ToeCure, display: Display): string[] {
  if (isAtEnd(minimax.amount) || minimax.after <= FLAT) return [];
  return remains(rods.minimax, motion.kind, display);
}

/** What one plate of shim does. */
export function plateLine({ sensitivity, window }: ToeCure, display: Display): string {
  const plate = display.units.length === 'in' ? PLATE_INCH_MM : 1;
  return WORDS.each(
    show(plate, 'partLength', display),
    fine(Math.abs(sensitivity) * plate, display),
    show(window[1], 'travel', display),
  );
}

/** Whether what is tried ended it, and no rod's length. */
const isAtEnd = (amount: number): boolean => Math.abs(amount) > RANGE_MM - 0.01;

/** Whether moving an end takes away more than a gauge tells. */
export const isFlatter = ({ before, after }: Correction): boolean => before - after > FLAT / 2;

/** What toe does with what is tried, straight ahead: by how much it moves in all over the window. */
export function triedLine(cure: ToeCure, amount: number, display: Display): string | undefined {
  if (amount === 0) return undefined;
  const { at, window, travel, adjust } = cure;
  const toe = toeAtAmount(cure, amount).filter(
    (_, i) => travel[i]! >= at + window[0] - 1e-9 && travel[i]! <= at + window[1] + 1e-9,
  );
  const spread = Math.max(...toe) - Math.min(...toe);
  return Number.isFinite(spread)
    ? WORDS.shown(amountText(adjust, amount, display), degrees(spread, display), windowText(cure, display))
    : undefined;
}

/** What a shim leaves, and why. */
function remains({ length, actual, tooShort }: IdealRod, kind: 'strut' | 'wishbone', display: Display): string[] {
  if (!(length > 0) || !Number.isFinite(length)) return [WORDS.noRod];
  if (Math.abs(tooShort) < SUITS * actual) return [];
  const size = show(Math.round(Math.abs(tooShort)), 'partLength', display);
  return [(tooShort > 0 ? WORDS.tooShort : WORDS.tooLong)(size, WORDS.part[kind])];
}

/** The three optima, each with what it leaves. */
export function optima({ correction, adjust }: ToeCure, display: Display): Fact[] {
  const text = (name: 'slope' | 'leastSquares' | 'minimax', found: Correction | null): Fact => ({
    label: WORDS.facts[name],
    text: found
      ? WORDS.fact(amountText(adjust, Math.round(10 * found.amount) / 10, display), fine(found.after, display))
      : WORDS.noSlope,
  });
  return [
    text('slope', correction.slope),
    text('leastSquares', correction.leastSquares),
    text('minimax', correction.minimax),
  ];
}
