import type { OwnLateWords } from '../language.js';
import { NAMES_DE } from './toe/labels.js';

/** German words of what lies under its sentence: toe. */
const WORDS: OwnLateWords['toe'] = {
  'toe/labels': NAMES_DE,
};

export default WORDS;
