import { amountSteps } from '../../answers/amount.js';
import { rollCentre } from '../../answers/roll-centre.js';
import { solveParts } from '../../curve-sources/solve-parts.js';

/** A corner with parts on it, from hard points or from the driveway: its curves, its roll centre, and how large a part must be. */
export const questions = { rollCentre, amount: amountSteps };
export const solvers = { parts: solveParts };
