import { words } from '../../core/quantity/words.js';

/** Of the folded lists under an answer about links. */
export const RESTS = words('element/rests', {
  inputs: 'Measurements used',
  why: 'Why ±',
  noDoubt: 'No ± is shown, because none was stated for these points. Say how sure you are of each, and it appears.',
});
