import { corneringOf } from '../../answers/cornering.js';

/** Both wheels of an axle on the road in a turn. */
export const questions = { cornering: corneringOf };
