import type { WHERE } from '../../../inputs/where.labels.js';

/** German words of the drawings that show where something is measured. */
export const WHERE_DE: typeof WHERE = {
  topMount: 'Domlager',
  bumpStop: 'Puffer',
  rod: 'Stange',
  spring: 'Feder',
  body: 'Dämpferrohr',
  ball: 'Traggelenk',
  floor: 'Boden',
  front: '← vorn',
  frontUp: 'vorn ↑',
  stands: 'im Stand',
  toeIn: 'Einfedern: Vorspur',
  car: 'Auto',
  arm: 'Lenker',
  damper: 'Dämpfer',
  strut: 'Federbein',
  tieRod: 'Spurstange',
  fromFront: 'von vorn',
  gap: 'Die Kolbenstange eines Dämpfers mit ihrem Anschlagpuffer: oben das Domlager, darunter der Puffer auf der Stange, unten das Dämpferrohr. Der gemessene Abstand ist markiert.',
  measured:
    'Ein Federbein von vorn: der Querlenker von seinem inneren Drehpunkt bis zum Traggelenk, der Dämpfer hinauf zum Domlager, das Rad auf dem Boden. Der gemessene Abstand oder Winkel ist markiert.',
  caster:
    'Ein Vorderrad von der Seite, die Front des Autos links: Die Lenkachse vom Traggelenk hinauf zum Domlager ist gegen das Lot nach hinten geneigt. Der Winkel dazwischen ist markiert.',
  bumpSteer:
    'Ein linkes Vorderrad von oben, die Front des Autos oben: gestrichelt im Stand, und 25 mm weiter eingefedert ein wenig nach innen gedreht. Der Winkel dazwischen ist markiert.',
  point:
    'Der Punkt von vorn und von links gesehen. x zeigt von der Achse nach vorn, y von der Fahrzeugmitte nach außen, z vom Boden nach oben.',
};
