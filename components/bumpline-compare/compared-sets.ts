import type { At } from '../../core/answers/compare.js';
import type { CarDocument } from '../../core/document/car.js';
import { EXAMPLE_SETUPS } from '../../core/document/example-setups.js';
import type { Setup } from '../../core/document/setup.js';
import { ownerOf } from '../../core/document/setup-in-use.js';

/** The sets that are compared, the reference first, and how many of them are whose. */
export interface ComparedSets {
  sets: readonly Setup[];
  /** All of them are: nobody gave any. */
  isExample: boolean;
  yours: number;
  pages: number;
}

/**
 * What is compared: the sets of camber that somebody gave, else the example's. Two sets of the user's own stand first and are compared
 * with one another; a single one is compared with those of the page. Sets without readings wait for some.
 */
export function comparedSets(car: CarDocument, example: readonly Setup[] = EXAMPLE_SETUPS): ComparedSets {
  const given = (car.setups ?? []).filter(({ quantity, readings }) => quantity === 'camber' && readings.length > 0);
  const yours = given.filter((setup) => ownerOf(car, setup) === 'user');
  const pages = given.filter((setup) => ownerOf(car, setup) === 'page');
  const isExample = yours.length + pages.length === 0;
  const sets = isExample ? example : yours.length > 1 ? [...yours, ...pages] : [...pages, ...yours];
  return { sets, isExample, yours: yours.length, pages: pages.length };
}

/** The two cells that are compared until somebody taps: the reference where it is, and the user's own set, else the second, lowered. */
export function firstCells({ sets, yours, pages }: Omit<ComparedSets, 'isExample'>): { from: At; to: At } {
  const curve = yours === 1 && pages > 0 ? sets.length - 1 : 1;
  return { from: { curve: 0, height: 0 }, to: { curve, height: 1 } };
}
