import { words } from '../../core/quantity/words.js';

/** English names that the data itself gives: a car keeps them, in links too, as they are here. */
export const NAMES = words('car/shown-names', {
  corners: {
    'Front left': 'Front left',
    'Front right': 'Front right',
    'Rear left': 'Rear left',
    'Rear right': 'Rear right',
  },
  pass: (number: string): string => `Pass ${number}`,
  places: {
    'arch lip': 'arch lip',
    liner: 'liner',
    'liner screw': 'liner screw',
    'inner panel': 'inner panel',
    leg: 'leg',
    'damper tube': 'damper tube',
    'spring perch': 'spring perch',
    knuckle: 'knuckle',
    'tie rod': 'tie rod',
    'lower arm': 'lower arm',
    'anti-roll bar link': 'anti-roll bar link',
    driveshaft: 'driveshaft',
    'spring coil': 'spring coil',
  },
  /** Of the invented examples' parts. */
  sets: {
    'Example, invented': 'Example, invented',
    'Standard joints': 'Standard joints',
    'Lowered joints': 'Lowered joints',
    '22 mm joint': '22 mm joint',
    '22 mm joint + rod end': '22 mm joint + rod end',
  },
});

/** A name of ours, as readers of the language that is spoken call it; what somebody named otherwise is left as it is. */
export function shownName(name: string): string {
  const number = /^Pass (\d+)$/.exec(name)?.[1];
  if (number !== undefined) return NAMES.pass(number);
  const { corners, places, sets } = NAMES as Readonly<
    Record<'corners' | 'places' | 'sets', Readonly<Record<string, string>>>
  >;
  return corners[name] ?? places[name] ?? sets[name] ?? name;
}
