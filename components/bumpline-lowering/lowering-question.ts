import { loweringRequestOf } from '../../core/answers/car-request.js';
import type { LoweringAnswer, LoweringRequest } from '../../core/answers/lowering.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import { linkage } from '../../core/worker/layers/linkage.generated.js';
import { lowering } from '../../core/worker/layers/lowering.generated.js';
import type { CarModel } from '../car/car-model.js';
import { CarSources } from '../car/car-sources.js';
import { haveLayer, sourceLayers } from '../car/source-layers.js';
import { inTime } from '../delivery/in-time.js';

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
  return inTime(import('./travel-ends.js')).then((module) => {
    budgeting = module;
    return module.withBudget(request, answer);
  });
}

export const LOWERING = {
  question: 'lowering',
  layers: [lowering],
  layersFor: ({ source }: Asked) => sourceLayers(source),
  finish,
} as const;
