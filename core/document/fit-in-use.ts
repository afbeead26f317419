import type { TravelLimits } from '../travel/travel-limits.js';
import type { Place } from '../wheel/place.js';
import type { WheelSpec } from '../wheel/wheel.js';
import { bumpTravelOf, type CarDocument, limitsOf } from './car.js';
import { EXAMPLE_FIT, EXAMPLE_LIMITS } from './example-fit.js';
import type { Fit } from './fit.js';
import { answeredCorner } from './setup-in-use.js';
import { ownFit, pagesFit, wheelInUse } from './wheels-in-use.js';

/** Wheels and places that an answer is made from. */
export interface FitInUse {
  before: WheelSpec;
  after: WheelSpec;
  places: readonly Place[];
  lock?: number;
}

/** Of a front wheel whose full lock nobody gave, degrees: common practice, no source. Left out, a tyre would be told to clear that meets something when it steers. */
export const ASSUMED_LOCK = 35;

/** What was given, over what stands in for the rest: the page's, or the example's. Whose each is, `whose-parts.ts` tells. */
export function fitInUse(car: CarDocument): FitInUse {
  const { places = EXAMPLE_FIT.places, lock }: Fit = { ...pagesFit(car), ...ownFit(car) };
  const assumed = answeredCorner(car).startsWith('Front') ? ASSUMED_LOCK : undefined;
  const full = lock ?? (isExampleCar(car) ? EXAMPLE_FIT.lock : assumed);
  return {
    before: wheelInUse(car, 'before').spec,
    after: wheelInUse(car, 'after').spec,
    places,
    ...(full !== undefined && { lock: full }),
  };
}

/** The example's lock is that of the example's steering. */
const isExampleCar = ({ givenBy, given, whole, curve, cornerName }: CarDocument): boolean =>
  givenBy === 'page' &&
  Object.keys(given.points).length === 0 &&
  !given.measures &&
  whole === undefined &&
  !curve &&
  cornerName.startsWith('Front');

export const isLockAssumed = (car: CarDocument): boolean =>
  car.fit?.lock === undefined && car.fitStandIn?.fit?.lock === undefined && !isExampleCar(car);

/** What ends travel: as given, else the page's, else the example's. */
export function limitsInUse(car: CarDocument): TravelLimits {
  const { fitStandIn, ...own } = car;
  const { stopGap, limits } = limitsOf(own);
  const merge = (gap: number | undefined, more: CarDocument['limits']) => ({
    ...more,
    ...(gap !== undefined && { stopGap: gap }),
  });
  if (areLimitsGiven(car)) return merge(stopGap, limits);
  const page = merge(fitStandIn?.stopGap, fitStandIn?.limits);
  return Object.keys(page).length > 0 ? page : EXAMPLE_LIMITS;
}

/** Whether somebody has given anything that ends travel. */
export function areLimitsGiven(car: CarDocument): boolean {
  const { fitStandIn: _, ...own } = car;
  const { stopGap, limits } = limitsOf(own);
  return (
    isAny({ ...(stopGap !== undefined && { stopGap }), ...(limits && { limits }) }) || bumpTravelOf(car) !== undefined
  );
}

/** Whose they are. */
export function limitsBy(car: CarDocument): 'yours' | 'page' | 'example' {
  const { bumpTravel, bumpTravelGivenBy, fitStandIn = {} } = car;
  if (!areLimitsGiven(car)) return isAny(fitStandIn) ? 'page' : 'example';
  return (bumpTravel !== undefined && bumpTravelGivenBy !== 'page') || isAny(ownEnds(car)) ? 'yours' : 'page';
}

/** What the user gave of it: nothing of a page's. */
export const ownEnds = ({ fitGivenBy, stopGap, limits }: CarDocument): Pick<CarDocument, 'stopGap' | 'limits'> =>
  fitGivenBy === 'page' ? {} : { ...(stopGap !== undefined && { stopGap }), ...(limits && { limits }) };

const isAny = ({ stopGap, limits = {} }: Pick<CarDocument, 'stopGap' | 'limits'>): boolean =>
  stopGap !== undefined || Object.keys(limits).length > 0;

/** A change of wheels, places and limits by the person in front of the page: what the page gave stands in from then on. */
export function fitByUser(car: CarDocument, change: (car: CarDocument) => Partial<CarDocument>): CarDocument {
  if (car.fitGivenBy !== 'page') return { ...car, ...change(car), fitGivenBy: 'user' };
  const { fit, limits, stopGap, ...rest } = car;
  const fitStandIn = { ...(fit && { fit }), ...(limits && { limits }), ...(stopGap !== undefined && { stopGap }) };
  const begun: CarDocument = { ...rest, fitStandIn, fitGivenBy: 'user' };
  return { ...begun, ...change(begun) };
}
