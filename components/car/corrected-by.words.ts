import { words } from '../../core/quantity/words.js';

/** English words behind whose links they are. */
export const CORRECTED = words('car/corrected-by', {
  one: 'corrected by 1 reading',
  many: (count: number): string => `corrected by ${count} readings`,
});
