import type { OwnFirstWords } from '../language.js';
import { FIRST_DE } from './geometry/first.js';

/** German words of its first answer: geometry. */
const WORDS: OwnFirstWords['geometry'] = {
  'geometry/first': FIRST_DE,
};

export default WORDS;
