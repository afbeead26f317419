import type { Display } from '../element/sentence.js';
import { LABELS } from './bumpline-compare.labels.js';
import { heightText } from './bumpline-compare.words.js';

/** "stock height", "25 mm lower": a height as a name, and not as a place. */
export const heightName = (drop: number, display: Display): string =>
  drop === 0 ? LABELS.body.stock : heightText(drop, display);
