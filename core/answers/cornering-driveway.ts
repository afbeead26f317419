import type { SolvedSource } from '../curve-sources/solved-source.js';
import { DRIVEWAY_FIELDS } from '../driveway/driveway.js';
import type { Linkage } from '../linkage/linkage.js';
import { leftwards } from '../linkage/turned-in.js';
import { DEG } from '../math/angle.js';
import type { Source } from '../uncertainty/estimate.js';
import { NORMAL_95 } from '../uncertainty/normal.js';
import { ackermannAngles, radiusOfMean } from './ackermann.js';
import type { CorneringAnswer } from './cornering-answer.js';
import { bodyAngles, pivotTrack } from './cornering-links.js';
import type { CorneringRequest } from './cornering-request.js';

/** One more cause of doubt, and what it adds to each inclination, degrees. */
export interface CauseInTurn {
  source: Source;
  outer: number;
  inner: number;
}

/** Of a car nobody told the wheelbase of, m: common practice, no source. */
const USUAL_WHEELBASE_M = 2.5;
const RACK_STEP_MM = 1;
const STATED = Number.POSITIVE_INFINITY;

/**
 * What counts in a turn of what a driveway leaves open, and in nothing straight ahead on the level: the track, which says how far each wheel
 * goes at a roll, and how the linkage shares a steer between the wheels, anywhere between alike and as the radius asks (Ackermann).
 *
 * @param linkage as it stands at the drop
 */
export function causesOfDriveway(
  linkage: Linkage,
  { driveway }: SolvedSource,
  request: CorneringRequest,
  answer: CorneringAnswer,
): CauseInTurn[] {
  const track = driveway!.taken.track;
  const { outer, inner } = answer.perDegreeOfRoll;
  const roll = request.roll * DEG;
  // Each wheel goes half track × tan(roll): its camber's rate stands in what a degree of roll does, less the roll itself.
  const share = (Math.sin(roll) * Math.cos(roll) * track.plusMinus) / (NORMAL_95 * track.value * DEG);
  return [
    {
      source: { id: 'track', label: DRIVEWAY_FIELDS.track.label, dof: STATED },
      outer: (outer - 1) * share,
      inner: (inner + 1) * share,
    },
    ...(request.steer ? [shareOfSteer(linkage, request, answer)] : []),
  ];
}

function shareOfSteer(linkage: Linkage, { steer, drop }: CorneringRequest, answer: CorneringAnswer): CauseInTurn {
  const { outer, inner, rack } = answer;
  const mean = (outer.steer + inner.steer) / 2;
  const wheelbase = steer && 'wheelbase' in steer ? steer.wheelbase : USUAL_WHEELBASE_M;
  const pivots = pivotTrack(linkage);
  const asked = ackermannAngles({ radius: radiusOfMean(Math.max(mean, 1e-3), wheelbase, pivots), wheelbase }, pivots);
  // Its tie rod is a copy of the arm, which shares alike: what is missing is anywhere up to half the difference. GUM (JCGM 100:2008), 4.3.7.
  const uncertainty = (asked.inner - asked.outer) / 2 / Math.sqrt(3);
  const own = rack * leftwards(linkage);
  const perDegree = (travel: number, at: number) => {
    const [more, less] = [RACK_STEP_MM, -RACK_STEP_MM].map((by) => bodyAngles(linkage, travel - drop, at + by));
    return (more!.lean - less!.lean) / (more!.toe - less!.toe);
  };
  return {
    source: { id: 'method.steer', label: 'the method', dof: STATED },
    // Toe-in steers the outer wheel into the turn and the inner one out of it; what one steers more, the other steers less.
    outer: perDegree(outer.travel, -own) * uncertainty,
    inner: perDegree(inner.travel, own) * uncertainty,
  };
}
