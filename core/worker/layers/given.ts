import { solveGiven } from '../../curve-sources/solve-given.js';

/** Curves and coefficients that a page gives: what checks them. */
export const solvers = { curve: solveGiven, coefficients: solveGiven };
