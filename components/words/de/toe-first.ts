import type { OwnFirstWords } from '../language.js';
import { FIRST_DE } from './toe/first.js';

/** German words of its first answer: toe. */
const WORDS: OwnFirstWords['toe'] = {
  'toe/first': FIRST_DE,
};

export default WORDS;
