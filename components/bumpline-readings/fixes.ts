import type { Setup } from '../../core/document/setup.js';
import { applyFix, type Fix } from '../../core/readings/warnings/fix.js';

/**
 * A setup after one fix that its user asked for. What is set aside stays among the readings and is marked.
 *
 * @param used index into the setup's readings of each reading that was looked at
 */
export function mended(setup: Setup, fix: Fix, used: readonly number[]): Setup {
  if (fix.kind === 'set-aside') {
    return { ...setup, setAside: [...(setup.setAside ?? []), used[fix.index]!].sort((a, b) => a - b) };
  }
  const fixed = applyFix(
    used.map((index) => setup.readings[index]!),
    fix,
  );
  const readings = [...setup.readings];
  used.forEach((index, i) => {
    readings[index] = fixed[i]!;
  });
  return { ...setup, readings };
}
