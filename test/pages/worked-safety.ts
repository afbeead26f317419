/*
 * The height to which the page on working safely has a corner raised, by hand: a stop is solid when the gap and half its length are used up
 * on the rod, which is that much over the motion ratio at the wheel. What is given stands in the page's sentence (working-safely.test.ts).
 */

/** Of the invented example, mm; the ratio is damper over wheel. */
export const GIVEN = { gap: 22, stopLength: 50, motionRatio: 0.96, hubToArch: 367, drop: 30 } as const;

const solid = () => (GIVEN.gap + GIVEN.stopLength / 2) / GIVEN.motionRatio;

/** By data-name. */
export const workedSafety = (): Record<string, { unit: string; value: () => number }> => ({
  'safe.solid': { unit: 'mm', value: solid },
  'safe.raise-to': { unit: 'mm', value: () => GIVEN.hubToArch - solid() },
  // The car stands lower by the drop, and the gap on the rod is what it was.
  'safe.raise-to-coilover': { unit: 'mm', value: () => GIVEN.hubToArch - GIVEN.drop - solid() },
});
