import type { OwnLateWords } from '../language.js';
import { NAMES_DE } from './predict/labels.js';

/** German words of what lies under its sentence: predict. */
const WORDS: OwnLateWords['predict'] = {
  'predict/labels': NAMES_DE,
};

export default WORDS;
