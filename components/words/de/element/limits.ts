import type { LIMITS } from '../../../element/limits.words.js';

/** German names of what ends travel: nominative, without an article, so that they stand behind a colon or in brackets. */
export const LIMITS_DE: typeof LIMITS = {
  stop: 'Anschlagpuffer',
  damper: 'Ende des Dämpferhubs',
  spring: 'Feder auf Block',
  linkage: 'Lenker',
  shaft: 'Antriebswelle',
  bumpTravel: 'Einfederweg wie gemessen',
};
