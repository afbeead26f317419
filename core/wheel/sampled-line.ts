import { interpolate } from '../math/interpolate.js';

/** Index of the nearest. */
export function nearest(x: Float64Array, at: number): number {
  let best = 0;
  x.forEach((value, i) => {
    if (Math.abs(value - at) < Math.abs(x[best]! - at)) best = i;
  });
  return best;
}

/** Along straight lines between samples; beyond the last ones as they are. A sample itself stands alone: its neighbour may be NaN. */
export function valueAt(x: Float64Array, y: Float64Array, at: number): number {
  const next = x.findIndex((sample) => sample >= at);
  if (next === 0 || x[next] === at) return y[next]!;
  return next < 0 ? y.at(-1)! : interpolate(x, y, at);
}

/**
 * The first x from a start on at which y falls to a level; undefined where it never does.
 *
 * @param y of a sample, by its index; asked for no more of them than it takes
 */
export function firstBelow(
  x: Float64Array,
  y: (index: number) => number,
  level: number,
  from: number,
): number | undefined {
  const next = x.findIndex((sample) => sample >= from);
  const isBetween = next > 0 && x[next] !== from;
  let x0 = from;
  let y0 = isBetween
    ? interpolate(x.subarray(next - 1, next + 1), Float64Array.of(y(next - 1), y(next)), from)
    : y(next < 0 ? x.length - 1 : next);
  if (y0 <= level) return from;
  for (let i = 0; i < x.length; i++) {
    if (x[i]! <= from) continue;
    const [x1, y1] = [x[i]!, y(i)];
    if (y1 <= level) return x0 + ((y0 - level) / (y0 - y1)) * (x1 - x0);
    [x0, y0] = [x1, y1];
  }
  return undefined;
}
