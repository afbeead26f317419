import { type LengthUnit, lengthUnitsIn } from '../readings/table/heading.js';
import { foreignLength } from '../readings/table/units-in-words.js';

/** What a column of a table of hard points or of driveway measurements holds. */
export type Slot = 'x' | 'y' | 'z' | 'plusMinus' | 'value' | 'unit' | 'note';

export interface PointHeading {
  /** Undefined where the words mean none, or two. */
  slot?: Slot;
  /** Named over the column; two or more leave it in doubt. */
  units: LengthUnit[];
  /** A word where a unit stands, that is none of ours. */
  foreign?: string;
  /** It counts against our axes: rearward, inboard, down. */
  isTurned: boolean;
}

const PLUS_MINUS = /±|\+ ?\/? ?[-−–]|plus[ /-]*(?:or[ -])?minus|toleranc|uncertain|\bdoubt|how sure|accura|\berror\b/i;
const VALUE = /\b(?:values?|measured|readings?|figures?|sizes?|dimensions?|given|lengths?)\b/i;
const NOTE =
  /^(?:#|no|nr|number|item|id|notes?|remarks?|comments?|description|source|photos?|pictures?|where|how)[ .]*$/i;

const WORDS = {
  x: /\b(?:forwards?|fwd|fore|ahead|longitudinal|lengthwise)\b/i,
  y: /\b(?:lateral|transverse|across|left|outboard|outwards?|out|cent(?:re|er) ?line|sideways|width)\b/i,
  z: /\b(?:heights?|vertical|up|upwards?|above|elevation)\b/i,
} as const;
/** Words that only one axis can have. */
const STRONG = {
  x: /\blongitudinal\b/i,
  y: /\b(?:lateral|transverse|width)\b/i,
  z: /\b(?:height|vertical|elevation)\b/i,
} as const;
const AGAINST = {
  x: /\b(?:rear(?:wards?)?|aft|back(?:wards?)?|behind)\b/i,
  y: /\b(?:inboard|inwards?|right)\b/i,
  z: /\b(?:down(?:wards?)?|below|under)\b/i,
} as const;
const NEGATED = String.raw`\s*(?:is\s*)?(?:neg(?:ative)?\b|[-−–](?!\w))`;

const AXES = ['x', 'y', 'z'] as const;
/** Over a length stands no angle. */
const ANGLE = /(?:^|[^\p{L}])(?:['’′](?!\w)|[°º])|\b(?:deg(?:rees?)?|arc ?min)/iu;
/** Words of headings that are no unit. */
const KNOWN = new Set(
  `x y z mm millimetre millimetres millimeter millimeters cm centimetre centimetres centimeter centimeters in inch inches
  forward forwards fwd fore front ahead longitudinal lengthwise rear rearward rearwards aft back backward behind lateral transverse
  across out outboard outward outwards inboard inward centreline centerline centre center line sideways width left right height
  heights vertical up upward upwards above elevation down below of from the to a on at over and is ground floor axle wheel car
  body axis coordinate coordinates position positive negative pos neg ve all measured tape nominal approx approximately estimated
  stock static ride datum iso coord coords offset offsets distance distances dimension dimensions value values point points pos`.split(
    /\s+/,
  ),
);

const without = (text: string, pattern: RegExp) => text.replace(new RegExp(pattern.source, `${pattern.flags}g`), ' ');

function axisOf(text: string): 'x' | 'y' | 'z' | undefined {
  const letters = AXES.filter((axis) => new RegExp(`(?:^|[^a-z])${axis}(?:[^a-z]|$)`, 'i').test(text));
  if (letters.length > 1) return undefined;
  const [letter] = letters;
  if (letter) return AXES.some((axis) => axis !== letter && STRONG[axis].test(text)) ? undefined : letter;
  const strong = AXES.filter((axis) => STRONG[axis].test(text));
  const named = strong.length > 0 ? strong : AXES.filter((axis) => WORDS[axis].test(text));
  // "up from the ground, ahead of the axle": one of them only.
  return named.length === 1 ? named[0] : undefined;
}

/** Whether the words count an axis the other way round: rearward alone, or forward that is negative. */
function turns(axis: 'x' | 'y' | 'z', text: string): boolean {
  const negated = (pattern: RegExp) => new RegExp(`(?:${pattern.source})${NEGATED}`, 'i').test(text);
  if (negated(WORDS[axis])) return true;
  return AGAINST[axis].test(text) && !negated(AGAINST[axis]) && !WORDS[axis].test(text);
}

/** Whether a heading is a unit of length and nothing else. */
export const isUnitAlone = (text: string): boolean =>
  /^\W*(?:mm|cm|in|inch|inches|millimet(?:re|er)s?|centimet(?:re|er)s?|["”″])\W*$/i.test(text);

/** Units named in a heading; `in` counts as one where it ends the words, too. */
function unitsNamed(text: string): LengthUnit[] {
  const units = lengthUnitsIn(text);
  if (units.length === 1 && units[0] !== 'in' && /[/,;]\s*in\b|\bin\s*\//i.test(text)) return [...units, 'in'];
  return units.length === 0 && /(?:^|[^\p{L}\p{N}])in\.?[^\p{L}\p{N}]*$/iu.test(text) ? ['in'] : units;
}

/**
 * What the words over a column of a table of points say.
 *
 * @param ownText its own cells of the heading rows, joined
 * @param groupText what stands over several columns, this one among them
 */
export function readPointHeading(ownText: string, groupText: string): PointHeading {
  const [own, group] = [ownText, groupText].map((text) => text.replace(/['’′]{2}/g, '"')) as [string, string];
  const all = `${own} ${group}`.trim();
  const units = unitsNamed(own).length > 0 ? unitsNamed(own) : unitsNamed(group);
  if (PLUS_MINUS.test(own)) {
    const rest = without(own, /95 ?%|[°º]|\bdeg(?:rees?)?\b/i);
    return { slot: 'plusMinus', units, ...foreignOf(rest, false), isTurned: false };
  }
  if (/^units?\W*$/i.test(own)) return { slot: 'unit', units: [], isTurned: false };
  if (NOTE.test(own)) return { slot: 'note', units: [], isTurned: false };
  const axis = axisOf(own) ?? (VALUE.test(own) ? undefined : axisOf(all));
  if (axis) {
    const isStrict = axisOf(own) !== undefined && units.length === 0;
    return { slot: axis, units, ...foreignOf(group, false), ...foreignOf(own, isStrict), isTurned: turns(axis, own) };
  }
  if (isUnitAlone(own)) return { slot: 'value', units, isTurned: false };
  if (!VALUE.test(own)) return { units, isTurned: false };
  // One of values may hold angles as well.
  return { slot: 'value', units, ...foreignOf(without(all, /[°º]|\bdeg(?:rees?)?\b/i), false), isTurned: false };
}

/** @param isStrict whether a single word that is not known counts as a unit */
function foreignOf(text: string, isStrict: boolean): { foreign?: string } {
  const found = foreignLength(text) ?? ANGLE.exec(text)?.[0].trim();
  if (found) return { foreign: found };
  const [word, ...more] = (text.toLowerCase().match(/\p{L}+/gu) ?? []).filter((one) => !KNOWN.has(one));
  return isStrict && word && more.length === 0 ? { foreign: word } : {};
}
