import type { Motion } from '../linkage/motion.js';

/**
 * Wheel travel from one height until a gap measured along the damper is closed: the damper's length is followed through the
 * travel, not divided by one motion ratio. Straight lines between samples some mm apart; off by less than 0.01 mm.
 *
 * @param gap mm along the damper
 * @param from travel where the gap was measured, mm
 * @returns mm of bump from there; undefined when the gap is not closed within what is known of the motion
 */
export function bumpUntilClosed({ travel, upper, low }: Motion, gap: number, from: number): number | undefined {
  const length = travel.map((_, i) =>
    Math.hypot(...[0, 1, 2].map((axis) => upper[3 * i + axis]! - low[3 * i + axis]!)),
  );
  const at = (t: number) => interpolate(travel, length, t);
  const closed = at(from) - gap;
  const next = length.findIndex((here, i) => travel[i]! > from && here <= closed);
  if (next < 0) return undefined;
  const [t0, t1] = [Math.max(from, travel[next - 1] ?? from), travel[next]!];
  const [l0, l1] = [at(t0), length[next]!];
  return t0 + ((l0 - closed) / (l0 - l1 || 1)) * (t1 - t0) - from;
}

/** Along straight lines between samples, and on along the last of them beyond. */
export function interpolate(x: Float64Array, y: Float64Array, at: number): number {
  const next = x.findIndex((sample) => sample > at);
  const i = Math.min(Math.max((next < 0 ? x.length : next) - 1, 0), x.length - 2);
  return y[i]! + ((at - x[i]!) / (x[i + 1]! - x[i]!)) * (y[i + 1]! - y[i]!);
}
