import { type CarDocument, drivewayOf } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import type { CarModel } from '../car/car-model.js';
import { CarSources } from '../car/car-sources.js';
import type { AmountAsked } from './amount-finder.js';

/** What the finder of amounts can ask of a car at a drop, mm; undefined where it has no links. */
export function amountAskedOf(model: CarModel, car: CarDocument, drop: number): AmountAsked | undefined {
  const source = CarSources.of(model).ofCorner(car);
  const of = source.kind === 'learnt' ? source.of : source;
  if (of.kind !== 'corner' && of.kind !== 'driveway') return undefined;
  const { whole, given, measuredAt } = car;
  // A static camber that stands in for a user's is another car's.
  const knowsCamber =
    of.kind === 'driveway'
      ? drivewayOf(car).camber !== undefined
      : whole !== undefined || given.camber !== undefined || !isUsers(car, 'corner');
  return { of, drop, measuredAt, knowsCamber };
}
