import type { ReadingsQuestions } from '../answers/questions.js';
import type { Bridge } from './create-bridge.js';
import { pageBridge } from './page-bridge.js';
import { coreFactory } from './readings-function.generated.js';

let own: Bridge<ReadingsQuestions> | undefined;

/** The way to the core that knows readings. */
export const readingsBridge = (): Bridge<ReadingsQuestions> => (own ??= pageBridge('/readings', coreFactory));
