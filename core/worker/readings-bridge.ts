import type { ReadingsQuestions } from '../answers/readings-questions.js';
import { coreFactory } from './readings-function.generated.js';
import { shareBridge } from './share-bridge.js';

/** To what is asked of readings: a function and a worker of their own. */
export const readingsBridge = shareBridge<ReadingsQuestions>('/readings', coreFactory);
