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
import { inTime } from '../delivery/in-time.js';
import type { AnswerWay } from '../element/answer-controller.js';

export type Asked = LoweringRequest<AnySource>;

// The example, and most cars, are measured in a driveway.
haveLayer('driveway', linkage);

/** Elements that share a car ask the same of it, and it is answered once. */
const requests = new WeakMap<CarDocument, Asked>();
const answers = new WeakMap<Asked, LoweringAnswer | Promise<LoweringAnswer>>();

/** What the element asks about a car. */
export function askedOf(model: CarModel, car: CarDocument): Asked {
  const request = requests.get(car) ?? loweringRequestOf(car, CarSources.of(model).of(car));
  requests.set(car, request);
  return request;
}

/** Fetched only where somebody says anything of what is left of travel; then while the source is being solved. */
let budgeting: typeof import('./travel-ends.js') | undefined;
let coming: Promise<typeof import('./travel-ends.js')> | undefined;

const saysOfTravel = ({ bumpTravel, stopGap, limits }: Asked): boolean =>
  bumpTravel !== undefined || stopGap !== undefined || limits !== undefined;

async function fetchBudgeting() {
  coming ??= inTime(import('./travel-ends.js'));
  // What failed is tried again when it is asked for again.
  coming.catch(() => {
    coming = undefined;
  });
  budgeting = await coming;
  return budgeting;
}

function finish(request: Asked, answer: LoweringAnswer): LoweringAnswer | Promise<LoweringAnswer> {
  if (!saysOfTravel(request)) return answer;
  if (budgeting) return budgeting.withBudget(request, answer);
  return fetchBudgeting().then(({ withBudget }) => withBudget(request, answer));
}

/** From what the source comes to: where that is known, in the frame of the input. */
function answerFrom(solved: SolvedData, request: Asked): LoweringAnswer | Promise<LoweringAnswer> {
  const known = answers.get(request);
  if (known) return known;
  const plain = answerHere<LoweringAnswer>([lowering], 'lowering', { ...request, source: solved });
  const answer = finish(request, repliedValue(plain));
  answers.set(request, answer);
  return answer;
}

export const LOWERING: AnswerWay<LoweringAnswer, Asked> = (request, options) => {
  // Whether it came is told when it is wanted.
  if (saysOfTravel(request) && !budgeting) fetchBudgeting().catch(() => {});
  const solved = solvedNow(request.source);
  return solved ? answerFrom(solved, request) : solve(request.source, options).then((one) => answerFrom(one, request));
};
