import { formatQuantity } from '../../core/quantity/format.js';
import { QUANTITIES, type Quantity } from '../../core/quantity/quantities.js';
import type { UnitSystem } from '../../core/quantity/units.js';

/** Which keys a phone shows for a number: figures alone, unless it is written with marks (0°18′) or as a fraction (1 1/2 in). */
export function keypadOf(quantity: Quantity, { length, angle }: UnitSystem): 'decimal' | 'text' {
  const { dimension } = QUANTITIES[quantity];
  if (dimension === 'plain') return 'decimal';
  return dimension === 'length' ? (length === 'mm' ? 'decimal' : 'text') : angle === 'degrees' ? 'decimal' : 'text';
}

/** What stands behind a field: its unit, the marks of degrees and minutes, nothing behind a plain number. */
export function unitOf(quantity: Quantity, units: UnitSystem): string {
  const { unit } = formatQuantity(0, quantity, units);
  return unit || (QUANTITIES[quantity].dimension === 'plain' ? '' : '° ′');
}
