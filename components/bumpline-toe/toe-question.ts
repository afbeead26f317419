import { tellsToe } from '../../core/answers/car-request.js';
import { fromStockHeight } from '../../core/answers/re-zero.js';
import type { SolvedData } from '../../core/answers/solved.js';
import { toeOf } from '../../core/answers/toe.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import { toeSetupOf } from '../../core/document/setup-in-use.js';
import { InputError } from '../../core/quantity/problem.js';
import { parts } from '../../core/worker/layers/parts.generated.js';
import { points } from '../../core/worker/layers/points.generated.js';
import { inSet } from '../bumpline-geometry/in-set.js';
import type { CarModel } from '../car/car-model.js';
import { CarSources } from '../car/car-sources.js';
import { solve, solvedNow } from '../car/solved-sources.js';
import { haveLayer } from '../car/source-layers.js';
import type { AnswerWay } from '../element/answer-controller.js';
import type { ToeOnSheet } from './toe-view.js';

/** The example is of hard points, with parts on them. */
haveLayer('corner', points);
haveLayer('parts', parts);

export interface Asked {
  car: CarDocument;
  source: AnySource;
  /** The parts that are on. */
  set: LinkedSet | undefined;
  over: number;
}

/** What the element asks about a car; undefined where nothing tells toe. */
export function askedOf(
  model: CarModel,
  car: CarDocument,
  set: LinkedSet | undefined,
  over: number,
): Asked | undefined {
  const sources = CarSources.of(model);
  const read = toeSetupOf(car);
  if (read) return { car, source: sources.ofSetup(read), set: undefined, over };
  const corner = sources.ofCorner(car);
  if (!tellsToe(corner)) return undefined;
  const fitted = set && sources.ofParts(car, set.setup);
  return { car, source: fitted ?? corner, set: fitted && set, over };
}

function answerFrom(found: SolvedData, { car, source, set, over }: Asked): ToeOnSheet {
  if ('problems' in found)
    throw new InputError(set ? found.problems.map((problem) => inSet(problem, set)) : found.problems);
  const { toe, readings } = fromStockHeight(found, car);
  if (!toe) throw new InputError([{ code: 'missing', path: 'toe', value: undefined }]);
  return {
    ...toeOf({ toe, drop: car.drop, over }),
    source,
    set,
    measuredAt: readings ? 0 : (car.measuredAt ?? 0),
    ...(readings && { readings }),
  };
}

/** At once where the source was solved before. */
export const TOE: AnswerWay<ToeOnSheet, Asked> = (request, options) => {
  const known = solvedNow(request.source);
  return known ? answerFrom(known, request) : solve(request.source, options).then((one) => answerFrom(one, request));
};
