import type { FirstWords } from '../language.js';
import { CORRECTED_DE } from './car/corrected-by.js';
import { NAMES_DE } from './car/shown-names.js';
import { SET_NAMES_DE } from './core/document/set-names.js';
import { FORMAT_DE } from './core/quantity/format.js';
import { BY_HAND_DE } from './element/by-hand.js';
import { SHARED_DE } from './element/first.js';
import { FIRST_CAUTIONS_DE } from './element/first-cautions.js';
import { LIMITS_DE } from './element/limits.js';
import { PART_CAUTIONS_DE } from './element/part-cautions.js';
import { SHELL_DE } from './element/shell.js';
import { TRAVEL_CAUTIONS_DE } from './element/travel-cautions.js';
import { WHEEL_CAUTIONS_DE } from './element/wheel-cautions.js';
import { FIRST_DE as LOWERING_FIRST_DE } from './lowering/first.js';
import { FIRST_DE as READINGS_FIRST_DE } from './readings/first.js';

/** German words that first answers share. */
const WORDS: FirstWords = {
  'car/corrected-by': CORRECTED_DE,
  'car/shown-names': NAMES_DE,
  'document/set-names': SET_NAMES_DE,
  'element/by-hand': BY_HAND_DE,
  'element/first': SHARED_DE,
  'element/first-cautions': FIRST_CAUTIONS_DE,
  'element/limits': LIMITS_DE,
  'element/part-cautions': PART_CAUTIONS_DE,
  'element/shell': SHELL_DE,
  'element/travel-cautions': TRAVEL_CAUTIONS_DE,
  'element/wheel-cautions': WHEEL_CAUTIONS_DE,
  'lowering/first': LOWERING_FIRST_DE,
  'quantity/format': FORMAT_DE,
  'readings/first': READINGS_FIRST_DE,
};

export default WORDS;
