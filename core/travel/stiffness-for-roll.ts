import { finished } from '../math/finished.js';
import { illinoisSteps } from '../math/illinois.js';
import { numberProblem } from '../quantity/number-problem.js';
import { InputError } from '../quantity/problem.js';
import { axleMoment } from './axle-in-roll.js';
import { turningMoment } from './roll.js';
import { RATE_N_PER_MM } from './roll-ranges.js';
import { type RollRequest, rollProblems } from './roll-request.js';

/** What one axle would need, the other one left as it is, N/mm; left out: what no spring, or no bar, gives. */
export interface StiffnessForRoll {
  /** Of each spring, the bar left as it is. */
  springRate?: number;
  /** Of the bar, as `AxleInRoll` has it, the springs left as they are: 0 is none. */
  barRate?: number;
}

const MOST_ROLL = 15;
const CLOSE_N_MM = 1e-3;

/**
 * The springs, or the bar, of `axle` at which a car takes a suspension roll in a turn: what `rollFromAcceleration` asks, turned round.
 * Without `otherAxle` both are changed alike.
 *
 * @param request `roll` in degrees
 * @throws InputError as `rollFromAcceleration`; `out-of-range`, path `roll`, where neither springs nor a bar give it
 */
export function stiffnessForRoll(request: RollRequest & { roll: number }): StiffnessForRoll {
  const problems = rollProblems(request);
  const wrong = numberProblem('roll', request.roll, 0, MOST_ROLL);
  if (wrong) problems.push(wrong);
  if (problems.length > 0) throw new InputError(problems);
  const { axle, otherAxle, roll } = request;
  const radians = (roll * Math.PI) / 180;
  const needed = turningMoment(request, radians) - (otherAxle ? axleMoment(otherAxle, radians).moment : 0);

  const { bar, track } = axle;
  const perRate = ((bar?.motionRatio ?? 1) * track) ** 2 * radians;
  const barRate = (needed - axleMoment({ ...axle, bar: undefined }, radians).moment) / perRate;
  const withSprings = (springRate: number) => axleMoment({ ...axle, springRate }, radians).moment;
  const [least, most] = RATE_N_PER_MM;
  const [soft, hard] = [withSprings(least), withSprings(most)];
  const answer: StiffnessForRoll = {
    ...(soft <= needed &&
      needed <= hard &&
      radians > 0 && {
        springRate: finished(illinoisSteps(withSprings, needed, [least, soft], [most, hard], CLOSE_N_MM))[0],
      }),
    ...(barRate >= 0 && barRate <= most && { barRate }),
  };
  if (Object.keys(answer).length === 0) throw new InputError([{ code: 'out-of-range', path: 'roll', value: roll }]);
  return answer;
}
