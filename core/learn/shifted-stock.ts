import { curveOf } from '../curve/curve.js';
import type { PartData } from '../linkage/parts/part-kinds.js';
import type { Estimated } from './learn.js';
import { shiftOf } from './shift-of.js';

/**
 * What the stock readings alone say of a longer ball joint whose rod goes with it, without any links: their own curve, begun that much
 * earlier. Degrees; undefined for other parts, and where nothing was read so far down.
 *
 * @param from travel from the corner's height, mm
 */
export function shiftedStock(
  { sets }: Pick<Estimated, 'sets'>,
  parts: readonly PartData[],
  from: number,
  over: number,
): number | undefined {
  const shift = shiftOf(parts);
  if (shift === undefined) return undefined;
  const set = sets.find(({ quantity, parts: on }) => quantity === 'camber' && on.length === 0);
  if (!set) return undefined;
  const start = from - set.raisedBy - shift;
  const change = curveOf(set.fit.curve).change(start + over, start);
  return Number.isFinite(change) ? change : undefined;
}
