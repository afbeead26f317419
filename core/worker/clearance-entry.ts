import { clearanceQuestions } from '../answers/clearance-questions.js';
import { createCore } from './core-api.js';

/** What the self-contained function about clearance returns; built by build-core-function.mjs, for a worker and for the page alike. */
export const api = createCore(clearanceQuestions);
