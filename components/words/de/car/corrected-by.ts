import type { CORRECTED } from '../../../car/corrected-by.words.js';

/** German words behind whose links they are. */
export const CORRECTED_DE: typeof CORRECTED = {
  one: 'korrigiert durch 1 Messwert',
  many: (count) => `korrigiert durch ${count} Messwerte`,
};
