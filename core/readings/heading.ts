import { parseQuantity } from '../quantity/parse.js';
import { METRIC } from '../quantity/units.js';
import { goingOf } from './cell-kind.js';
import type { ReadingQuantity } from './reading.js';
import type { CellUnit, ColumnRole } from './understanding.js';

/** What the words over a column say. */
export interface HeadingSays {
  role?: ColumnRole;
  /** The words fit a direction as well as a travel: `bump`, `down`. Decided by the other columns. */
  isWeak?: boolean;
  unit?: CellUnit;
  /** Degrees and minutes: 1.30 is 1°30′. */
  inMinutes?: boolean;
  pass?: string;
  going?: 'up' | 'down';
}

const UNITS: [CellUnit, RegExp][] = [
  ['mm', /\bmm\b|\bmillimet(?:re|er)s?\b/i],
  ['cm', /\bcm\b|\bcentimet(?:re|er)s?\b/i],
  [
    'in',
    /\binch(?:es)?\b|[([,]\s*in\.?\s*(?:[)\],]|$)|^\s*in\.?\s*$|\b(?:height|travel|arch|lip|bump|droop)\s+in\.?$|["”″]/i,
  ],
];
const DEGREES = /°|º|\bdeg(?:rees?)?\b/i;
const MINUTES = /(?:^|[^a-z])['’′]|\barc ?min(?:utes?)?\b|\bmin(?:utes)?\b/i;
const UNIT_WORDS =
  /[([][^)\]]*[)\]]|\b(?:mm|cm|inch(?:es)?|deg(?:rees?)?|arc ?min(?:utes?)?|min(?:utes)?|millimet(?:re|er)s?)\b|[°º'’′"”″]/gi;

/** A length within a name, `joints 22 mm lower`: no unit of what stands below. */
const NAMED_LENGTH = /\d+(?:[.,]\d+)? ?(?:mm|cm|in|inch(?:es)?)\b(?=\s+[a-z([])/gi;

/** `Pass 2`, `2nd run`; not a bare `Pass`, which heads a column of names. */
const NAMED_PASS = /\b(?:pass|run|sweep|series)\b/i;
const BARE_PASS = /^(?:pass|run|sweep|series)(?:[ .]*(?:name|number|no|nr|id|#))?[ .:]*$/i;
const ABOUT_VALUES =
  /\b(?:camber|toe|angle|inclination|wheel|bump steer|readings?|gauge|values?|measured|of|in|at|the|going|moving|wheel)\b/gi;
const DIRECTIONS =
  /[↑⬆▲△↓⬇▼▽]\uFE0F?|\b(?:up|down)(?:wards?)?\b|\b(?:bump|droop|rebound|jounce|rising|raising|lowering|falling)\b/gi;

export type LengthUnit = 'mm' | 'cm' | 'in';

/** Every unit of length that a heading names; one within a name, `joints 22 mm lower`, is none. */
export const lengthUnitsIn = (text: string): LengthUnit[] =>
  UNITS.flatMap(([unit, pattern]) => (pattern.test(text.replace(NAMED_LENGTH, '')) ? [unit as LengthUnit] : []));

function roleOf(text: string, quantity: ReadingQuantity): Pick<HeadingSays, 'role' | 'isWeak'> {
  const has = (pattern: RegExp) => pattern.test(text);
  if (quantity === 'toe' && has(/\b(?:dial|gauge|indicator|clock|plunger)\b|^(?:front|rear)\b[^a-z]*$/)) {
    if (has(/\b(?:front|fore|leading)\b/)) return { role: 'dialFront' };
    if (has(/\b(?:rear|back|trailing)\b/)) return { role: 'dialRear' };
  }
  if (has(/\b(?:body|chassis|sill|datum|reference)\b/) && !has(/\b(?:hub|wheel|camber|toe)\b/)) return { role: 'body' };
  if (has(quantity === 'camber' ? /\bcamber|\binclination\b/ : /\btoe\b|\bbump steer\b/)) return { role: 'value' };
  if (
    has(/\b(?:camber|toe|ca[sz]t[eo]r|kingpin|scrub|track|time|date|temp\w*|notes?|comments?|remarks?|load|pressure)\b/)
  )
    return { role: 'other' };
  if (has(/^(?:#|no|nr|row|index|line)[ .]*$/)) return { role: 'other' };
  if (BARE_PASS.test(text)) return { role: 'pass' };
  if (NAMED_PASS.test(text)) return { role: 'value' };
  if (has(/^(?:direction|going|dir|way|moving|up ?(?:\/|or|-) ?down)\b/)) return { role: 'going' };
  if (has(/\b(?:hub|wheel)\b.*\b(?:floor|ground)\b/)) return { role: 'travel' };
  if (has(/\bheight\b|\barch\b|\bfender\b|\bhub to\b/)) return { role: 'height' };
  if (has(/\btravel\b|\bdisplacement\b|\bmovement\b|\bstroke\b|\b(?:bump|droop|rebound) ?\/ ?(?:bump|droop|rebound)\b/))
    return { role: 'travel' };
  if (has(/\b(?:bump|droop|rebound|jounce|up|down)\b|[↑↓]/)) return { isWeak: true };
  if (has(/\b(?:angle|readings?|gauge|values?|measured)\b/) || DEGREES.test(text) || MINUTES.test(text))
    return { role: 'value' };
  return {};
}

function passName(text: string): string | undefined {
  const lengths = text.match(NAMED_LENGTH) ?? [];
  let next = 0;
  const name = text
    .replace(NAMED_LENGTH, '\0')
    .replace(UNIT_WORDS, ' ')
    .replace(ABOUT_VALUES, ' ')
    .replace(DIRECTIONS, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s,.:;/+−–-]+|[\s,.:;/+−–-]+$/g, '')
    .replace(/\0/g, () => lengths[next++]!);
  if (!/[\w\u00c0-\uffff]/.test(name)) return undefined;
  return /^\d+$/.test(name) ? `Pass ${name}` : name;
}

/**
 * Words are the trade's.
 *
 * @param own the column's own cells of the heading rows, joined
 * @param group what stands over several columns, this one among them
 */
export function headingSays(own: string, group: string, quantity: ReadingQuantity): HeadingSays {
  const all = `${group} ${own}`.trim();
  const units = all.replace(NAMED_LENGTH, '');
  const said = roleOf(own.toLowerCase(), quantity);
  const over: typeof said = group && !said.role ? roleOf(all.toLowerCase(), quantity) : said;
  const says: HeadingSays = over.role ? { role: over.role } : said.isWeak ? { isWeak: true } : {};
  const [minutes, degrees] = [MINUTES.test(all), DEGREES.test(all)];
  const unit =
    UNITS.find(([, pattern]) => pattern.test(units))?.[0] ?? (degrees ? 'degrees' : minutes ? 'arcminutes' : undefined);
  if (unit) says.unit = unit;
  if (minutes && degrees) says.inMinutes = true;
  const bare = all.replace(UNIT_WORDS, '').trim();
  const sign = /[\w\u00c0-\uffff]\s*\+$/.test(bare)
    ? 'up'
    : /[\w\u00c0-\uffff]\s+[-–−]$/.test(bare)
      ? 'down'
      : undefined;
  const going = goingOf(all) ?? sign;
  if (going) says.going = going;
  const pass = passName(all);
  if (pass) says.pass = pass;
  return says;
}

const SECTION =
  /^(?:.{0,4}\b(?:pass|run|sweep|series)\b.{0,24}|(?:wheel )?(?:going )?(?:up|down|bump|droop|rebound)(?:wards?)?|[↑↓])\W*$/i;

/** A line of its own over a block of readings, `Pass 2, going down`. */
export function sectionSays(text: string): Pick<HeadingSays, 'pass' | 'going'> | undefined {
  if (!SECTION.test(text.trim())) return undefined;
  const [pass, going] = [passName(text), goingOf(text)];
  return { ...(pass && { pass }), ...(going && { going }) };
}

/** A distance named among headings, `dials 300 mm apart`, `base 10 in`: mm, or undefined. */
export function baseIn(text: string): number | undefined {
  const number = String.raw`(\d[\d.,/ ]*?(?: ?(?:mm|cm|in\b|inch(?:es)?|["”″])))`;
  const found =
    new RegExp(`\\b(?:base|apart|spacing|over|spaced)\\b[^\\d]{0,12}${number}`, 'i').exec(text) ??
    new RegExp(`${number}[^\\d]{0,4}\\b(?:apart|base|spacing)\\b`, 'i').exec(text);
  const parsed = found && parseQuantity(found[1]!, 'coordinate', METRIC);
  return parsed?.ok && parsed.value > 0 ? parsed.value : undefined;
}
