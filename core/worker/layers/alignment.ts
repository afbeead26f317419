import { alignmentSteps } from '../../answers/alignment.js';

/** What is to be set on a wheel, in which order, and how each moves the next. */
export const questions = { alignment: alignmentSteps };
