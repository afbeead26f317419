import type { At } from '../../core/answers/compare.js';
import type { CarDocument } from '../../core/document/car.js';
import { EXAMPLE_SETUPS } from '../../core/document/example-setups.js';
import type { Setup } from '../../core/document/setup.js';
import { isPartsOnly, ownerOf } from '../../core/document/setup-in-use.js';
import { shownName } from '../car/shown-names.words.js';
import { exampleCurveOf, type OwnCurve, ownCurveOf } from './own-curve.js';

/** One row of what is compared: a set of readings, or the car's own curve. */
export type ComparedRow = { name: string } & ({ setup: Setup; own?: undefined } | { own: OwnCurve; setup?: undefined });

/** Whether a row is the car's own links with parts on. */
export const isOfParts = ({ setup }: ComparedRow): boolean => setup !== undefined && isPartsOnly(setup);

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
 * Sets that are parts alone are put on the car's own links, which stand before them as they are; where nothing of a car was given, on the
 * example's.
 *
 * @param hasOwn whether the car's own curve takes part, if there is one
 */
export function comparedSets(
  car: CarDocument,
  example: readonly Setup[] = EXAMPLE_SETUPS,
  hasOwn = true,
): ComparedSets {
  const ofCamber = (car.setups ?? []).filter(({ quantity }) => quantity === 'camber');
  const onLinks = hasOwn && !car.curve ? ofCamber.filter((setup) => isPartsOnly(setup) && setup.parts!.length > 0) : [];
  const given = ofCamber.filter((setup) => setup.readings.length > 0 || onLinks.includes(setup));
  const yours = given.filter((setup) => ownerOf(car, setup) === 'user');
  const pages = given.filter((setup) => ownerOf(car, setup) === 'page');
  const own = hasOwn ? (ownCurveOf(car) ?? (onLinks.length > 0 ? exampleCurveOf(car) : undefined)) : undefined;
  const isExample = yours.length + pages.length === 0 && !own;
  const rowsOf = (sets: readonly Setup[]): ComparedRow[] =>
    sets.map((setup) => ({ name: shownName(setup.name), setup }));
  const mine: ComparedRow[] = own ? [{ name: own.name, own }] : [];
  const rows = isExample
    ? rowsOf(example)
    : own && onLinks.length > 0
      ? [...mine, ...rowsOf(given)]
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
