import type { FullBump } from '../../core/document/full-bump.js';
import { BY_HAND as WORDS } from './by-hand.words.js';
import { type Display, show } from './sentence.js';

/**
 * How full bump is looked at by hand, and how far: the caution that goes with every answer about bump, clearance or parts.
 *
 * @param full undefined where nobody knows where the suspension is solid
 * @param drop the height from which bump is counted, mm lower than stock height
 */
export function byHand(full: FullBump | undefined, drop: number, display: Display): string {
  const notYours = !full || full.whose === 'yours' ? '' : WORDS.notYours(WORDS[full.whose]);
  return WORDS.says(heightText(full, drop, display), notYours);
}

function heightText(full: FullBump | undefined, drop: number, display: Display): string {
  if (!full) return WORDS.unknown;
  if (full.hubToArch !== undefined) return WORDS.hubToArch(show(full.hubToArch, 'coordinate', display));
  const size = show(full.shorter, 'travel', display);
  return drop === 0 ? WORDS.stock(size) : WORDS.lowered(size, show(Math.abs(drop), 'drop', display), drop < 0);
}
