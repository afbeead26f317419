import { solved } from '../../answers/solved.js';
import { solveGiven } from '../../curve-sources/solve-given.js';

export { wrap } from 'comlink';
export { createCore } from '../core-api.js';

/** What every page has: the end of the wire, curves and their doubt. */
export const questions = { solved };
export const solvers = { curve: solveGiven, coefficients: solveGiven };
