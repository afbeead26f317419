import { agreement } from '../../answers/agreement.js';
import { predictedShape, predictSteps } from '../../answers/predict.js';
import { solveLearnt } from '../../learn/solve-learnt.js';

/** A corner learnt from readings, what parts would do on it, and whether what was measured with them agrees. */
export const questions = { predict: predictSteps, predictedShape, agreement };
export const solvers = { learnt: solveLearnt };
