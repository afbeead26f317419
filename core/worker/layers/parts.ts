import { amountSteps } from '../../answers/amount.js';
import { solveParts } from '../../curve-sources/solve-parts.js';

/** A corner with parts on it, from hard points or from the driveway; and how large a part must be. */
export const questions = { amount: amountSteps };
export const solvers = { parts: solveParts };
