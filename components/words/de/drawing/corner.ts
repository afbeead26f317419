import type { CORNER } from '../../../drawing/corner.labels.js';

/** German words on the views of a corner's links. */
export const CORNER_DE: typeof CORNER = {
  ways: {
    front: 'von vorn, außen ist rechts',
    side: 'von außen, vorn ist links',
    top: 'von oben: vorn ist oben, außen ist rechts',
  },
};
