import type { Place } from '../wheel/place.js';
import type { WheelSpec } from '../wheel/wheel.js';
import type { CarDocument } from './car.js';
import { EXAMPLE_FITMENT } from './example-fitment.js';
import type { Fitment } from './fitment.js';
import { isBare, isUsers } from './provenance.js';
import { answeredCorner } from './setup-in-use.js';
import { ownFitment, pagesFitment, wheelInUse } from './wheels-in-use.js';

/** Wheels and places that an answer is made from. */
export interface FitmentInUse {
  before: WheelSpec;
  after: WheelSpec;
  places: readonly Place[];
  lock?: number;
}

/** Of a front wheel whose full lock nobody gave, degrees: common practice, no source. Left out, a tyre would be told to clear that meets something when it steers. */
export const ASSUMED_LOCK = 35;

/** What was given, over what stands in for the rest: the page's, or the example's. Whose each is, `whose-parts.ts` tells. */
export function fitmentInUse(car: CarDocument): FitmentInUse {
  const { places = EXAMPLE_FITMENT.places, lock }: Fitment = { ...pagesFitment(car), ...ownFitment(car) };
  const assumed = answeredCorner(car).startsWith('Front') ? ASSUMED_LOCK : undefined;
  const full = lock ?? (isExampleCar(car) ? EXAMPLE_FITMENT.lock : assumed);
  return {
    before: wheelInUse(car, 'before').spec,
    after: wheelInUse(car, 'after').spec,
    places,
    ...(full !== undefined && { lock: full }),
  };
}

/** The example's lock is that of the example's steering. */
const isExampleCar = (car: CarDocument): boolean =>
  !isUsers(car, 'corner') && hasNothing(car) && car.cornerName.startsWith('Front');

const hasNothing = ({ given, whole, curve, setups }: CarDocument): boolean =>
  isBare(given) && whole === undefined && !curve && !setups;

export const isLockAssumed = (car: CarDocument): boolean =>
  (ownFitment(car).lock ?? pagesFitment(car).lock) === undefined && !isExampleCar(car);
