import type { DialogWords } from '../language.js';
import { ALIGNMENT_DE } from './alignment/alignment.js';
import { NAMES_DE as LEAST_COST_NAMES_DE } from './least-cost/least-cost.js';
import { NAMES_DE as PASTE_NAMES_DE } from './paste/paste.js';
import { CAPTION_DE } from './publish/caption.js';
import { LEFT_OUT_DE } from './publish/left-out.js';
import { TAKE_ALONG_DE } from './publish/take-along.js';
import { WORDS_DE } from './readings/data-warnings.js';
import { GRID_DE } from './readings/reading-grid.js';

/** German words of what opens when it is asked for. */
const WORDS: DialogWords = {
  'alignment/alignment': ALIGNMENT_DE,
  'least-cost/least-cost': LEAST_COST_NAMES_DE,
  'paste/paste': PASTE_NAMES_DE,
  'publish/caption': CAPTION_DE,
  'publish/left-out': LEFT_OUT_DE,
  'publish/take-along': TAKE_ALONG_DE,
  'readings/data-warnings': WORDS_DE,
  'readings/reading-grid': GRID_DE,
};

export default WORDS;
