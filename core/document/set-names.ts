import { words } from '../quantity/words.js';

/** English names of sets that nobody has named: a set takes its name along, whoever reads it later. */
export const SET_NAMES = words('document/set-names', {
  first: 'Standard parts',
  unnamed: 'Readings',
  changed: (name: string): string => `${name}, changed`,
});
