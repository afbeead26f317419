import type { SolvedSource } from '../curve-sources/solved-source.js';
import { InputError, type Problem } from '../quantity/problem.js';
import type { LeastCostAnswer } from './least-cost-answer.js';
import { chosenOf, frontOf } from './least-cost-front.js';
import { gridOf } from './least-cost-grid.js';
import { leastCostProblems } from './least-cost-problems.js';
import { type LeastCostRequest, USUAL_TOLERANCE_DEG } from './least-cost-request.js';
import { LeastCostSearch, type Reached } from './least-cost-search.js';
import { linksOf } from './links-of.js';

/**
 * Which setups bring the outer wheel to a wanted inclination to the road, and what each costs: all that the request's steps allow, each
 * solved on the exact linkage, toe set again. Along the steps of camber a wheel's inclination rises from each to the next; only that is
 * used to leave out what lies beyond what misses already, and a row of steps in which it does not hold is tried whole.
 *
 * @throws InputError of what is wrong with the source or the request, by its path; as `corneringOf` for the car as it is; `out-of-range`,
 *   path `inclination`, with the nearest that can be had as limit; path `limits.…` with the nearest that can be had, where no setup at all
 *   keeps that limit; path `limits` where none keeps all of them
 */
export function* leastCostSteps(request: LeastCostRequest): Generator<undefined, LeastCostAnswer> {
  const links = linksOf(request.source, leastCostProblems(request));
  const source = request.source as SolvedSource;
  const { inclination: wanted, tolerance = USUAL_TOLERANCE_DEG } = request;
  const grid = gridOf(request, links.linkage.kind);
  checkKnown(request, source);
  const search = new LeastCostSearch(request, source, links, grid);
  let reached = yield* search.reaching();
  let front: Reached[] = [];
  // Whether a steered wheel is within its own reach is looked at last: it costs most.
  for (let isSure = false; !isSure; ) {
    front = yield* frontOf(reached);
    const refused = new Set<Reached>();
    for (const one of front) {
      if (!search.isSure(one)) refused.add(one);
      yield;
    }
    isSure = refused.size === 0;
    if (!isSure) reached = reached.filter((one) => !refused.has(one));
  }
  if (front.length === 0) {
    const problem: Problem = yield* search.whatIsNear();
    throw new InputError([problem]);
  }
  const { asItIs } = search;
  return {
    inclination: wanted,
    tolerance,
    asItIs: {
      camber: asItIs.camber,
      ...search.turnAsItIs,
      ...(asItIs.bumpSteer !== undefined && { bumpSteer: asItIs.bumpSteer }),
      scrubRadius: asItIs.scrubRadius,
    },
    rows: chosenOf(front, request.weights).map(({ one, bestIn }) => ({ ...search.rowOf(one), bestIn })),
    tried: search.tried,
    reach: reached.length,
    unbeaten: front.length,
  };
}

/** @throws InputError where a limit is set to what the source does not tell */
function checkKnown({ limits }: LeastCostRequest, { driveway }: SolvedSource): void {
  if (limits?.bumpSteer === undefined || driveway === undefined) return;
  throw new InputError([{ code: 'wrong-shape', path: 'limits.bumpSteer', value: limits.bumpSteer, other: 'source' }]);
}
