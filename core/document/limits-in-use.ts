import type { TravelLimits } from '../travel/travel-limits.js';
import { bumpTravelOf, type CarDocument, type Ends, endsIn, givenEnds, isAnyEnd } from './car.js';
import { EXAMPLE_LIMITS } from './example-fitment.js';
import { gave, give, isUsers, type PartValues } from './provenance.js';

/** What ends travel: as given, else the page's, else the example's. */
export function limitsInUse(car: CarDocument): TravelLimits {
  const { stopGap, limits } = areLimitsGiven(car) ? givenEnds(car) : standInEnds(car);
  const found = { ...limits, ...(stopGap !== undefined && { stopGap }) };
  return areLimitsGiven(car) || Object.keys(found).length > 0 ? found : EXAMPLE_LIMITS;
}

/** Whether somebody has given anything that ends travel. */
export const areLimitsGiven = (car: CarDocument): boolean =>
  isAnyEnd(givenEnds(car)) || bumpTravelOf(car) !== undefined;

/** Whose they are. */
export function limitsBy(car: CarDocument): 'yours' | 'page' | 'example' {
  if (!areLimitsGiven(car)) return isAnyEnd(standInEnds(car)) ? 'page' : 'example';
  const isTravelOwn = car.bumpTravel !== undefined && isUsers(car, 'bumpTravel');
  return isTravelOwn || isAnyEnd(ownEnds(car)) ? 'yours' : 'page';
}

/** What the user gave of it: nothing of a page's. */
export const ownEnds = (car: CarDocument): Ends => endsIn(gave(car, 'fit', 'user'));

const standInEnds = ({ provenance }: CarDocument): Ends => provenance.fit?.standIn ?? {};

/** A change of wheels, places and limits by the person in front of the page: what the page gave stands in from then on. */
export const fitmentByUser = (car: CarDocument, change: (own: PartValues<'fit'>) => PartValues<'fit'>): CarDocument =>
  give(car, 'fit', 'user', (own) => ({ ...own, ...change(own) }));
