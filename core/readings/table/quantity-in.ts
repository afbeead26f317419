import type { ReadingQuantity } from '../reading.js';
import { CAMBER, headingSays, TOE } from './heading.js';
import { tableRows } from './table-rows.js';

/** Of which angle the headings of a sheet say that it is, two dials among them; undefined where they name both, or neither. */
export function quantityIn(rows: readonly (readonly string[])[]): ReadingQuantity | undefined {
  const { headings, title } = tableRows(rows);
  const words = `${headings.map(({ own, group }) => `${group} ${own}`).join(' ')} ${title}`.toLowerCase();
  const roles = headings.map(({ own, group }) => headingSays(own, group, 'toe').role);
  const isToe = TOE.test(words) || (roles.includes('dialFront') && roles.includes('dialRear'));
  const isCamber = CAMBER.test(words);
  if (isToe === isCamber) return undefined;
  return isToe ? 'toe' : 'camber';
}
