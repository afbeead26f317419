import { words } from '../../core/quantity/words.js';

/** Texts that every sheet has under its sentence. */
export const SHEET = words('element/element', {
  fault: 'The calculation failed. This is our fault, not yours; your numbers are kept.',
  retry: 'Try again',
  correct: 'Correct it',
  undo: 'Undo',
  redo: 'Redo',
  whole: 'Open the whole calculator',
  putInArticle: 'Put this in an article',
  unused: (what: string): string =>
    `The link carries ${what}, which this calculator does not use. It is all kept for the pages that do, but no number here comes from it.`,
  /** What a link can carry, by the field of the car that holds it. */
  carried: {
    given: 'measurements',
    drop: 'a drop',
    bumpTravel: 'bump travel',
    stopGap: 'bump travel',
    limits: 'bump travel',
    loads: 'spring and loads',
    setups: 'readings',
    fit: 'wheels and places',
    compare: 'heights to compare',
    readingsOver: 'a travel for readings',
    toe: 'questions about toe',
    turn: 'a turn',
    camberAdded: 'camber to add',
    alignment: 'an alignment sheet',
    leastCost: 'parts and limits for a wanted inclination',
  },
  settings: 'other settings',
});
