import type { At } from '../../core/answers/compare.js';
import type { CarDocument } from '../../core/document/car.js';
import { EXAMPLE_SETUPS } from '../../core/document/example-setups.js';
import type { Setup } from '../../core/document/setup.js';
import { ownerOf } from '../../core/document/setup-in-use.js';
import { type OwnCurve, ownCurveOf } from './own-curve.js';

/** One row of what is compared: a set of readings, or the car's own curve. */
export type ComparedRow = { name: string } & ({ setup: Setup; own?: undefined } | { own: OwnCurve; setup?: undefined });

/** What is compared, the reference first, and how many of the sets are whose. */
export interface ComparedSets {
  rows: readonly ComparedRow[];
  sets: readonly Setup[];
  own: OwnCurve | undefined;
  /** All of them are: nobody gave any. */
  isExample: boolean;
  yours: number;
  pages: number;
}

/**
 * What is compared: the sets of camber that somebody gave, and the car's own curve; where there is neither, the example's sets. Two sets
 * of the user's own stand first and are compared with one another. A single set is compared with the car's own curve, else with the
 * page's sets. A page's sets are compared with one another. Sets without readings wait for some.
 *
 * @param hasOwn whether the car's own curve takes part, if there is one
 */
export function comparedSets(
  car: CarDocument,
  example: readonly Setup[] = EXAMPLE_SETUPS,
  hasOwn = true,
): ComparedSets {
  const given = (car.setups ?? []).filter(({ quantity, readings }) => quantity === 'camber' && readings.length > 0);
  const yours = given.filter((setup) => ownerOf(car, setup) === 'user');
  const pages = given.filter((setup) => ownerOf(car, setup) === 'page');
  const own = hasOwn ? ownCurveOf(car) : undefined;
  const isExample = yours.length + pages.length === 0 && !own;
  const rowsOf = (sets: readonly Setup[]): ComparedRow[] => sets.map((setup) => ({ name: setup.name, setup }));
  const mine: ComparedRow[] = own ? [{ name: own.name, own }] : [];
  const rows = isExample
    ? rowsOf(example)
    : yours.length > 1
      ? [...rowsOf(yours), ...mine, ...rowsOf(pages)]
      : own && (yours.length === 1 || yours.length + pages.length === 1)
        ? [...mine, ...rowsOf(yours), ...rowsOf(pages)]
        : [...rowsOf(pages), ...rowsOf(yours), ...mine];
  return {
    rows,
    sets: rows.flatMap(({ setup }) => setup ?? []),
    own,
    isExample,
    yours: yours.length,
    pages: pages.length,
  };
}

/** The two cells that are compared until somebody taps: the reference where it is, and the user's own set, else the second, lowered. */
export function firstCells({ rows, own, yours, pages }: Pick<ComparedSets, 'rows' | 'own' | 'yours' | 'pages'>): {
  from: At;
  to: At;
} {
  const curve = yours === 1 && pages > 0 && !own ? rows.length - 1 : 1;
  return { from: { curve: 0, height: 0 }, to: { curve, height: 1 } };
}
