import type { PredictedShape } from '../../core/answers/predict.js';
import type { AnySource, LearntSource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import { predictInUse, withoutReadingsOf } from '../../core/document/predict-in-use.js';
import type { PartData } from '../../core/linkage/parts/part-kinds.js';
import { InputError, type Problem } from '../../core/quantity/problem.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';
import { learn } from '../../core/worker/layers/learn.generated.js';
import { inSet } from '../bumpline-geometry/in-set.js';
import type { CarModel } from '../car/car-model.js';
import { CarSources } from '../car/car-sources.js';
import { haveLayer, sourceLayers } from '../car/source-layers.js';
import { type AnswerWay, askCore } from '../element/answer-controller.js';
import type { PredictOnSheet } from './predict-view.js';

haveLayer('learnt', learn);

const NONE: readonly PartData[] = [];

export interface Asked {
  source: LearntSource;
  set: LinkedSet | undefined;
  parts: readonly PartData[];
  alignment?: NonNullable<LearntSource['alignment']>;
  drop: number;
  measuredAt: number;
  over: number;
  quantity: ReadingQuantity;
}

/** What of it the curve alone is of. */
export type AskedShape = Pick<Asked, 'source' | 'parts' | 'alignment' | 'quantity'>;

/** What the element asks about a car: what was read with the parts on is left out, else nothing would be predicted. */
export function askedOf(
  model: CarModel,
  car: CarDocument,
  set: LinkedSet | undefined,
  { over, quantity }: Pick<Asked, 'over' | 'quantity'>,
): Asked {
  const { car: known } = predictInUse(car);
  const learnt = set ? withoutReadingsOf(known, set.setup) : known;
  const { parts = NONE, alignment } = set?.setup ?? {};
  return {
    source: CarSources.of(model).ofLearnt(learnt)!,
    set,
    parts,
    ...(alignment && { alignment }),
    drop: car.drop,
    measuredAt: car.measuredAt ?? 0,
    over,
    quantity,
  };
}

const ask = askCore('predictSaid', [learn], ({ source }: { source: AnySource }) => sourceLayers(source));

const inPlace = (problem: Problem, set: LinkedSet | undefined): Problem =>
  problem.path === 'parts' || problem.path.startsWith('parts.') || problem.path === 'alignment'
    ? set
      ? inSet(problem, set)
      : problem
    : problem;

/** What the parts would do, worked out in the worker. */
export const PREDICTION: AnswerWay<PredictOnSheet, Asked> = async ({ set, ...request }, options) => {
  const { source, measuredAt } = request;
  try {
    return { ...(await ask(request, options)), source, set, measuredAt };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.problems.map((one) => inPlace(one, set)));
  }
};

/** The curve alone of parts that are being changed. */
export const SHAPE: AnswerWay<PredictedShape, AskedShape> = askCore(
  'predictedShape',
  [learn],
  ({ source }: { source: AnySource }) => sourceLayers(source),
);
