import type { Source } from '../uncertainty/estimate.js';

/** What can be measured again at once: the three coordinates of a hard point are one thing, and so is all of a method. */
export function causeOf({ id, label }: Source): { id: string; label: string } {
  if (id.startsWith('method.')) return { id: 'method', label };
  return {
    id: id.replace(/\.(forward|sideways|height)$/, ''),
    label: label.replace(/, (forward|sideways|height)$/, ''),
  };
}
