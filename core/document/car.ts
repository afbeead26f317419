import type { DrivewayMeasurements } from '../driveway/driveway.js';
import type { CarDocument, GivenCorner } from './car-schema.js';
import type { CornerName } from './counts.js';
import { EXAMPLE_DRIVEWAY } from './example-driveway.js';
import { type Giver, gave, give, givenBy, isUsers } from './provenance.js';

export type { CarDocument, GivenCorner, GivenCurve } from './car-schema.js';
export { CORNER_NAMES, type CornerName, MOST_HEIGHTS } from './counts.js';

export const EXAMPLE_DROP_MM = 30;

/** The document that nothing was given to yet. */
export const EMPTY_CAR: CarDocument = {
  version: 1,
  cornerName: 'Front left',
  by: 'driveway',
  provenance: {},
  given: { points: {} },
  drop: EXAMPLE_DROP_MM,
};

/** What the user gave; of a page's corner with mistakes in it, all that could be read, to be corrected. */
export function ownOf(car: CarDocument): GivenCorner {
  return isUsers(car, 'corner') || car.whole !== undefined ? car.given : { points: {} };
}

/** Of a camber that an alignment sheet or a gauge gave, degrees: common practice, no source. */
const CAMBER_PLUS_MINUS = 0.1;

/**
 * What was measured in the driveway: the user's own as soon as there is any, and nothing in place of the rest, which the solver
 * then assumes widely; until then the page's or the example's.
 */
export function drivewayOf({ given, provenance }: CarDocument): DrivewayMeasurements {
  const standIn = provenance.corner?.standIn?.given;
  const isBegun = hasMeasured(given);
  const { camber: shown, ...measures } = (isBegun ? given.measures : standIn?.measures) ?? EXAMPLE_DRIVEWAY;
  const own = given.camber === undefined ? undefined : { value: given.camber, plusMinus: CAMBER_PLUS_MINUS };
  const camber = own ?? (isBegun ? undefined : shown);
  return { ...measures, ...given.measures, ...(camber && { camber }) };
}

/** Whether anything of it was measured that camber asks for: the track alone makes no car of one's own. */
export function hasMeasured({ measures = {} }: GivenCorner): boolean {
  return Object.keys(measures).some((key) => key !== 'track');
}

/** Who gave anything that the corner's camber comes from, besides readings: what an example shows is then not that car. */
export function cornerGivenBy(car: CarDocument): 'user' | 'page' | undefined {
  const { given, whole, curve } = car;
  const { points, camber, toe, loadedRadius } = given;
  const hasFigures = [camber, toe, loadedRadius].some((figure) => figure !== undefined);
  const isGiven = hasMeasured(given) || hasFigures || Object.keys(points).length > 0;
  if (!isGiven && whole === undefined && curve === undefined) return undefined;
  return isUsers(car, 'corner') ? 'user' : 'page';
}

/**
 * A value from the person in front of the page: their car begins with it. A corner that a page gave with mistakes in it is
 * corrected, not replaced.
 */
export function givenByUser(car: CarDocument, change: (given: GivenCorner) => GivenCorner): CarDocument {
  const taken = { ...car, provenance: { ...car.provenance, corner: { by: 'user' as const } } };
  return give(car.whole === undefined ? car : taken, 'corner', 'user', ({ given = { points: {} } }) => ({
    given: change(given),
  }));
}

/** Whether the corner was handed over whole as a double wishbone: it has no sheets to edit it with yet. */
export function isWishbone(car: CarDocument): boolean {
  return (car.whole as { kind?: unknown } | null | undefined)?.kind === 'wishbone';
}

/** Bump travel at stock height, mm: a page's is that of the page's car, and says nothing of a car the user gives. */
export function bumpTravelOf(car: CarDocument): number | undefined {
  return isUsers(car, 'corner') && givenBy(car, 'bumpTravel') === 'page' ? undefined : car.bumpTravel;
}

export type Ends = Pick<CarDocument, 'stopGap' | 'limits'>;

/** What ends travel, without the rest that is given with it. */
export const endsIn = ({ stopGap, limits }: Ends): Ends => ({
  ...(stopGap !== undefined && { stopGap }),
  ...(limits && { limits }),
});

export const isAnyEnd = ({ stopGap, limits = {} }: Ends): boolean =>
  stopGap !== undefined || Object.keys(limits).length > 0;

/** What ends travel as given with the car that is shown; a page's is that of the page's car, and says nothing of a car the user gives. */
export const givenEnds = (car: CarDocument): Ends =>
  givenBy(car, 'fit') === 'page' && isUsers(car, 'corner') ? {} : endsIn(car);

/** The same; of a page's car whose reader gave other things of the kind, the page's. */
export function limitsOf(car: CarDocument): Ends {
  const own = givenEnds(car);
  return isAnyEnd(own) || isUsers(car, 'corner') ? own : endsIn(gave(car, 'fit', 'page'));
}

/** What an attribute says of heights. */
export type Heights = Partial<Pick<CarDocument, 'drop' | 'dropPlusMinus' | 'bumpTravel'>>;

/**
 * A car at the heights that a page says, and at the example's where it says none.
 *
 * @param sparesUsers leaves what a user gave; else the page's newest word counts
 */
export function withPageHeights(car: CarDocument, heights: Heights, sparesUsers: boolean): CarDocument {
  const { drop, dropPlusMinus, bumpTravel } = heights;
  const free = sparesUsers ? car : give(car, 'bumpTravel', 'user', () => ({}));
  const found = give(free, 'bumpTravel', 'page', () => (bumpTravel === undefined ? {} : { bumpTravel }));
  if (sparesUsers && dropBy(car) === 'user') return found;
  const { dropPlusMinus: _, provenance, ...others } = found;
  const { drop: __, ...bare } = provenance;
  const isGiven = drop !== undefined || dropPlusMinus !== undefined;
  return {
    ...others,
    drop: drop ?? EXAMPLE_DROP_MM,
    ...(dropPlusMinus !== undefined && { dropPlusMinus }),
    provenance: isGiven ? { ...bare, drop: { by: 'page' } } : bare,
  };
}

/** Who gave the drop. One that nobody is said to have given, and that is not the example's, came with somebody's own car. */
export const dropBy = ({ provenance, drop }: CarDocument): Giver | 'example' =>
  provenance.drop?.by ?? (drop === EXAMPLE_DROP_MM ? 'example' : 'user');

/** The same of which corner it is and what it is known by. */
export function wayBy(car: CarDocument): Giver | 'example' {
  const { provenance, by, cornerName } = car;
  if (provenance.way) return provenance.way.by;
  const found = [givenBy(car, 'corner'), givenBy(car, 'setups')];
  if (found.includes('user')) return 'user';
  if (found.includes('page')) return 'page';
  return by === EMPTY_CAR.by && cornerName === EMPTY_CAR.cornerName ? 'example' : 'user';
}

/** A car at a drop that somebody gave. */
export const withDrop = (car: CarDocument, drop: number, by: Giver = 'user'): CarDocument => ({
  ...car,
  drop,
  provenance: { ...car.provenance, drop: { by } },
});

/** A car after a change by its user: what they changed of what always has a value is theirs from then on. */
export function changedByUser(before: CarDocument, after: CarDocument): CarDocument {
  const isDrop = before.drop !== after.drop || before.dropPlusMinus !== after.dropPlusMinus;
  const isWay = before.by !== after.by || before.cornerName !== after.cornerName;
  if (!isDrop && !isWay) return after;
  const user = { by: 'user' } as const;
  return { ...after, provenance: { ...after.provenance, ...(isDrop && { drop: user }), ...(isWay && { way: user }) } };
}

/** How many of the hard points somebody gave. */
export function givenPointCount(car: CarDocument): number {
  return Object.keys(car.given.points).length;
}

/** The other corner of the same axle. */
export const otherCorner = (name: CornerName): CornerName =>
  (name.endsWith('left') ? name.replace('left', 'right') : name.replace('right', 'left')) as CornerName;
