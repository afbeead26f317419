import { formatQuantity } from '../../core/quantity/format.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { type Dimension, fromShown, toShown } from '../../core/quantity/units.js';
import type { Display } from '../element/sentence.js';

/** How numbers stand in a table: `shown` in the reader's unit, as the CSV takes them; `write` makes the text of such a number. */
export function numbersFormat({ units, language }: Display) {
  return {
    /** The unit of angles. */
    angle: units.angle === 'arcminutes' ? '′' : '°',
    /** Six decimals: more than any linkage holds, and no noise of floating point in a pasted sheet. */
    shown: (amount: number, dimension: Dimension): number =>
      Math.round(toShown(amount, dimension, units) * 1e6) / 1e6 || 0,
    write: (quantity: Quantity, dimension: Dimension, sign: 'auto' | 'always') => (amount: number) =>
      formatQuantity(fromShown(amount, dimension, units), quantity, units, { language, sign, unit: false }).text,
  };
}
