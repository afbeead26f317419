import { curveFrom } from '../curve/curve.js';
import { checkCorner } from '../document/check-corner.js';
import { drivewayCorner } from '../driveway/driveway-corner.js';
import { readDriveway } from '../driveway/read-driveway.js';
import { buildLinkage } from '../linkage/build-linkage.js';
import { numberProblem } from '../quantity/number-problem.js';
import { InputError } from '../quantity/problem.js';
import { rackMotionSteps, travelMotion } from '../wheel/rack-motion.js';
import type { WheelMotion } from '../wheel/wheel-motion.js';
import { type CamberSource, type SolvableSource, solveSource } from './camber-source.js';

export interface WheelMotionRequest<S = CamberSource> {
  source: S;
  /** Steering at full lock, degrees at reference height, either way; without it straight ahead only. */
  lock?: number;
  /** Where only a curve is known: how far the wheel moves outboard per mm of bump. Default 0. */
  sideways?: number;
}

export const LARGEST_LOCK = 55;

/**
 * How a wheel moves, from any source: hard points and what was measured in a driveway give the whole motion and the steering; a
 * curve gives camber, and its sideways motion is assumed.
 *
 * @throws InputError for a bad source, a lock outside 0 to 55 degrees, or one where there is no steering to be turned
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
  const { source, lock, sideways = 0 } = request;
  const problems = [
    ...(lock === undefined ? [] : [numberProblem('lock', lock, 0, LARGEST_LOCK)]),
    numberProblem('sideways', sideways, -0.5, 0.5),
  ].filter((problem) => problem !== undefined);
  if (source?.kind === 'refused') problems.push(...source.problems);
  if (problems.length > 0) throw new InputError(problems);
  if (source?.kind === 'checked' || source?.kind === 'driveway') {
    const driveway = source.kind === 'driveway' ? readDriveway(source.driveway) : undefined;
    const corner = source.kind === 'checked' ? source.corner : drivewayCorner(driveway!);
    return {
      from: driveway ? 'driveway' : 'points',
      ...(driveway && !driveway.camber && { isUpright: true as const }),
      ...(yield* rackMotionSteps(buildLinkage(corner), lock ?? 0)),
    };
  }
  const { curve, readings } = solveSource(source);
  return { from: readings ? 'readings' : 'coefficients', ...travelMotion(curveFrom(curve), sideways) };
}
