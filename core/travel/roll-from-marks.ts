import { DEG } from '../math/angle.js';
import { numberChecks } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { RATIO, TRACK_MM } from './roll-ranges.js';

/** What cable ties on the damper rods of one axle show after a turn, mm along the rods, from where they stood at rest. */
export interface RollMarks {
  /** How far the outer damper was pressed in. */
  outerTravel: number;
  /** How far the inner damper was drawn out. */
  innerTravel: number;
  /** −d(damper length)/d(wheel travel), of both or of each. */
  motionRatio: number;
  innerMotionRatio?: number;
  /** Between the two contact points, mm. */
  track: number;
  /** Standard uncertainty of each mark, mm. */
  markUncertainty?: number;
}

export interface MarkedRoll {
  /** Of the body on its suspension, degrees; the tyres' share is not in it. */
  roll: number;
  /** Wheel travels, mm, bump positive, and their mean. */
  outer: number;
  inner: number;
  heave: number;
  /** Standard uncertainty of the roll, degrees. Only where that of the marks was given. */
  uncertainty?: number;
}

const MOST_TRAVEL_MM = 300;
const MOST_MARK_MM = 50;

/**
 * Suspension roll from marks on both dampers: tan(roll) = (bump outside + droop inside)/track. Marks keep only the furthest that each
 * damper went, which a kerb or a dip may have done, and at different moments: it is the roll of a steady turn on a level road at best.
 *
 * @throws InputError with all that is wrong
 */
export function rollFromMarks(marks: RollMarks): MarkedRoll {
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  const { outerTravel, innerTravel, motionRatio, innerMotionRatio = motionRatio, track, markUncertainty } = marks;
  check('outerTravel', outerTravel, 0, MOST_TRAVEL_MM);
  check('innerTravel', innerTravel, 0, MOST_TRAVEL_MM);
  check('motionRatio', motionRatio, ...RATIO);
  if (marks.innerMotionRatio !== undefined) check('innerMotionRatio', innerMotionRatio, ...RATIO);
  check('track', track, ...TRACK_MM);
  if (markUncertainty !== undefined) check('markUncertainty', markUncertainty, 0, MOST_MARK_MM);
  if (problems.length > 0) throw new InputError(problems);

  const [outer, inner] = [outerTravel / motionRatio, -innerTravel / innerMotionRatio];
  const rise = (outer - inner) / track;
  return {
    roll: Math.atan(rise) / DEG,
    outer,
    inner: inner || 0,
    heave: (outer + inner) / 2,
    ...(markUncertainty !== undefined && {
      uncertainty:
        (markUncertainty * Math.hypot(1 / motionRatio, 1 / innerMotionRatio)) / (track * (1 + rise * rise) * DEG),
    }),
  };
}
