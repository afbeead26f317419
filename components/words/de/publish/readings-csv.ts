import type { READINGS_CSV } from '../../../publish/readings-csv.words.js';

/** Of readings as a table for others, in every language: pasted again, it is understood by its English headings and directions. */
export const READINGS_CSV_DE: typeof READINGS_CSV = {
  columns: {
    parts: 'Parts',
    corner: 'Corner',
    pass: 'Pass',
    direction: 'Direction',
    travel: 'Wheel travel',
    camber: 'Camber',
    toe: 'Toe',
    front: 'Front',
    rear: 'Rear',
    body: 'Body reference',
    again: 'Read again',
    aside: 'Set aside',
  },
  units: { length: 'mm', angle: '°' },
  ways: { up: 'up', down: 'down' },
  yes: 'yes',
};
