import type { Questions } from '../answers/questions.js';
import { VERSION } from '../version.js';
import { coreFactory } from './core-function.generated.js';
import { type Bridge, createBridge } from './create-bridge.js';
import { asking } from './errors.js';

export { type Bridge, type BridgeMode, type BridgeOptions, createBridge } from './create-bridge.js';
export { WorkerFault } from './errors.js';

let own: Bridge<Questions> | undefined;

/** The page's one bridge: all elements, and all copies of this version on the page, share its worker. */
export function sharedBridge(): Bridge<Questions> {
  if (!own) {
    const page = globalThis as unknown as Record<symbol, Bridge<Questions> | undefined>;
    const key = Symbol.for(`bumpline.worker/${VERSION}`);
    page[key] ??= createBridge({ coreFactory });
    const shared = page[key];
    own = {
      // The errors must be of this copy's classes, whichever copy made the bridge.
      ask: asking(shared.askForReply),
      askForReply: shared.askForReply,
      get mode() {
        return shared.mode;
      },
      end: shared.end,
    };
  }
  return own;
}
