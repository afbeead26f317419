import { loweringOfSolvable } from './lowering.js';
import { readings } from './readings.js';
import { solveReadings } from './readings-source.js';

/*
 * Every question that can be asked, by name: plain request → plain answer. Each record is a core function and a worker of its own,
 * fetched only by who asks one of its questions.
 */

export const loweringQuestions = { lowering: loweringOfSolvable };

/** `curveOfReadings` makes of readings what the question about lowering takes. */
export const readingsQuestions = { readings, curveOfReadings: solveReadings };

export type LoweringQuestions = typeof loweringQuestions;
export type ReadingsQuestions = typeof readingsQuestions;
