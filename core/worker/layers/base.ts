import { solved } from '../../answers/solved.js';

export { wrap } from 'comlink';
export { createCore } from '../core-api.js';

/** What every page has: the end of the wire, curves and their doubt. */
export const questions = { solved };
