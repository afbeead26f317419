import type { OwnLateWords } from '../language.js';
import { LABELS_DE } from './compare/labels.js';

/** German words of what lies under its sentence: compare. */
const WORDS: OwnLateWords['compare'] = {
  'compare/labels': LABELS_DE,
};

export default WORDS;
