import type { RESTS } from '../../../element/rests.labels.js';

/** German words of the folded lists under an answer about links. */
export const RESTS_DE: typeof RESTS = {
  inputs: 'Verwendete Maße',
  why: 'Warum ±',
  noDoubt:
    'Es steht kein ± da, weil für diese Punkte keines angegeben ist. Gib zu jedem Punkt an, wie sicher du bist, dann erscheint es.',
};
