import { numberProblem } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { type TravelBudget, travelBudget } from '../travel/budget.js';
import type { Lowered, TravelLimits } from '../travel/travel-limits.js';
import { checkPlaces } from '../wheel/check-places.js';
import { compareWheels, type WheelComparison } from '../wheel/compare-wheels.js';
import type { Place } from '../wheel/place.js';
import type { WheelSpec } from '../wheel/wheel.js';
import type { WheelMotion } from '../wheel/wheel-motion.js';

/** Does this tyre clear? Lengths mm. */
export interface ClearanceRequest {
  motion: WheelMotion;
  isLeft: boolean;
  /** On when the places were measured. */
  before: WheelSpec;
  /** Asked about. */
  after: WheelSpec;
  places: readonly Place[];
  limits: TravelLimits;
  /** Usable bump travel at the wheel; see LoweringRequest. */
  bumpTravel?: number;
  lowered?: Lowered;
  /** The height asked about, as drop from reference height. */
  drop: number;
  /** The drop at which places and limits were measured. Default 0. */
  measuredAt?: number;
  marginBodywork?: number;
  marginChassis?: number;
  allowance?: number;
  /** Static camber changed with the wheels, degrees. */
  camberBy?: number;
}

/** Common practice, no source. What authorities publish: core/wheel/clearance-guides.ts. */
export const MARGIN_BODYWORK_MM = 10;
export const MARGIN_CHASSIS_MM = 5;
/** What bushes and carcass give way under load. Common practice, no source. */
export const ALLOWANCE_MM = 3;
const LARGEST_MARGIN_MM = 100;
const LARGEST_CAMBER_BY = 10;

export const marginOf = (
  { is }: Place,
  { marginBodywork = MARGIN_BODYWORK_MM, marginChassis = MARGIN_CHASSIS_MM }: ClearanceRequest,
): number => (is === 'bodywork' ? marginBodywork : marginChassis);

/** Runs a check; its problems go to the others. */
function collect<T>(problems: Problem[], make: () => T): T | undefined {
  try {
    return make();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    problems.push(...error.problems);
    return undefined;
  }
}

/** @throws InputError with all that is wrong with wheels, places and margins */
export function checkedFitment(request: Omit<ClearanceRequest, 'motion'>): WheelComparison {
  const problems: Problem[] = [];
  const number = (key: 'marginBodywork' | 'marginChassis' | 'allowance' | 'camberBy', least: number, most: number) => {
    const problem = request[key] === undefined ? undefined : numberProblem(key, request[key], least, most);
    if (problem) problems.push(problem);
  };
  for (const key of ['marginBodywork', 'marginChassis', 'allowance'] as const) number(key, 0, LARGEST_MARGIN_MM);
  number('camberBy', -LARGEST_CAMBER_BY, LARGEST_CAMBER_BY);
  collect(problems, () => checkPlaces(request.places));
  const wheels = collect(problems, () => compareWheels(request.before, request.after));
  if (!wheels || problems.length > 0) throw new InputError(problems);
  return wheels;
}

/**
 * The ends of the links, where they are among the travels that were looked at: what lies beyond, no car reaches, and nobody has said
 * then where the suspension is solid. A plane corner from the driveway says little of where its links end.
 */
function reachWithin({ reach, travel }: WheelMotion): { reach?: { droop: number; bump: number } } {
  if (!reach) return {};
  const { droop, bump } = reach;
  // One step of the motion stays clear of the very end.
  const isNear = (end: number, last: number) => Math.abs(end - last) < 5;
  return {
    reach: {
      droop: isNear(droop, travel[0]!) ? droop : Number.NaN,
      bump: isNear(bump, travel.at(-1)!) ? bump : Number.NaN,
    },
  };
}

/** @throws InputError with all problems at once */
export function checkedRequest(request: ClearanceRequest): { wheels: WheelComparison; budget: TravelBudget } {
  const { motion, limits, bumpTravel, drop, measuredAt = 0, lowered } = request;
  const problems: Problem[] = [];
  const wheels = collect(problems, () => checkedFitment(request));
  const [low, high] = [motion.travel[0]!, motion.travel.at(-1)!];
  const budget = collect(problems, () =>
    travelBudget({
      path: motion.damper,
      limits,
      drop,
      measuredAt,
      ...(bumpTravel !== undefined && { bumpTravel }),
      ...(lowered && { lowered }),
      ...(motion.from === 'points' && reachWithin(motion)),
    }),
  );
  const measured = numberProblem('measuredAt', measuredAt, low, high);
  if (measured && !problems.some(({ path }) => path === 'measuredAt')) problems.push(measured);
  if (!wheels || !budget || problems.length > 0) throw new InputError(problems);
  if (drop < low || drop > high) {
    throw new InputError([{ code: 'outside-domain', path: 'drop', value: drop, limit: drop < low ? low : high }]);
  }
  return { wheels, budget };
}
