import { type Curve, curveFrom } from '../curve/curve.js';
import type { CurveData } from '../curve/curve-data.js';
import { turningPoints } from '../curve/extrema.js';
import type { Corner } from '../linkage/corner.js';
import type { Motion } from '../linkage/motion.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { contributions, plusMinus95 } from '../uncertainty/combine.js';
import type { Estimate, Source } from '../uncertainty/estimate.js';
import { type CamberSource, type SolvedSource, solveSource } from './camber-source.js';

/** What does lowering do to camber, and what is left in bump? */
export interface LoweringRequest {
  source: CamberSource;
  /** By how much hub centre to arch lip has shrunk, mm; negative when the car was raised. */
  drop: number;
  /** How sure one is of the drop: half-width of a 95 % interval, mm. */
  dropPlusMinus?: number;
  /** Bump travel that was usable at reference height, mm at the wheel. */
  bumpTravel?: number;
}

/** A value with the half-width of its 95 % interval; `plusMinus` is left out where no doubt was stated. */
export interface Doubted {
  value: number;
  plusMinus?: number;
}

export interface LoweringAnswer {
  drop: number;
  /** Camber over travel, degrees and mm. */
  curve: CurveData;
  /** Camber change over the drop, degrees; negative: the top goes inboard. */
  change: Doubted;
  /** Static camber at the new height, degrees. */
  camberAfter: number;
  /** Camber rate at reference height and at the new one, degrees per mm of bump. */
  rateBefore: Doubted;
  rateAfter: Doubted;
  /** The first place in bump, from the lower of the two heights' travels, at which camber stops changing and turns back. */
  reversal?: { travel: Doubted; change: number };
  /** Usable bump left, mm; negative: the car would sit below its stops. */
  bumpLeft?: number;
  /** Which inputs the ± of the change comes from: shares of variance, largest first, adding up to 1. */
  contributions: { id: string; label: string; share: number }[];
  /** The corner as it was understood, and how it moves. Only from hard points. */
  corner?: Corner;
  motion?: Motion;
  reach?: SolvedSource['reach'];
}

const NORMAL_95 = 1.959963984540054;
const LARGEST_PLUS_MINUS_MM = 100;
const LARGEST_BUMP_TRAVEL_MM = 400;

/**
 * @throws InputError for a bad source, a drop outside what the source covers, a negative doubt or bump travel: all at once
 *   where they can be known together.
 */
export function lowering(request: LoweringRequest): LoweringAnswer {
  const problems = requestProblems(request);
  let solved: SolvedSource | undefined;
  try {
    solved = solveSource(request.source);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    problems.push(...error.problems);
  }
  if (!solved || problems.length > 0) throw new InputError(problems);

  const { drop, bumpTravel } = request;
  const curve = curveFrom(solved.curve);
  const [low, high] = curve.domain;
  if (drop < low || drop > high) {
    throw new InputError([{ code: 'outside-domain', path: 'drop', value: drop, limit: drop < low ? low : high }]);
  }

  const change = withDropDoubt(curve, curve.changeEstimate(drop, 0), curve.slope(drop), request.dropPlusMinus);
  const reversal = firstReversal(curve, Math.min(0, drop));
  return {
    drop,
    curve: solved.curve,
    change: doubted(change.estimate, change.sources),
    camberAfter: curve.value(drop),
    rateBefore: doubted(curve.slopeEstimate(0), curve.data.sources),
    rateAfter: doubted(curve.slopeEstimate(drop), curve.data.sources),
    ...(reversal && { reversal }),
    ...(bumpTravel !== undefined && { bumpLeft: bumpTravel - drop }),
    contributions: contributions(change.estimate, change.sources, pointOf),
    ...(solved.corner && { corner: solved.corner }),
    ...(solved.motion && { motion: solved.motion }),
    ...(solved.reach && { reach: solved.reach }),
  };
}

function requestProblems({ drop, dropPlusMinus, bumpTravel }: LoweringRequest): Problem[] {
  const problems: Problem[] = [];
  const check = (path: string, value: unknown, least: number, most: number) => {
    if (value === undefined) return problems.push({ code: 'missing', path, value });
    if (typeof value !== 'number') return problems.push({ code: 'not-a-number', path, value });
    if (!Number.isFinite(value)) return problems.push({ code: 'not-finite', path, value });
    if (value < least || value > most) {
      return problems.push({ code: 'out-of-range', path, value, limit: value < least ? least : most });
    }
    return 0;
  };
  check('drop', drop, QUANTITIES.drop.min, QUANTITIES.drop.max);
  if (dropPlusMinus !== undefined) check('dropPlusMinus', dropPlusMinus, 0, LARGEST_PLUS_MINUS_MM);
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

function firstReversal(curve: Curve, from: number): LoweringAnswer['reversal'] {
  const next = turningPoints(curve).find((point) => point.travel > from);
  if (!next) return undefined;
  return { travel: doubted(next.travelEstimate, curve.data.sources), change: curve.change(next.travel, 0) };
}

/** The three coordinates of a hard point are one thing to measure again. */
function pointOf(source: Source): { id: string; label: string } {
  const id = source.id.replace(/\.(forward|sideways|height)$/, '');
  return { id, label: source.label.replace(/, (forward|sideways|height)$/, '') };
}
