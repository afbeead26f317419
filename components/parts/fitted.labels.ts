import { words } from '../../core/quantity/words.js';

/** English words of the set of parts that is on a car, and of why it does not go on. */
export const FITTED = words('parts/fitted', {
  label: 'Parts on the car',
  none: 'none',
  step: (name: string): string => `parts on the car: ${name}`,
  cannotSet: {
    toe: 'With these parts the toe it had cannot be set again. Choose smaller amounts, check their signs, or set nothing again.',
    camber:
      'With these parts the camber it had cannot be set again. Choose smaller amounts, check their signs, or set toe alone.',
  },
  links: {
    tieRod: 'the tie rod',
    strut: 'the strut',
    upperArm: 'the upper arm',
    lowerArm: 'the lower arm',
  },
  /** A part by the name of the function that makes it. */
  what: {
    ballJointExtended: 'the ball joint',
    ballJointMoved: 'the ball joint',
    armLonger: 'the arm',
    innerPivotsRaised: 'the inner pivots',
    topMountMoved: 'the top mount',
    knuckleBoltsTurned: 'the knuckle bolts',
    spinAxisTurned: 'the knuckle',
    tieRodEndRaised: 'the tie-rod end',
    tieRodLonger: 'this length',
    rackRaised: 'the rack',
    wheelOffset: 'the wheel offset',
  },
});
