import type { PartData } from '../linkage/parts/part-kinds.js';

/**
 * So many times the joint's height further into droop a longer ball joint begins the stock curve, the tie rod corrected: 1.12 on the
 * invented example. How near that comes on random cars the study of learnt corners prints beside the links (test/bench/learn.mjs).
 */
const SHIFT = 1.1;

/** By how many mm earlier parts begin the stock curve: of a longer lower joint alone whose rod goes with it; undefined of all others. */
export function shiftOf([joint, ...others]: readonly PartData[]): number | undefined {
  if (joint?.part !== 'ballJointExtended' || !joint.correctTieRod || others.length > 0) return undefined;
  return SHIFT * joint.mm;
}
