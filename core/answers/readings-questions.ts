import { readings } from './readings.js';
import { fitReadings } from './readings-source.js';

/** What is asked of readings, by name. Served apart from the other questions: the fit is nothing to who has no readings. */
export const readingsQuestions = { readings, fitReadings };

export type ReadingsQuestions = typeof readingsQuestions;
