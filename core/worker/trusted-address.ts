interface TrustedTypes {
  createPolicy(name: string, rules: { createScriptURL(url: string): string }): { createScriptURL(url: string): string };
}

let policy: ReturnType<TrustedTypes['createPolicy']> | undefined;

/** Where the page enforces Trusted Types and allows the policy `bumpline`, an address of a script has to go through it. */
export function trustedAddress(url: string): string {
  try {
    policy ??= (globalThis as unknown as { trustedTypes: TrustedTypes }).trustedTypes.createPolicy('bumpline', {
      createScriptURL: (address) => address,
    });
  } catch {
    // No Trusted Types here, or the policy's name is not allowed: then the plain address is taken, or who takes it throws.
  }
  return policy ? policy.createScriptURL(url) : url;
}
