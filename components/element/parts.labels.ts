import { words } from '../../core/quantity/words.js';

/** English words of the parts under a sentence that elements share. */
export const PARTS = words('element/parts', {
  author: 'For the author of this page',
  doubts: {
    shares: 'Where this ± comes from:',
    notIn: 'Not in any ±',
  },
  travel: {
    title: 'Travel left, and what ends it',
    noSolid: 'Bump travel has not been entered: give the gap to the bump stop and the length of the stop.',
    noStop: 'The length of the stop has not been entered, so only where it is first touched is known.',
    statics:
      'Static loads only: no damping, no friction, and the other wheel left out. Twice the static load is a hard bump on a road (common practice, no source).',
    found: 'Measured on the car as it stands. In italics: example values; replace them with yours.',
    atLeast: (size: string): string => `at least ${size}`,
    touch: 'Bump until the stop is touched',
    pressed: (size: string): string => `none: the stop is compressed by ${size} already`,
    solid: 'Bump until solid',
    past: (size: string, by: string): string => `${size} past ${by}`,
    endedBy: (left: string, by: string): string => `${left}, ended by ${by}`,
    shares: 'Where its ± comes from',
    bumpTo: (limit: string): string => `Bump to ${limit}`,
    droop: 'Droop',
    lowered: (size: string): string => `Lowered ${size} or more`,
    changes: (direction: string, to: string, from: string): string => `${direction} is ended by ${to}, not ${from}`,
  },
  loads: {
    sprung: 'Sprung weight of this corner',
    wheelRate: 'Wheel rate at ride height',
    frequency: 'Ride frequency',
    under: (factor: string): string => `Under ${factor} times the static load`,
    taken: (travel: string, atLeast: boolean): string => `${atLeast ? 'at least ' : ''}${travel} of bump`,
    short: (size: string): string => `, ${size} short of solid`,
    clear: (taken: string, short: string): string => `${taken}, clear of the stop${short}`,
    onStop: (taken: string, short: string): string => `${taken}, stop just touched${short}`,
    inStop: (taken: string, size: string, short: string): string =>
      `${taken}, ${size} of the rod into the stop${short}`,
    solid: (taken: string): string => `${taken}: solid, and the springs can carry no more than that`,
  },
  leftOut: {
    column: (name: string): string => `column ${name}`,
    run: (from: string, to: string): string => `columns ${from} to ${to}`,
    columns: (names: string, last: string): string => `columns ${names} and ${last}`,
    ofColumn: (name: string, heading: string): string => `Column ${name}${heading ? `, “${heading}”,` : ''}`,
    called: (label: string): string => `What is called “${label}”`,
    made: {
      average: 'is the average of',
      median: 'is the median of',
      spread: 'says how far apart the readings lie in',
      difference: 'is the difference of',
      copy: 'is the change of',
    },
    named: {
      average: 'is called an average',
      median: 'is called an average',
      spread: 'says how far apart readings lie, or how many there are',
      difference: 'is called a difference',
      copy: 'is called a change',
    },
    says: (what: string, made: string, of: string): string => `${what} ${made}${of && ` ${of}`}: left out.`,
    more: (count: number): string => `So are ${count} more.`,
  },
});
