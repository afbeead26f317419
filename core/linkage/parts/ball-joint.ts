import { add, scale, unit } from '../../math/vector.js';
import type { Vector3 } from '../corner.js';
import { checkNumbers, checkVector, notOnThisKind, type Part, rebuilt } from './part.js';

export interface BallJointOptions {
  /** Default `lower`; a strut has only that one. */
  joint?: 'lower' | 'upper';
  /** Moves the outer tie rod end by the same vector: a tie-rod end of matching height. Without it the joint adds bump steer. */
  correctTieRod?: boolean;
}

/**
 * The ball's centre elsewhere in the carrier: `vector`, mm, in the carrier's frame (the car's axes at reference height). The arm
 * keeps its length, so the carrier moves instead.
 */
export function ballJointMoved({
  vector,
  joint = 'lower',
  correctTieRod = false,
}: BallJointOptions & { vector: Vector3 }): Part {
  checkVector(vector, 'ballJoint.vector');
  return (linkage) => {
    const { carrier } = linkage;
    const name = joint === 'lower' ? 'lowerBall' : 'upperBall';
    const ball = carrier[name];
    if (!ball) return notOnThisKind('ballJoint.joint', linkage);
    return rebuilt(linkage, {
      carrier: {
        ...carrier,
        [name]: add(ball, vector),
        ...(correctTieRod && { tieOuter: add(carrier.tieOuter, vector) }),
      },
    });
  };
}

const DOWN: Vector3 = [0, 0, -1];
const UPWARD: Vector3 = [0, 0, 1];

/**
 * A joint whose ball stands `mm` further from the carrier along its stud: the usual "extended" lower joint puts the arm's outer
 * end lower, or what is the same, lifts the carrier. Ask which part it is before using this: a longer stud in a knuckle that
 * keeps the ball's centre where it was changes almost nothing.
 *
 * @param stud direction from the carrier to the ball, in the carrier's frame; default straight down (lower), up (upper joint)
 */
export function ballJointExtended({
  mm,
  stud,
  joint = 'lower',
  correctTieRod = false,
}: BallJointOptions & { mm: number; stud?: Vector3 }): Part {
  checkNumbers({ 'ballJoint.mm': mm });
  if (stud !== undefined) checkVector(stud, 'ballJoint.stud');
  const direction = unit(stud ?? (joint === 'lower' ? DOWN : UPWARD));
  return ballJointMoved({ vector: scale(direction, mm), joint, correctTieRod });
}
