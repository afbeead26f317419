import { formatQuantity } from '../../core/quantity/format.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-static-camber.labels.js';
import type { Cost, CostOfWay } from './costs.js';

const signed = (size: number, quantity: Quantity, { units, language }: Display): string =>
  formatQuantity(size, quantity, units, { language, sign: 'always' }).text;

/** A figure as it becomes; bump steer is a spread and has no sign. */
export const afterText = ({ key, quantity }: Cost, size: number, display: Display): string =>
  key === 'toeBefore' ? signed(size, quantity.after, display) : show(size, quantity.after, display);

/** The change of a figure with one way, and under it what it becomes. */
export function costText(cost: Cost, found: CostOfWay, display: Display): { main: string; under?: string } {
  const { change, after } = found;
  if (change === undefined) return { main: found.isComing ? NAMES.table.waiting : NAMES.table.notKnown };
  if (!Number.isFinite(change)) return { main: NAMES.table.notReached };
  const main = signed(change, cost.quantity.change, display);
  return { main, ...(after !== undefined && { under: afterText(cost, after, display) }) };
}
