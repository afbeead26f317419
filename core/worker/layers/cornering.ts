import { corneringOf } from '../../answers/cornering.js';
import { corneringDoubtSteps } from '../../answers/cornering-doubt.js';
import { camberForInclination, rollForInclination } from '../../answers/cornering-questions.js';

/** Both wheels of an axle on the road in a turn, how far that can be trusted, and what would bring the outer one where it is wanted. */
export const questions = {
  cornering: corneringOf,
  corneringDoubt: corneringDoubtSteps,
  camberForInclination,
  rollForInclination,
};
