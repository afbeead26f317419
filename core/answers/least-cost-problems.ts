import { COST_WEIGHTS, LEAST_COSTS, SETTING_WAYS } from '../document/cost-weights.js';
import { isMissing, numberChecks } from '../quantity/number-problem.js';
import type { Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { unlikelyRate } from '../travel/likely-rate.js';
import { RATE_N_PER_MM } from '../travel/roll-ranges.js';
import type { RollRequest } from '../travel/roll-request.js';
import { rollProblems } from '../travel/roll-request.js';
import { corneringProblems } from './cornering-request.js';
import { type LeastCostRequest, USUAL_CAMBER_STEP_DEG, USUAL_HEIGHT_STEP_MM } from './least-cost-request.js';

const MOST_INCLINATION = 30;
const TOLERANCE_DEG = [0.01, 2] as const;
const MOST_PRICE = 1e6;
const MOST_GAP_MM = 300;
const MOST_BUMP_STEER_DEG = 10;
const MOST_SCRUB_MM = 200;
const CAMBER_STEP_DEG = [0.01, 2] as const;
const HEIGHT_STEP_MM = [0.5, 50] as const;
/** Of joints, springs or bars: more are not compared. */
const MOST_LISTED = 6;
/** Steps of camber, or of height. */
const MOST_STEPS = 120;

/** What is wrong with a request besides its source. */
export function leastCostProblems(request: LeastCostRequest<unknown>): Problem[] {
  const { camber, ...turn } = request;
  const { roll, load, height, window, limits, inclination, tolerance, bumpLeft, gapStrut } = request;
  const problems = corneringProblems({ ...turn, roll: roll ?? 0 });
  const check = numberChecks(problems);
  const maybe = (path: string, value: unknown, least: number, most: number) => {
    if (value !== undefined) check(path, value, least, most);
  };
  check('inclination', inclination, -MOST_INCLINATION, MOST_INCLINATION);
  maybe('tolerance', tolerance, ...TOLERANCE_DEG);
  if (roll === undefined && load === undefined) problems.push({ code: 'missing', path: 'roll', value: undefined });
  if (roll !== undefined && load !== undefined)
    problems.push({ code: 'wrong-shape', path: 'load', value: undefined, other: 'roll' });
  if (load !== undefined) problems.push(...loadProblems(load));
  if (camber !== undefined) problems.push(...camberProblems(camber));
  if (height !== undefined) {
    const { min, max } = QUANTITIES.drop;
    problems.push(...spanProblems('height', height, [min, max], HEIGHT_STEP_MM, USUAL_HEIGHT_STEP_MM));
    maybe('height.price', height?.price, 0, MOST_PRICE);
  }
  problems.push(
    ...listProblems('joints', request.joints, 'mm', [-QUANTITIES.partLength.max, QUANTITIES.partLength.max]),
    ...listProblems('springs', request.springs, 'rate', RATE_N_PER_MM),
    ...listProblems('bars', request.bars, 'rate', [0, RATE_N_PER_MM[1]]),
  );
  // At a roll that is held they would change nothing.
  const changed = (['springs', 'bars'] as const).find((path) => (request[path]?.length ?? 0) > 0);
  if (changed && roll !== undefined && load === undefined)
    problems.push({ code: 'missing', path: 'load', value: undefined, other: changed });
  if (window !== undefined) {
    check('window.0', window?.[0], QUANTITIES.drop.min, 0);
    check('window.1', window?.[1], 0, QUANTITIES.drop.max);
  }
  maybe('bumpLeft', bumpLeft, 0, MOST_GAP_MM);
  maybe('gapStrut', gapStrut, 0, MOST_GAP_MM);
  if (limits !== undefined && (limits === null || typeof limits !== 'object'))
    problems.push({ code: 'wrong-shape', path: 'limits', value: limits });
  maybe('limits.bumpLeft', limits?.bumpLeft, 0, MOST_GAP_MM);
  maybe('limits.gapStrut', limits?.gapStrut, 0, MOST_GAP_MM);
  maybe('limits.bumpSteer', limits?.bumpSteer, 0, MOST_BUMP_STEER_DEG);
  maybe('limits.scrubChange', limits?.scrubChange, 0, MOST_SCRUB_MM);
  for (const path of ['bumpLeft', 'gapStrut'] as const) {
    if (limits?.[path] !== undefined && request[path] === undefined)
      problems.push({ code: 'missing', path, value: undefined, other: `limits.${path}` });
  }
  problems.push(...wordProblems(request));
  return problems.length > 0 ? problems : unlikelyRates(request);
}

/** Of springs now, and of those that may be bought: rates that look like another unit's. */
function unlikelyRates({ load, springs }: LeastCostRequest<unknown>): Problem[] {
  if (load?.isRateSure) return [];
  const { axle } = load ?? {};
  if (!axle || typeof axle !== 'object') return [];
  const listed = Array.isArray(springs) ? (springs as readonly ({ rate?: number } | null)[]) : [];
  return [
    unlikelyRate('load.axle', axle),
    ...listed.map((one, i) => {
      const problem = one && unlikelyRate('', { ...axle, springRate: one.rate as number });
      return problem ? { ...problem, path: `springs.${i}.rate` } : undefined;
    }),
  ].filter((problem): problem is Problem => problem !== undefined);
}

function loadProblems(load: unknown): Problem[] {
  if (load === null || typeof load !== 'object') return [{ code: 'wrong-shape', path: 'load', value: load }];
  const given = load as RollRequest;
  const { axle } = given;
  // Roll centre and track come from the links.
  const known = axle && typeof axle === 'object' ? { ...axle, track: axle.track ?? 1500, rollCentreHeight: 0 } : axle;
  return rollProblems({ ...given, axle: known }).map((problem) => ({ ...problem, path: `load.${problem.path}` }));
}

function camberProblems(camber: NonNullable<LeastCostRequest['camber']>): Problem[] {
  const { min, max } = QUANTITIES.camber;
  const problems = spanProblems('camber', camber, [min, max], CAMBER_STEP_DEG, USUAL_CAMBER_STEP_DEG);
  const ways: unknown = camber?.ways;
  if (ways === undefined) return problems;
  if (!Array.isArray(ways)) return [...problems, { code: 'wrong-shape', path: 'camber.ways', value: undefined }];
  if (ways.length === 0) return [...problems, { code: 'missing', path: 'camber.ways', value: undefined }];
  const check = numberChecks(problems);
  ways.forEach((one, i) => {
    const way: unknown = one?.way;
    const path = `camber.ways.${i}`;
    if (!SETTING_WAYS.includes(way as never)) {
      const value = typeof way === 'string' ? way : undefined;
      problems.push({ code: 'unknown-name', path: `${path}.way`, value, names: SETTING_WAYS });
    } else if (ways.findIndex((other) => other?.way === way) < i) {
      problems.push({ code: 'coincide', path: `${path}.way`, value: way, other: 'camber.ways' });
    }
    if (one?.price !== undefined) check(`${path}.price`, one.price, 0, MOST_PRICE);
  });
  return problems;
}

function spanProblems(
  path: string,
  span: { from: number; to: number; step?: number },
  [least, most]: readonly [number, number],
  steps: readonly [number, number],
  usual: number,
): Problem[] {
  if (span === null || typeof span !== 'object') return [{ code: 'wrong-shape', path, value: span }];
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  const { from, to, step } = span;
  check(`${path}.from`, from, least, most);
  check(`${path}.to`, to, least, most);
  if (step !== undefined) check(`${path}.step`, step, ...steps);
  if (problems.length > 0) return problems;
  if (from > to) return [{ code: 'out-of-range', path: `${path}.to`, value: to, limit: from }];
  const finest = (to - from) / MOST_STEPS;
  if ((step ?? usual) < finest)
    return [{ code: 'out-of-range', path: `${path}.step`, value: step ?? usual, limit: finest }];
  return [];
}

function listProblems(
  path: string,
  list: unknown,
  key: 'mm' | 'rate',
  [least, most]: readonly [number, number],
): Problem[] {
  if (list === undefined) return [];
  if (!Array.isArray(list)) return [{ code: 'wrong-shape', path, value: undefined }];
  if (list.length > MOST_LISTED) return [{ code: 'out-of-range', path, value: list.length, limit: MOST_LISTED }];
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  list.forEach((one, i) => {
    check(`${path}.${i}.${key}`, one?.[key], least, most);
    if (one?.price !== undefined) check(`${path}.${i}.price`, one.price, 0, MOST_PRICE);
    const flag = one?.correctTieRod;
    if (flag !== undefined && typeof flag !== 'boolean')
      problems.push({ code: 'wrong-shape', path: `${path}.${i}.correctTieRod`, value: undefined });
  });
  return problems;
}

function wordProblems({ weights, lowered }: LeastCostRequest<unknown>): Problem[] {
  const problems: Problem[] = [];
  const word = (path: string, value: unknown, names: readonly string[]) => {
    if (value === undefined || names.includes(value as string)) return;
    problems.push({ code: 'unknown-name', path, value: typeof value === 'string' ? value : undefined, names });
  };
  word('lowered', lowered, ['springs', 'dampers']);
  if (isMissing(weights)) return problems;
  if (typeof weights !== 'object') return [...problems, { code: 'wrong-shape', path: 'weights', value: weights }];
  for (const [cost, weight] of Object.entries(weights ?? {})) {
    word(
      `weights.${cost}`,
      LEAST_COSTS.includes(cost as never) ? weight : cost,
      LEAST_COSTS.includes(cost as never) ? COST_WEIGHTS : LEAST_COSTS,
    );
  }
  return problems;
}
