import { RACK_SIDES, type RackSide } from '../linkage/toe-adjustment.js';
import { numberChecks, shown } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { NORMAL_95 } from '../uncertainty/normal.js';

/** What is known of a wheel whose links are not. */
export interface LeverRequest {
  /** By how much toe-in of this wheel is to change, degrees; half-width of its 95 % interval. */
  toeChange: { value: number; plusMinus: number };
  /** From the steering axis to the tie rod's line, mm: at the height of the outer joint, seen from above, square to the rod. */
  lever: { value: number; plusMinus: number };
  rack: RackSide;
}

/** A length and the half-width of its 95 % interval, mm. */
export interface Length {
  value: number;
  plusMinus: number;
}

/**
 * How far the rule is off, standard uncertainty as a share: the rod is not level, nor the steering axis upright. Over random struts by
 * test/core/alignment/lever-study.ts (seed 9001, 2000 cars, lowered by up to 50 mm, rods up to 1.5 mm longer or shorter) the exact length
 * was 1.003 of the arc's on average, standard deviation 0.011, with the rod behind the axle as ahead of it.
 */
const OF_RULE = 0.0115;

const RADIANS = Math.PI / 180;
const MOST_PLUS_MINUS_MM = 100;

/**
 * By how much the tie rod is to be longer for a change of toe, where no hard points are known: the lever times the angle it turns by,
 * as an arc is long. A longer rod pushes its joint outboard: toe-in with the rod behind the
 * axle, toe-out with the rod ahead of it. A rule, to begin with: read toe again.
 *
 * @throws InputError from `toeChange`, `toeChange.plusMinus`, `toe.lever`, `toe.lever.plusMinus`, `toe.rackSide`
 */
export function rodByLever({ toeChange, lever, rack }: LeverRequest): Length {
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  check('toeChange', toeChange?.value, QUANTITIES.toe.min, QUANTITIES.toe.max);
  check('toeChange.plusMinus', toeChange?.plusMinus, QUANTITIES.plusMinusToe.min, QUANTITIES.plusMinusToe.max);
  check('toe.lever', lever?.value, QUANTITIES.lever.min, QUANTITIES.lever.max);
  check('toe.lever.plusMinus', lever?.plusMinus, 0, MOST_PLUS_MINUS_MM);
  if (!RACK_SIDES.includes(rack)) {
    const code = rack === undefined ? 'missing' : 'unknown-name';
    problems.push({ code, path: 'toe.rackSide', value: shown(rack), names: RACK_SIDES });
  }
  if (problems.length > 0) throw new InputError(problems);
  const perDegree = (rack === 'behind' ? 1 : -1) * lever.value * RADIANS;
  const value = perDegree * toeChange.value + 0;
  const parts = [perDegree * toeChange.plusMinus, (value / lever.value) * lever.plusMinus, value * OF_RULE * NORMAL_95];
  return { value, plusMinus: Math.hypot(...parts) };
}
