import { type At, illinoisSteps } from '../math/illinois.js';
import { numberChecks } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { unlessRefused } from '../quantity/unless-refused.js';
import { carInTurn } from './cornering.js';
import { type CorneringRequest, MOST_ROLL } from './cornering-request.js';

/** What would bring the outer wheel to an inclination to the road, degrees, top outward positive? */
export type WantedInclination<S = CorneringRequest['source']> = CorneringRequest<S> & { inclination: number };

const MOST_INCLINATION = 30;
const CLOSE_DEG = 1e-9;
const ROLL_STEP = 0.5;
/** Of a bisection for where something ends: to a billionth of where it began. */
const HALVINGS = 30;

/**
 * The static camber that the outer wheel needs, set at the drop, for an inclination at this roll.
 *
 * @throws InputError as `corneringOf`; `out-of-range`, path `inclination`, with the last one that can be set as limit
 */
export function* camberForInclination(request: WantedInclination): Generator<undefined, { camber: number }> {
  const wanted = checkedInclination(request);
  const { outer } = carInTurn(request).at(request.roll);
  let last: At = [outer.bars.static, outer.inclination];
  const inclinationAt = (camber: number) =>
    unlessRefused(() => carInTurn({ ...request, camber }).at(request.roll).outer.inclination);
  // Set at all, it may differ from what the links leave by what the setting does to its curve.
  const side = Math.sign(wanted - last[1]);
  for (let i = 0; i < HALVINGS; i++) {
    if (Math.abs(wanted - last[1]) < CLOSE_DEG) return { camber: last[0] };
    const camber = last[0] + 1.05 * (wanted - last[1]);
    const next = inclinationAt(camber);
    yield;
    if (next === undefined) {
      const end = yield* lastReachedSteps(inclinationAt, last, camber);
      if (side * (end[1] - wanted) < 0) throw outOfReach(wanted, end[1]);
      return { camber: (yield* illinoisSteps(sure(inclinationAt), wanted, last, end, CLOSE_DEG))[0] };
    }
    if (side * (next - wanted) >= 0) {
      return { camber: (yield* illinoisSteps(sure(inclinationAt), wanted, last, [camber, next], CLOSE_DEG))[0] };
    }
    last = [camber, next];
  }
  throw outOfReach(wanted, last[1]);
}

/**
 * The suspension roll at which the outer wheel comes to an inclination first, from none upwards; the request's own roll does not matter.
 *
 * @throws InputError as `corneringOf`; `out-of-range`, path `inclination`, with the nearest one on the way as limit
 */
export function* rollForInclination(request: WantedInclination): Generator<undefined, { roll: number }> {
  const wanted = checkedInclination(request);
  const car = carInTurn(request);
  const inclinationAt = (roll: number) => unlessRefused(() => car.at(roll).outer.inclination);
  let last: At = [0, car.at(0).outer.inclination];
  let nearest = last[1];
  const side = Math.sign(wanted - last[1]);
  while (last[0] < MOST_ROLL) {
    if (side * (last[1] - wanted) >= 0) return { roll: last[0] };
    const beyond = Math.min(last[0] + ROLL_STEP, MOST_ROLL);
    const there = inclinationAt(beyond);
    yield;
    const next: At = there === undefined ? yield* lastReachedSteps(inclinationAt, last, beyond) : [beyond, there];
    if (side * (next[1] - wanted) >= 0) {
      return { roll: (yield* illinoisSteps(sure(inclinationAt), wanted, last, next, CLOSE_DEG))[0] };
    }
    if (Math.abs(next[1] - wanted) < Math.abs(nearest - wanted)) nearest = next[1];
    if (there === undefined) break;
    last = next;
  }
  throw outOfReach(wanted, nearest);
}

/** @throws InputError with all that is wrong with the request */
function checkedInclination(request: WantedInclination): number {
  const problems: Problem[] = [];
  numberChecks(problems)('inclination', request.inclination, -MOST_INCLINATION, MOST_INCLINATION);
  if (problems.length === 0) return request.inclination;
  try {
    carInTurn(request);
  } catch (error) {
    if (error instanceof InputError) throw new InputError([...problems, ...error.problems]);
    throw error;
  }
  throw new InputError(problems);
}

const outOfReach = (value: number, limit: number): InputError =>
  new InputError([{ code: 'out-of-range', path: 'inclination', value, limit }]);

/** Between two places that were reached. */
const sure = (of: (x: number) => number | undefined) => (x: number) => of(x) ?? Number.NaN;

/** The last place that is reached on the way from one that is to one that is not. */
function* lastReachedSteps(of: (x: number) => number | undefined, from: At, beyond: number): Generator<undefined, At> {
  let good = from;
  let bad = beyond;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (good[0] + bad) / 2;
    const value = of(middle);
    if (value === undefined) bad = middle;
    else good = [middle, value];
    yield;
  }
  return good;
}
