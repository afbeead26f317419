import { type CostWeight, LEAST_COSTS, type LeastCost } from '../document/cost-weights.js';
import type { LeastCostRequest } from './least-cost-request.js';

/** What a setup costs, each for itself. The more, the worse. */
export interface SetupCosts {
  /** Bump travel given up, mm at the wheel; negative where some is won. */
  bumpTravel: number;
  /** Change of toe over the window, peak to peak, degrees. Left out where the tie rod is not known. */
  bumpSteer?: number;
  /** Change of scrub radius, mm, either way. */
  scrubChange: number;
  /** Of all that has one. */
  price: number;
  /** What has none, a bit a thing. */
  unpriced: number;
}

/** Something with costs, and what decides between equal ones. */
export interface Costed {
  costs: SetupCosts;
  /** By how much it misses what is wanted, degrees, not negative. */
  miss: number;
  /** How many things are changed. */
  changes: number;
  /** Place among all that were tried. */
  order: number;
  /** What is on the car, whatever it is set to. */
  hardware: string;
}

/** Finer than this two costs are the same: nobody sets up a car to a thousandth. */
const SAME = { bumpTravel: 1e3, bumpSteer: 1e4, scrubChange: 1e3, price: 1e4 } as const;
const WEIGHT: Readonly<Record<CostWeight, number>> = { none: 0, matters: 1, most: 3 };
export const MOST_ROWS = 5;
/** Setups compared with the front between two pauses. */
const COMPARED_A_STEP = 32;

const rounded = (costs: SetupCosts, cost: LeastCost): number => Math.round((costs[cost] ?? 0) * SAME[cost]);

/** Whether nothing of what is not priced in `a` is priced in `b`: then `a` costs no more whatever the unknown prices are. */
const isUnpricedWithin = (a: SetupCosts, b: SetupCosts): boolean => (a.unpriced & ~b.unpriced) === 0;

/** Whether `a` is no worse than `b` in any cost. */
export function isNoWorse(a: SetupCosts, b: SetupCosts): boolean {
  return isUnpricedWithin(a, b) && LEAST_COSTS.every((cost) => rounded(a, cost) <= rounded(b, cost));
}

/** Of two that cost the same: the one that comes nearer to what is wanted, then with fewer changes, then the earlier one. */
const first = (a: Costed, b: Costed): number => a.miss - b.miss || a.changes - b.changes || a.order - b.order;

/** Those that none of the others beats, one of those that cost the same, in no order. */
export function* frontOf<T extends Costed>(all: readonly T[]): Generator<undefined, T[]> {
  let front: T[] = [];
  for (const [i, one] of all.entries()) {
    if (i % COMPARED_A_STEP === COMPARED_A_STEP - 1) yield;
    let isBeaten = false;
    for (const other of front) {
      if (!isNoWorse(other.costs, one.costs)) continue;
      isBeaten = !isNoWorse(one.costs, other.costs) || first(other, one) <= 0;
      if (isBeaten) break;
    }
    if (isBeaten) continue;
    front = front.filter((other) => !isNoWorse(one.costs, other.costs));
    front.push(one);
  }
  return front;
}

/** The few of a front that are shown, best first. */
export interface Chosen<T> {
  one: T;
  /** What no other of the front costs less of. */
  bestIn: LeastCost[];
}

/**
 * First the best by each cost that matters, those that matter most before the others; then by score, passing over whatever has the same
 * parts as one that is there already. Score: each cost that matters over its spread in the front, those that matter most three times; a
 * price that is not known counts as the highest. Equal scores by fewer changes, then by what comes nearer.
 */
export function chosenOf<T extends Costed>(
  front: readonly T[],
  weights: LeastCostRequest['weights'] = {},
): Chosen<T>[] {
  const told = LEAST_COSTS.filter((cost) => front.some(({ costs }) => costs[cost] !== undefined));
  const weightOf = (cost: LeastCost) => WEIGHT[weights[cost] ?? 'matters'];
  const isKnown = ({ costs }: Costed, cost: LeastCost) => cost !== 'price' || costs.unpriced === 0;
  const ends = new Map(
    told.map((cost) => {
      const known = front.filter((one) => isKnown(one, cost)).map(({ costs }) => rounded(costs, cost));
      return [cost, [Math.min(...known), Math.max(...known)] as const];
    }),
  );
  const share = (one: T, cost: LeastCost) => {
    const [least, most] = ends.get(cost)!;
    if (!isKnown(one, cost)) return 1;
    return most > least ? (rounded(one.costs, cost) - least) / (most - least) : 0;
  };
  const scores = new Map(
    front.map((one) => [one, told.reduce((sum, cost) => sum + weightOf(cost) * share(one, cost), 0)]),
  );
  const byScore = (a: T, b: T) =>
    scores.get(a)! - scores.get(b)! || a.changes - b.changes || a.miss - b.miss || a.order - b.order;
  const ranked = [...front].sort(byScore);
  const isBest = (one: T, cost: LeastCost) => isKnown(one, cost) && rounded(one.costs, cost) === ends.get(cost)![0];
  const counted = told.filter((cost) => weightOf(cost) > 0).sort((a, b) => weightOf(b) - weightOf(a));
  const chosen = new Set<T>();
  for (const cost of counted) {
    const best = ranked.filter((one) => isBest(one, cost));
    // One that is there already may be as good.
    const [one] = best.some((there) => chosen.has(there)) ? [] : best;
    if (one) chosen.add(one);
  }
  for (const one of ranked) {
    if (chosen.size >= MOST_ROWS) break;
    if (![...chosen].some(({ hardware }) => hardware === one.hardware)) chosen.add(one);
  }
  return [...chosen].sort(byScore).map((one) => ({ one, bestIn: told.filter((cost) => isBest(one, cost)) }));
}
