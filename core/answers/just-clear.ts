import { travelBudget } from '../travel/budget.js';
import { type Placed, Poses } from '../wheel/gaps.js';
import { valueAt } from '../wheel/sampled-line.js';
import type { ClearanceAnswer } from './clearance.js';
import { doubtOf, gapOf, type Moved, rangeOf } from './clearance-gaps.js';
import type { ClearanceRequest } from './clearance-request.js';
import { envelopeOf } from './envelope-of.js';

/** What can be changed alone until the verdict is just "clears". */
export type ChangeId = 'plane' | 'width' | 'drop' | 'camber';

export interface JustClear {
  id: ChangeId;
  /**
   * By how much, mm or degrees: the wheel's middle plane outboard (a spacer, or so much less offset), section width, drop, static
   * camber. Where the wheel clears: how far one can still go. Undefined: no such change clears, or none ends it.
   */
  by?: number;
  /** It changes nothing: with shorter springs full bump is where the stop is, whatever the drop. */
  isIdle?: true;
}

/** How far each is looked for, in what steps, and by how much it changes a gap at most, mm. */
const SEARCH: Record<ChangeId, { most: number; step: number; moves: number }> = {
  plane: { most: 60, step: 1.5, moves: 1 },
  width: { most: 90, step: 2, moves: 1.5 },
  drop: { most: 80, step: 2, moves: 0 },
  // About a joint, a metre at most.
  camber: { most: 6, step: 0.25, moves: 17.5 },
};
/** What may be missing at a place that was not looked at, mm. */
const MISSING_MM = 0.01;
const MOST_ROUNDS = 8;

/** A place at a travel and a rack position, by its index. */
type Spot = readonly [place: number, travel: number, rack: number];

/**
 * What would just clear, each solved alone: where gap less margin, allowance and ± is nothing. Looked for where the wheel is
 * worst now and at the ends of its travel; what is tighter than that once it is changed is then looked at too, until nothing is.
 * Not read off a grid: halved down to some thousandths.
 */
export function* justClear(
  request: ClearanceRequest,
  answer: ClearanceAnswer,
  places: readonly Placed[],
): Generator<undefined, JustClear[]> {
  const found: JustClear[] = [];
  for (const id of ['plane', 'width', 'drop', 'camber'] as const) {
    if (id === 'drop' && request.lowered !== 'dampers') {
      found.push({ id, isIdle: true });
      continue;
    }
    const spots: Spot[] = answer.places.map(({ worst }, p) => [p, worst.travel, worst.rack]);
    let by: number | undefined;
    for (let round = 0; round < MOST_ROUNDS; round++) {
      by = yield* solved(id, request, answer, places, spots);
      // Where no change ends it, the whole of it is looked at.
      const at =
        by ?? (free(changed(id, 0, request, answer), answer, places, spots) >= 0 ? SEARCH[id].most : undefined);
      if (at === undefined) break;
      const tighter = yield* tighterSpots(id, at, request, answer, places);
      const more = tighter.filter((spot) => !spots.some((known) => known.every((x, i) => x === spot[i])));
      if (more.length === 0) break;
      spots.push(...more);
    }
    found.push({ id, ...(by !== undefined && { by }) });
  }
  return found;
}

/** By how much, as far as these places go. */
function* solved(
  id: ChangeId,
  request: ClearanceRequest,
  answer: ClearanceAnswer,
  places: readonly Placed[],
  spots: readonly Spot[],
): Generator<undefined, number | undefined> {
  const { most, step } = SEARCH[id];
  const isFree = (x: number) => free(changed(id, x, request, answer), answer, places, spots) >= 0;
  const clears = isFree(0);
  // From a wheel that clears outward into trouble; from one that does not, either way out of it.
  const ways = clears ? [1] : id === 'width' || id === 'drop' ? [-1] : [-1, 1];
  let nearest: number | undefined;
  for (const way of ways) {
    for (let x = step; x <= most && !(nearest !== undefined && Math.abs(nearest) <= x - step); x += step) {
      yield;
      if (isFree(way * x) === clears) continue;
      let [good, bad] = clears ? [x - step, x] : [x, x - step];
      while (Math.abs(good - bad) > step / 1000) {
        const middle = (good + bad) / 2;
        if (isFree(way * middle)) good = middle;
        else bad = middle;
      }
      if (nearest === undefined || good < Math.abs(nearest)) nearest = way * good;
      break;
    }
  }
  return nearest;
}

type Changed = Moved & { range: readonly [number, number] };

/** The wheel with one thing changed by so much. */
function changed(id: ChangeId, x: number, request: ClearanceRequest, answer: ClearanceAnswer): Changed {
  const { motion, drop, measuredAt, lowered, camberBy = 0, limits, bumpTravel } = request;
  const { after, plane } = answer.wheels;
  const budget =
    id === 'drop'
      ? travelBudget({
          path: motion.damper,
          limits,
          drop: drop + x,
          ...(lowered && { lowered }),
          ...(bumpTravel !== undefined && { bumpTravel }),
          ...(measuredAt !== undefined && { measuredAt }),
          ...(motion.reach && motion.from === 'points' && { reach: motion.reach }),
        })
      : answer.budget;
  return {
    poses: new Poses(motion, id === 'camber' ? camberBy + x : camberBy),
    envelope:
      id === 'width'
        ? envelopeOf(after, plane, Math.max(after.sectionWidth + x, 100))
        : envelopeOf(after, id === 'plane' ? plane + x : plane),
    solid: budget.bump.solid,
    range: rangeOf(motion, budget, id === 'drop' ? drop + x : drop),
  };
}

/** What is free at a spot, mm: less than nothing where it does not clear. */
function freeAt(changed: Changed, { places: answers, allowance }: ClearanceAnswer, one: Placed, [p, t, j]: Spot) {
  return gapOf(changed, one, t, j) - answers[p]!.margin - allowance - doubtOf(changed, one, t, j);
}

/** What is free at the tightest of some spots, those out of range moved to its end, and where the suspension is solid. */
function free(changed: Changed, answer: ClearanceAnswer, places: readonly Placed[], spots: readonly Spot[]): number {
  const [low, high] = changed.range;
  let least = Number.POSITIVE_INFINITY;
  for (const [p, t, j] of spots) {
    for (const at of [Math.min(Math.max(t, low), high), high]) {
      const here = freeAt(changed, answer, places[p]!, [p, at, j]);
      if (here < least) least = here;
    }
  }
  return least;
}

/** Of every place the tightest spot of the whole range and steering, where it is not free. */
function* tighterSpots(
  id: ChangeId,
  x: number,
  request: ClearanceRequest,
  answer: ClearanceAnswer,
  places: readonly Placed[],
): Generator<undefined, Spot[]> {
  const { travel, rack } = request.motion;
  const now = changed(id, x, request, answer);
  const [low, high] = now.range;
  const travels = [low, ...[...travel].filter((t) => t > low && t < high), high];
  const found: Spot[] = [];
  for (const [p, one] of places.entries()) {
    const { least, margin, worst } = answer.places[p]!;
    let tightest = -MISSING_MM;
    let spot: Spot | undefined;
    for (const t of travels) {
      // Most are too far from it for the change to matter.
      const before = valueAt(travel, least, t) - margin - answer.allowance - worst.plusMinus;
      if (t !== high && before > SEARCH[id].moves * Math.abs(x)) continue;
      for (const j of rack.keys()) {
        const here = freeAt(now, answer, one, [p, t, j]);
        if (here < tightest) [tightest, spot] = [here, [p, t, j]];
      }
      yield;
    }
    if (spot) found.push(spot);
  }
  return found;
}
