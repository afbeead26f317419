import type { ReactiveController } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import type { CarController } from '../car/car-controller.js';
import type { PageDataWatcher } from './page-data-watcher.js';

/** The watcher of an element's page, whatever it reads. */
export type WatchedPage = Pick<PageDataWatcher<never>, 'isReady' | 'ready' | 'again' | 'takeCar'> & ReactiveController;

/** Has a car take what the page says of it as a whole, in the place of what it said before. */
export function withWholeCar(page: WatchedPage, cars: CarController): WatchedPage {
  let before: Parameters<WatchedPage['takeCar']>[0];
  page.takeCar = (read) => {
    const had = before;
    before = read;
    const { put } = (read ?? had)!;
    const recipe = (car: CarDocument) => put(car, read?.said ?? {}, had?.said);
    cars.pageGives('car', recipe, read !== undefined, true, read?.problems);
  };
  return page;
}
