import { rollCentre } from '../../answers/roll-centre.js';
import { solveParts } from '../../curve-sources/solve-parts.js';

/** A corner with parts on it, from hard points or from the driveway, and where its roll centre is. */
export const questions = { rollCentre };
export const solvers = { parts: solveParts };
