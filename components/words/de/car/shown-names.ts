import type { NAMES } from '../../../car/shown-names.words.js';

/** German names of what the data itself names. */
export const NAMES_DE: typeof NAMES = {
  corners: {
    'Front left': 'Vorn links',
    'Front right': 'Vorn rechts',
    'Rear left': 'Hinten links',
    'Rear right': 'Hinten rechts',
  },
  pass: (number) => `Durchgang ${number}`,
  places: {
    'arch lip': 'Radlaufkante',
    liner: 'Radhausschale',
    'liner screw': 'Schraube der Radhausschale',
    'inner panel': 'Innenblech',
    leg: 'Längsträger',
    'damper tube': 'Dämpferrohr',
    'spring perch': 'Federteller',
    knuckle: 'Radträger',
    'tie rod': 'Spurstange',
    'lower arm': 'Querlenker',
    'anti-roll bar link': 'Koppelstange',
    driveshaft: 'Antriebswelle',
    'spring coil': 'Federwindung',
  },
  sets: {
    'Example, invented': 'Beispiel, erfunden',
    'Standard joints': 'Serien-Traggelenke',
    'Lowered joints': 'Tiefere Traggelenke',
    '22 mm joint': 'Traggelenk, 22 mm',
    '22 mm joint + rod end': 'Traggelenk, 22 mm, und Spurstangenkopf',
  },
};
