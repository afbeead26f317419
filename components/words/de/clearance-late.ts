import type { OwnLateWords } from '../language.js';
import { NAMES_DE } from './clearance/labels.js';

/** German words of what lies under its sentence: clearance. */
const WORDS: OwnLateWords['clearance'] = {
  'clearance/labels': NAMES_DE,
};

export default WORDS;
