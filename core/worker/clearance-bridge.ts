import type { ClearanceQuestions } from '../answers/clearance-questions.js';
import { coreFactory } from './clearance-function.generated.js';
import { shareBridge } from './share-bridge.js';

/** To what is asked of wheels in their arches: a function and a worker of their own. */
export const clearanceBridge = shareBridge<ClearanceQuestions>('/clearance', coreFactory);
