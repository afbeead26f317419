import { formatQuantity } from '../../core/quantity/format.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { UnitSystem } from '../../core/quantity/units.js';

export const MINUS = '\u2212';

/** A field's text with its sign turned. What stands there as a value is turned as one: with its unit it can be read in one way only. */
export function turnedSign(shown: string, isValue: boolean, quantity: Quantity, units: UnitSystem): string {
  const { unit } = formatQuantity(0, quantity, units);
  const text = `${shown.trim()}${isValue && shown !== '' ? unit : ''}`;
  return /^[-−]/.test(text) ? text.slice(1) : `${MINUS}${text.replace(/^\+/, '')}`;
}
