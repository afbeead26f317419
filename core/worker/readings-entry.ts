import { readingsQuestions } from '../answers/readings-questions.js';
import { createCore } from './core-api.js';

/** What the self-contained function about readings returns; built by build-core-function.mjs, for a worker and for the page alike. */
export const api = createCore(readingsQuestions);
