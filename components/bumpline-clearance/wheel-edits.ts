import type { CarDocument } from '../../core/document/car.js';
import type { Fit } from '../../core/document/fit.js';
import { fitByUser, fitInUse } from '../../core/document/fit-in-use.js';
import { planeOf, type WheelSpec } from '../../core/wheel/wheel.js';

/** Changes something of wheels and places; the rest stays as it stands in. */
export const withFit = (car: CarDocument, change: Partial<Fit>): CarDocument =>
  fitByUser(car, ({ fit }) => ({ fit: { ...fit, ...change } }));

/** The wheel that is asked about so far outboard of the one that was on, by its offset. */
export function withPlane(car: CarDocument, plane: number): CarDocument {
  const { before, after } = fitInUse(car);
  return withFit(car, { after: { ...after, offset: (after.spacer ?? 0) - planeOf(before) - plane } });
}

export const withWheel = (car: CarDocument, which: 'before' | 'after', change: Partial<WheelSpec>): CarDocument =>
  withFit(car, { [which]: { ...fitInUse(car)[which], ...change } });
