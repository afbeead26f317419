import { predictedShape, predictSteps } from '../../answers/predict.js';
import { solveLearnt } from '../../learn/solve-learnt.js';

/** A corner learnt from readings, and what parts would do on it. */
export const questions = { predict: predictSteps, predictedShape };
export const solvers = { learnt: solveLearnt };
