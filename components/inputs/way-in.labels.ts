import { words } from '../../core/quantity/words.js';

/** The way in to one's own car, by how much of it is done. */
export const WAY_IN = words('inputs/way-in', {
  own: 'Put in my own car',
  ownNumbers: 'My car’s numbers',
  next: (title: string): string => `Next: ${title}`,
});
