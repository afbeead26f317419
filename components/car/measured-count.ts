import type { CarDocument } from '../../core/document/car.js';
import type { DrivewayKey } from '../../core/driveway/driveway.js';

const SIX = [
  'armLength',
  'pivotHeight',
  'ballHeight',
  'wheelCentreHeight',
  'topHeight',
  'damperLean',
] as const satisfies DrivewayKey[];
export const DRIVEWAY_COUNT = SIX.length;

/** Of the six measurements, those that somebody took: kingpin inclination counts in the lean's place; the rest is known of some cars only. */
export function measuredCount({ given: { measures = {} } }: CarDocument): number {
  const own = (key: DrivewayKey) => measures[key] !== undefined;
  return SIX.filter((key) => own(key) || (key === 'damperLean' && own('kingpin'))).length;
}
