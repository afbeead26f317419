import { isMissing, numberChecks } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { FIXED_TO, type Place } from './place.js';

/** As far from the hub as anything of a wheel arch is, mm. */
const FURTHEST_MM = 1500;
/** A lip below the tread that it covers. */
const FURTHEST_BELOW_MM = 300;
const LARGEST_PLUS_MINUS_MM = 50;
const MOST_HOURS = 12;

/** @throws InputError with all that is wrong with a list of places, by `places.0.at.clock` and the like. */
export function checkPlaces(places: readonly Place[]): void {
  if (!Array.isArray(places)) throw new InputError([{ code: 'wrong-shape', path: 'places', value: places }]);
  const problems = (places as readonly Place[]).flatMap((place, index) => problemsOf(place, `places.${index}`));
  if (problems.length > 0) throw new InputError(problems);
}

function problemsOf(place: Place, path: string): Problem[] {
  if (isMissing(place) || typeof place !== 'object') return [{ code: 'wrong-shape', path, value: place }];
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  const number = (key: string, value: unknown, least: number, most: number) =>
    check(`${path}.${key}`, value, least, most);
  const { at, fixedTo, is, plusMinus, share } = place;
  if (!FIXED_TO.includes(fixedTo)) problems.push({ code: 'wrong-shape', path: `${path}.fixedTo`, value: fixedTo });
  if (is !== 'bodywork' && is !== 'chassis') problems.push({ code: 'wrong-shape', path: `${path}.is`, value: is });
  if (plusMinus !== undefined) number('plusMinus', plusMinus, 0, LARGEST_PLUS_MINUS_MM);
  if (share !== undefined) number('share', share, 0, 1);
  if (isMissing(at) || typeof at !== 'object') {
    problems.push({ code: 'missing', path: `${path}.at`, value: at });
  } else if ('point' in at) {
    for (const axis of [0, 1, 2]) number(`at.point.${axis}`, at.point?.[axis], -FURTHEST_MM, FURTHEST_MM);
  } else {
    number('at.clock', at.clock, 0, MOST_HOURS);
    number('at.distance', at.distance, at.beyond === 'tread' ? -FURTHEST_BELOW_MM : 0, FURTHEST_MM);
    number('at.out', at.out, -FURTHEST_MM, FURTHEST_MM);
    if (at.beyond !== undefined && at.beyond !== 'tread') {
      problems.push({ code: 'wrong-shape', path: `${path}.at.beyond`, value: at.beyond });
    }
    if (at.from !== undefined && at.from !== 'outer' && at.from !== 'inner') {
      problems.push({ code: 'wrong-shape', path: `${path}.at.from`, value: at.from });
    }
  }
  return problems;
}
