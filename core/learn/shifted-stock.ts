import { curveOf } from '../curve/curve.js';
import type { PartData } from '../linkage/parts/part-kinds.js';
import type { Estimated } from './learn.js';

/**
 * So many times the joint's height further into droop a longer ball joint begins the stock curve, the tie rod corrected: 1.12 on the
 * invented example. How near that comes on random cars the study of learnt corners prints beside the links (test/bench/learn.mjs).
 */
const SHIFT = 1.1;

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
  const [joint, ...others] = parts;
  if (joint?.part !== 'ballJointExtended' || !joint.correctTieRod || others.length > 0) return undefined;
  const set = sets.find(({ quantity, parts: on }) => quantity === 'camber' && on.length === 0);
  if (!set) return undefined;
  const start = from - set.raisedBy - SHIFT * joint.mm;
  const change = curveOf(set.fit.curve).change(start + over, start);
  return Number.isFinite(change) ? change : undefined;
}
