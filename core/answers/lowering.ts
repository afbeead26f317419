import { type Curve, curveOf } from '../curve/curve.js';
import type { CurveData } from '../curve/curve-data.js';
import { turningPoints } from '../curve/extrema.js';
import { camberOf, type FittedReadings, type MovedLinks, type SolvedSource } from '../curve-sources/solved-source.js';
import type { CamberSource } from '../curve-sources/source.js';
import type { Driveway } from '../driveway/driveway.js';
import { causeOf } from '../linkage/causes.js';
import type { Corner } from '../linkage/corner.js';
import type { Reach } from '../linkage/linkage.js';
import type { Motion } from '../linkage/motion.js';
import { interpolate } from '../math/interpolate.js';
import { numberChecks } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { causeOf as causeOfReadings } from '../readings/causes.js';
import type { TravelBudget } from '../travel/budget.js';
import type { TravelLimits } from '../travel/travel-limits.js';
import { contributions, plusMinus95, subtract } from '../uncertainty/combine.js';
import type { Estimate, Source } from '../uncertainty/estimate.js';
import { NORMAL_95 } from '../uncertainty/normal.js';
import { fromStockHeight, withCamberReadAt } from './re-zero.js';
import type { SolvedData } from './solved.js';

/** What does lowering do to camber, and what is left in bump? */
export interface LoweringRequest<S = CamberSource> {
  source: S;
  /** By how much hub centre to arch lip has shrunk, mm; negative when the car was raised. */
  drop: number;
  /** How sure one is of the drop: half-width of a 95 % interval, mm. */
  dropPlusMinus?: number;
  /** Bump travel that is usable at the height the car was measured at, mm at the wheel. */
  bumpTravel?: number;
  /** The gap to the bump stop along the damper's rod, mm. Needs a source that knows the damper, or a motion ratio in `limits`. */
  stopGap?: number;
  /** What else ends travel, as found at the car. */
  limits?: Omit<TravelLimits, 'stopGap'>;
  /**
   * How it was lowered. By shorter springs on the same dampers, which come nearer to their stops by the drop; by dampers or
   * lower bodies made shorter, whose stroke stays while all other limits come nearer. Default `springs`.
   */
  lowered?: 'springs' | 'dampers';
  /** Travel from stock height to where source and bump travel were measured, mm: the drop, on a car that is lowered already. Default 0. */
  measuredAt?: number;
  /** How much lower than there the car stood when its static camber was read, mm: 0 empty (default), more with people aboard. */
  camberReadLower?: number;
  /** The same axle's other side, on the mirrored curve: its drop, mm, and its static camber where the car was measured, degrees. */
  other?: { drop: number; camber: number };
}

/** A value with the half-width of its 95 % interval; `plusMinus` is left out where no doubt was stated. */
export interface Doubted {
  /** In the unit that is told where it stands. */
  value: number;
  /** In the same unit. */
  plusMinus?: number;
}

export interface LoweringAnswer {
  /** How far below stock height the car stands, mm. */
  drop: number;
  /** Camber over travel, degrees and mm. */
  curve: CurveData;
  /** Camber change over the drop, degrees; negative: the top goes inboard. */
  change: Doubted;
  /** Static camber at the new height, degrees. */
  camberAfter: number;
  /** The other side at its new height, degrees; `difference`: this side's camber less the other's. */
  other?: { camberAfter: number; difference: number };
  /** Camber rate at reference height and at the new one, degrees per mm of bump. */
  rateBefore: Doubted;
  /** At the new height, degrees per mm of bump. */
  rateAfter: Doubted;
  /** The two rates cannot be told apart. Only from readings. */
  isStraight?: true;
  /** The first place in bump, mm from the lower of the two heights' travels, at which camber stops changing and turns back; degrees up to there. */
  reversal?: { travel: Doubted; change: number };
  /**
   * Usable bump left until solid, or where only the stop's gap is known until it is touched, mm; negative: past it already. As
   * `budget` only where something was said of what ends travel; both come by `withBudget`.
   */
  bumpLeft?: number;
  /** Both ends of travel, and which limit governs. */
  budget?: TravelBudget;
  /** Which inputs the ± of the change comes from: shares of variance, largest first, adding up to 1. */
  contributions: { id: string; label: string; share: number }[];
  /** The measurements as they were understood, with what was assumed. Only from the driveway: `answersToe` is false there. */
  driveway?: Driveway;
  /** The readings as the curve takes them. Only from readings. */
  readings?: FittedReadings;
  /** The corner as it was understood, and how it moves. Only from hard points, and from the driveway the plane one made of it. */
  corner?: Corner;
  /** Where the joints are over travel, as its drawing needs them. */
  motion?: Motion;
  /** Roll centre above the ground at reference height and at the new one, mm, both sides of the axle alike. */
  rollCentre?: { before: number; after: number };
  /** Where the links themselves end travel, mm. */
  reach?: Pick<Reach, 'droop' | 'bump' | 'droopEndedBy' | 'bumpEndedBy'>;
}

const LARGEST_PLUS_MINUS_MM = 100;
const LARGEST_BUMP_TRAVEL_MM = 400;
const LARGEST_LOAD_MM = 60;

/**
 * The answer from a source that was solved, without what is left of travel.
 *
 * @throws InputError for a bad source, a drop or a stock height outside what the source covers, a negative doubt or bump travel: all at once
 *   where they can be known together.
 */
export function loweringOf(request: LoweringRequest<SolvedData>): LoweringAnswer {
  const problems = requestProblems(request);
  const { source } = request;
  if ('problems' in source) throw new InputError([...problems, ...source.problems]);
  if (problems.length > 0) throw new InputError(problems);

  const { drop, measuredAt = 0 } = request;
  const solved = fromStockHeight(source, request);
  const { links } = solved;
  const curve = curveOf(camberOf(solved));
  const { other } = request;
  const [low, high] = curve.domain;
  for (const [path, value] of [
    // Every change is counted from there.
    ['stockHeight', 0],
    ['drop', drop],
    ['other.drop', other?.drop ?? drop],
  ] as const) {
    if (value >= low && value <= high) continue;
    throw new InputError([{ code: 'outside-domain', path, value, limit: value < low ? low : high }]);
  }
  // Its camber was read as this side's was: on the lowered car where that was measured, with as many people aboard.
  const otherCamber =
    other && other.camber + loadShift(source, request) + (measuredAt === 0 ? curve.change(other.drop, 0) : 0);

  const change = withDropDoubt(curve, curve.changeEstimate(drop, 0), curve.slope(drop), request.dropPlusMinus);
  const isFitted = solved.readings !== undefined;
  const reversal = firstReversal(curve, Math.min(0, drop), isFitted);
  const bend = subtract(curve.slopeEstimate(drop), curve.slopeEstimate(0));
  return {
    drop,
    curve: curve.data,
    change: doubted(change.estimate, change.sources),
    camberAfter: curve.value(drop),
    ...(otherCamber !== undefined && {
      other: { camberAfter: otherCamber, difference: curve.value(drop) - otherCamber },
    }),
    rateBefore: doubted(curve.slopeEstimate(0), curve.data.sources),
    rateAfter: doubted(curve.slopeEstimate(drop), curve.data.sources),
    ...(isFitted && !isTold(bend, curve) && { isStraight: true }),
    ...(reversal && { reversal }),
    contributions: contributions(change.estimate, change.sources, solved.readings ? causeOfReadings : causeOf),
    ...(solved.driveway && { driveway: solved.driveway }),
    ...(solved.readings && { readings: solved.readings }),
    ...(links && {
      corner: links.corner,
      motion: links.motion,
      rollCentre: rollCentreOf(links, drop),
      reach: links.reach,
    }),
  };
}

/** What a load did to the camber that was read, degrees. */
function loadShift(empty: SolvedSource<MovedLinks>, { camberReadLower = 0 }: LoweringRequest<unknown>): number {
  const { camber } = withCamberReadAt(empty, camberReadLower);
  return empty.camber?.kind === 'sampled' && camber?.kind === 'sampled' ? camber.value[0]! - empty.camber.value[0]! : 0;
}

/** Between samples 2.5 mm apart by a straight line: off by some hundredths of a millimetre. */
function rollCentreOf({ motion, rollCentreHeight }: MovedLinks, drop: number): { before: number; after: number } {
  const at = (travel: number) => interpolate(motion.travel, rollCentreHeight, travel);
  return { before: at(0), after: at(drop) };
}

/** What is wrong with a request, but for its source. */
function requestProblems(request: LoweringRequest<unknown>): Problem[] {
  const { drop, dropPlusMinus, bumpTravel, stopGap, measuredAt, camberReadLower } = request;
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  check('drop', drop, QUANTITIES.drop.min, QUANTITIES.drop.max);
  if (dropPlusMinus !== undefined) check('dropPlusMinus', dropPlusMinus, 0, LARGEST_PLUS_MINUS_MM);
  if (request.other !== undefined) {
    check('other.drop', request.other.drop, QUANTITIES.drop.min, QUANTITIES.drop.max);
    check('other.camber', request.other.camber, QUANTITIES.camber.min, QUANTITIES.camber.max);
  }
  if (measuredAt !== undefined) check('measuredAt', measuredAt, QUANTITIES.drop.min, QUANTITIES.drop.max);
  if (camberReadLower !== undefined) check('camberReadLower', camberReadLower, 0, LARGEST_LOAD_MM);
  if (stopGap !== undefined) check('stopGap', stopGap, 0, LARGEST_BUMP_TRAVEL_MM);
  if (bumpTravel !== undefined) check('bumpTravel', bumpTravel, 0, LARGEST_BUMP_TRAVEL_MM);
  return problems;
}

/** The height itself is measured too: its doubt reaches the change through the rate there. */
function withDropDoubt(curve: Curve, estimate: Estimate, rate: number, dropPlusMinus = 0) {
  const sources: Source[] = curve.data.sources;
  if (dropPlusMinus === 0) return { estimate, sources };
  const parts = new Float64Array(estimate.parts.length + 1);
  parts.set(estimate.parts);
  parts[estimate.parts.length] = (rate * dropPlusMinus) / NORMAL_95;
  return {
    estimate: { value: estimate.value, parts },
    sources: [
      ...sources.slice(0, estimate.parts.length),
      { id: 'drop', label: 'the drop', dof: Number.POSITIVE_INFINITY },
    ],
  };
}

function doubted(estimate: Estimate, sources: Source[]): Doubted {
  if (estimate.parts.length === 0) return { value: estimate.value };
  return { value: estimate.value, plusMinus: plusMinus95(estimate, sources) };
}

/** Whether it can be told from nothing. */
const isTold = (estimate: Estimate, { data }: Curve): boolean =>
  Math.abs(estimate.value) > plusMinus95(estimate, data.sources);

/** @param isFitted to readings: their scatter makes turns of its own, which go no way back that could be told from nothing */
function firstReversal(curve: Curve, from: number, isFitted: boolean): LoweringAnswer['reversal'] {
  const next = turningPoints(curve).find(
    ({ travel }, i, all) =>
      travel > from &&
      !(isFitted && !isTold(curve.changeEstimate(all[i + 1]?.travel ?? curve.domain[1], travel), curve)),
  );
  if (!next) return undefined;
  return { travel: doubted(next.travelEstimate, curve.data.sources), change: curve.change(next.travel, 0) };
}
