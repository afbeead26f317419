import { FIGURE, type ReadAttribute, sizeOf, unread, within } from './attribute.js';
import type { Quantity } from './quantities.js';
import { ARCMINUTES_PER_DEGREE } from './units.js';

const ANGLE = new RegExp(
  String.raw`^\s*(${FIGURE})\s*(?:(?:°|º|deg(?:rees?)?)\s*(?:(\d+\.?\d*)\s*['’′]?)?|(['’′]|arc ?min(?:utes?)?|min(?:utes?)?))?\s*$`,
  'i',
);

/**
 * Reads an angle from an HTML attribute: degrees, with or without their sign, `0°30′`, or minutes alone where they are marked.
 *
 * @returns degrees, or a problem of code missing, not-a-number or out-of-range
 */
export function readAngleAttribute(text: string, quantity: Quantity, path: string): ReadAttribute {
  const [, figure, minutes, mark] = ANGLE.exec(text) ?? [];
  if (figure === undefined) return unread('not-a-number', text, path);
  const size = sizeOf(figure);
  if (mark) return within(size / ARCMINUTES_PER_DEGREE, text, quantity, path);
  const sign = /^\s*[-\u2212]/.test(text) ? -1 : 1;
  return within(size + (sign * Number(minutes ?? 0)) / ARCMINUTES_PER_DEGREE, text, quantity, path);
}
