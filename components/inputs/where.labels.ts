import { words } from '../../core/quantity/words.js';

/** English words of the drawings that show where something is measured. */
export const WHERE = words('inputs/where', {
  topMount: 'top mount',
  bumpStop: 'bump stop',
  rod: 'rod',
  spring: 'spring',
  body: 'damper body',
  ball: 'ball joint',
  floor: 'floor',
  front: '← front of car',
  frontUp: 'front of car ↑',
  stands: 'as it stands',
  toeIn: 'in bump: toe-in',
  car: 'car',
  arm: 'arm',
  damper: 'damper',
  strut: 'strut',
  tieRod: 'tie rod',
  fromFront: 'from the front',
  gap: "A damper's rod with its bump stop: mount above, stop on the rod under it, damper body below. The measured distance is marked.",
  measured:
    'A strut from the front: arm from its inner pivot to the ball joint, damper up to the top mount, wheel on the floor. The measured distance or angle is marked.',
  caster:
    'A front wheel from the side, the car’s front on the left: the steering axis from the ball joint up to the top mount leans rearward of a plumb line. The angle between them is marked.',
  bumpSteer:
    'A left front wheel from above, the car’s front at the top: dashed as it stands, and turned a little inward 25 mm further up. The angle between is marked.',
  point:
    'The point, seen from the front and from the left. x points forward from the axle, y out from the centreline, z up from the ground.',
});
