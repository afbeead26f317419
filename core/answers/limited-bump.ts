import { type End, pathOf, type TravelBudget, travelBudget } from '../travel/budget.js';
import { type DamperPath, shortenedBetween, travelAfter } from '../travel/damper-path.js';
import type { ClearanceRequest } from './clearance-request.js';
import { LATEST_BUMP_MM, LEAST_BUMP_MM, THICKEST_PACKERS_MM } from './what-is-sold.js';

/** What is left of bump where it ends at another travel: mm. */
export interface BumpLeft {
  /** Until the suspension is solid. */
  left: number;
  /** Until the stop is touched, where that is known. */
  touchLeft?: number;
  /** How thick the packers are on the damper's rod that do it, where the stop and its motion are known. */
  packers?: number;
}

/** The stop, its motion, and where it is solid. */
interface Stop {
  path: DamperPath;
  solid: number;
  touch: End;
}

function stopOf({ motion, limits }: ClearanceRequest, { bump }: TravelBudget): Stop | undefined {
  const path = pathOf({ limits, path: motion.damper });
  const stop = bump.limits.find(({ id }) => id === 'stop');
  const { touch } = bump;
  return path && stop && !stop.atLeast && touch?.governedBy === 'stop'
    ? { path, solid: stop.travel, touch }
    : undefined;
}

/**
 * How much earlier (negative) and later the end of bump can be made to come, mm at the wheel: by packers on the rod, until the car
 * would stand on its stop; by a shorter stop.
 */
export function bumpBounds(request: ClearanceRequest, budget: TravelBudget): [earlier: number, later: number] {
  const { travel, left } = budget.bump.solid!;
  const later = Math.max(0, Math.min(LATEST_BUMP_MM, request.motion.travel.at(-1)! - travel));
  const stop = stopOf(request, budget);
  if (!stop) return [Math.min(0, LEAST_BUMP_MM - left), later];
  const { path, solid, touch } = stop;
  const thickest = Math.min(THICKEST_PACKERS_MM, Math.max(0, shortenedBetween(path, request.drop, touch.travel)));
  const earliest = travelAfter(path, solid, -thickest);
  return [earliest === undefined ? 0 : Math.min(0, earliest - travel), later];
}

/** What is left where bump ends at a travel before or after the present one. */
export function bumpLeftAt(request: ClearanceRequest, budget: TravelBudget, travel: number): BumpLeft {
  const { motion, limits, drop, measuredAt, lowered, bumpTravel } = request;
  const stop = stopOf(request, budget);
  const left = travel - drop;
  if (!stop || limits.stopGap === undefined) return { left };
  const packers = shortenedBetween(stop.path, travel, stop.solid);
  if (!(packers > 0) || packers > limits.stopGap) return { left };
  const { touch } = travelBudget({
    path: motion.damper,
    limits: { ...limits, stopGap: limits.stopGap - packers },
    drop,
    ...(measuredAt !== undefined && { measuredAt }),
    ...(lowered && { lowered }),
    ...(bumpTravel !== undefined && { bumpTravel }),
  }).bump;
  return { left, packers, ...(touch && { touchLeft: touch.left }) };
}
