import { words } from '../../core/quantity/words.js';

/** English words of readings as a table for others. */
export const READINGS_CSV = words('publish/readings-csv', {
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
});
