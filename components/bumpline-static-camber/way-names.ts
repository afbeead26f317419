import type { WayAnswer } from '../../core/answers/static-camber.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-static-camber.labels.js';
import { amountText } from './bumpline-static-camber.words.js';
import type { WaysOnSheet } from './static-camber-view.js';

/** A way by its name; less negative camber asks for the other sense of two of them. */
export function wayName({ way }: WayAnswer, { by }: Pick<WaysOnSheet, 'by'>): string {
  if (by > 0 && way === 'longerArm') return NAMES.shorterArm;
  return by > 0 && way === 'lowering' ? NAMES.raising : NAMES.ways[way];
}

/** "11.3 mm inboard"; of a way that does not get there, where it ends and what that gives. */
export function reachText({ way, amount, isReached, ends, change }: WayAnswer, display: Display): string {
  if (isReached || !ends) return amountText(way, amount, display);
  if (ends.amount === 0 || !Number.isFinite(change.camber)) return NAMES.none;
  const end = NAMES.ends(amountText(way, ends.amount, display), show(change.camber, 'camberChange', display));
  return Number.isFinite(amount) ? `${end}${NAMES.needs(amountText(way, amount, display))}` : end;
}
