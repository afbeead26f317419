import { numberChecks } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { type BudgetRequest, budgetAt, pathOf, prepareBudget } from './budget.js';
import { budgetProblems } from './budget-problems.js';
import { motionRatioAt, motionRatioSlopeAt, shortenedBetween } from './damper-path.js';
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
  /** Half-width of the 95 % interval of where it is solid, mm at the wheel: of the gap and of a share that was assumed. */
  shortOfSolidPlusMinus?: number;
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
  const ofBudget = budgetProblems(request);
  const isNew = ({ path }: Problem) => !ofBudget.some((other) => other.path === path);
  const problems = [...ofBudget, ...loadProblems(request).filter(isNew)];
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
  const path = prepared.path!;
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
  const touch = bump.touch?.governedBy === 'stop' && !bump.touch.atLeast ? bump.touch.travel : Number.POSITIVE_INFINITY;
  // Of a stop that nobody knows the force of, no further than to where it is touched.
  const end = Math.min(solid, path.travel.at(-1)!, stop ? Number.POSITIVE_INFINITY : Math.max(touch, drop));
  const balanced = firstFrom(drop, end, (travel) => forceAt(travel) * motionRatioAt(path, travel) >= load);
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
    reaches: isSolid ? 'solid' : stopCompression > 0 || travel === touch ? 'stop' : 'none',
    stopCompression,
    ...(solid < Number.POSITIVE_INFINITY && {
      shortOfSolid: solid - travel,
      ...(bump.solid?.plusMinus !== undefined && { shortOfSolidPlusMinus: bump.solid.plusMinus }),
    }),
  };
}

/** Where a condition first holds, mm: sought in steps of 1 mm, then halved; undefined when it does not from one end to the other. */
function firstFrom(from: number, to: number, holds: (travel: number) => boolean): number | undefined {
  if (from > to) return undefined;
  let low = from;
  let high = from;
  while (!holds(high)) {
    if (high === to) return undefined;
    low = high;
    high = Math.min(high + SCAN_MM, to);
  }
  for (let i = 0; i < BISECTIONS && low < high; i++) {
    const middle = (low + high) / 2;
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** N over mm of compression: straight between points, and on along the last two. Undefined where nothing is known of it. */
function stopForce({ stopRate, stopPoints }: CornerLoads): ((compression: number) => number) | undefined {
  const given = stopPoints?.filter(([compression]) => compression > 0);
  if (!given?.length) return stopRate === undefined ? undefined : (compression) => stopRate * compression;
  const points = [[0, 0] as const, ...given];
  return (compression) => {
    const next = points.findIndex(([x], i) => i > 0 && x >= compression);
    const i = next < 0 ? points.length - 1 : next;
    const [[x0, f0], [x1, f1]] = [points[i - 1]!, points[i]!];
    return f0 + ((compression - x0) / (x1 - x0)) * (f1 - f0);
  };
}

/** Common practice, no source: wide enough for any road car. */
const RANGES = {
  springRate: [1, 1000],
  stopRate: [0, 10_000],
  gasForce: [0, 2000],
  cornerMass: [20, 2000],
  unsprungMass: [1, 500],
  tyreRate: [10, 2000],
  loadFactor: [1, 10],
} as const satisfies Partial<Record<keyof CornerLoads, readonly [number, number]>>;
const NEEDED: readonly string[] = ['springRate', 'cornerMass', 'unsprungMass'];
const MOST_COMPRESSION_MM = 400;
const MOST_FORCE_N = 1e6;

/** What is wrong with a request besides what is with its limits. */
function loadProblems(request: LoadRequest): Problem[] {
  const { limits, loads, drop } = request;
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  for (const [key, [least, most]] of Object.entries(RANGES)) {
    const value = loads[key as keyof CornerLoads];
    if (value !== undefined || NEEDED.includes(key)) check(`loads.${key}`, value, least, most);
  }
  const { cornerMass, unsprungMass } = loads;
  if (unsprungMass! >= cornerMass! && unsprungMass! <= RANGES.unsprungMass[1])
    problems.push({ code: 'out-of-range', path: 'loads.unsprungMass', value: unsprungMass, limit: cornerMass! });
  (loads.stopPoints as readonly unknown[] | undefined)?.forEach((point, i, points) => {
    const at = `loads.stopPoints.${i}`;
    if (!Array.isArray(point)) {
      problems.push({ code: 'wrong-shape', path: at, value: undefined });
      return;
    }
    const [compression, force] = point;
    const last = points[i - 1];
    const [before = 0, forceBefore = 0] = Array.isArray(last) ? last : [];
    check(`${at}.0`, compression, before, MOST_COMPRESSION_MM);
    check(`${at}.1`, force, forceBefore, i === 0 && compression === 0 ? 0 : MOST_FORCE_N);
    if (i > 0 && compression === before)
      problems.push({ code: 'coincide', path: `${at}.0`, value: compression, other: `loads.stopPoints.${i - 1}.0` });
  });
  const path = pathOf(request);
  if (!path) return [...problems, { code: 'missing', path: 'limits.motionRatio', value: limits.motionRatio }];
  for (const [at, value] of [
    ['drop', drop],
    ['measuredAt', request.measuredAt ?? 0],
  ] as const) {
    const [low, high] = [path.travel[0]!, path.travel.at(-1)!];
    if (value < low || value > high)
      problems.push({ code: 'outside-domain', path: at, value, limit: value < low ? low : high });
  }
  return problems;
}
