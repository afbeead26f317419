import type { Motion } from '../linkage/motion.js';

/** How a damper shortens over wheel travel, mm. */
export interface DamperPath {
  /** Ascending. */
  travel: Float64Array;
  /** By how much it is shorter than at the first travel; growing. */
  shortening: Float64Array;
}

/** Of a linkage; undefined without a damper, or where it does not grow shorter all the way. */
export function damperPathOf({ travel, upper, low, fixed: { damperTop } }: Motion): DamperPath | undefined {
  const length = travel.map((_, i) =>
    Math.hypot(...[0, 1, 2].map((axis) => (damperTop?.[axis] ?? upper[3 * i + axis]!) - low[3 * i + axis]!)),
  );
  const shortening = length.map((here) => length[0]! - here);
  const grows = shortening.every((here, i) => i === 0 || here > shortening[i - 1]!);
  return grows && travel.length > 1 ? { travel, shortening } : undefined;
}

/** Of one motion ratio all the way. */
export function constantPath(motionRatio: number, low = -300, high = 300): DamperPath {
  return { travel: Float64Array.of(low, high), shortening: Float64Array.of(0, motionRatio * (high - low)) };
}

/** Index of the stretch that holds x, the first and last reaching on. */
function stretchOf(x: Float64Array, at: number): number {
  let low = 0;
  let high = x.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x[middle]! <= at) low = middle;
    else high = middle;
  }
  return low;
}

/** Slope and half the bend of y over x about sample i: the parabola through three neighbours. */
function parabola({ travel: x, shortening: y }: DamperPath, i: number): [slope: number, bend: number] {
  if (x.length < 3) return [(y[1]! - y[0]!) / (x[1]! - x[0]!), 0];
  const m = Math.min(Math.max(i, 1), x.length - 2);
  const before = (y[m]! - y[m - 1]!) / (x[m]! - x[m - 1]!);
  const after = (y[m + 1]! - y[m]!) / (x[m + 1]! - x[m]!);
  const bend = (after - before) / (x[m + 1]! - x[m - 1]!);
  // At sample m, carried to sample i.
  const slope = before + bend * (x[m]! - x[m - 1]!);
  return [slope + 2 * bend * (x[i]! - x[m]!), bend];
}

/** Shortening at a travel: through each stretch the cubic of its ends' values and slopes. */
export function shorteningAt(path: DamperPath, at: number): number {
  const { travel: x, shortening: y } = path;
  const i = stretchOf(x, at);
  const h = x[i + 1]! - x[i]!;
  const s = (at - x[i]!) / h;
  const [m0, m1] = [parabola(path, i)[0], parabola(path, i + 1)[0]];
  if (s < 0) return y[i]! + m0 * (at - x[i]!);
  if (s > 1) return y[i + 1]! + m1 * (at - x[i + 1]!);
  return (
    y[i]! * (1 + 2 * s) * (1 - s) ** 2 +
    h * m0 * s * (1 - s) ** 2 +
    y[i + 1]! * s * s * (3 - 2 * s) -
    h * m1 * s * s * (1 - s)
  );
}

/** −d(damper length)/d(travel). */
export function motionRatioAt(path: DamperPath, at: number): number {
  const step = 0.01;
  return (shorteningAt(path, at + step) - shorteningAt(path, at - step)) / (2 * step);
}

/** d(motion ratio)/d(travel), per mm. */
export function motionRatioSlopeAt({ travel, shortening }: DamperPath, at: number): number {
  const i = stretchOf(travel, at);
  return 2 * parabola({ travel, shortening }, i)[1];
}

/**
 * The travel at which the damper has shortened by so much since another; undefined where that is not known any more.
 *
 * @param from travel, mm
 * @param shortening mm; negative: drawn out
 */
export function travelAfter(path: DamperPath, from: number, shortening: number): number | undefined {
  const { travel } = path;
  let [low, high] = [travel[0]!, travel.at(-1)!];
  const wanted = shorteningAt(path, from) + shortening;
  if (wanted < shorteningAt(path, low) || wanted > shorteningAt(path, high)) return undefined;
  while (high - low > 1e-10) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (shorteningAt(path, middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
