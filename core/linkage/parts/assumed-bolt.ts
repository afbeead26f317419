import type { Corner, Vector3 } from '../corner.js';

/** Where the other bolt usually is over the wheel centre, mm: common practice, no source. */
const BOLT_OVER_CENTRE = 60;
/** From the wheel centre inboard to a damper's line at that height, mm, where the car's is not known. */
const BOLT_INBOARD = 120;

/** The bolt that stays when a strut's knuckle is turned, as it is assumed: on the damper's line. mm from the wheel centre. */
export function assumedBolt(corner: Corner | undefined): Vector3 {
  if (corner?.kind !== 'strut') return [0, -BOLT_INBOARD, BOLT_OVER_CENTRE];
  const { strut, wheelCentre } = corner;
  const rise = strut.top[2] - strut.low[2];
  const share = rise === 0 ? 0 : (wheelCentre[2] + BOLT_OVER_CENTRE - strut.low[2]) / rise;
  const at = (axis: 0 | 1 | 2) =>
    Math.round(strut.low[axis] + share * (strut.top[axis] - strut.low[axis]) - wheelCentre[axis]);
  return [at(0), at(1), at(2)];
}
