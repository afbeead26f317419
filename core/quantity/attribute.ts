import type { Problem } from './problem.js';
import { QUANTITIES, type Quantity } from './quantities.js';
import { MM_PER_INCH } from './units.js';

const LENGTH = /^\s*([-+−]?(?:\d+\.?\d*|\.\d+))\s*(mm|in)?\s*$/;

/**
 * Reads a length from an HTML attribute: locale-free, a point for decimals, mm unless `in` is said. What people type is read by
 * `parseQuantity`; this is for what authors and programs write.
 *
 * @returns mm, or a problem of code missing, not-a-number or out-of-range
 */
export function readLengthAttribute(
  text: string,
  quantity: Quantity,
  path: string,
): { ok: true; value: number } | { ok: false; problem: Problem } {
  const [, digits, unit] = LENGTH.exec(text) ?? [];
  if (digits === undefined) {
    const code = text.trim() === '' ? 'missing' : 'not-a-number';
    return { ok: false, problem: { code, path, value: text } };
  }
  // + 0: there is no −0 mm.
  const value = Number(digits.replace('−', '-')) * (unit === 'in' ? MM_PER_INCH : 1) + 0;
  const { min, max } = QUANTITIES[quantity];
  if (value >= min && value <= max) return { ok: true, value };
  return { ok: false, problem: { code: 'out-of-range', path, value: text, limit: value < min ? min : max } };
}
