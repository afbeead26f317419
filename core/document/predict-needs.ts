import { STRUT_POINT_KEYS } from '../linkage/corner.js';
import { asLinks } from './as-links.js';
import { type CarDocument, givenPointCount, hasMeasured } from './car.js';
import { readSetsOf } from './read-sets.js';

/** What a prediction still needs of a car: links, the rest of its hard points, readings as it stands. */
export type PredictNeed = 'links' | 'points' | 'readings';

/** Whether somebody gave links of a car, all or some of them. */
export const hasLinks = ({ whole, given, curve }: CarDocument): boolean =>
  !curve && (whole !== undefined || hasMeasured(given) || Object.keys(given.points).length > 0);

/** Nothing of it: the links of a car can be corrected by its readings. */
export function predictNeeds(car: CarDocument): PredictNeed[] {
  const isPart =
    car.whole === undefined && asLinks(car).by === 'points' && givenPointCount(car) < STRUT_POINT_KEYS.length;
  return [
    ...(hasLinks(car) ? (isPart ? (['points'] as const) : []) : (['links'] as const)),
    ...(readSetsOf(car).stock.length > 0 ? [] : (['readings'] as const)),
  ];
}
