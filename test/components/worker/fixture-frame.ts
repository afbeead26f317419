import { createBridge } from '../../../core/worker/create-bridge.js';
import { fixture } from './fixture.generated.js';
import type { questions } from './fixture-core.js';

/** Asks once from inside a frame with a policy of its own and tells the page around it who answered. */
const bridge = createBridge<typeof questions>({ layers: [fixture] });
const { where } = await bridge.ask('sum', { numbers: new Float64Array([1]) }, { slot: 'frame' });
parent.postMessage({ where, mode: bridge.mode }, '*');
bridge.end();
