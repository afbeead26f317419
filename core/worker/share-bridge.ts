import { VERSION } from '../version.js';
import { type Bridge, createBridge } from './create-bridge.js';
import { asking } from './errors.js';
import type { CoreApi, QuestionRecord } from './protocol.js';

/**
 * The page's one bridge to a core function: all elements, and all copies of this version on the page, share its worker.
 *
 * @param name tells the functions of one version apart
 */
export function shareBridge<Q extends QuestionRecord>(name: string, coreFactory: () => CoreApi<Q>): () => Bridge<Q> {
  let own: Bridge<Q> | undefined;
  return () => {
    if (own) return own;
    const page = globalThis as unknown as Record<symbol, Bridge<Q> | undefined>;
    const key = Symbol.for(`bumpline.worker/${VERSION}${name}`);
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
    return own;
  };
}
