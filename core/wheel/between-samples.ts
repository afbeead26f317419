import type { WheelMotion } from './motion-table.js';

/** Samples whose weighted sum is what lies at a travel and a steer: indexes into a motion's tables, travel · racks + rack. */
export interface Samples {
  readonly at: Int32Array;
  readonly weight: Float64Array;
  /** How many of them count; 0 where the links do not reach. */
  count: number;
}

/** Polynomials through so many samples at most: steering bends a way more than travel does. */
const ACROSS = 6;
const ALONG = 4;

export const samples = (): Samples => ({
  at: new Int32Array(ACROSS * ALONG),
  weight: new Float64Array(ACROSS * ALONG),
  count: 0,
});

const rowAt = new Int32Array(ALONG);
const rowWeight = new Float64Array(ALONG);
const columnAt = new Int32Array(ACROSS);
const columnWeight = new Float64Array(ACROSS);

/**
 * Lagrange's polynomials through the nearest samples that the links reach, in travel and in steer. The steer, toe at reference
 * height, is what is interpolated over and not the rack: about the kingpin everything runs on circles, while the rack's last
 * millimetres before the rod is in line with its arm turn the wheel ever more. Over random cars within 0.005 mm of the solver.
 * A sample itself stands alone: beyond it the links may not reach.
 *
 * @param travel mm; @param steer degrees, on the scale of the motion's `toe`
 */
export function between(out: Samples, motion: WheelMotion, travel: number, steer: number): void {
  const { travel: travels, toe, rack, centre } = motion;
  const racks = rack.length;
  out.count = 0;
  const i = cellOf(travels, travel);
  const j = cellOf(toe, steer);
  const isWhole = isReachedEverywhere(motion);
  /** Weights of a row's samples. */
  const column = (row: number) =>
    spread(
      columnAt,
      columnWeight,
      ACROSS,
      toe,
      j,
      steer,
      isWhole ? everyNode : (at) => isReached(centre, row * racks + at),
    );
  const rows = spread(rowAt, rowWeight, ALONG, travels, i, travel, isWhole ? everyNode : (row) => column(row) > 0);
  let columns = isWhole ? column(i) : 0;
  for (let a = 0; a < rows; a++) {
    if (!isWhole) columns = column(rowAt[a]!);
    for (let b = 0; b < columns; b++) {
      out.at[out.count] = rowAt[a]! * racks + columnAt[b]!;
      out.weight[out.count++] = rowWeight[a]! * columnWeight[b]!;
    }
  }
}

const everyNode = (): boolean => true;
const isReached = (centre: Float64Array, sample: number): boolean => !Number.isNaN(centre[3 * sample]!);

/** Most motions are reached at every sample: then all rows share their weights. */
const everywhere = new WeakMap<Float64Array, boolean>();

function isReachedEverywhere({ centre }: WheelMotion): boolean {
  let found = everywhere.get(centre);
  if (found === undefined) {
    found = !centre.some(Number.isNaN);
    everywhere.set(centre, found);
  }
  return found;
}

/** Whether the samples of one motion are those of another as well. */
export const areAlike = (a: WheelMotion, b: WheelMotion): boolean =>
  a.travel === b.travel && a.toe === b.toe && isReachedEverywhere(a) && isReachedEverywhere(b);

/** The weighted sum of one number a sample; NaN out of reach. */
export function blend({ at, weight, count }: Samples, from: Float64Array): number {
  if (count === 0) return Number.NaN;
  let sum = 0;
  for (let k = 0; k < count; k++) sum += weight[k]! * from[at[k]!]!;
  return sum;
}

/** Of three numbers a sample. */
export function blendVector({ at, weight, count }: Samples, from: Float64Array): [number, number, number] {
  if (count === 0) return [Number.NaN, Number.NaN, Number.NaN];
  let [x, y, z] = [0, 0, 0];
  for (let k = 0; k < count; k++) {
    const first = 3 * at[k]!;
    const share = weight[k]!;
    x += share * from[first]!;
    y += share * from[first + 1]!;
    z += share * from[first + 2]!;
  }
  return [x, y, z];
}

/** Of one number a rack position. */
export function blendAcross({ at, weight, count }: Samples, from: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < count; k++) sum += weight[k]! * from[at[k]! % from.length]!;
  return sum;
}

/** The last node at or before x, but for the very last; 0 where there is one node alone. */
function cellOf(nodes: Float64Array, x: number): number {
  let low = 0;
  let high = nodes.length - 1;
  // Full lock may be either end: toe falls with the rack on one side of the car's axle.
  const sign = nodes[high]! < nodes[0]! ? -1 : 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (sign * nodes[middle]! <= sign * x) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * Indexes and weights of up to `most` nodes about a cell.
 *
 * @returns how many; 0 where an end of the cell itself is not known
 */
function spread(
  at: Int32Array,
  weight: Float64Array,
  most: number,
  nodes: Float64Array,
  cell: number,
  x: number,
  isKnown: (node: number) => boolean,
): number {
  const alone = nodes[cell] === x || nodes.length === 1 ? cell : nodes[cell + 1] === x ? cell + 1 : -1;
  if (alone >= 0) {
    at[0] = alone;
    weight[0] = 1;
    return isKnown(alone) ? 1 : 0;
  }
  if (!isKnown(cell) || !isKnown(cell + 1)) return 0;
  let [low, high] = [cell, cell + 1];
  const isThere = (node: number) => node >= 0 && node < nodes.length && isKnown(node);
  // By turns to either side, and on one side alone once the other has ended.
  let [below, above] = [isThere(low - 1), isThere(high + 1)];
  while (high - low + 1 < most && (below || above)) {
    if (below && (!above || cell - low <= high - cell - 1)) {
      low--;
      below = isThere(low - 1);
    } else {
      high++;
      above = isThere(high + 1);
    }
  }
  for (let node = low; node <= high; node++) {
    let product = 1;
    for (let other = low; other <= high; other++) {
      if (other !== node) product *= (x - nodes[other]!) / (nodes[node]! - nodes[other]!);
    }
    at[node - low] = node;
    weight[node - low] = product;
  }
  return high - low + 1;
}
