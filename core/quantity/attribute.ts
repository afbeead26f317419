import type { Problem } from './problem.js';
import { QUANTITIES, type Quantity } from './quantities.js';
import { mmFromInches } from './units.js';

export type ReadAttribute = { ok: true; value: number } | { ok: false; problem: Problem };

export const FIGURE = String.raw`[-+\u2212]?(?:\d+\.?\d*|\.\d+)`;
const LENGTH = new RegExp(String.raw`^\s*(${FIGURE})\s*([^\d\s.,;:/+-][^\d.,]*?)?\.?\s*$`);
/** The units that a cell of a table takes. */
const MM_FROM: Readonly<Record<string, (size: number) => number>> = {
  '': (mm) => mm,
  mm: (mm) => mm,
  cm: (cm) => cm * 10,
  ...Object.fromEntries(['in', 'inch', 'inches', '"', '″', '”'].map((unit) => [unit, mmFromInches])),
};

export const sizeOf = (figure: string) => Number(figure.replace('\u2212', '-'));

export function within(value: number, text: string, quantity: Quantity, path: string): ReadAttribute {
  const { min, max } = QUANTITIES[quantity];
  // + 0: there is no −0 mm.
  if (value >= min && value <= max) return { ok: true, value: value + 0 };
  return { ok: false, problem: { code: 'out-of-range', path, value: text, limit: value < min ? min : max } };
}

export const unread = (code: Problem['code'], text: string, path: string): ReadAttribute => ({
  ok: false,
  problem: { code: text.trim() === '' ? 'missing' : code, path, value: text },
});

/**
 * Reads a length from an HTML attribute: locale-free, a point for decimals, mm unless another unit is said (mm, cm, in, inch,
 * inches, "). What people type is read by `parseQuantity`; this is for what authors and programs write.
 *
 * @returns mm, or a problem of code missing, not-a-number, wrong-unit or out-of-range
 */
export function readLengthAttribute(text: string, quantity: Quantity, path: string): ReadAttribute {
  const [, figure, unit = ''] = LENGTH.exec(text) ?? [];
  if (figure === undefined) return unread('not-a-number', text, path);
  const key = unit.trim().toLowerCase();
  const mmFrom = Object.hasOwn(MM_FROM, key) ? MM_FROM[key] : undefined;
  return mmFrom ? within(mmFrom(sizeOf(figure)), text, quantity, path) : unread('wrong-unit', text, path);
}

/** Lengths one after the other, by commas, semicolons or blanks: `0, 25 mm; 1.5 in`. The path of each ends in its number. */
export function readLengthsAttribute(text: string, quantity: Quantity, path: string): ReadAttribute[] {
  return text
    .split(/[,;]+|\s+(?=[-+\u2212.\d])/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .map((part, i) => readLengthAttribute(part, quantity, `${path}.${i}`));
}
