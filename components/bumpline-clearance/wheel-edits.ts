import type { CarDocument } from '../../core/document/car.js';
import type { Fit, GivenWheel } from '../../core/document/fit.js';
import { fitInUse } from '../../core/document/fit-in-use.js';
import { fitByUser } from '../../core/document/limits-in-use.js';
import { isUsers } from '../../core/document/provenance.js';
import { ownFit, type WheelName } from '../../core/document/wheels-in-use.js';
import { planeOf } from '../../core/wheel/wheel.js';

/** Changes something of wheels and places; the rest stays as it stands in. */
export const withFit = (car: CarDocument, change: Partial<Fit>): CarDocument =>
  fitByUser(car, ({ fit }) => ({ fit: { ...fit, ...change } }));

/** Takes something of it back: what stands in for it counts again. */
export function withoutFit(car: CarDocument, key: keyof Fit): CarDocument {
  const { [key]: _, ...rest } = ownFit(car);
  return isUsers(car, 'fit') ? fitByUser(car, () => ({ fit: rest })) : car;
}

/** Gives single values of a wheel; what nobody gave goes on standing in. */
export const withWheel = (car: CarDocument, which: WheelName, change: GivenWheel): CarDocument =>
  withFit(car, { [which]: { ...ownFit(car)[which], ...change } });

/**
 * The new wheel so far outboard of the old one: by a spacer, which leaves the rim's own offset as it is stamped, and only where
 * that would have to be less than none by the offset.
 */
export function withPlane(car: CarDocument, plane: number): CarDocument {
  const { before, after } = fitInUse(car);
  const out = planeOf(before) + plane;
  const spacer = Math.round((out + after.offset) * 1e6) / 1e6;
  return withWheel(car, 'after', spacer >= 0 ? { spacer } : { spacer: 0, offset: -out });
}
