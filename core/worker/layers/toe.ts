import { toeCureOf } from '../../answers/toe-cure.js';
import { toeCureDoubtSteps } from '../../answers/toe-cure-doubt.js';

/** How much a wheel steers itself, what flattens it, and how far that can be trusted. */
export const questions = { toeCure: toeCureOf, toeCureDoubt: toeCureDoubtSteps };
