import type { Linkage } from '../../../core/linkage/linkage.js';
import { rackRaised, tieRodEndRaised } from '../../../core/linkage/parts/index.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { opened } from '../../../core/linkage/travel.js';
import { InputError } from '../../../core/quantity/problem.js';

/*
 * Toe over travel with one end of the tie rod raised, and the best amount, with no more of core/ than parts and sweep: the rod's length
 * by the secant rule on the toe that the sweep reports at ride height, every amount of a dense grid, every travel of another.
 */

export interface Asked {
  at: number;
  window: readonly [number, number];
  /** Degrees. */
  toe: number;
  adjust: 'outerEnd' | 'rack' | 'innerEnd';
  range: readonly [number, number];
  rack?: number;
}

/** With a part on and the rod of a length; undefined where the links do not join. */
function built(linkage: Linkage, tieRod: number, { adjust }: Asked, mm: number): Linkage | undefined {
  const loose = { ...opened(linkage), lengths: { ...linkage.lengths, tieRod } };
  try {
    return (adjust === 'outerEnd' ? tieRodEndRaised({ mm }) : rackRaised({ mm }))(loose);
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** The linkage with an amount and toe set again; undefined where the secant rule does not find a rod. */
export function withToeSet(linkage: Linkage, asked: Asked, mm: number, near = linkage.lengths.tieRod) {
  const miss = (rod: number) => {
    const there = built(linkage, rod, asked, mm);
    return there ? sweepTravel(there, [asked.at]).toe[0]! - asked.toe : Number.NaN;
  };
  let [a, b] = [near, near + 0.1];
  let [atA, atB] = [miss(a), miss(b)];
  for (let i = 0; i < 30 && Math.abs(atB) > 1e-10; i++) {
    const next = b - (atB * (b - a)) / (atB - atA);
    [a, atA] = [b, atB];
    [b, atB] = [next, miss(next)];
  }
  const there = Math.abs(atB) < 1e-8 ? built(linkage, b, asked, mm) : undefined;
  return there && { linkage: there, tieRod: b };
}

/** Peak-to-peak change of toe over the window by so many travels, degrees; Infinity where it is not all driven. */
export function spreadBySweep(linkage: Linkage, { at, window, rack = 0 }: Asked, count: number): number {
  const travels = Float64Array.from(
    { length: count },
    (_, i) => at + window[0] + ((window[1] - window[0]) * i) / (count - 1),
  );
  const { toe, reached } = sweepTravel(linkage, travels, { rack });
  if (reached.includes(0)) return Number.POSITIVE_INFINITY;
  // A step from one travel to the next that is no step of a curve is another assembly.
  if (toe.some((one, i) => i > 0 && Math.abs(one - toe[i - 1]!) > 5)) return Number.POSITIVE_INFINITY;
  return Math.max(...toe) - Math.min(...toe);
}

/** The least peak-to-peak change of all amounts of the range, and that of none. */
export function bruteForce(linkage: Linkage, asked: Asked, stepMm = 0.5, travels = 41) {
  const [low, high] = asked.range;
  const tried: { amount: number; spread: number; tieRod: number }[] = [];
  const walk = (way: 1 | -1) => {
    let near = linkage.lengths.tieRod;
    for (let i = way === 1 ? 0 : 1; i * stepMm <= Math.abs(way === 1 ? high : low); i++) {
      const amount = way * i * stepMm;
      const set = withToeSet(linkage, asked, amount, near);
      if (!set) return;
      near = set.tieRod;
      tried.push({ amount, spread: spreadBySweep(set.linkage, asked, travels), tieRod: near });
    }
  };
  walk(1);
  walk(-1);
  let best = tried.reduce((a, b) => (b.spread < a.spread ? b : a));
  for (let step = stepMm / 2; step > 1e-3; step /= 2) {
    for (const amount of [best.amount - step, best.amount + step]) {
      if (amount < low || amount > high) continue;
      const set = withToeSet(linkage, asked, amount, best.tieRod);
      const spread = set ? spreadBySweep(set.linkage, asked, travels) : Number.POSITIVE_INFINITY;
      if (set && spread < best.spread) best = { amount, spread, tieRod: set.tieRod };
    }
  }
  return best;
}
