import type { OwnLateWords } from '../language.js';
import { NAMES_DE } from './lowering/labels.js';

/** German words of what lies under its sentence: lowering. */
const WORDS: OwnLateWords['lowering'] = {
  'lowering/labels': NAMES_DE,
};

export default WORDS;
