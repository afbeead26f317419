import { curveOf } from '../curve/curve.js';
import type { CurveFit } from '../curve/curve-fit.js';
import { turningPoints } from '../curve/extrema.js';
import { fitCurve } from '../curve/fit.js';
import { studentTQuantile } from '../math/student-t.js';
import { causeOf } from '../readings/causes.js';
import type { ReadingDoubts } from '../readings/doubts.js';
import type { Reading, ReadingQuantity } from '../readings/reading.js';
import { type Contribution, contributions, plusMinus95 } from '../uncertainty/combine.js';
import type { Estimate, Source } from '../uncertainty/estimate.js';
import type { Doubted } from './lowering.js';

/** What curve do these readings make, and how far can it be trusted? */
export interface ReadingsRequest {
  quantity: ReadingQuantity;
  readings: readonly Reading[];
  /** How far gauge, tape and zero height can be trusted. */
  doubts?: ReadingDoubts | undefined;
  /** Indexes of readings that the user set aside. */
  setAside?: readonly number[] | undefined;
  /** Of the curve; without it the evidence decides. */
  degree?: number | undefined;
  /** The travel from zero over which the change is asked, mm, bump positive. */
  over?: number | undefined;
}

export interface ReadingsAnswer {
  /** What the gauge read. */
  quantity: ReadingQuantity;
  /** Index into the request's readings of each reading in the fit, in the fit's order. */
  used: number[];
  /** How many passes they are in. */
  passes: number;
  /** The curve through the readings, and how well it fits. */
  fit: CurveFit;
  /** The travel from zero over which the change is told, mm. */
  over: number;
  /** Over that travel, degrees. Absent where nothing was measured at one of its ends: a curve is never extended. */
  change?: Doubted;
  /** What the ± of that change comes from: shares of variance, largest first, adding up to 1. */
  contributions: Contribution[];
  /** Degrees per mm at zero; absent where nothing was measured there. */
  rate?: Doubted;
  /** Half-width of the interval that holds 95 % of the readings taken at one height, passes brought to one zero, degrees. */
  repeated?: number;
  /** Half-width of the 95 % interval of one more reading about the curve, degrees, without the curve's own doubt. */
  readingPlusMinus: number;
  /** Where the change stops and turns back, mm, the one nearest to zero in bump. */
  turn?: Doubted;
}

/** As far as a road car is lowered: common practice, no source. */
const USUAL_OVER_MM = 25;
const ROUND_MM = 5;

/** @throws InputError with everything that is wrong with the readings or the degree. */
export function readings(request: ReadingsRequest): ReadingsAnswer {
  const { quantity, setAside = [], degree, doubts } = request;
  const used = request.readings.map((_, index) => index).filter((index) => !setAside.includes(index));
  const some = used.map((index) => request.readings[index]!);
  const fit = fitCurve(some, { ...doubts, quantity, degree: degree ?? 'auto' });
  const curve = curveOf(fit.curve);
  const doubted = ({ value, parts }: Estimate, sources: readonly Source[] = fit.curve.sources): Doubted => ({
    value,
    plusMinus: plusMinus95({ value, parts }, sources),
  });
  const over = request.over ?? usualOver(curve.domain);
  const change = curve.changeEstimate(over, 0);
  const rate = curve.slopeEstimate(0);
  const turn = turningPoints(curve).find(({ travel }) => travel > 0);
  const { repeatability: repeated } = fit;
  return {
    quantity,
    used,
    passes: new Set(some.map(({ pass }) => pass)).size,
    fit,
    over,
    ...(Number.isFinite(change.value) && { change: doubted(change) }),
    contributions: Number.isFinite(change.value) ? contributions(change, fit.curve.sources, causeOf) : [],
    ...(Number.isFinite(rate.value) && { rate: doubted(rate) }),
    ...(repeated && { repeated: repeated.sd * studentTQuantile(0.975, repeated.dof) }),
    readingPlusMinus: fit.dof > 0 ? fit.residualSd * studentTQuantile(0.975, fit.dof) : Number.NaN,
    ...(turn && { turn: doubted(turn.travelEstimate) }),
  };
}

/** 25 mm of bump, or the last round height that was measured before it. */
function usualOver([, high]: readonly [number, number]): number {
  if (high >= USUAL_OVER_MM) return USUAL_OVER_MM;
  const round = Math.floor(high / ROUND_MM) * ROUND_MM;
  return round > 0 ? round : high;
}
