import { type CarDocument, dropBy, givenPointCount, hasMeasured } from './car.js';
import { limitsBy } from './limits-in-use.js';
import { gave, isUsers } from './provenance.js';
import { setupsBy, sourceKindOf } from './setup-in-use.js';
import { isWheelOwn, ownFitment, pagesFitment, WHEEL_VALUES, type WheelName, wheelInUse } from './wheels-in-use.js';

/** What an answer about clearance rests on. */
export const PARTS = ['motion', 'before', 'after', 'places', 'limits', 'drop'] as const;
export type Part = (typeof PARTS)[number];

/**
 * Whose a part is as a whole: the user's where all of it is, and nothing of a page or the example stands in for the rest. `old`: a
 * new wheel of which nothing was said, taken as the user's old one. `assumed`: all but a rim width, which goes by its tyre.
 */
export type PartBy = 'yours' | 'page' | 'example' | 'old' | 'assumed';

const POINTS_OF_A_STRUT = 8;

export function partsBy(car: CarDocument): Record<Part, PartBy> {
  return {
    motion: motionBy(car),
    before: wheelBy(car, 'before'),
    after: wheelBy(car, 'after'),
    places: ownFitment(car).places ? 'yours' : pagesFitment(car).places ? 'page' : 'example',
    limits: limitsBy(car),
    drop: dropBy(car) === 'user' ? 'yours' : (dropBy(car) as 'page' | 'example'),
  };
}

function wheelBy(car: CarDocument, which: WheelName): PartBy {
  if (isWheelOwn(car, which)) return 'yours';
  const { whose } = wheelInUse(car, which);
  const all = WHEEL_VALUES.map((value) => whose[value]);
  for (const by of ['example', 'page'] as const) if (all.includes(by)) return by;
  return all.includes('usual') ? 'assumed' : 'old';
}

/** How the wheel moves. Of hard points all eight have to be the user's; what was not measured in a driveway is assumed, widely. */
function motionBy(car: CarDocument): PartBy {
  const { given, curve, whole } = car;
  const isOwn = isUsers(car, 'corner');
  const sourceKind = sourceKindOf(car);
  if (sourceKind === 'readings') return setupsBy(car) === 'user' ? 'yours' : 'page';
  if (curve || whole !== undefined) return isOwn ? 'yours' : 'page';
  const page = gave(car, 'corner', 'page').given;
  if (sourceKind === 'driveway') {
    if (isOwn && hasMeasured(given)) return 'yours';
    return page && hasMeasured(page) ? 'page' : 'example';
  }
  if (isOwn && givenPointCount(car) === POINTS_OF_A_STRUT) return 'yours';
  return page && Object.keys(page.points).length > 0 ? 'page' : 'example';
}
