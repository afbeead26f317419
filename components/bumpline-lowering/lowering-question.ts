import { loweringRequestOf } from '../../core/answers/car-request.js';
import type { LoweringAnswer, LoweringRequest } from '../../core/answers/lowering.js';
import type { SolvedData } from '../../core/answers/solved.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import { answerHere } from '../../core/worker/answer-here.js';
import { repliedValue } from '../../core/worker/errors.js';
import { linkage } from '../../core/worker/layers/linkage.generated.js';
import { lowering } from '../../core/worker/layers/lowering.generated.js';
import type { CarModel } from '../car/car-model.js';
import { CarSources } from '../car/car-sources.js';
import { solve, solvedNow } from '../car/solved-sources.js';
import { haveLayer } from '../car/source-layers.js';
import type { AnswerWay } from '../element/answer-controller.js';

export type Asked = LoweringRequest<AnySource>;

// The example, and most cars, are measured in a driveway.
haveLayer('driveway', linkage);

/** What the element asks about a car. */
export const askedOf = (model: CarModel, car: CarDocument): Asked =>
  loweringRequestOf(car, CarSources.of(model).of(car));

/** Fetched only where somebody says anything of what is left of travel. */
let budgeting: typeof import('./travel-ends.js') | undefined;

function finish(request: Asked, answer: LoweringAnswer): LoweringAnswer | Promise<LoweringAnswer> {
  const { bumpTravel, stopGap, limits } = request;
  if (bumpTravel === undefined && stopGap === undefined && !limits) return answer;
  if (budgeting) return budgeting.withBudget(request, answer);
  return import('./travel-ends.js').then((module) => {
    budgeting = module;
    return module.withBudget(request, answer);
  });
}

/** From what the source comes to: where that is known, in the frame of the input. */
function answerFrom(solved: SolvedData, request: Asked): LoweringAnswer | Promise<LoweringAnswer> {
  return finish(
    request,
    repliedValue(answerHere<LoweringAnswer>([lowering], 'lowering', { ...request, source: solved })),
  );
}

export const LOWERING: AnswerWay<LoweringAnswer, Asked> = (request, options) => {
  const { source } = request;
  const known = solvedNow(source);
  return known ? answerFrom(known, request) : solve(source, options).then((solved) => answerFrom(solved, request));
};
