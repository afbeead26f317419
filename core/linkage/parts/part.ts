import { InputError } from '../../quantity/problem.js';
import { assemble, type Raw } from '../build-linkage.js';
import type { LimitingLink, Linkage } from '../linkage.js';
import { ARM_ANGLE, BALL, POSE_SIZE, poseAt, SPIN, UPPER } from '../pose.js';
import { isOpen } from '../travel.js';
import { wrongShape } from './check.js';

// Rack and axle check their numbers by the same rules.
export { checkNumbers } from './check.js';

/**
 * A part: a linkage in, the linkage with that part out. It changes body points, carrier points or link lengths, and nothing
 * else; the wheel then finds a new place at the same ride height, with whatever camber and toe that gives.
 *
 * What a part is asked for is checked when it is made, what it does to a linkage when it is put on.
 *
 * @throws InputError `cannot-close`, with a link as path, when the changed links do not join at ride height, or only as another
 *   assembly: upper point below the ball joint, or the wheel pointing inboard. `wrong-shape` when this kind of corner has no
 *   such part.
 */
export type Part = (linkage: Linkage) => Linkage;

/** Puts parts on, one after another. */
export function withParts(linkage: Linkage, ...parts: Part[]): Linkage {
  return parts.reduce((built, part) => part(built), linkage);
}

/**
 * The linkage with something about it changed, put together anew at its ride height.
 *
 * @throws InputError `cannot-close`
 */
export function rebuilt(linkage: Linkage, change: Partial<Raw>): Linkage {
  const { kind, body, carrier, lengths, damperEnd, branch, loadedRadius, wheelCentreZ, home } = linkage;
  const raw = { kind, body, carrier, lengths, ...(damperEnd && { damperEnd }), branch, loadedRadius, wheelCentreZ };
  const built = assemble({ ...raw, ...change }, home, isOpen(linkage));
  const [was, is] = [standing(linkage), standing(built)];
  const ends = (path: LimitingLink) => new InputError([{ code: 'cannot-close', path, value: undefined }]);
  // The links of a corner turned inside out may join as well. No part leads there.
  if (was.isUpright !== is.isUpright) throw ends(kind === 'strut' ? 'strut' : 'upperArm');
  if (was.isOutboard !== is.isOutboard) throw ends('tieRod');
  return built;
}

/** Which way up the steering axis and the wheel are at ride height. */
function standing(linkage: Linkage): { isUpright: boolean; isOutboard: boolean } {
  const pose = new Float64Array(POSE_SIZE);
  pose[ARM_ANGLE] = linkage.home;
  poseAt(pose, linkage);
  return { isUpright: pose[UPPER + 2]! > pose[BALL + 2]!, isOutboard: pose[SPIN + 1]! > 0 };
}

/** @throws InputError `wrong-shape`: this kind of corner has no such part. */
export function notOnThisKind(path: string, linkage: Linkage): never {
  return wrongShape(path, linkage.kind);
}
