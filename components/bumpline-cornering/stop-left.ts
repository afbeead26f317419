import { loweringRequestOf } from '../../core/answers/car-request.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import type { Motion } from '../../core/linkage/motion.js';
import { unlessRefused } from '../../core/quantity/unless-refused.js';
import type { TravelBudget } from '../../core/travel/budget.js';
import { fetchTravelEnds } from '../bumpline-lowering/lowering-question.js';
import { solve } from '../car/solved-sources.js';

/** What is left of bump where the car stands, mm, as far as somebody told what ends it. */
export interface StopLeft {
  touch?: number;
  solid?: number;
}

/** What a car's stop and damper leave; undefined where nothing was said of them, or it makes no sense with these links. */
export async function stopLeft(car: CarDocument, source: AnySource): Promise<StopLeft | undefined> {
  const request = loweringRequestOf(car, source);
  const { bumpTravel, stopGap, limits } = request;
  if (bumpTravel === undefined && stopGap === undefined && limits === undefined) return undefined;
  const [{ withBudget }, { links }] = await Promise.all([
    fetchTravelEnds(),
    solve(source, { slot: {} }).then(solvedOr),
  ]);
  const answer: { motion?: Motion; budget?: TravelBudget } = links ? { motion: links.motion } : {};
  // It is told where it was entered, on the page about bump travel.
  return unlessRefused(() => {
    const { budget } = withBudget(request, answer);
    const { touch, solid } = budget?.bump ?? {};
    return { ...(touch && { touch: touch.left }), ...(solid && { solid: solid.left }) };
  });
}

const solvedOr = (found: Awaited<ReturnType<typeof solve>>) => ('problems' in found ? { links: undefined } : found);
