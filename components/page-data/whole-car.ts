import type { CarDocument } from '../../core/document/car.js';
import type { CarController } from '../car/car-controller.js';
import type { PageDataWatcher } from './page-data-watcher.js';

type TakeCar = PageDataWatcher<unknown>['takeCar'];

/** Gives a car what the page says of it as a whole, in the place of what it said before. */
export function wholeCarFor(cars: CarController): TakeCar {
  let before: Parameters<TakeCar>[0];
  return (read) => {
    const had = before;
    before = read;
    const { put } = (read ?? had)!;
    const recipe = (car: CarDocument) => put(car, read?.said ?? {}, had?.said);
    cars.pageGives('car', recipe, read !== undefined, true, read?.problems);
  };
}
