import type { TravelLimits } from '../travel/travel-limits.js';
import { bumpTravelOf, type CarDocument, limitsOf } from './car.js';
import { EXAMPLE_LIMITS } from './example-fit.js';

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
