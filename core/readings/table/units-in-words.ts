import type { LengthUnit } from './heading.js';
import { METRIC_NAMES } from './metric-names.js';

const FOREIGN_LENGTH =
  /\b(?:m|dm|km|met(?:re|er)s?|ft|feet|foot|yards?|yd|thou|mils?|µm|um|microns?|px|pixels?|pts?|zoll|pouces?|pulgadas?|pollici)\b/iu;
const FOREIGN_ANGLE = /\b(?:m?rad(?:ians?)?|gon|grads?|gradians?)\b|%/iu;

/** A word in a heading that is a unit of length, and none that is read. */
export const foreignLength = (text: string): string | undefined => FOREIGN_LENGTH.exec(text)?.[0];

/** The same of angles. */
export const foreignAngle = (text: string): string | undefined => FOREIGN_ANGLE.exec(text)?.[0];

/** A unit of length that a caption or a name names in words, `in inches`, or in brackets; `foreign`, one that is none of ours. */
export function unitsInProse(text: string): { units: LengthUnit[]; foreign?: string } {
  // "Bump travel 62 mm" says nothing of the table.
  const bare = text.replace(/\d[\d.,]*\s*(?:mm|cm|in|inch(?:es)?|ft|m)\b/gi, ' ');
  const named = [...METRIC_NAMES, ['in', /\binch(?:es)?\b|[([]\s*(?:in\.?|["”″])\s*[)\]]/i]] as const;
  const units = named.flatMap(([unit, pattern]) => (pattern.test(bare) ? [unit] : []));
  const foreign = /\b(?:feet|foot|met(?:re|er)s|yards?|thou)\b|[([]\s*(?:ft|m|thou|mils?)\s*[)\]]/i.exec(bare)?.[0];
  return { units, ...(foreign && units.length === 0 && { foreign }) };
}
