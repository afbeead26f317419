import type { Reading } from '../../core/readings/reading.js';

/** How many readings at the nearest heights say what is usual there. */
const NEIGHBOURS = 4;
/** Degrees: closer than this to what is usual, nothing is asked. */
const LEAST_DISTANCE = 0.4;
/** What was meant lies this much nearer, as a share. */
const NEARER = 0.35;
/** How far neighbours may lie, mm. */
const FAR_MM = 30;

/**
 * What somebody may have meant by a value that lies far off its neighbours: with the point elsewhere, or the other sign. Undefined
 * where nothing is to be asked. The limits are common practice without a source.
 */
export function meantBy(value: number, travel: number, others: readonly Reading[]): number | undefined {
  const near = others
    .filter((other) => Math.abs(other.travel - travel) <= FAR_MM)
    .sort((a, b) => Math.abs(a.travel - travel) - Math.abs(b.travel - travel))
    .slice(0, NEIGHBOURS)
    .map((other) => other.value)
    .sort((a, b) => a - b);
  if (near.length < 2) return undefined;
  const usual = (near[Math.floor((near.length - 1) / 2)]! + near[Math.ceil((near.length - 1) / 2)]!) / 2;
  const spread = near.at(-1)! - near[0]!;
  const distance = Math.abs(value - usual);
  if (distance < Math.max(LEAST_DISTANCE, 2 * spread)) return undefined;
  const [meant] = [value / 10, value * 10, -value, -value / 10, -value * 10]
    .map((one) => Math.round(one * 1e6) / 1e6)
    .sort((a, b) => Math.abs(a - usual) - Math.abs(b - usual));
  return Math.abs(meant! - usual) < NEARER * distance ? meant : undefined;
}
