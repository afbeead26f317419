import { curveOf } from '../curve/curve.js';
import { camberOf, type SolvedLinks, type SolvedSource, type TriedSource } from '../curve-sources/solved-source.js';
import type { CamberSource } from '../curve-sources/source.js';
import type { CornerSource } from '../linkage/corner-source.js';
import { numberProblem } from '../quantity/number-problem.js';
import { InputError } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { motionDoubts } from '../wheel/motion-doubts.js';
import { motionOver, rackReaches } from '../wheel/rack-motion.js';
import { travelMotion } from '../wheel/travel-motion.js';
import { countedFrom, type WheelMotion } from '../wheel/wheel-motion.js';

export interface WheelMotionRequest<S = CamberSource> {
  source: S;
  /** Steering at full lock, degrees at reference height, either way; without it straight ahead only. */
  lock?: number;
  /** Where only a curve is known: how far the wheel moves outboard per mm of bump. Left out, along the arc of common links, in more doubt. */
  sideways?: number;
  /** Travel from stock height to where the source was measured, mm; see LoweringRequest. Readings say themselves. Default 0. */
  measuredAt?: number;
}

export const LARGEST_LOCK = 55;

/** A wheel whose static camber nobody read was taken as upright: road cars have −2.5 to +1 degrees. Common practice, no source. */
const UPRIGHT: CornerSource = {
  id: 'camber',
  label: 'static camber',
  dof: Number.POSITIVE_INFINITY,
  moves: {},
  camber: 1.2,
};

/**
 * How a wheel moves, by a source that was solved: hard points and what was measured in a driveway give the whole motion and the
 * steering; a curve gives camber, and its sideways motion is assumed. What is not known of it comes along as `doubts`. A rack
 * position a step.
 *
 * @throws InputError for a bad source, a lock outside 0 to 55 degrees, a sideways motion or a height beyond what is possible
 */
export function* wheelMotionSteps(request: WheelMotionRequest<TriedSource>): Generator<undefined, WheelMotion> {
  const { source, lock, sideways, measuredAt = 0 } = request;
  const problems = [
    ...(lock === undefined ? [] : [numberProblem('lock', lock, 0, LARGEST_LOCK)]),
    ...(measuredAt === 0 ? [] : [numberProblem('measuredAt', measuredAt, QUANTITIES.drop.min, QUANTITIES.drop.max)]),
    ...(sideways === undefined ? [] : [numberProblem('sideways', sideways, -0.5, 0.5)]),
  ].filter((problem) => problem !== undefined);
  if ('problems' in source) throw new InputError([...problems, ...source.problems]);
  if (problems.length > 0) throw new InputError(problems);
  const { links, readings } = source;
  if (links) return countedFrom(yield* motionByLinks(links, source, lock ?? 0), measuredAt);
  const from = readings ? 'readings' : 'coefficients';
  const motion: WheelMotion = { from, ...travelMotion(curveOf(camberOf(source)), sideways, from) };
  return readings ? motion : countedFrom(motion, measuredAt);
}

function* motionByLinks(
  { linkage, sources, moved }: SolvedLinks,
  { driveway }: SolvedSource,
  lock: number,
): Generator<undefined, WheelMotion> {
  const from = driveway ? 'driveway' : 'points';
  const isUpright = driveway !== undefined && !driveway.camber;
  const racks = yield* rackReaches(linkage, lock);
  const motion = yield* motionOver(linkage, racks);
  // Of what parts alone bring to light of a driveway's car some hundredths of a degree of camber are known, no steered wheel.
  const known = sources.filter(({ isOfPartsAlone }) => !isOfPartsAlone);
  const doubts = yield* motionDoubts(moved, racks, { ...motion, from }, isUpright ? [...known, UPRIGHT] : known);
  return {
    from,
    ...(isUpright && { isUpright }),
    ...motion,
    ...(racks.rack.length > 1 && { lock }),
    ...(doubts.length > 0 && { doubts }),
  };
}
