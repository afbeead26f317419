/** Correct digits of the worst number: −log₁₀ of the largest relative error, 16 at most. */
export const digits = (found: ArrayLike<number>, certified: readonly string[]): number =>
  Math.min(
    ...certified.map((text, i) => -Math.log10(Math.abs(found[i]! - Number(text)) / Math.abs(Number(text)) + 1e-16)),
  );
