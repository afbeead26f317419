import { createBridge } from '../../../core/worker/create-bridge.js';
import { coreFactory } from './fixture-core.generated.js';

/** Asks once from inside a frame with a policy of its own and tells the page around it who answered. */
const bridge = createBridge({ coreFactory });
const { where } = await bridge.ask('sum', { numbers: new Float64Array([1]) }, { slot: 'frame' });
parent.postMessage({ where, mode: bridge.mode }, '*');
bridge.end();
