import { EMPTY_CAR } from '../../core/document/car.js';
import { CarModel } from '../shared/car-model.js';

/** The car of a `bumpline-car` that was given none. */
export const emptyCar = (): CarModel => new CarModel(EMPTY_CAR);
