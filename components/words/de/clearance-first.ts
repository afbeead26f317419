import type { OwnFirstWords } from '../language.js';
import { FIRST_DE } from './clearance/first.js';

/** German words of its first answer: clearance. */
const WORDS: OwnFirstWords['clearance'] = {
  'clearance/first': FIRST_DE,
};

export default WORDS;
