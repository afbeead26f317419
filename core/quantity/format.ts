import { roundByUncertainty, roundTo } from '../uncertainty/rounding.js';
import { languageTag, WORDS_LANGUAGE } from './language.js';
import { finestDecimals, QUANTITIES, type Quantity } from './quantities.js';
import { ARCMINUTES_PER_DEGREE, toShown, type UnitSystem } from './units.js';
import { words } from './words.js';

/** English words beside numbers. */
export const FORMAT = words('quantity/format', {
  notKnown: 'not known',
  per: 'per',
  /** Of a `plain` quantity: most are symbols, the same everywhere; `o’clock`, and the `in` of a rim, are words. */
  unit: (unit: string): string => unit,
});

export interface FormatOptions {
  /** BCP 47 tag; decides the decimal mark only. English by default. */
  language?: string | undefined;
  /** Half-width of the 95 % interval, in the unit of the API. Decides the place to which the value is rounded. */
  plusMinus?: number | undefined;
  /** `always` writes a plus too; zero never has a sign. */
  sign?: 'auto' | 'always' | undefined;
  /** false leaves the unit out of `text`, for cells under a heading that names it. Marks of arc minutes stay. */
  unit?: boolean | undefined;
}

export interface Formatted {
  /** e.g. `−0.50`, or `−0°30′`. */
  value: string;
  /** Without the sign ±; absent when no ± was given. */
  plusMinus?: string;
  /** `mm`, `in`, `°`, `° per 10 mm`…; empty where `value` carries its marks itself. */
  unit: string;
  /** All of it: `30 ± 2 mm`, `−0.50° ± 0.06°`. Without a ± and with its unit, `parseQuantity` reads it back. */
  text: string;
}

const MINUS = '\u2212';
/** Keeps a number and its unit on one line. */
const NARROW = '\u202f';

/**
 * A value as people read it. Rounded by its ± where one is given (`roundByUncertainty`); else to the finest place of its quantity,
 * lengths without trailing zeros (30 mm was typed as 30). A rate is shown per 10 mm, or per inch. Not finite: `not known`.
 *
 * @param value mm, degrees, or degrees per mm
 */
export function formatQuantity(
  value: number,
  quantity: Quantity,
  unitSystem: UnitSystem,
  options: FormatOptions = {},
): Formatted {
  if (!Number.isFinite(value)) return { value: FORMAT.notKnown, unit: '', text: FORMAT.notKnown };
  const { dimension, unit: own } = QUANTITIES[quantity];
  const isAngle = dimension === 'angle' || dimension === 'angleRate';
  const { plusMinus, language = WORDS_LANGUAGE } = options;
  const sexagesimal = isAngle && unitSystem.angle === 'arcminutes';
  const rounded = roundByUncertainty(
    toShown(value, dimension, unitSystem),
    Math.abs(toShown(plusMinus ?? 0, dimension, unitSystem)),
    finestDecimals(quantity, unitSystem),
  );
  const places = Math.max(0, rounded.decimals);
  const fewest = !isAngle && plusMinus === undefined ? 0 : places;
  const write = (size: number, alone: boolean): string => {
    if (!Number.isFinite(size)) return FORMAT.notKnown;
    if (!sexagesimal) return number(language, fewest, places, 1, size);
    const degrees = Math.floor(size / ARCMINUTES_PER_DEGREE);
    const minutes = size - degrees * ARCMINUTES_PER_DEGREE;
    if (alone && !degrees) return `${number(language, fewest, places, 1, minutes)}′`;
    return `${number(language, 0, 0, 1, degrees)}°${number(language, fewest, places, 2, minutes)}′`;
  };

  const sign = rounded.value < 0 ? MINUS : rounded.value > 0 && options.sign === 'always' ? '+' : '';
  const shown = sign + write(Math.abs(rounded.value), false);
  const mark = isAngle && !sexagesimal ? '°' : '';
  const suffix =
    dimension === 'length'
      ? unitSystem.length
      : dimension === 'angleRate'
        ? `${FORMAT.per}${NARROW}${unitSystem.length === 'in' ? 'in' : `10${NARROW}mm`}`
        : FORMAT.unit(own);

  // The degree sign belongs to each number, a unit of letters to both at once.
  const unitMark = options.unit === false ? '' : mark;
  let text = shown + unitMark;
  let doubt: string | undefined;
  if (plusMinus !== undefined) {
    doubt = write(rounded.plusMinus, true);
    text += `${NARROW}±${NARROW}${doubt}${Number.isFinite(rounded.plusMinus) ? unitMark : ''}`;
  }
  if (suffix && options.unit !== false) text += NARROW + suffix;
  const unit = mark && suffix ? `${mark} ${suffix}` : mark + suffix;
  return doubt === undefined ? { value: shown, unit, text } : { value: shown, plusMinus: doubt, unit, text };
}

/** Starting Intl up takes a slow phone 40 ms, which the commonest languages of pages need not wait for. */
const marks = new Map([
  ['en', '.'],
  ['en-US', '.'],
  ['en-GB', '.'],
]);

/** The decimal mark of a language: `.` or `,`. */
export function decimalMark(language: string): string {
  let mark = marks.get(language);
  if (mark === undefined) {
    // Western digits: other ones could not be read back.
    const options: Intl.NumberFormatOptions = { minimumFractionDigits: 1, numberingSystem: 'latn' };
    const format = new Intl.NumberFormat(languageTag(language), options);
    mark = format.formatToParts(0.5).find(({ type }) => type === 'decimal')?.value ?? '.';
    marks.set(language, mark);
  }
  return mark;
}

/**
 * A size without grouping (`1,500` could not be read back) in the language's decimal mark. Not by a formatter for each number of
 * places: making one takes a slow phone several milliseconds.
 */
function number(language: string, fewest: number, most: number, whole: number, size: number): string {
  const [integer, fraction = ''] = size.toFixed(most).split('.');
  let length = fraction.length;
  while (length > fewest && fraction[length - 1] === '0') length--;
  const digits = integer!.padStart(whole, '0');
  return length > 0 ? digits + decimalMark(language) + fraction.slice(0, length) : digits;
}

/** A bare number without quantity or unit, to at most `decimals` places, with a real minus. */
export function formatNumber(value: number, decimals: number, language = WORDS_LANGUAGE): string {
  if (!Number.isFinite(value)) return FORMAT.notKnown;
  const rounded = roundTo(value, decimals);
  return (rounded < 0 ? MINUS : '') + number(language, 0, decimals, 1, Math.abs(rounded));
}
