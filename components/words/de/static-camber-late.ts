import type { OwnLateWords } from '../language.js';
import { NAMES_DE } from './static-camber/labels.js';

/** German words of what lies under its sentence: static-camber. */
const WORDS: OwnLateWords['static-camber'] = {
  'static-camber/labels': NAMES_DE,
};

export default WORDS;
