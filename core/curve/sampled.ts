import type { CurveData } from './curve-data.js';
import type { Shape } from './shape.js';

/** Cubic Hermite between samples; parts change linearly between them. */
export function sampledShape(data: Extract<CurveData, { kind: 'sampled' }>): Shape {
  const { travel, value, slope, parts } = data;
  const sources = parts.length / travel.length;
  const cell = (t: number) => cellOf(travel, t);
  const part = (i: number, source: number) => parts[i * sources + source]!;
  const each = (of: (source: number) => number) => Float64Array.from({ length: sources }, (_, source) => of(source));
  return {
    value(t) {
      const i = cell(t);
      const u = t - travel[i]!;
      if (u === 0) return value[i]!;
      const { bend, twist } = hermite(data, i);
      return value[i]! + u * (slope[i]! + u * (bend / 2 + (u * twist) / 6));
    },
    slope(t) {
      const i = cell(t);
      const u = t - travel[i]!;
      if (u === 0) return slope[i]!;
      const { bend, twist } = hermite(data, i);
      return slope[i]! + u * (bend + (u * twist) / 2);
    },
    parts(t) {
      const i = cell(t);
      const u = t - travel[i]!;
      if (u === 0) return each((source) => part(i, source));
      const share = u / (travel[i + 1]! - travel[i]!);
      return each((source) => part(i, source) * (1 - share) + part(i + 1, source) * share);
    },
    slopeParts(t) {
      // A knot belongs to the cell after it, the last one to the cell before.
      const i = Math.min(cell(t), travel.length - 2);
      const width = travel[i + 1]! - travel[i]!;
      return each((source) => (part(i + 1, source) - part(i, source)) / width);
    },
  };
}

/** Second derivative at the start of cell i, and the third, of the cubic that fits value and slope at both ends. */
export function hermite(
  { travel, value, slope }: Extract<CurveData, { kind: 'sampled' }>,
  i: number,
): { bend: number; twist: number } {
  const width = travel[i + 1]! - travel[i]!;
  const mean = (value[i + 1]! - value[i]!) / width;
  const start = slope[i]!;
  const end = slope[i + 1]!;
  return {
    bend: (2 * (3 * mean - 2 * start - end)) / width,
    twist: (6 * (start + end - 2 * mean)) / (width * width),
  };
}

/** The last sample at or before t. */
function cellOf(travel: Float64Array, t: number): number {
  let low = 0;
  let high = travel.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (travel[middle]! <= t) low = middle;
    else high = middle;
  }
  return low;
}
