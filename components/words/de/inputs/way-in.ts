import type { WAY_IN } from '../../../inputs/way-in.labels.js';

/** German words of the way in to one's own car, by how much of it is done. */
export const WAY_IN_DE: typeof WAY_IN = {
  own: 'Mein Auto eingeben',
  ownNumbers: 'Werte meines Autos',
  next: (title) => `Weiter: ${title}`,
};
