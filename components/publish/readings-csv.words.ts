/** Words of readings as a table for others: in every language the English ones, by which it is understood where it is pasted. */
export const READINGS_CSV = {
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
