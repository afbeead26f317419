import { questions } from '../answers/questions.js';
import { createCore } from './core-api.js';

/** What the self-contained core function returns; built by build-core-function.mjs, for the worker and for the page alike. */
export const api = createCore(questions);
