import type { TriedSource } from '../curve-sources/solved-source.js';
import { InputError } from '../quantity/problem.js';
import type { CarInTurn, CorneringAnswer } from './cornering-answer.js';
import { curveInTurn } from './cornering-curve.js';
import { linksInTurn } from './cornering-links.js';
import { type CorneringRequest, corneringProblems } from './cornering-request.js';

/**
 * Both wheels of an axle on the road in a turn, without net heave about the drop. Inclination to the road is camber to the body and the
 * body's whole roll, exactly where a wheel points straight ahead.
 *
 * In the frame of ISO 8855 this is a left turn: the body rolls to the right, positive in `axleAt`, and the right wheel is the outer one.
 * Both corners are alike, so a right turn is its mirror image.
 *
 * @throws InputError with all that is wrong with source and request; `outside-domain`, path `drop` or `roll`, where a wheel ends before,
 *   with the last value as limit, and with `other` 'outer' or 'inner' of roll; `out-of-range`, path `steer.radius`, `steer.rack` or
 *   `steer.angle`, inside the lock that the links allow; path `camber` or `toe` where it cannot be set; `missing`, path `halfTrack`, of a
 *   source that does not tell it; `wrong-shape`, path `steer`, of one that tells no steer
 */
export function corneringOf(request: CorneringRequest): CorneringAnswer {
  return carInTurn(request).at(request.roll);
}

/** @throws InputError as `corneringOf` */
export function carInTurn(request: CorneringRequest): CarInTurn {
  const problems = corneringProblems(request);
  const source: TriedSource = request.source;
  if ('problems' in source) throw new InputError([...problems, ...source.problems]);
  if (problems.length > 0) throw new InputError(problems);
  return source.links ? linksInTurn(request, source, source.links) : curveInTurn(request, source);
}
