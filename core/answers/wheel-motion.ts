import { curveFrom } from '../curve/curve.js';
import { checkCorner } from '../document/check-corner.js';
import { drivewayCorner } from '../driveway/driveway-corner.js';
import { drivewaySources } from '../driveway/driveway-sources.js';
import { readDriveway } from '../driveway/read-driveway.js';
import { buildLinkage } from '../linkage/build-linkage.js';
import type { StrutCorner } from '../linkage/corner.js';
import type { CornerSource } from '../linkage/corner-source.js';
import { numberProblem } from '../quantity/number-problem.js';
import { InputError } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { motionDoubts } from '../wheel/motion-doubts.js';
import { motionOver, rackReaches } from '../wheel/rack-motion.js';
import { travelMotion } from '../wheel/travel-motion.js';
import { countedFrom, type WheelMotion } from '../wheel/wheel-motion.js';
import { type CamberSource, type SolvableSource, solveSource } from './camber-source.js';
import { cornerSources } from './corner-doubt.js';

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
 * How a wheel moves, from any source: hard points and what was measured in a driveway give the whole motion and the steering; a
 * curve gives camber, and its sideways motion is assumed. What is not known of it comes along as `doubts`.
 *
 * @throws InputError for a bad source, a lock outside 0 to 55 degrees, a sideways motion or a height beyond what is possible
 */
export const wheelMotion = (request: WheelMotionRequest): WheelMotion => {
  const { source } = request;
  return wheelMotionOfChecked({
    ...request,
    source: source?.kind === 'corner' ? { kind: 'checked', corner: checkCorner(source.corner) } : source,
  });
};

/** The same without the schema of corners. */
export function wheelMotionOfChecked(request: WheelMotionRequest<SolvableSource>): WheelMotion {
  const steps = wheelMotionSteps(request);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The same in steps, a rack position each. */
export function* wheelMotionSteps(request: WheelMotionRequest<SolvableSource>): Generator<undefined, WheelMotion> {
  const { source, lock, sideways, measuredAt = 0 } = request;
  const problems = [
    ...(lock === undefined ? [] : [numberProblem('lock', lock, 0, LARGEST_LOCK)]),
    ...(measuredAt === 0 ? [] : [numberProblem('measuredAt', measuredAt, QUANTITIES.drop.min, QUANTITIES.drop.max)]),
    ...(sideways === undefined ? [] : [numberProblem('sideways', sideways, -0.5, 0.5)]),
  ].filter((problem) => problem !== undefined);
  if (source?.kind === 'refused') problems.push(...source.problems);
  if (problems.length > 0) throw new InputError(problems);
  if (source?.kind === 'checked' || source?.kind === 'driveway') {
    const driveway = source.kind === 'driveway' ? readDriveway(source.driveway) : undefined;
    const corner = source.kind === 'checked' ? source.corner : drivewayCorner(driveway!);
    const from = driveway ? 'driveway' : 'points';
    const linkage = buildLinkage(corner);
    const racks = yield* rackReaches(linkage, lock ?? 0);
    const motion = yield* motionOver(linkage, racks);
    const sources = driveway ? drivewaySources(driveway, corner as StrutCorner) : cornerSources(corner);
    if (driveway && !driveway.camber) sources.push(UPRIGHT);
    const doubts = yield* motionDoubts(corner, racks, { ...motion, from }, sources);
    const whole: WheelMotion = {
      from,
      ...(driveway && !driveway.camber && { isUpright: true as const }),
      ...motion,
      ...(racks.rack.length > 1 && { lock: lock! }),
      ...(doubts.length > 0 && { doubts }),
    };
    return countedFrom(whole, measuredAt);
  }
  const { curve, readings } = solveSource(source);
  const from = readings ? 'readings' : 'coefficients';
  const motion: WheelMotion = { from, ...travelMotion(curveFrom(curve), sideways, from) };
  return readings ? motion : countedFrom(motion, measuredAt);
}
