import type { OwnFirstWords } from '../language.js';
import { FIRST_DE } from './compare/first.js';

/** German words of its first answer: compare. */
const WORDS: OwnFirstWords['compare'] = {
  'compare/first': FIRST_DE,
};

export default WORDS;
