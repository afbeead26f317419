import type { FullBump } from '../../core/document/full-bump.js';
import type { Caution } from './cautions.js';
import { type Display, show } from './sentence.js';

/** In whose car the figure holds, where it is not the reader's. */
const NOT_YOURS = { page: 'this page’s car', example: 'the example' } as const;

/**
 * How full bump is looked at by hand, and how far: the caution that goes with every answer about bump, clearance or parts.
 *
 * @param full undefined where nobody knows where the suspension is solid
 * @param drop the height from which bump is counted, mm lower than stock height
 */
export function byHand(full: FullBump | undefined, drop: number, display: Display): Caution {
  const notYours = !full || full.whose === 'yours' ? '' : ` (${NOT_YOURS[full.whose]}; work out your own)`;
  const height = !full
    ? 'to the hub-to-arch height where the stop would be solid'
    : full.hubToArch === undefined
      ? `until hub to arch is ${show(full.shorter, 'travel', display)} shorter than on its wheels${drop === 0 ? ' at stock height' : `, ${show(Math.abs(drop), 'drop', display)} ${drop < 0 ? 'higher' : 'lower'},`}`
      : `to ${show(full.hubToArch, 'coordinate', display)} hub to arch`;
  const text = `Before you drive, full bump by hand: spring and bump stop out, axle stands under the jacking points, nobody in the car, under it or beside the arm. Raise the arm slowly ${height} and no further${notYours}. Quit at once if anything touches or a mark on the sill moves.`;
  return { text };
}
