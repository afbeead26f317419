import { add } from '../../math/vector.js';
import type { Vector3 } from '../corner.js';
import { checkVector, given } from './check.js';
import { notOnThisKind, type Part, rebuilt } from './part.js';

/**
 * A strut's top mount moved in the body by `vector`, mm in the car's axes: inboard is negative y. Changes that one body point;
 * the damper's axis stays where it is in the carrier, every length stays.
 *
 * @throws InputError from `topMount`, `topMount.vector`, `topMount.vector.0` to `.2`; `wrong-shape`, path `topMount`, on a
 *   wishbone
 */
export function topMountMoved(options: { vector: Vector3 }): Part {
  const { vector } = given(options, 'topMount');
  checkVector(vector, 'topMount.vector');
  const [x, y, z] = vector;
  return (linkage) => {
    const { body } = linkage;
    if (!body.top) return notOnThisKind('topMount', linkage);
    return rebuilt(linkage, { body: { ...body, top: add(body.top, [x, y, z]) } });
  };
}
