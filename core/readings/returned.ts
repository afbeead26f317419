import type { Reading } from './reading.js';

/**
 * Whether every pass ends with its first height read again; of no readings none does.
 *
 * @param setAside indexes of readings that do not count
 */
export function isReturned(
  readings: readonly Pick<Reading, 'pass' | 'again'>[],
  setAside: readonly number[] = [],
): boolean {
  const counted = readings.filter((_, i) => !setAside.includes(i));
  const passes = new Set(counted.map(({ pass }) => pass));
  const returned = new Set(counted.flatMap(({ pass, again }) => (again ? [pass] : [])));
  return passes.size > 0 && returned.size === passes.size;
}
