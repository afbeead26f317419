/** Index of the nearest. */
export function nearest(x: Float64Array, at: number): number {
  let best = 0;
  x.forEach((value, i) => {
    if (Math.abs(value - at) < Math.abs(x[best]! - at)) best = i;
  });
  return best;
}

/** Along straight lines between samples. */
export function valueAt(x: Float64Array, y: Float64Array, at: number): number {
  const next = x.findIndex((sample) => sample >= at);
  if (next <= 0) return y[Math.max(next, 0)]!;
  const share = (at - x[next - 1]!) / (x[next]! - x[next - 1]!);
  return y[next - 1]! + share * (y[next]! - y[next - 1]!);
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
