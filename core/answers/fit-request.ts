import type { AnySource } from '../curve-sources/source.js';
import { bumpTravelOf, type CarDocument } from '../document/car.js';
import type { Fit } from '../document/fit.js';
import { fitInUse } from '../document/fit-in-use.js';
import { limitsInUse } from '../document/limits-in-use.js';
import { answeredCorner } from '../document/setup-in-use.js';
import { ownFit, pagesFit } from '../document/wheels-in-use.js';
import { sourceOfCar } from './car-request.js';
import type { ClearanceQuestion } from './clearance-questions.js';

/** The question about clearance that a car document asks. @param source of the car */
export function clearanceRequestOf(car: CarDocument, source = sourceOfCar(car)): ClearanceQuestion<AnySource> {
  const { drop, measuredAt, lowered } = car;
  const fit: Fit = { ...pagesFit(car), ...ownFit(car) };
  const bumpTravel = bumpTravelOf(car);
  const { lock, ...wheels } = fitInUse(car);
  // A curve alone tells of no steering.
  const hasRack = source.kind === 'corner' || source.kind === 'driveway';
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
    ...(fit.marginBodywork !== undefined && { marginBodywork: fit.marginBodywork }),
    ...(fit.marginChassis !== undefined && { marginChassis: fit.marginChassis }),
    ...(fit.allowance !== undefined && { allowance: fit.allowance }),
    ...(fit.sideways !== undefined && { sideways: fit.sideways }),
    ...(fit.camberBy !== undefined && { camberBy: fit.camberBy }),
  };
}
