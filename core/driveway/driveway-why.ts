import { words } from '../quantity/words.js';
import type { AssumableKey } from './driveway.js';

/** Why what was not measured is assumed to be so, for people. */
export const DRIVEWAY_WHY: Readonly<Record<AssumableKey, string>> = words('driveway/driveway-why', {
  wheelCentreHeight: 'most tyres of cars have about this radius',
  ballHeight: 'the ball joint sits inside the wheel, below its centre',
  pivotHeight: 'arms lie nearly level at the height a car is made for',
  topHeight: 'struts of common length',
  armLength: 'arms of small to large cars',
  damperLean: 'dampers lean inboard by some degrees',
  ballOffset: 'hidden behind the brake: anything from 0 to 40 mm',
  hubOffset: 'hidden in the wheel, until a plumb line shows it',
  track: 'small to large cars',
  caster: 'most road cars have 3° to 9°',
  bumpSteer: 'most road cars steer less than this',
});
