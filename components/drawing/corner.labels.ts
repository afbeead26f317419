import { words } from '../../core/quantity/words.js';

/** English words on the views of a corner's links. */
export const CORNER = words('drawing/corner', {
  ways: {
    front: 'from the front, outboard to the right',
    side: 'from outside the car, forward to the left',
    top: 'from above: forward is up, outboard to the right',
  },
});
