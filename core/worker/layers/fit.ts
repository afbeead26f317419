import { readings } from '../../answers/readings.js';
import { fitReadings } from '../../curve-sources/fit-readings.js';

/** Curves fitted to readings. */
export const questions = { readings };
export const solvers = { readings: fitReadings };
