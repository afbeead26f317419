import { toeCureOf } from '../../answers/toe-cure.js';

/** How much a wheel steers itself, and what flattens it. */
export const questions = { toeCure: toeCureOf };
