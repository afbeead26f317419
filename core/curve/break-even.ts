import type { Estimate } from '../uncertainty/estimate.js';
import type { Compared, Joint } from './joint.js';

/**
 * A drop at which two quantities are equal.
 *
 * `at`: at one drop. `two`: at two, past the reversal. `none`: at none in range, the other curve `ahead` (more negative camber) or
 * behind all the way. `cannot-tell`: what lies between them is within the ± wherever one looks, or a crossing may or may not be;
 * with a `side` where the other curve is told ahead, or behind, at all drops below the interval.
 */
export type Crossing = {
  /** Drops that were looked at, mm. */
  range: [from: number, to: number];
} /** `isAheadBelow`: with less drop than that the other curve adds more negative camber. */ & (
  | { kind: 'at'; drop: number; interval: Interval; isAheadBelow: boolean }
  | { kind: 'two'; drops: [number, number]; interval: Interval }
  | { kind: 'none'; side: 'ahead' | 'behind' }
  | { kind: 'cannot-tell'; interval: Interval; side?: 'ahead' | 'behind' }
);

/** 95 %, mm. An open end is that of what was looked at: it may lie beyond. */
export interface Interval {
  low: number;
  high: number;
  isLowOpen: boolean;
  isHighOpen: boolean;
}

export interface BreakEven {
  /** Of the camber change over the bump. */
  change: Crossing | undefined;
  /** Of the camber rate at the height. */
  rate: Crossing | undefined;
}

export interface Span {
  heights: readonly number[];
  bump: number;
  solid?: number;
}

const STEP_MM = 1;
const SOLVED_MM = 1e-9;

/**
 * The smallest drop d ≥ 0 at which the other curve's change over the bump b from d equals the reference's over the same b from its
 * own height; and the same for the rate. Solved, not read off a grid.
 *
 * The interval holds every drop at which the difference cannot be told from nothing (Fieller 1954: a test turned round), so it
 * covers the truth as often as the ± of the difference does, and may be open at the ends of what was looked at.
 */
export function breakEven(
  curves: readonly Compared[],
  joint: Joint,
  { reference, other }: { reference: number; other: number },
  { heights, bump, solid = Number.POSITIVE_INFINITY }: Span,
): BreakEven {
  const old = curves[reference]!.curve;
  const now = curves[other]!.curve;
  const own = heights[0]!;
  const crossing = (over: number, ofOld: Estimate, ofNow: (drop: number) => Estimate): Crossing | undefined => {
    // Inside what is known, and inside the bump travel that is left.
    const to = Math.min(now.domain[1], solid) - over;
    if (Number.isNaN(ofOld.value) || !(to > 0)) return undefined;
    const difference = (drop: number) => joint.sum([other, ofNow(drop), 1], [reference, ofOld, -1]);
    return crossingOf(
      (drop) => difference(drop).value,
      (drop) => joint.plusMinus(difference(drop)),
      Math.max(0, now.domain[0]),
      to,
    );
  };
  return {
    change: crossing(bump, old.changeEstimate(own + bump, own), (drop) => now.changeEstimate(drop + bump, drop)),
    rate: crossing(0, old.slopeEstimate(own), (drop) => now.slopeEstimate(drop)),
  };
}

/**
 * Where a function is nothing between two ends, and where it cannot be told from nothing.
 *
 * @param difference negative: ahead
 */
export function crossingOf(
  difference: (drop: number) => number,
  plusMinus: (drop: number) => number,
  from: number,
  to: number,
): Crossing {
  const count = Math.max(1, Math.ceil((to - from) / STEP_MM));
  const drops = Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
  const range: [number, number] = [from, to];
  const roots = signChanges(difference, drops);
  // Where the test turns: |difference| − ± changes its sign.
  const untold = (drop: number) => Math.abs(difference(drop)) - plusMinus(drop);
  const isUntold = drops.map((drop) => untold(drop) <= 0);
  const first = isUntold.indexOf(true);
  const last = isUntold.lastIndexOf(true);
  const edge = (inside: number, outside: number | undefined) =>
    outside === undefined ? drops[inside]! : halve(untold, drops[inside]!, drops[outside]!);
  let interval: Interval | undefined;
  if (first >= 0) {
    interval = {
      low: edge(first, first === 0 ? undefined : first - 1),
      high: edge(last, last === count ? undefined : last + 1),
      isLowOpen: first === 0,
      isHighOpen: last === count,
    };
  } else if (roots.length > 0) {
    // Sharper than a step.
    const root = roots[0]!;
    const [low, high] = [
      Math.floor((root - from) / ((to - from) / count)),
      Math.ceil((root - from) / ((to - from) / count)),
    ];
    interval = {
      low: halve(untold, root, drops[Math.max(0, low)]!),
      high: halve(untold, roots.at(-1)!, drops[Math.min(count, high)]!),
      isLowOpen: false,
      isHighOpen: false,
    };
  }
  if (interval && roots.length > 0) {
    // Told nowhere, there is no saying on which side of the root who is ahead.
    if (isUntold.every(Boolean)) return { kind: 'cannot-tell', interval, range };
    if (roots.length > 1) return { kind: 'two', drops: [roots[0]!, roots[1]!], interval, range };
    const [root] = roots as [number];
    const isAheadBelow = root > from ? difference((from + root) / 2) < 0 : difference(Math.min(to, root + STEP_MM)) > 0;
    return { kind: 'at', drop: root, interval, isAheadBelow, range };
  }
  if (interval) {
    const side = difference(from) < 0 ? 'ahead' : 'behind';
    return { kind: 'cannot-tell', interval, range, ...(!interval.isLowOpen && { side }) };
  }
  return { kind: 'none', side: difference(from) < 0 ? 'ahead' : 'behind', range };
}

function signChanges(of: (x: number) => number, points: readonly number[]): number[] {
  const found: number[] = [];
  let before = of(points[0]!);
  if (before === 0) found.push(points[0]!);
  for (let i = 1; i < points.length; i++) {
    const here = of(points[i]!);
    if (here === 0) found.push(points[i]!);
    else if (before !== 0 && before < 0 !== here < 0) {
      let [low, high] = [points[i - 1]!, points[i]!];
      while (high - low > SOLVED_MM) {
        const middle = (low + high) / 2;
        if (middle === low || middle === high) break;
        if (of(middle) < 0 === before < 0) low = middle;
        else high = middle;
      }
      found.push((low + high) / 2);
    }
    before = here;
  }
  return found;
}

/** Between a place where something is not positive and one where it is: the last of the first kind. */
function halve(of: (x: number) => number, inside: number, outside: number): number {
  let [good, bad] = [inside, outside];
  if (of(bad) <= 0) return bad;
  while (Math.abs(good - bad) > SOLVED_MM) {
    const middle = (good + bad) / 2;
    if (middle === good || middle === bad) break;
    if (of(middle) <= 0) good = middle;
    else bad = middle;
  }
  return good;
}
