import { type CarDocument, givenPointCount, hasMeasured } from './car.js';
import { gave } from './provenance.js';

const known = new WeakMap<CarDocument, CarDocument>();

/**
 * A car by its links, whatever else is known of it: by hard points, or by what was measured in a driveway. Readings and curves of
 * others have no links; of a car of which nothing was given the example's points stand in. The same object for the same car.
 */
export function asLinks(car: CarDocument): CarDocument {
  const found = known.get(car) ?? byLinks(car);
  known.set(car, found);
  return found;
}

function byLinks(car: CarDocument): CarDocument {
  const { curve, ...rest } = car;
  const by = isMeasured(car) ? 'driveway' : 'points';
  return by === car.by && !curve ? car : { ...rest, by };
}

/** Whether what was measured in a driveway counts, and not points. */
function isMeasured(car: CarDocument): boolean {
  if (car.whole !== undefined || car.by === 'points') return false;
  const page = gave(car, 'corner', 'page').given;
  const isAny = hasMeasured(car.given) || (page !== undefined && hasMeasured(page));
  return isAny && (car.by === 'driveway' || givenPointCount(car) === 0);
}
