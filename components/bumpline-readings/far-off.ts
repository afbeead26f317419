import type { Reading } from '../../core/readings/reading.js';

/** How many readings at the nearest heights say what is usual there, and how far away they may be, mm. */
const NEIGHBOURS = 6;
const FAR_MM = 30;
/** Degrees: closer than this to what is usual, nothing is asked. */
const LEAST_DISTANCE = 0.4;
/** What was meant lies this much nearer, as a share. */
const NEARER = 0.25;

/**
 * What somebody may have meant by a value that lies far off the straight line through its neighbours: with the point elsewhere, or
 * the other sign. Undefined where nothing is to be asked. The limits are common practice without a source.
 */
export function meantBy(value: number, travel: number, others: readonly Reading[]): number | undefined {
  const near = others
    .filter((other) => Math.abs(other.travel - travel) <= FAR_MM)
    .sort((a, b) => Math.abs(a.travel - travel) - Math.abs(b.travel - travel))
    .slice(0, NEIGHBOURS);
  if (near.length < 2) return undefined;
  const usual = lineAt(travel, near);
  const distance = Math.abs(value - usual);
  if (distance < LEAST_DISTANCE) return undefined;
  const [meant] = [value / 10, value * 10, -value, -value / 10, -value * 10]
    .map((one) => Math.round(one * 1e6) / 1e6)
    .sort((a, b) => Math.abs(a - usual) - Math.abs(b - usual));
  return Math.abs(meant! - usual) < NEARER * distance ? meant : undefined;
}

/** The value at a travel of the line of least squares; of the mean where all are at one height. */
function lineAt(at: number, points: readonly Reading[]): number {
  const mean = (of: (one: Reading) => number) => points.reduce((sum, one) => sum + of(one), 0) / points.length;
  const [x, y] = [mean(({ travel }) => travel), mean(({ value }) => value)];
  const bottom = mean(({ travel }) => (travel - x) ** 2);
  return bottom > 0 ? y + (mean(({ travel, value }) => (travel - x) * (value - y)) / bottom) * (at - x) : y;
}
