import { InputError } from '../quantity/problem.js';
import { type BudgetRequest, budgetAt, prepareBudget } from './budget.js';
import { budgetProblems } from './budget-problems.js';
import { motionRatioAt, motionRatioSlopeAt, shortenedBetween } from './damper-path.js';
import { loadProblems } from './load-problems.js';
import { stopForce } from './stop-force.js';
import { type CornerLoads, USUAL_LOAD_FACTOR } from './travel-limits.js';

/** How does the corner ride at a drop, and where does a load take it? */
export interface LoadRequest extends BudgetRequest {
  loads: CornerLoads;
}

export interface LoadAnswer {
  /** Carried by the spring, kg. */
  sprungMass: number;
  /** Its weight, N. */
  staticLoad: number;
  /** At ride height, N/mm. */
  wheelRate: number;
  /** Hz, of the sprung mass on the wheel rate, and on that and the tyre's in series. NaN where nothing pushes back. */
  rideFrequency: number;
  rideFrequencyOnTyre?: number;
  /** The load asked about, N. */
  load: number;
  /** Bump from ride height at which the corner carries it, mm; `solid` where it carries less even there. */
  travelAtLoad: number;
  /** The load takes it there or beyond: the damper's motion, or how hard the stop is, is known no further. */
  atLeast?: true;
  reaches: 'none' | 'stop' | 'solid';
  /** mm on the rod. */
  stopCompression: number;
  /** Wheel travel left from there, mm. */
  shortOfSolid?: number;
}

/** Standard gravity, m/s². ISO 80000-3. */
const GRAVITY = 9.80665;
const SCAN_MM = 1;
const BISECTIONS = 50;
const STOP_RATE_STEP_MM = 0.01;

/**
 * Statics: no damping, no friction, nothing of the other wheel. The spring's force grows along the damper's path from what
 * balances the sprung weight at ride height; the gas's is constant and part of that. A stop in contact at ride height counts.
 *
 * Wheel rate, from differentiating F_w = F·MR: k·MR² + F·d(MR)/d(travel), F being all that acts along the damper. Its first term:
 * Barton & Fieldhouse, Automotive Chassis Engineering, Springer 2018, eq. 3.33, p. 179. Frequency: √(k/m)/2π.
 *
 * @throws InputError with all problems at once.
 */
export function cornerUnderLoad(request: LoadRequest): LoadAnswer {
  const problems = [...budgetProblems(request), ...loadProblems(request.loads)];
  if (problems.length > 0) throw new InputError(problems);
  const { limits, loads, drop, measuredAt = 0, lowered } = request;
  const {
    springRate,
    cornerMass,
    unsprungMass,
    tyreRate,
    loadFactor = USUAL_LOAD_FACTOR,
  } = loads as CornerLoads & Required<Pick<CornerLoads, 'springRate' | 'cornerMass' | 'unsprungMass'>>;
  const prepared = prepareBudget(request);
  const { path } = prepared;
  if (!path) throw new InputError([{ code: 'missing', path: 'limits.motionRatio', value: undefined }]);
  const { bump } = budgetAt(prepared, drop);

  const gap =
    limits.stopGap === undefined
      ? Number.POSITIVE_INFINITY
      : limits.stopGap - (lowered === 'dampers' ? 0 : shortenedBetween(path, measuredAt, drop));
  const stop = stopForce(loads);
  const compressionAt = (travel: number) => Math.max(0, shortenedBetween(path, drop, travel) - gap);
  const compressed = compressionAt(drop);
  const sprungMass = cornerMass - unsprungMass;
  const staticLoad = sprungMass * GRAVITY;
  const ratio = motionRatioAt(path, drop);
  const alongDamper = staticLoad / ratio;
  const forceAt = (travel: number) =>
    alongDamper +
    springRate * shortenedBetween(path, drop, travel) +
    (stop ? stop(compressionAt(travel)) - stop(compressed) : 0);

  const stopRate =
    stop && compressed > 0 ? (stop(compressed + STOP_RATE_STEP_MM) - stop(compressed)) / STOP_RATE_STEP_MM : 0;
  const wheelRate = (springRate + stopRate) * ratio ** 2 + alongDamper * motionRatioSlopeAt(path, drop);
  const frequency = (rate: number) => Math.sqrt((1000 * rate) / sprungMass) / (2 * Math.PI);

  const load = loadFactor * staticLoad;
  const solid = bump.solid && !bump.solid.atLeast ? bump.solid.travel : Number.POSITIVE_INFINITY;
  const known = Math.min(
    path.travel.at(-1)!,
    stop ? Number.POSITIVE_INFINITY : (bump.touch?.travel ?? Number.POSITIVE_INFINITY),
  );
  const end = Math.min(solid, known);
  const balanced = firstFrom(
    drop,
    Math.min(end, path.travel.at(-1)!),
    (travel) => forceAt(travel) * motionRatioAt(path, travel) >= load,
  );
  const travel = balanced ?? end;
  const stopCompression = compressionAt(travel);
  const isSolid = balanced === undefined && end === solid;
  return {
    sprungMass,
    staticLoad,
    wheelRate,
    rideFrequency: frequency(wheelRate),
    ...(tyreRate !== undefined && { rideFrequencyOnTyre: frequency((wheelRate * tyreRate) / (wheelRate + tyreRate)) }),
    load,
    travelAtLoad: travel - drop,
    ...(balanced === undefined && !isSolid && { atLeast: true as const }),
    reaches: isSolid ? 'solid' : stopCompression > 0 || travel === bump.touch?.travel ? 'stop' : 'none',
    stopCompression,
    ...(solid < Number.POSITIVE_INFINITY && { shortOfSolid: solid - travel }),
  };
}

/** The first place from one travel to another at which something holds, which holds from there on: by steps, then by halves. */
function firstFrom(from: number, to: number, holds: (travel: number) => boolean): number | undefined {
  for (let low = from; low < to; low += SCAN_MM) {
    let high = Math.min(low + SCAN_MM, to);
    if (!holds(high)) continue;
    let below = low;
    if (holds(below)) return below;
    for (let i = 0; i < BISECTIONS; i++) {
      const middle = (below + high) / 2;
      if (holds(middle)) high = middle;
      else below = middle;
    }
    return high;
  }
  return undefined;
}
