import type { CarDocument } from '../../core/document/car.js';
import type { Fitment, GivenWheel } from '../../core/document/fitment.js';
import { fitmentInUse } from '../../core/document/fitment-in-use.js';
import { fitmentByUser } from '../../core/document/limits-in-use.js';
import { isUsers } from '../../core/document/provenance.js';
import { ownFitment, type WheelName } from '../../core/document/wheels-in-use.js';
import { planeOf } from '../../core/wheel/wheel.js';

/** Changes something of wheels and places; the rest stays as it stands in. */
export const withFitment = (car: CarDocument, change: Partial<Fitment>): CarDocument =>
  fitmentByUser(car, ({ fit }) => ({ fit: { ...fit, ...change } }));

/** Takes something of it back: what stands in for it counts again. */
export function withoutFitment(car: CarDocument, key: keyof Fitment): CarDocument {
  const { [key]: _, ...rest } = ownFitment(car);
  return isUsers(car, 'fit') ? fitmentByUser(car, () => ({ fit: rest })) : car;
}

/** Gives single values of a wheel; what nobody gave goes on standing in. */
export const withWheel = (car: CarDocument, which: WheelName, change: GivenWheel): CarDocument =>
  withFitment(car, { [which]: { ...ownFitment(car)[which], ...change } });

/**
 * The new wheel so far outboard of the old one: by a spacer, which leaves the rim's own offset as it is stamped, and only where
 * that would have to be less than none by the offset.
 */
export function withPlane(car: CarDocument, plane: number): CarDocument {
  const { before, after } = fitmentInUse(car);
  const out = planeOf(before) + plane;
  const spacer = Math.round((out + after.offset) * 1e6) / 1e6;
  return withWheel(car, 'after', spacer >= 0 ? { spacer } : { spacer: 0, offset: -out });
}
