import { parseQuantity } from '../../quantity/parse.js';
import { METRIC } from '../../quantity/units.js';
import type { ReadingQuantity } from '../reading.js';
import { METRIC_NAMES } from './metric-names.js';
import type { CellUnit, ColumnRole } from './understanding.js';

/** What the words over a column say. */
export interface HeadingSays {
  role?: ColumnRole;
  /** The words fit a direction as well as a travel: `bump`, `down`. Decided by the other columns. */
  isWeak?: boolean;
  unit?: CellUnit;
  /** Degrees and minutes: 1.30 is 1°30′. */
  inMinutes?: boolean;
}

const UNITS: readonly (readonly [CellUnit, RegExp])[] = [
  ...METRIC_NAMES,
  [
    'in',
    /\binch(?:es)?\b|[([,]\s*in\.?\s*(?:[)\],]|$)|^\s*in\.?\s*$|\b(?:height|travel|arch|lip|bump|droop)\s+in\.?$|["”″]/i,
  ],
];
/** What dials count: said over nothing else. */
const THOU = /\bthou(?:sandths?)?\b|\bmils?\b|\b0?[.,]001 ?(?:in\b|inch|["”″])/i;
const DEGREES = /°|º|\bdeg(?:rees?)?\b/i;
/** `min` alone is the least of several as well. */
const MINUTES = /(?:^|[^a-z])['’′]|\barc ?min(?:utes?)?\b|\bminutes\b|[([]\s*(?:° ?)?min\.?\s*[)\]]/i;

/** A length within a name, `joints 22 mm lower`, `lowered 20 mm`: no unit of what stands below. */
const NAMED_LENGTH = /\d+(?:[.,]\d+)? ?(?:mm|cm|in|inch(?:es)?)\b/gi;

/** `Pass 2`, `2nd run`; not a bare `Pass`, which heads a column of names. */
const NAMED_PASS = /\b(?:pass|run|sweep|series)\b/i;
const BARE_PASS = /^(?:pass|run|sweep|series)(?:[ .]*(?:name|number|no|nr|id|#))?[ .:]*$/i;
/** Other things that are measured on a car: a column of them is headed by nothing else. */
const OTHERS =
  /^(?:front |rear )?(?:track(?: width)?|time|date|temp(?:erature)?s?|notes?|comments?|remarks?|load|(?:tyre |tire )?pressures?)[^\p{L}]*$/u;
export const CAMBER = /\bcamber|\binclination\b|\bsturz|\bcarrossage\b|\bcampanatura\b|\bcaída\b/;
export const TOE = /\btoe\b|\bbump ?steer\b|\bspur(?:winkel)?\b|\bpincement\b|\bconvergenza\b/;
const OTHER_ANGLES = /\b(?:ca[sz]t[eo]r|kingpin|scrub|nachlauf|spreizung|chasse)\b/;
const HEIGHT = /\b(?:height|arch|fender|hub to|höhe|hauteur|altezza|altura|hoogte)\b/;
const TRAVEL =
  /\b(?:travel|displacement|movement|stroke|federweg|radhub|weg|débattement|enfoncement|escursione|recorrido)\b|\b(?:bump|droop|rebound) ?\/ ?(?:bump|droop|rebound)\b/;

export type LengthUnit = 'mm' | 'cm' | 'in';

/** Of toe over a base: what is read at the front and at the rear of the wheel, or of a plate on its hub. */
export const PLACED =
  /\b(?:dial|gauge|indicator|clock|plunger|tape|string|plate|(?:cent(?:re|er)[ -]?)?line|distance|rule|ruler)s?\b/;
/** Nothing else but a unit, `Front (mm)`: no front track, and no front pass. */
const BARE_PLACE =
  /^(?:front|fore|rear|back|leading|trailing)(?: (?:edge|end|side|reading|figure))?[ :]*(?:[([,].*|mm|cm|in\.?|inch(?:es)?|thou|["”″])?$/;

/** Every unit of length that a heading names; one within a name, `joints 22 mm lower`, is none. */
export const lengthUnitsIn = (text: string): LengthUnit[] =>
  UNITS.flatMap(([unit, pattern]) => (pattern.test(text.replace(NAMED_LENGTH, '')) ? [unit as LengthUnit] : []));

/** Behind a name, with a length: `Stock front (mm)`. */
const PLACED_LENGTH = /\b(?:front|fore|rear|back),? *[([]? ?(?:mm|cm|in\.?|inch(?:es)?|thou)\b/;

function roleOf(text: string, quantity: ReadingQuantity): Pick<HeadingSays, 'role' | 'isWeak'> {
  const has = (pattern: RegExp) => pattern.test(text);
  const isPlaced = has(PLACED) || has(BARE_PLACE) || (has(PLACED_LENGTH) && !has(HEIGHT) && !has(TRAVEL));
  if (quantity === 'toe' && isPlaced && !has(TOE)) {
    if (has(/\b(?:front|fore|leading)\b/)) return { role: 'dialFront' };
    if (has(/\b(?:rear|back|trailing)\b/)) return { role: 'dialRear' };
  }
  if (has(/\b(?:body|chassis|sill|datum|reference|schweller)\b/) && !has(/\b(?:hub|wheel|camber|toe)\b/))
    return { role: 'body' };
  const [own, other] = quantity === 'camber' ? [CAMBER, TOE] : [TOE, CAMBER];
  if (has(own)) return { role: 'value' };
  if (has(other) || has(OTHER_ANGLES) || has(OTHERS)) return { role: 'other' };
  if (has(/^(?:#|no|nr|row|index|line)[ .]*$/)) return { role: 'other' };
  if (BARE_PASS.test(text)) return { role: 'pass' };
  if (NAMED_PASS.test(text)) return { role: 'value' };
  if (has(/^(?:direction|going|dir|way|moving|up ?(?:\/|or|-) ?down)\b(?! (?:up|down)\b)/)) return { role: 'going' };
  if (has(/\b(?:hub|wheel)\b.*\b(?:floor|ground)\b/)) return { role: 'travel' };
  if (has(HEIGHT)) return { role: 'height' };
  if (has(TRAVEL)) return { role: 'travel' };
  if (has(/\b(?:bump|droop|rebound|jounce|up|down)\b|[↑↓]/)) return { isWeak: true };
  if (has(/\b(?:angle|winkel|readings?|gauge|values?|measured)\b/) || DEGREES.test(text) || MINUTES.test(text))
    return { role: 'value' };
  return {};
}

/**
 * Words are the trade's.
 *
 * @param own the column's own cells of the heading rows, joined
 * @param group what stands over several columns, this one among them
 */
export function headingSays(own: string, group: string, quantity: ReadingQuantity): HeadingSays {
  const all = `${group} ${own}`.trim();
  // "Ride height 352 mm" tells the unit of heights where nothing else does.
  const bare = all.replace(NAMED_LENGTH, ' ');
  const said = roleOf(own.toLowerCase(), quantity);
  const over: typeof said = group && !said.role ? roleOf(all.toLowerCase(), quantity) : said;
  const says: HeadingSays = over.role ? { role: over.role } : said.isWeak ? { isWeak: true } : {};
  const [minutes, degrees] = [MINUTES.test(all), DEGREES.test(all)];
  const lengthIn = (text: string) => UNITS.find(([, pattern]) => pattern.test(text))?.[0];
  const isOverBase = quantity === 'toe' && ['value', 'dialFront', 'dialRear'].includes(says.role ?? '');
  const isLengthRole = says.role === 'travel' || says.role === 'height' || says.role === 'body';
  const unit =
    (isOverBase && THOU.test(all) ? 'thou' : undefined) ??
    lengthIn(bare) ??
    (degrees ? 'degrees' : minutes ? 'arcminutes' : isLengthRole ? lengthIn(all) : undefined);
  if (unit) says.unit = unit;
  if (minutes && degrees) says.inMinutes = true;
  return says;
}

const SECTION =
  /^(?:.{0,4}\b(?:pass|run|sweep|series)\b.{0,24}|(?:wheel )?(?:going )?(?:up|down|bump|droop|rebound)(?:wards?)?|[↑↓])\W*$/i;

/** Which of two figures it is and how it was read names no parts: what is left of the words over one. */
export const besidesPlace = (text: string): string =>
  text
    .replace(THOU, ' ')
    .replace(
      /\b(?:at|from|to|of|the|front|fore|rear|back|leading|trailing|edge|end|side|reading|figure|dial|gauge|indicator|clock|plunger|tape|string|plate|(?:cent(?:re|er)[ -]?)?line|distance|rule|ruler)s?\b/gi,
      ' ',
    )
    .replace(/\(\s*\)/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s,;:–-]+|[\s,;:–-]+$/g, '');

/** Whether a line of its own tells the pass or the direction of the readings below, `Pass 2, going down`, whatever these are. */
export const isSection = (text: string): boolean => SECTION.test(text.trim());

/**
 * A distance named among headings, `dials 300 mm apart`, `base 10 in`: mm, or undefined. That over which the wheel moves, `toe over
 * 60 mm of bump`, is none.
 */
export function baseIn(text: string): number | undefined {
  const number = String.raw`(\d[\d.,/ ]*?(?: ?(?:mm|cm|in\b|inch(?:es)?|["”″])))`;
  const found =
    new RegExp(
      `\\b(?:base|plate|apart|spacing|over|spaced)\\b[^\\d]{0,12}${number}(?! (?:of )?(?:wheel )?(?:bump|droop|travel|lift))`,
      'i',
    ).exec(text) ?? new RegExp(`${number}[^\\d]{0,4}\\b(?:apart|base|plate|spacing)\\b`, 'i').exec(text);
  const parsed = found && parseQuantity(found[1]!, 'coordinate', METRIC);
  return parsed?.ok && parsed.value > 0 ? parsed.value : undefined;
}
