import type { Source } from '../uncertainty/estimate.js';

/**
 * What a source of a curve's doubt is to who took the readings: the coefficients of one fit, and passes that run apart, are nothing
 * that one could measure again singly.
 */
export function causeOf({ id, label }: Source): { id: string; label: string } {
  return /^(fit\.|apart\.|zero$)/.test(id) ? { id: 'readings', label: 'the readings' } : { id, label };
}
