import type { Questions } from '../answers/questions.js';
import { coreFactory } from './core-function.generated.js';
import { shareBridge } from './share-bridge.js';

export { type Bridge, type BridgeMode, type BridgeOptions, createBridge } from './create-bridge.js';
export { WorkerFault } from './errors.js';

/** To what is asked of a linkage. */
export const sharedBridge = shareBridge<Questions>('', coreFactory);
