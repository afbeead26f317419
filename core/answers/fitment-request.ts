import type { AnySource } from '../curve-sources/source.js';
import { bumpTravelOf, type CarDocument } from '../document/car.js';
import type { Fitment } from '../document/fitment.js';
import { fitmentInUse } from '../document/fitment-in-use.js';
import { limitsInUse } from '../document/limits-in-use.js';
import { answeredCorner } from '../document/setup-in-use.js';
import { ownFitment, pagesFitment } from '../document/wheels-in-use.js';
import { isOfLinks, sourceOfCar } from './car-request.js';
import type { ClearanceQuestion } from './clearance-questions.js';

/** The question about clearance that a car document asks. @param source of the car */
export function clearanceRequestOf(car: CarDocument, source = sourceOfCar(car)): ClearanceQuestion<AnySource> {
  const { drop, measuredAt, lowered } = car;
  const fitment: Fitment = { ...pagesFitment(car), ...ownFitment(car) };
  const bumpTravel = bumpTravelOf(car);
  const { lock, ...wheels } = fitmentInUse(car);
  // A curve alone tells of no steering.
  const hasRack = isOfLinks(source);
  return {
    source,
    ...wheels,
    isLeft: answeredCorner(car).endsWith('left'),
    limits: limitsInUse(car),
    drop,
    ...(lock !== undefined && hasRack && { lock }),
    ...(bumpTravel !== undefined && { bumpTravel }),
    ...(lowered && { lowered }),
    ...(measuredAt !== undefined && { measuredAt }),
    ...(fitment.marginBodywork !== undefined && { marginBodywork: fitment.marginBodywork }),
    ...(fitment.marginChassis !== undefined && { marginChassis: fitment.marginChassis }),
    ...(fitment.allowance !== undefined && { allowance: fitment.allowance }),
    ...(fitment.sideways !== undefined && { sideways: fitment.sideways }),
    ...(fitment.camberBy !== undefined && { camberBy: fitment.camberBy }),
  };
}
