import { bumpTravelOf, type CarDocument, cornerOf, drivewayOf } from '../document/car.js';
import type { CamberSource } from './camber-source.js';
import type { LoweringRequest } from './lowering.js';

/** What the answer about a car is made from. */
export function sourceOfCar(car: CarDocument): CamberSource {
  if (car.curve) return car.curve;
  if (car.whole === undefined && car.by === 'driveway') return { kind: 'driveway', driveway: drivewayOf(car) };
  return { kind: 'corner', corner: cornerOf(car) };
}

/** The question about lowering that a car document asks. */
export function loweringRequestOf(car: CarDocument): LoweringRequest {
  const { drop, dropPlusMinus, stopGap, lowered, measuredAt, camberReadLower, other } = car;
  const bumpTravel = bumpTravelOf(car);
  return {
    source: sourceOfCar(car),
    drop,
    ...(dropPlusMinus !== undefined && { dropPlusMinus }),
    ...(bumpTravel !== undefined && { bumpTravel }),
    ...(stopGap !== undefined && { stopGap }),
    ...(lowered && { lowered }),
    ...(camberReadLower !== undefined && car.given.camber !== undefined && { camberReadLower }),
    ...(other && { other }),
    ...(measuredAt !== undefined && { measuredAt }),
  };
}
