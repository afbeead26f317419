import { agreement } from '../../answers/agreement.js';
import { predictedShape, predictMoreSteps, predictSaidSteps } from '../../answers/predict.js';
import { solveLearnt } from '../../learn/solve-learnt.js';

/** A corner learnt from readings, what parts would do on it, and whether what was measured with them agrees. */
export const questions = { predictSaid: predictSaidSteps, predictMore: predictMoreSteps, predictedShape, agreement };
export const solvers = { learnt: solveLearnt };
