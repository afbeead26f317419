import type { ClearanceQuestion } from '../../core/answers/clearance-questions.js';
import { clearanceRequestOf } from '../../core/answers/fitment-request.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import { clearance } from '../../core/worker/layers/clearance.generated.js';
import { linkage } from '../../core/worker/layers/linkage.generated.js';
import type { CarModel } from '../car/car-model.js';
import { CarSources } from '../car/car-sources.js';
import { haveLayer, sourceLayers } from '../car/source-layers.js';
import { askCore } from '../element/answer-controller.js';

export type Asked = ClearanceQuestion<AnySource>;

haveLayer('driveway', linkage);

/** What the element asks about a car. */
export const askedOf = (model: CarModel, car: CarDocument): Asked =>
  clearanceRequestOf(car, CarSources.of(model).of(car));

const askOf = (question: 'clearance' | 'clearanceSteered') =>
  askCore<typeof question, Asked>(question, [clearance], ({ source }) => sourceLayers(source));

/** Straight ahead, at once, and over the whole steering. */
export const AHEAD = askOf('clearance');
export const STEERED = askOf('clearanceSteered');
