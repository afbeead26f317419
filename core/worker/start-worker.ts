import { trustedAddress } from './trusted-address.js';

/**
 * Starts a classic worker from a script: a blob works on any origin, and classic also in sandboxed frames. Throws what `new Worker`
 * throws. `revoke` frees the blob's address: not before the worker has started, which WebKit needs it for.
 */
export function startWorker(script: string): { worker: Worker; revoke: () => void } {
  const url = URL.createObjectURL(new Blob([script], { type: 'text/javascript' }));
  const revoke = () => URL.revokeObjectURL(url);
  try {
    return { worker: new Worker(trustedAddress(url), { name: 'bumpline' }), revoke };
  } catch (error) {
    revoke();
    throw error;
  }
}
