import { words } from '../../core/quantity/words.js';

/** How full bump is looked at by hand. */
export const BY_HAND = words('element/by-hand', {
  page: 'this page’s car',
  example: 'the example',
  notYours: (car: string): string => ` (${car}; work out your own)`,
  unknown: 'to the hub-to-arch height where the stop would be solid',
  stock: (size: string): string => `until hub to arch is ${size} shorter than on its wheels at stock height`,
  lowered: (size: string, drop: string, isHigher: boolean): string =>
    `until hub to arch is ${size} shorter than on its wheels, ${drop} ${isHigher ? 'higher' : 'lower'},`,
  hubToArch: (size: string): string => `to ${size} hub to arch`,
  says: (height: string, notYours: string): string =>
    `Before you drive, full bump by hand: spring and bump stop out, axle stands under the jacking points, nobody in the car, under it or beside the arm. Raise the arm slowly ${height} and no further${notYours}. Quit at once if anything touches or a mark on the sill moves.`,
});
