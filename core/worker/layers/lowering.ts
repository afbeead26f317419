import { loweringOf } from '../../answers/lowering.js';

/** The answer about heights on a curve. */
export const questions = { lowering: loweringOf };
