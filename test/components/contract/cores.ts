import { BRIDGE, type Bridge, createBridge } from '../../../core/worker/bridge.js';
import { base } from '../../../core/worker/layers/base.generated.js';

/** What the next calls to the core meet with (undefined: the core itself), and whether it is to run on the page's own thread. */
export const meddle: { reply?: { ok: false; fault: string } | undefined; isOnPage?: boolean } = {};

const bridges: Record<'worker' | 'page', Bridge<never>> = {
  worker: createBridge({ layers: [base] }),
  page: createBridge({ layers: [base], mainThread: true }),
};
const real = () => bridges[meddle.isOnPage ? 'page' : 'worker'];

/** Stands where all elements of a page look for their bridge, so that a test can make the core fail or forbid it a worker. */
const standIn: Pick<Bridge<never>, 'askForReply' | 'end' | 'join' | 'mode'> = {
  askForReply: (...call) => (meddle.reply ? Promise.resolve(meddle.reply) : real().askForReply(...call)),
  end: () => real().end(),
  // What one element has brought is there for the next, wherever that is answered.
  join: (layers) => {
    bridges.page.join(layers);
    return bridges.worker.join(layers);
  },
  get mode() {
    return real().mode;
  },
};
(globalThis as unknown as Record<symbol, unknown>)[BRIDGE] = standIn;
