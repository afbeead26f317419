import type { ClearanceQuestion, DrawnClearance } from '../../core/answers/clearance-questions.js';
import { clearanceRequestOf } from '../../core/answers/fitment-request.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import type { WheelMotion } from '../../core/wheel/wheel-motion.js';
import { answerHere } from '../../core/worker/answer-here.js';
import { clearance } from '../../core/worker/layers/clearance.generated.js';
import { linkage } from '../../core/worker/layers/linkage.generated.js';
import type { CarModel } from '../car/car-model.js';
import { CarSources } from '../car/car-sources.js';
import { haveLayer, sourceLayers } from '../car/source-layers.js';
import { type AnswerWay, askCore } from '../element/answer-controller.js';

export type Asked = ClearanceQuestion<AnySource>;

haveLayer('driveway', linkage);

/** What the element asks about a car. */
export const askedOf = (model: CarModel, car: CarDocument): Asked =>
  clearanceRequestOf(car, CarSources.of(model).of(car));

const fromSource = ({ source }: Asked) => sourceLayers(source);
const askMotion = askCore<'wheelMotion', Asked>('wheelMotion', [clearance], fromSource);

/** Over the whole steering, with what would just clear. */
export const STEERED = askCore<'clearanceSteered', Asked>('clearanceSteered', [clearance], fromSource);

type KnownMotion = Record<'lock' | 'sideways' | 'measuredAt', number | undefined> & { motion: WheelMotion };

/** By the source: the last way that each was seen to move. */
const motions = new WeakMap<AnySource, KnownMotion>();

/** How the wheel moves, where that is known already. */
export function knownMotion({ source, lock, sideways, measuredAt }: Asked): WheelMotion | undefined {
  const known = motions.get(source);
  const isSame = known && known.lock === lock && known.sideways === sideways && known.measuredAt === measuredAt;
  return isSame ? known.motion : undefined;
}

const sweptBy = (motion: WheelMotion, { source: _, ...request }: Asked): DrawnClearance =>
  answerHere([clearance], 'clearanceSwept', { ...request, motion });

/** The same over the whole steering, without what would just clear: on the page, in the frame of the input, once the motion is known. */
export const SWEPT: AnswerWay<DrawnClearance, Asked> = (request, options) => {
  const known = knownMotion(request);
  return known ? sweptBy(known, request) : findMotion(request, options).then((motion) => sweptBy(motion, request));
};

/** Asks how the wheel moves over the whole steering; from then on it is known. */
export async function findMotion(
  request: Asked,
  options: Parameters<typeof askMotion>[1] = { slot: {}, isNewest: () => true },
): Promise<WheelMotion> {
  const { source, lock, sideways, measuredAt } = request;
  const motion = await askMotion(request, options);
  motions.set(source, { lock, sideways, measuredAt, motion });
  return motion;
}
