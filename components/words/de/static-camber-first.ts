import type { OwnFirstWords } from '../language.js';
import { FIRST_DE } from './static-camber/first.js';

/** German words of its first answer: static-camber. */
const WORDS: OwnFirstWords['static-camber'] = {
  'static-camber/first': FIRST_DE,
};

export default WORDS;
