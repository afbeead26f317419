/** Along straight lines between samples, and on along the last of them beyond. */
export function interpolate(x: Float64Array, y: Float64Array, at: number): number {
  const next = x.findIndex((sample) => sample > at);
  const i = Math.min(Math.max((next < 0 ? x.length : next) - 1, 0), x.length - 2);
  return y[i]! + ((at - x[i]!) / (x[i + 1]! - x[i]!)) * (y[i + 1]! - y[i]!);
}
