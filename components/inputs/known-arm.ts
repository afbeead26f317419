import type { CarDocument } from '../../core/document/car.js';
import { type SteeringArm, steeringArmOf } from '../../core/linkage/steering-arm.js';

/** The tie rod and its steering arm as a user's or a page's hard points have them. */
export function pointsArm({ given: { points } }: CarDocument): SteeringArm | undefined {
  const { 'lowerArm.ball': ball, 'strut.top': top, 'tieRod.inner': inner, 'tieRod.outer': outer } = points;
  return ball && top && inner && outer && steeringArmOf(ball, top, inner, outer);
}

/** What is known of the tie rod: what was typed, else what hard points tell. */
export function knownArm(car: CarDocument): Partial<SteeringArm> {
  const { rodLength, lever, rackSide } = car.toe ?? {};
  return {
    ...pointsArm(car),
    ...(rodLength !== undefined && { rodLength }),
    ...(lever !== undefined && { lever }),
    ...(rackSide && { rack: rackSide }),
  };
}
