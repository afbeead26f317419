import type { OwnFirstWords } from '../language.js';
import { FIRST_DE } from './cornering/first.js';

/** German words of its first answer: cornering. */
const WORDS: OwnFirstWords['cornering'] = {
  'cornering/first': FIRST_DE,
};

export default WORDS;
