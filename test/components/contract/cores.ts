import { VERSION } from '../../../core/version.js';
import { coreFactory as clearanceFactory } from '../../../core/worker/clearance-function.generated.js';
import { coreFactory } from '../../../core/worker/core-function.generated.js';
import { type Bridge, createBridge } from '../../../core/worker/create-bridge.js';
import { coreFactory as readingsFactory } from '../../../core/worker/readings-function.generated.js';

/** What the next calls to the core meet with (undefined: the core itself), and whether it is to run on the page's own thread. */
export const meddle: { reply?: { ok: false; fault: string } | undefined; isOnPage?: boolean } = {};

/** Stands where all elements of a page look for their bridge, so that a test can make the core fail or forbid it a worker. */
function standIn(name: string, factory: () => unknown): void {
  const made = (mainThread: boolean) =>
    createBridge({ coreFactory: factory as never, mainThread }) as unknown as Bridge<never>;
  const bridges = { worker: made(false), page: made(true) };
  const real = () => bridges[meddle.isOnPage ? 'page' : 'worker'];
  (globalThis as unknown as Record<symbol, unknown>)[Symbol.for(`bumpline.worker/${VERSION}${name}`)] = {
    askForReply: (...call: Parameters<Bridge<never>['askForReply']>) =>
      meddle.reply ? Promise.resolve(meddle.reply) : real().askForReply(...call),
    end: () => real().end(),
    get mode() {
      return real().mode;
    },
  };
}
standIn('', coreFactory);
standIn('/readings', readingsFactory);
standIn('/clearance', clearanceFactory);
