import type { CarDocument } from '../../core/document/car.js';
import type { Fit } from '../../core/document/fit.js';
import { fitByUser, fitInUse } from '../../core/document/fit-in-use.js';
import { planeOf, type WheelSpec } from '../../core/wheel/wheel.js';

/** Changes something of wheels and places; the rest stays as it stands in. */
export const withFit = (car: CarDocument, change: Partial<Fit>): CarDocument =>
  fitByUser(car, ({ fit }) => ({ fit: { ...fit, ...change } }));

/**
 * The wheel that is asked about so far outboard of the one that was on: by a spacer, which leaves the rim's own offset as it is
 * stamped, and only where it would have to be less than none by the offset.
 */
export function withPlane(car: CarDocument, plane: number): CarDocument {
  const { before, after } = fitInUse(car);
  const out = planeOf(before) + plane;
  const spacer = Math.round((out + after.offset) * 1e6) / 1e6;
  const { spacer: _, ...bare } = after;
  return withFit(car, {
    after: spacer > 0 ? { ...after, spacer } : spacer === 0 ? bare : { ...bare, offset: -out },
  });
}

export const withWheel = (car: CarDocument, which: 'before' | 'after', change: Partial<WheelSpec>): CarDocument =>
  withFit(car, { [which]: { ...fitInUse(car)[which], ...change } });
