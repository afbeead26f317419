import type { Trial, TrialSpot, Trials } from './trial.js';

/** One thing that can be changed by any amount, mm or degrees. */
export interface Search {
  /** How far each way. */
  bounds: readonly [least: number, most: number];
  step: number;
  /** By how much a step of one moves a gap at most, mm. */
  moves: number;
  trial(by: number): Trial;
}

/** Each round looks at what the last one left out; a few do. */
const MOST_ROUNDS = 12;
/** Two spots nearer than this are one: mm, degrees. */
const SAME = 1e-3;

/**
 * By how much it has to be changed one way until all clears, or, from a wheel that clears, how far it can be changed until it no
 * longer does. Solved where the answer decided, by steps and then by halves to a thousandth of a step; looked over at every
 * travel and steer; and solved again with what was tighter there, until nothing is: so it holds when asked again.
 *
 * @returns undefined where there is no such end within the bounds
 */
export function* solved(
  search: Search,
  way: 1 | -1,
  clears: boolean,
  trials: Trials,
): Generator<undefined, number | undefined> {
  const { bounds, moves, trial } = search;
  const most = Math.abs(way > 0 ? bounds[1] : bounds[0]);
  const spots = trials.decisive;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const by = yield* crossing(search, way, clears, trials, spots);
    // Where no change ends it, the furthest is looked over.
    const at = by ?? (clears ? way * most : undefined);
    if (at === undefined) return undefined;
    const tighter = yield* trials.spotsNotFree(trial(at), moves * Math.abs(at));
    const more = tighter.filter((spot) => !spots.some((known) => isSame(known, spot)));
    if (more.length === 0) return by;
    spots.push(...more);
  }
  return undefined;
}

const isSame = (a: TrialSpot, b: TrialSpot): boolean =>
  a.place === b.place && Math.abs(a.travel - b.travel) < SAME && Math.abs(a.steer - b.steer) < SAME;

/** The same as far as these spots go: the last change on the side that clears. */
function* crossing(
  { bounds, step, trial }: Search,
  way: 1 | -1,
  clears: boolean,
  trials: Trials,
  spots: readonly TrialSpot[],
): Generator<undefined, number | undefined> {
  const most = Math.abs(way > 0 ? bounds[1] : bounds[0]);
  const isFree = (size: number) => trials.isFreeAt(trial(way * size), spots);
  for (let from = 0; from < most; from += step) {
    yield;
    const to = Math.min(from + step, most);
    if (isFree(to) === clears) continue;
    let [good, bad] = clears ? [from, to] : [to, from];
    while (Math.abs(good - bad) > step / 1000) {
      const middle = (good + bad) / 2;
      if (isFree(middle)) good = middle;
      else bad = middle;
    }
    return way * good;
  }
  return undefined;
}
