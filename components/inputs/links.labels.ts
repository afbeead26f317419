import { words } from '../../core/quantity/words.js';

/** English words around the numbers that links rest on. */
export const LINKS = words('inputs/links', {
  lookAgain: 'Look again',
  doNotFit: 'The links do not fit together. The likely cause:',
  axes: 'x forward of the axle, y out from the centreline, z up from the ground; left corner, as the car stood when it was measured. In italics: example values; replace them with yours.',
  floor: 'Heights from the floor the car stands on. In italics: example values; replace them with yours.',
  suspects: 'What looks unusual in these points:',
  half: 'not complete',
});
