import { solveParts } from '../../curve-sources/solve-parts.js';

/** A corner with parts on it, from hard points or from the driveway. */
export const solvers = { parts: solveParts };
