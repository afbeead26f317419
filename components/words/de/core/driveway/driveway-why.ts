import type { DRIVEWAY_WHY } from '../../../../../core/driveway/driveway-why.js';

/** Why what was not measured is assumed to be so, in German. */
export const DRIVEWAY_WHY_DE: typeof DRIVEWAY_WHY = {
  wheelCentreHeight: 'die meisten Pkw-Reifen haben etwa diesen Radius',
  ballHeight: 'das Traggelenk sitzt im Rad, unter dessen Mitte',
  pivotHeight: 'auf der Höhe, für die ein Auto gebaut ist, liegen Querlenker fast waagerecht',
  topHeight: 'Federbeine üblicher Länge',
  armLength: 'Querlenker kleiner bis großer Autos',
  damperLean: 'Dämpfer neigen sich um einige Grad nach innen',
  ballOffset: 'hinter der Bremse verborgen: alles von 0 bis 40 mm',
  hubOffset: 'im Rad verborgen, bis ein Lot es zeigt',
  track: 'kleine bis große Autos',
  caster: 'die meisten Straßenautos haben 3° bis 9°',
  bumpSteer: 'bei den meisten Straßenautos ändert sich die Spur weniger',
};
