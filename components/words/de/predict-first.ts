import type { OwnFirstWords } from '../language.js';
import { FIRST_DE } from './predict/first.js';

/** German words of its first answer: predict. */
const WORDS: OwnFirstWords['predict'] = {
  'predict/first': FIRST_DE,
};

export default WORDS;
