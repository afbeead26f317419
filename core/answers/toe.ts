import { type Curve, curveOf } from '../curve/curve.js';
import type { CurveData } from '../curve/curve-data.js';
import { causeOf as causeOfPoint } from '../linkage/causes.js';
import { numberChecks } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { causeOf as causeOfReading } from '../readings/causes.js';
import { type Contribution, contributions, plusMinus95 } from '../uncertainty/combine.js';
import type { Estimate } from '../uncertainty/estimate.js';
import type { Doubted } from './lowering.js';

/** How much does a wheel steer itself from where the car stands? */
export interface ToeRequest {
  /** Toe-in of one wheel over travel from stock height. */
  toe: CurveData;
  /** How far the car is lowered from stock height, mm. */
  drop: number;
  /** Wheel travel from there over which the change is told, mm, bump positive. */
  over: number;
}

export interface ToeAnswer {
  /** How far below stock height the car stands, mm. */
  drop: number;
  /** The bump from there over which toe is told, mm. */
  over: number;
  /** Toe over travel. */
  curve: Curve;
  /** Toe-in where the car stands, degrees. */
  standing: Doubted;
  /** What it changes over `over`, degrees, in positive. */
  change: Doubted;
  /** The same the other way, over as much, degrees; absent where the curve ends before. */
  back?: Doubted;
  /** Degrees per mm where the car stands. */
  rate: Doubted;
  /** What the ± of the change comes from: shares of variance, largest first, adding up to 1. */
  contributions: Contribution[];
}

/** The bump over which toe is asked about until somebody says otherwise, mm: a hard corner's worth. Common practice, no source. */
export const USUAL_TOE_OVER_MM = 40;

/** Across which toe is told as a length until somebody says otherwise, mm: about the flange of a 17 inch rim. */
export const USUAL_ACROSS_MM = 450;

/**
 * @throws InputError `outside-domain`, path `drop` or `toe.over`, of a place that the curve does not reach, with the nearest that it
 *   does; paths `drop`, `toe.over` of what is no number
 */
export function toeOf({ toe, drop, over }: ToeRequest): ToeAnswer {
  const problems: Problem[] = [];
  const number = numberChecks(problems);
  number('drop', drop, QUANTITIES.drop.min, QUANTITIES.drop.max);
  number('toe.over', over, QUANTITIES.travel.min, QUANTITIES.travel.max);
  if (problems.length > 0) throw new InputError(problems);
  const curve = curveOf(toe);
  const [low, high] = curve.domain;
  const outside = (path: string, value: number, limit: number): never => {
    throw new InputError([{ code: 'outside-domain', path, value, limit }]);
  };
  if (drop < low || drop > high) outside('drop', drop, drop < low ? low : high);
  const to = drop + over;
  if (to < low || to > high) outside('toe.over', over, (to < low ? low : high) - drop);
  const doubted = (estimate: Estimate): Doubted =>
    toe.sources.length === 0
      ? { value: estimate.value }
      : { value: estimate.value, plusMinus: plusMinus95(estimate, toe.sources) };
  const change = curve.changeEstimate(to, drop);
  const back = curve.changeEstimate(drop - over, drop);
  const isRead = toe.measured !== undefined || toe.kind === 'polynomial';
  return {
    drop,
    over,
    curve,
    standing: doubted(curve.estimate(drop)),
    change: doubted(change),
    ...(Number.isFinite(back.value) && { back: doubted(back) }),
    rate: doubted(curve.slopeEstimate(drop)),
    contributions: contributions(change, toe.sources, isRead ? causeOfReading : causeOfPoint),
  };
}

/** A toe angle as a length, mm: how much further in the front edge of a rim or tyre of that diameter stands than the rear (ISO 8855's angle, by trigonometry). */
export const toeAcross = (degrees: number, diameterMm: number): number =>
  diameterMm * Math.tan((degrees * Math.PI) / 180);
