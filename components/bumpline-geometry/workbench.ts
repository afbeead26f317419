import { type LinksOverTravel, linksFromStock } from '../../core/answers/geometry-at.js';
import type { CarDocument } from '../../core/document/car.js';
import { InputError } from '../../core/quantity/problem.js';
import type { FittedLinks, WorkbenchAnswer } from './geometry-view.js';

/** The bump over which a driver asks what camber and toe do, mm: a hard corner's worth. Common practice, no source. */
const OVER_MM = 40;

/**
 * What links do at a car's drop, as they were solved where the car was measured.
 *
 * @param shown which of the sets the sentence is about
 * @throws InputError of a drop that one of them does not cover
 */
export function workbenchOf(
  car: CarDocument,
  solved: LinksOverTravel,
  solvedSets: readonly FittedLinks[],
  shown: number,
): WorkbenchAnswer {
  const bare = linksFromStock(solved, car);
  const sets = solvedSets.map(({ set, ...links }) => ({ set, ...linksFromStock(links, car) }));
  const { drop } = car;
  const ends = [bare, ...sets].map(({ curves: { travel } }) => [travel[0]!, travel[travel.length - 1]!] as const);
  const low = Math.max(...ends.map(([from]) => from));
  const high = Math.min(...ends.map(([, to]) => to));
  if (drop < low || drop > high) {
    throw new InputError([{ code: 'outside-domain', path: 'drop', value: drop, limit: drop < low ? low : high }]);
  }
  return { drop, over: Math.min(OVER_MM, Math.floor(high - drop)), bare, sets, shown };
}
