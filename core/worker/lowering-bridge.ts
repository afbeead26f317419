import type { LoweringQuestions } from '../answers/questions.js';
import type { Bridge } from './create-bridge.js';
import { coreFactory } from './lowering-function.generated.js';
import { pageBridge } from './page-bridge.js';

let own: Bridge<LoweringQuestions> | undefined;

/** The way to the core that knows suspensions. */
export const loweringBridge = (): Bridge<LoweringQuestions> => (own ??= pageBridge('', coreFactory));
