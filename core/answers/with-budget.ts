import type { Motion } from '../linkage/motion.js';
import { InputError } from '../quantity/problem.js';
import { type TravelBudget, travelBudget } from '../travel/budget.js';
import { damperPathOf } from '../travel/damper-path.js';
import type { Lowered, TravelLimits } from '../travel/travel-limits.js';

/** What a request may say of what ends travel, mm. */
interface TravelRequest {
  drop: number;
  bumpTravel?: number;
  stopGap?: number;
  limits?: TravelLimits;
  measuredAt?: number;
  lowered?: Lowered;
}

/** Whether a request says anything of what ends travel. */
const saysOfTravel = ({ bumpTravel, stopGap, limits }: TravelRequest): boolean =>
  bumpTravel !== undefined || stopGap !== undefined || Object.keys(limits ?? {}).length > 0;

/**
 * Adds what is left of travel, where something was said of it. Apart from `loweringOf`, so that who says nothing of it does not
 * fetch it.
 *
 * @throws InputError as `travelBudget`; at `stopGap` where no damper is known, or its motion not far enough
 */
export function withBudget<Answer extends { motion?: Motion; budget?: TravelBudget; bumpLeft?: number }>(
  request: TravelRequest,
  answer: Answer,
): Answer {
  if (!saysOfTravel(request)) return answer;
  const { bumpTravel, stopGap, limits, measuredAt, lowered, drop } = request;
  const { motion } = answer;
  if (stopGap !== undefined && motion?.kind !== 'strut' && limits?.motionRatio === undefined) {
    throw new InputError([{ code: 'wrong-shape', path: 'stopGap', value: stopGap }]);
  }
  const budget = travelBudget({
    path: motion && damperPathOf(motion),
    limits: { ...limits, ...(stopGap !== undefined && { stopGap }) },
    drop,
    ...(bumpTravel !== undefined && { bumpTravel }),
    ...(measuredAt !== undefined && { measuredAt }),
    ...(lowered && { lowered }),
  });
  const { touch, solid } = budget.bump;
  if (stopGap !== undefined && touch?.atLeast && (!solid || solid.atLeast)) {
    throw new InputError([{ code: 'outside-domain', path: 'stopGap', value: stopGap, limit: motion!.travel.at(-1)! }]);
  }
  const end = solid ?? touch;
  return { ...answer, budget, ...(end && { bumpLeft: end.left }) };
}
