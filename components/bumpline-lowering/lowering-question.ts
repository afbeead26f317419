import { loweringRequestOf } from '../../core/answers/car-request.js';
import type { LoweringAnswer, LoweringRequest } from '../../core/answers/lowering.js';
import type { SolvedData } from '../../core/answers/solved.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import { answerHere } from '../../core/worker/answer-here.js';
import { linkage } from '../../core/worker/layers/linkage.generated.js';
import { lowering } from '../../core/worker/layers/lowering.generated.js';
import type { CarModel } from '../car/car-model.js';
import { CarSources } from '../car/car-sources.js';
import { solve, solvedNow } from '../car/solved-sources.js';
import { haveLayer } from '../car/source-layers.js';
import { inTime } from '../delivery/in-time.js';
import type { AnswerWay } from '../element/answer-controller.js';

export type Asked = LoweringRequest<AnySource>;

// The example, and most cars, are measured in a driveway.
haveLayer('driveway', linkage);

/** Elements that share a car ask the same of it, and it is answered once. */
const requests = new WeakMap<CarDocument, Asked>();
const answers = new WeakMap<Asked, LoweringAnswer>();

/** What the element asks about a car. */
export function askedOf(model: CarModel, car: CarDocument): Asked {
  const request = requests.get(car) ?? loweringRequestOf(car, CarSources.of(model).of(car));
  requests.set(car, request);
  return request;
}

type TravelEnds = typeof import('./travel-ends.js');
let ends: TravelEnds | undefined;
let coming: Promise<TravelEnds> | undefined;

/** Fetched only where somebody says anything of what is left of travel; then while the source is being solved. */
export function fetchTravelEnds(): Promise<TravelEnds> {
  coming ??= inTime(import('./travel-ends.js')).then(
    (come) => {
      ends = come;
      return come;
    },
    (error) => {
      // What failed is tried again when it is asked for again.
      coming = undefined;
      throw error;
    },
  );
  return coming;
}

const saysOfTravel = ({ bumpTravel, stopGap, limits }: Asked): boolean =>
  bumpTravel !== undefined || stopGap !== undefined || limits !== undefined;

function finish(request: Asked, answer: LoweringAnswer): LoweringAnswer | Promise<LoweringAnswer> {
  if (!saysOfTravel(request)) return answer;
  if (ends) return ends.withBudget(request, answer);
  return fetchTravelEnds().then(({ withBudget }) => withBudget(request, answer));
}

/** From what the source comes to: where that is known, in the frame of the input. */
function answerFrom(solved: SolvedData, request: Asked): LoweringAnswer | Promise<LoweringAnswer> {
  const known = answers.get(request);
  if (known) return known;
  const answer = finish(request, answerHere([lowering], 'lowering', { ...request, source: solved }));
  const keep = (one: LoweringAnswer) => {
    answers.set(request, one);
    return one;
  };
  return answer instanceof Promise ? answer.then(keep) : keep(answer);
}

export const LOWERING: AnswerWay<LoweringAnswer, Asked> = (request, options) => {
  // Whether it came is told when it is wanted.
  if (saysOfTravel(request)) fetchTravelEnds().catch(() => {});
  const solved = solvedNow(request.source);
  return solved ? answerFrom(solved, request) : solve(request.source, options).then((one) => answerFrom(one, request));
};
