import { readingsQuestions } from '../answers/questions.js';
import { createCore } from './core-api.js';

/** The same for readings: the fit, and no suspension. */
export const api = createCore(readingsQuestions);
