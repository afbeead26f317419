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

/** The first x from a start on at which y falls to a level; undefined where it never does. */
export function firstBelow(x: Float64Array, y: Float64Array, level: number, from: number): number | undefined {
  let [x0, y0] = [from, valueAt(x, y, from)];
  if (y0 <= level) return from;
  for (let i = 0; i < x.length; i++) {
    if (x[i]! <= from) continue;
    const [x1, y1] = [x[i]!, y[i]!];
    if (y1 <= level) return x0 + ((y0 - level) / (y0 - y1)) * (x1 - x0);
    [x0, y0] = [x1, y1];
  }
  return undefined;
}
