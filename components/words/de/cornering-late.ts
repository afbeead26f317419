import type { OwnLateWords } from '../language.js';
import { NAMES_DE } from './cornering/labels.js';
import { ROLL_DE } from './cornering/roll.js';

/** German words of what lies under its sentence: cornering. */
const WORDS: OwnLateWords['cornering'] = {
  'cornering/labels': NAMES_DE,
  'cornering/roll': ROLL_DE,
};

export default WORDS;
