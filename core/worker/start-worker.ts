interface TrustedTypes {
  createPolicy(name: string, rules: { createScriptURL(url: string): string }): { createScriptURL(url: string): string };
}

let policy: ReturnType<TrustedTypes['createPolicy']> | undefined;

/** Where the page enforces Trusted Types and allows the policy `bumpline`, the worker's address has to go through it. */
function trusted(url: string): string {
  try {
    policy ??= (globalThis as unknown as { trustedTypes: TrustedTypes }).trustedTypes.createPolicy('bumpline', {
      createScriptURL: (address) => address,
    });
  } catch {
    // No Trusted Types here, or the policy's name is not allowed: then the plain address is taken, or `new Worker` throws.
  }
  return policy ? policy.createScriptURL(url) : url;
}

/**
 * Starts a classic worker from a script: a blob works on any origin, and classic also in sandboxed frames. Throws what `new Worker`
 * throws. `revoke` frees the blob's address: not before the worker has started, which WebKit needs it for.
 */
export function startWorker(script: string): { worker: Worker; revoke: () => void } {
  const url = URL.createObjectURL(new Blob([script], { type: 'text/javascript' }));
  const revoke = () => URL.revokeObjectURL(url);
  try {
    return { worker: new Worker(trusted(url), { name: 'bumpline' }), revoke };
  } catch (error) {
    revoke();
    throw error;
  }
}
