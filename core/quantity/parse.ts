import { FORMAT } from './format.js';
import type { Problem, ProblemCode } from './problem.js';
import { QUANTITIES, type Quantity } from './quantities.js';
import {
  ARCMINUTES_PER_DEGREE,
  METRES_FROM,
  mmFromInches,
  N_PER_MM_FROM,
  rateTravelMm,
  type UnitSystem,
} from './units.js';

export type Parsed = { ok: true; value: number } | { ok: false; problem: Problem };

/** A number as typed: digits, marks, a fraction. `readings` decides what it means. */
const NUMBER = String.raw`[\d.,](?:[\d.,/ -]*[\d.,])?`;
const BARE = new RegExp(`^${NUMBER}$`);
const LENGTH = new RegExp(`^(${NUMBER}) ?(\\D*)$`);
const ANGLE = new RegExp(
  `^(?:(${NUMBER}) ?(?:°|deg(?:rees?)?|grad) ?)?(?:(${NUMBER}) ?(?:'|arcmin|min(?:ute[sn]?)?) ?)?(?:(${NUMBER}) ?")?$`,
);
/** Angles that can be larger are told in whole degrees, whatever their reader reads. */
const MOST_IN_MINUTES = 30;
/** After a number, and not one of the marks of an angle. */
const ENDS_IN_WORD = /^[\d.,][^\p{L}]*[\p{L}%]+$/u;
const ENDS_IN_MARK = /^[\d.,][^\p{L}]*[°'"]$/u;
const MM_FROM = new Map<string, (reading: number) => number>([
  ['mm', (reading) => reading],
  ['cm', (reading) => reading * 10],
  ...['in', 'inch', 'inches', 'zoll', '"'].map((unit): [string, (reading: number) => number] => [unit, mmFromInches]),
]);

/**
 * Reads what a person typed.
 *
 * An offset may begin with `ET`. Numbers: `1.5`, `1,5`, `1 1/2`, `1-1/2`, `1½`, `1.234,5`, `1 234,5`; any dash as minus. Lengths may name mm, cm or in (`"`); without
 * a unit the unit system decides. Angles: decimal degrees, with or without `°`, or `0°18'`, `18'`, `0°18′30″`, in either unit
 * system. Spring rates may name lb/in, kg/mm, kN/m or N/m; what is told in metres may name mm, cm, in or feet and inches. Rates: an angle, then `per 10 mm`, `/in` and the like; without it per 10 mm or per inch, as shown.
 * German names of units are read in every language, and so is the name that the language that is spoken has for a unit.
 *
 * What can be read in two ways is not guessed: a length like `1,500`, an angle like `1.30` where its writer may have meant degrees and
 * minutes (he reads minutes, or wrote a last zero that decimals do not need), and for a reader of minutes a bare `5`, which may be
 * either, are `ambiguous`, with both readings as choices. Links and locks stand tens of degrees off level or straight ahead: theirs are
 * degrees.
 *
 * @param path where the text was entered, for the problem; the quantity's name by default
 * @returns value in mm, degrees, or degrees per mm; or a problem of code missing, not-a-number, ambiguous, wrong-unit, out-of-range
 */
export function parseQuantity(
  text: string,
  quantity: Quantity,
  unitSystem: UnitSystem,
  path: string = quantity,
): Parsed {
  const { dimension, min, max, unit } = QUANTITIES[quantity];
  const fail = (code: ProblemCode, more?: Partial<Problem>): Parsed => ({
    ok: false,
    problem: { code, path, value: text, ...more },
  });

  let rest = normalised(text);
  if (quantity.startsWith('plusMinus')) rest = rest.replace(/^(±|\+\/?-) ?/, '');
  // As it is cast into a wheel.
  if (quantity === 'offset') rest = rest.replace(/^et ?(?=[-+\d])/, '');
  if (!rest) return fail('missing');

  let factor = 1;
  rest = rest.replace(/^[+-] ?/, (sign) => {
    factor = sign[0] === '-' ? -1 : 1;
    return '';
  });
  if (dimension === 'angleRate') {
    let over = rateTravelMm(unitSystem);
    rest = rest.replace(/ ?(?:per|pro|je|\/) ?(\d*) ?(mm|cm|in)$/, (_, count: string, unit: string) => {
      over = MM_FROM.get(unit)!(Number(count || 1));
      return '';
    });
    factor /= over;
  }

  const isSpringRate = unit === 'N/mm';
  if (isSpringRate) {
    rest = rest.replace(/ ?(?:(lb)[sf]?\/(in)|(kg)f?\/(mm)|(k)?n\/m)$/, (_, ...parts: (string | undefined)[]) => {
      const named = parts[4] ? 'kN/m' : parts.slice(0, 4).filter(Boolean).join('/');
      factor *= N_PER_MM_FROM[(named || 'N/m') as keyof typeof N_PER_MM_FROM];
      return '';
    });
  }

  const isMetres = unit === 'm';
  let found: number[] | undefined = isMetres ? inMetres(rest) : undefined;
  if (!found && dimension === 'plain' && unit)
    for (const name of [unit, FORMAT.unit(unit)])
      rest = rest.replace(new RegExp(` ?${name.toLowerCase().replace('’', "'")}$`), '');
  if (found) {
    // Said with its unit.
  } else if (dimension === 'length') {
    const [, number, unit = ''] = LENGTH.exec(rest) ?? [];
    const mmFrom = MM_FROM.get(unit.trim().replace(/\.$/, '') || unitSystem.length);
    if (number && mmFrom) found = readings(number, true).map(mmFrom);
  } else if (dimension === 'plain') {
    if (BARE.test(rest)) found = readings(rest, true);
  } else {
    found = angles(rest, unitSystem, max <= MOST_IN_MINUTES);
  }
  if (!found) {
    const foreign = ENDS_IN_WORD.test(rest) || (dimension === 'length' && ENDS_IN_MARK.test(rest));
    return fail(foreign ? 'wrong-unit' : 'not-a-number');
  }

  const values = found.map((reading) => reading * factor + 0);
  const first = values[0];
  if (first === undefined) return fail('not-a-number');
  const possible = values.filter((value) => value >= min && value <= max);
  const inNewtonsPerMetre = Number((first * N_PER_MM_FROM['N/m']).toFixed(3));
  if (isSpringRate && first > max && inNewtonsPerMetre >= min && inNewtonsPerMetre <= max) {
    return fail('looks-like-unit', { names: ['N/m'], choices: [inNewtonsPerMetre] });
  }
  const likely = isMetres && possible.length === 0 && BARE.test(rest) ? likelyUnit(values, min, max) : undefined;
  if (likely) return fail('looks-like-unit', likely);
  if (possible.length === 0) return fail('out-of-range', { limit: first < min ? min : max });
  // A point before three digits is a decimal where the thousands would be impossible (310.125 mm); a comma is asked about anyway.
  const choices = dimension === 'length' && text.includes(',') ? values : possible;
  return choices.length > 1 ? fail('ambiguous', { choices }) : { ok: true, value: choices[0]! };
}

type MetreUnit = keyof typeof METRES_FROM;

const FEET = new RegExp(`^(${NUMBER}) ?(?:'|ft|feet|foot)(?: ?(${NUMBER}) ?(?:"|in(?:ch(?:es)?)?)?)?$`);
const OF_METRES = new RegExp(`^(${NUMBER}) ?(mm|cm|in(?:ch(?:es)?)?|")$`);

/** Metres that a text with another unit of length means; undefined of one without. */
function inMetres(text: string): number[] | undefined {
  const feet = FEET.exec(text);
  if (feet) {
    const [whole, more = '0'] = feet.slice(1);
    const [[ft], [inches]] = [readings(whole!, false), readings(more, false)];
    const isFit = ft !== undefined && inches !== undefined && (more === '0' || (inches < 12 && Number.isInteger(ft)));
    return isFit ? [(ft! * 3048 + inches! * 254) / 10_000] : [];
  }
  const [, number, unit] = OF_METRES.exec(text) ?? [];
  if (!number || !unit) return undefined;
  return readings(number, true).map(METRES_FROM[(unit.startsWith('in') || unit === '"' ? 'in' : unit) as MetreUnit]);
}

/** The unit in which a bare number would be possible where metres are asked for, and what it would be. */
function likelyUnit(values: readonly number[], min: number, max: number): Partial<Problem> | undefined {
  for (const unit of Object.keys(METRES_FROM) as MetreUnit[]) {
    const metres = values.map((value) => METRES_FROM[unit](value)).find((one) => one >= min && one <= max);
    if (metres !== undefined) return { names: [unit], choices: [Number(metres.toFixed(4))] };
  }
  return undefined;
}

/** 1¹⁄₄ */
const RAISED_FRACTION = /([⁰¹²³⁴-⁹]+)[⁄/]([₀-₉]+)/g;

/** One spelling for each sign that people and their keyboards use. */
function normalised(text: string): string {
  // What most cells of a sheet are needs none of it.
  if (/^[-+]?[\d.,]+$/.test(text)) return text;
  return (
    String(text ?? '')
      .replace(/[\u200b-\u200f\u2060]/g, '')
      .replace(/[º˚]/g, '°')
      .replace(/[´‘’`]/g, "'")
      .replace(/[¼-¾⅐-⅞]/g, ' $&')
      .replace(
        RAISED_FRACTION,
        (_, top: string, bottom: string) => ` ${top.normalize('NFKC')}/${bottom.normalize('NFKC')}`,
      )
      // Set high, low or in a circle it is a power, an index or a footnote, and no digit of the number before it.
      .replace(/[¹²³⁰-⁹₀-₉①-⓿❶-➓]/g, '^')
      .normalize('NFKC')
      .replace(/[‐-―−]/g, '-')
      .replace(/⁄/g, '/')
      .replace(/′/g, "'")
      .replace(/''|[“”„]/g, '"')
      .replace(/\s+/g, ' ')
      .trim()
      .toLowerCase()
  );
}

/** Degrees that a text without sign can mean; empty when its numbers are malformed, undefined when it is no angle at all. */
function angles(text: string, unitSystem: UnitSystem, canBeMinutes: boolean): number[] | undefined {
  if (BARE.test(text)) {
    const [decimal] = readings(text, false);
    if (decimal === undefined) return [];
    const [, degrees, minutes] = /^(\d*)[.,]([0-5]\d)$/.exec(text) ?? [];
    const readsMinutes = unitSystem.angle === 'arcminutes';
    if (minutes && minutes !== '00' && (readsMinutes || minutes.endsWith('0'))) {
      return [decimal, Number(degrees) + Number(minutes) / ARCMINUTES_PER_DEGREE];
    }
    // Nobody reads a part of a minute.
    return readsMinutes && canBeMinutes && decimal >= 1 ? [decimal, decimal / ARCMINUTES_PER_DEGREE] : [decimal];
  }
  // "0°18" lacks only its last mark.
  const parts = ANGLE.exec(text.replace(/° ?\d\d?$/, "$&'"))?.slice(1);
  if (!parts) return undefined;
  let degrees = 0;
  let unit = 1;
  let seenLarger = false;
  for (const [i, part] of parts.entries()) {
    if (part !== undefined) {
      const [reading] = readings(part, false);
      const followed = parts.slice(i + 1).some((later) => later !== undefined);
      const malformed = (followed && !/^\d+$/.test(part)) || (seenLarger && !(reading! < 60));
      if (reading === undefined || malformed) return [];
      degrees += reading / unit;
      seenLarger = true;
    }
    unit *= 60;
  }
  return [degrees];
}

/**
 * The numbers that a text without sign and unit can mean: none, one, or (where one mark before three digits may set off decimals
 * or thousands, and thousands are possible) two.
 */
function readings(text: string, thousandsPossible: boolean): number[] {
  const fraction = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)$/.exec(text);
  if (fraction) {
    const [, whole, top, bottom] = fraction;
    const part = Number(top) / Number(bottom);
    return Number.isFinite(part) && (!whole || part < 1) ? [Number(whole ?? 0) + part] : [];
  }
  const plain = /^(\d*)[.,]?(\d*)$/.exec(text);
  if (plain) {
    const [, whole, decimals] = plain;
    if (!whole && !decimals) return [];
    const reading = Number(`${whole}.${decimals}`);
    return thousandsPossible && /^[1-9]\d{0,2}[.,]\d{3}$/.test(text) ? [reading, Number(whole! + decimals)] : [reading];
  }
  const grouped = /^([1-9]\d{0,2}([., ])\d{3}(?:\2\d{3})*)(?:(?!\2)[.,](\d+))?$/.exec(text);
  return grouped ? [Number(`${grouped[1]!.replace(/\D/g, '')}.${grouped[3] ?? ''}`)] : [];
}
