import { dimensionsOf } from '../wheel/tyre-dimensions.js';
import { readTyreSize } from '../wheel/tyre-size.js';
import type { WheelSpec } from '../wheel/wheel.js';
import type { CarDocument } from './car.js';
import { EXAMPLE_FITMENT } from './example-fitment.js';
import type { Fitment, GivenWheel } from './fitment.js';
import { gave } from './provenance.js';

/**
 * Whose a value of a wheel is: the user's own; the page's; the example's; that of the old wheel, of a new one of which nothing
 * else is said; the usual rim width of a tyre whose size the user gave and whose rim they did not.
 */
export type Whose = 'yours' | 'page' | 'example' | 'old' | 'usual';

/** The three that every wheel has to be known by; a spacer is none until somebody gives one. */
export const WHEEL_VALUES = ['size', 'rimWidthInch', 'offset'] as const;
export type WheelValue = (typeof WHEEL_VALUES)[number] | 'spacer';

export interface WheelInUse {
  spec: WheelSpec;
  whose: Readonly<Record<WheelValue, Whose>>;
}

export type WheelName = 'before' | 'after';

/** What the user gave of wheels, places and margins: nothing of a page's. */
export const ownFitment = (car: CarDocument): Fitment => gave(car, 'fit', 'user').fit ?? {};

/** What the page gave of them, which stands in for the rest. */
export const pagesFitment = (car: CarDocument): Fitment => gave(car, 'fit', 'page').fit ?? {};

/**
 * A wheel as the answer takes it, each value with whose it is. What nobody gave is the page's, else, of the new wheel once the
 * user's old one is whole, as on that, else the example's. A rim width goes with its tyre: where the user gave another size
 * and no rim, it is the width that the standards measure that size on.
 */
export function wheelInUse(car: CarDocument, which: WheelName): WheelInUse {
  const own: GivenWheel = ownFitment(car)[which] ?? {};
  const [base, whose] = standInOf(car, which);
  const size = own.size ?? base.size;
  const isOtherTyre = own.size !== undefined && own.size !== base.size;
  const usual = isOtherTyre && own.rimWidthInch === undefined ? usualRim(own.size) : undefined;
  const of = (value: WheelValue): Whose => (own[value] === undefined ? whose : 'yours');
  // What was measured of one tyre says nothing of another.
  const { sectionWidth: _s, treadWidth: _t, shoulderRadius: _r, rimProtector: _p, ...bare } = base;
  return {
    spec: {
      ...(isOtherTyre || own.rimWidthInch !== undefined ? bare : base),
      ...(usual !== undefined && { rimWidthInch: usual }),
      ...own,
      size,
    },
    whose: {
      size: of('size'),
      rimWidthInch: usual === undefined ? of('rimWidthInch') : 'usual',
      offset: of('offset'),
      spacer: of('spacer'),
    },
  };
}

/** What stands in for a wheel, whole. A page's new wheel is what it asks about; without one it asks about its old one. */
function standInOf(car: CarDocument, which: WheelName): [WheelSpec, Whose] {
  const { before, after, [which]: page } = pagesFitment(car);
  // A page's wheel that is not whole is told as its problem.
  if (page) return [page as WheelSpec, 'page'];
  const isAsOld = which === 'after' && after === undefined && (before !== undefined || isWheelOwn(car, 'before'));
  return isAsOld ? [wheelInUse(car, 'before').spec, 'old'] : [EXAMPLE_FITMENT[which], 'example'];
}

/** Whether the user gave all that a wheel is known by; of the new wheel what is as on their old one is theirs as well. */
export function isWheelOwn(car: CarDocument, which: WheelName): boolean {
  const own = ownFitment(car)[which];
  if (!own || Object.keys(own).length === 0) return false;
  const { whose } = wheelInUse(car, which);
  const isOldOwn = which === 'after' && isWheelOwn(car, 'before');
  return WHEEL_VALUES.every((value) => whose[value] === 'yours' || (isOldOwn && whose[value] === 'old'));
}

/** How many of the three are the user's own. */
export const ownValues = (car: CarDocument, which: WheelName): number => {
  const own = ownFitment(car)[which] ?? {};
  return WHEEL_VALUES.filter((value) => own[value] !== undefined).length;
};

/** Inches; undefined of a size that cannot be read. */
function usualRim(size: string | undefined): number | undefined {
  try {
    return dimensionsOf(readTyreSize(size ?? '')).measuringRimInch;
  } catch {
    return undefined;
  }
}
