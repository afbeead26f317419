import type { LoweringAnswer, LoweringRequest } from '../../core/answers/lowering.js';
import type { AnySource } from '../../core/answers/lowering-by-readings.js';

export type Asked = LoweringRequest<AnySource>;

/** Fetched only where somebody says anything of what is left of travel. */
let budgeting: typeof import('./travel-ends.js') | undefined;

export function finish(request: Asked, answer: LoweringAnswer): LoweringAnswer | Promise<LoweringAnswer> {
  const { bumpTravel, stopGap, limits } = request;
  if (bumpTravel === undefined && stopGap === undefined && !limits) return answer;
  if (budgeting) return budgeting.withBudget(request, answer);
  return import('./travel-ends.js').then((module) => {
    budgeting = module;
    return module.withBudget(request, answer);
  });
}
