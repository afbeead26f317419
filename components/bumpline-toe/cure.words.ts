import type { Correction } from '../../core/linkage/toe-correction.js';
import type { ToeCure, ToeCureDoubt } from '../../core/answers/toe-cure.js';
import type { IdealRod } from '../../core/linkage/ideal-rod.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Fact } from '../element/facts.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-toe.labels.js';

const { cure: WORDS } = NAMES;

/** A rod that suits to so much of its length is not told to be wrong: nothing of it shows in toe. */
const SUITS = 0.03;
/** Less than this a wheel turns by nobody's gauge, degrees. */
const FLAT = 0.02;

/** "rod end 22 mm lower" */
export function amountText(
  adjust: ToeCure['adjust'],
  amount: number,
  display: Display,
  plusMinus?: number,
): string {
  const size = show(Math.abs(amount), 'partLength', display, plusMinus);
  return WORDS.what[adjust](size, amount < 0 ? WORDS.down : WORDS.up);
}

const degrees = (size: number, display: Display): string => show(size, 'toe', display);

const windowText = ({ window: [low, high] }: ToeCure, { units, language }: Display): string => {
  const at = (travel: number) => formatQuantity(travel, 'travel', units, { language, sign: 'always' }).text;
  return WORDS.fromTo(at(low), at(high));
};

/** What flattens toe the most, what that leaves, and what one millimetre does. */
export function cureLines(
  cure: ToeCure,
  doubt: ToeCureDoubt | undefined,
  rod: IdealRod,
  kind: 'strut' | 'wishbone',
  display: Display,
): string[] {
  const { correction, sensitivity, window, adjust } = cure;
  const { minimax, slope } = correction;
  const { before, after } = minimax;
  const isAny = before - after > FLAT / 2;
  const what = amountText(adjust, minimax.amount, display, doubt?.minimax?.plusMinus);
  return [
    isAny
      ? WORDS.best(what, windowText(cure, display), degrees(after, display), degrees(before, display))
      : WORDS.none(degrees(before, display), windowText(cure, display)),
    ...(slope ? [] : [WORDS.outOfRange(show(30, 'partLength', display))]),
    ...(after > FLAT ? remains(rod, kind, display) : []),
    WORDS.each(
      show(display.units.length === 'in' ? 2.54 : 1, 'partLength', display),
      formatQuantity(Math.abs(sensitivity) * (display.units.length === 'in' ? 2.54 : 1), 'camberRate', display.units, {
        language: display.language,
        unit: false,
      }).text,
      show(window[1], 'travel', display),
    ),
  ];
}

/** What a shim leaves, and why. */
function remains({ length, actual, tooShort }: IdealRod, kind: 'strut' | 'wishbone', display: Display): string[] {
  if (!(length > 0) || !Number.isFinite(length)) return [WORDS.noRod];
  if (Math.abs(tooShort) < SUITS * actual) return [];
  const size = show(Math.round(Math.abs(tooShort)), 'partLength', display);
  return [(tooShort > 0 ? WORDS.tooShort : WORDS.tooLong)(size, WORDS.part[kind])];
}

/** The three optima, each with what it leaves. */
export function optima(cure: ToeCure, doubt: ToeCureDoubt | undefined, display: Display): Fact[] {
  const { correction, adjust } = cure;
  const text = (name: 'slope' | 'leastSquares' | 'minimax', found: Correction | null): Fact => ({
    label: WORDS.facts[name],
    text: found
      ? WORDS.fact(amountText(adjust, found.amount, display, doubt?.[name]?.plusMinus), degrees(found.after, display))
      : WORDS.noSlope,
  });
  return [
    text('slope', correction.slope),
    text('leastSquares', correction.leastSquares),
    text('minimax', correction.minimax),
  ];
}
