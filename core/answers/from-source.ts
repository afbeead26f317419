import { solveSource } from '../curve-sources/solve-source.js';
import { type TriedSource, triedSource } from '../curve-sources/solved-source.js';
import type { AnySource } from '../curve-sources/source.js';
import { finished } from '../math/finished.js';
import { InputError } from '../quantity/problem.js';
import type { WheelMotion } from '../wheel/wheel-motion.js';
import { type AlignmentAnswer, type AlignmentRequest, alignmentSteps } from './alignment.js';
import { corneringOf } from './cornering.js';
import type { CorneringAnswer, CorneringDoubt } from './cornering-answer.js';
import { corneringDoubtSteps } from './cornering-doubt.js';
import {
  camberForInclination as camberSteps,
  rollForInclination as rollSteps,
  type WantedInclination,
} from './cornering-questions.js';
import type { CorneringRequest } from './cornering-request.js';
import { type GeometryAnswer, type GeometryRequest, geometryOf } from './geometry.js';
import { type GeometryDoubt, geometryDoubtSteps } from './geometry-doubt.js';
import { leastCostSteps } from './least-cost.js';
import type { LeastCostAnswer } from './least-cost-answer.js';
import type { LeastCostRequest } from './least-cost-request.js';
import { type LoweringAnswer, type LoweringRequest, loweringOf } from './lowering.js';
import { type PredictAnswer, type PredictRequest, predictSteps } from './predict.js';
import { fromStockHeight } from './re-zero.js';
import type { RolledAnswer, RolledRequest } from './roll-source.js';
import { rolledOf } from './rolled.js';
import { type StaticCamberAnswer, type StaticCamberRequest, staticCamberSteps } from './static-camber.js';
import {
  type StiffnessForInclination,
  type StiffnessRequest,
  stiffnessForInclination as stiffnessSteps,
} from './stiffness-for-inclination.js';
import { type ToeAnswer, type ToeRequest, toeOf, USUAL_TOE_OVER_MM } from './toe.js';
import { type ToeCure, type ToeCureRequest, toeCureOf } from './toe-cure.js';
import { type ToeCureDoubt, toeCureDoubtSteps } from './toe-cure-doubt.js';
import { type WheelMotionRequest, wheelMotionSteps } from './wheel-motion.js';
import { withBudget } from './with-budget.js';

/*
 * Source → curve → answer in one call: what `bumpline/core` offers. A page solves a source once and asks its answers of that.
 */

/** A request with its source solved. */
export const tried = <R extends { source: AnySource }>(request: R): Omit<R, 'source'> & { source: TriedSource } => ({
  ...request,
  source: triedSource(() => solveSource(request.source)),
});

/** The answer about lowering from any source. @throws InputError as `loweringOf`, `withBudget` and the source's own */
export const lowering = (request: LoweringRequest<AnySource>): LoweringAnswer =>
  withBudget(request, loweringOf(tried(request)));

/** How a wheel moves, from any source. @throws InputError as `wheelMotionSteps` and the source's own */
export const wheelMotion = (request: WheelMotionRequest<AnySource>): WheelMotion =>
  finished(wheelMotionSteps(tried(request)));

/**
 * How far a wheel steers itself, from readings of toe or any source that has the tie rod.
 *
 * @param request mm from stock height; `over` 40 mm of bump unless it says otherwise
 * @throws InputError as `toeOf` and the source's own; `missing`, path `source`, of one that tells no toe
 */
export function toe({ source, drop, over = USUAL_TOE_OVER_MM, measuredAt }: ToeSourceRequest): ToeAnswer {
  const { toe: curve } = fromStockHeight(solveSource(source), { measuredAt });
  if (!curve) throw new InputError([{ code: 'missing', path: 'source', value: source.kind }]);
  return toeOf({ toe: curve, drop, over });
}

/** How much does a wheel steer itself, by what is known of its car? */
export interface ToeSourceRequest extends Pick<ToeRequest, 'drop'>, Partial<Pick<ToeRequest, 'over'>> {
  source: AnySource;
  /** How far below stock height the car stood when links were measured, mm. */
  measuredAt?: number;
}

/** What the links of a corner do over travel, from any source that has links. @throws InputError as `geometryOf` and the source's own */
export const geometry = (request: GeometryRequest<AnySource>): GeometryAnswer => geometryOf(tried(request));

/** How far that can be trusted. @throws InputError as `geometryDoubtSteps` and the source's own */
export const geometryDoubt = (request: { source: AnySource }): GeometryDoubt =>
  finished(geometryDoubtSteps(tried(request)));

/** What a wheel steers itself, and what flattens it, from hard points. @throws InputError as `toeCureOf` and the source's own */
export const toeCure = (request: ToeCureRequest<AnySource>): ToeCure => toeCureOf(tried(request));

/** How far that can be trusted. @throws InputError as `toeCureDoubtSteps` and the source's own */
export const toeCureDoubt = (request: ToeCureRequest<AnySource>): ToeCureDoubt =>
  finished(toeCureDoubtSteps(tried(request)));

/** Both wheels of an axle on the road in a turn, from any source of camber. @throws InputError as `corneringOf` and the source's own */
export const cornering = (request: CorneringRequest<AnySource>): CorneringAnswer => corneringOf(tried(request));

/** How far that can be trusted. @throws InputError as `corneringDoubtSteps` and the source's own */
export const corneringDoubt = (request: CorneringRequest<AnySource>): CorneringDoubt =>
  finished(corneringDoubtSteps(tried(request)));

/** The static camber for a wanted inclination. @throws InputError as the question of the same name and the source's own */
export const camberForInclination = (request: WantedInclination<AnySource>): { camber: number } =>
  finished(camberSteps(tried(request)));

/** The roll at which it is reached. @throws InputError as the question of the same name and the source's own */
export const rollForInclination = (request: WantedInclination<AnySource>): { roll: number } =>
  finished(rollSteps(tried(request)));

/** What parts would do on a corner learnt from readings. @throws InputError as `predictSteps` and the source's own */
export const predict = (request: PredictRequest<AnySource>): PredictAnswer => finished(predictSteps(tried(request)));

/** A turn whose roll is worked out, from marks or lateral acceleration. @throws InputError as `rolledOf` and the source's own */
export const rolled = (request: RolledRequest<AnySource>): RolledAnswer => rolledOf(tried(request));

/** The springs, or the bar, for a wanted inclination. @throws InputError as the question of the same name and the source's own */
export const stiffnessForInclination = (request: StiffnessRequest<AnySource>): StiffnessForInclination =>
  finished(stiffnessSteps(tried(request)));

/** Which way of adding static camber costs what elsewhere, from any source that has links. @throws InputError as `staticCamberSteps` and the source's own */
export const staticCamber = (request: StaticCamberRequest<AnySource>): StaticCamberAnswer =>
  finished(staticCamberSteps(tried(request)));

/** What is to be set on a wheel, and in which order. @throws InputError as `alignmentSteps` and the source's own */
export const alignment = (request: AlignmentRequest<AnySource>): AlignmentAnswer =>
  finished(alignmentSteps(tried(request)));
/** Which setups reach a wanted inclination at the least cost, from any source that has links. @throws InputError as `leastCostSteps` and the source's own */
export const leastCost = (request: LeastCostRequest<AnySource>): LeastCostAnswer =>
  finished(leastCostSteps(tried(request)));
