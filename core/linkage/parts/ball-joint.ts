import { add, scale, unit } from '../../math/vector.js';
import type { Vector3 } from '../corner.js';
import { checkDirection, checkFlag, checkName, checkNumbers, checkVector, given } from './check.js';
import { notOnThisKind, type Part, rebuilt } from './part.js';

export interface BallJointOptions {
  /** Default `lower`; a strut has only that one. */
  joint?: 'lower' | 'upper';
  /**
   * Default false. True: the tie rod is corrected too, its outer end moved by the same vector (a tie-rod end of matching height).
   * Without it the joint adds bump steer.
   */
  correctTieRod?: boolean;
}

const JOINTS = ['lower', 'upper'];

/**
 * The ball's centre elsewhere in the carrier: `vector`, mm, in the carrier's frame (the car's axes at reference height). Changes
 * that carrier point, and the outer tie rod end when `correctTieRod` says so. Every length stays, the arm's too, so the carrier
 * moves instead; hub, damper axis and body stay.
 *
 * @throws InputError from `ballJoint`, `ballJoint.vector`, `ballJoint.vector.0` to `.2`, `ballJoint.joint`,
 *   `ballJoint.correctTieRod`
 */
export function ballJointMoved(options: BallJointOptions & { vector: Vector3 }): Part {
  const { vector, joint = 'lower', correctTieRod = false } = given(options, 'ballJoint');
  checkVector(vector, 'ballJoint.vector');
  checkName(joint, JOINTS, 'ballJoint.joint');
  checkFlag(correctTieRod, 'ballJoint.correctTieRod');
  const [x, y, z] = vector;
  const by: Vector3 = [x, y, z];
  return (linkage) => {
    const { carrier } = linkage;
    const name = joint === 'lower' ? 'lowerBall' : 'upperBall';
    const ball = carrier[name];
    if (!ball) return notOnThisKind('ballJoint.joint', linkage);
    return rebuilt(linkage, {
      carrier: { ...carrier, [name]: add(ball, by), ...(correctTieRod && { tieOuter: add(carrier.tieOuter, by) }) },
    });
  };
}

const DOWN: Vector3 = [0, 0, -1];
const UPWARD: Vector3 = [0, 0, 1];

/**
 * A joint whose ball stands `mm` further from the carrier along its stud: the usual "extended" lower joint puts the arm's outer
 * end lower, or what is the same, lifts the carrier.
 *
 * Ask which part it is before using this. A longer stud in a knuckle that keeps the ball's centre where it was (a deeper taper,
 * a taller housing on the arm's side) changes almost nothing. The same holds for a wishbone's upper joint. Only the distance by
 * which the centre itself moves counts.
 *
 * @param options `stud`: direction from the carrier to the ball, in the carrier's frame, of any length; default straight down
 *   (lower joint), straight up (upper joint)
 * @throws InputError as `ballJointMoved`, and from `ballJoint.mm`, `ballJoint.stud`
 */
export function ballJointExtended(options: BallJointOptions & { mm: number; stud?: Vector3 }): Part {
  const { mm, stud, ...rest } = given(options, 'ballJoint');
  checkNumbers({ 'ballJoint.mm': mm });
  if (stud !== undefined) checkDirection(stud, 'ballJoint.stud');
  const direction = stud ? unit(stud) : rest.joint === 'upper' ? UPWARD : DOWN;
  return ballJointMoved({ ...rest, vector: scale(direction, mm) });
}
