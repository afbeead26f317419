import type { DrivewayMeasurements } from '../driveway/driveway.js';
import {
  hardPoint,
  type PlusMinus,
  STRUT_POINT_KEYS,
  type StrutCorner,
  type StrutPointKey,
  type Vector3,
} from '../linkage/corner.js';
import type { CarDocument, GivenCorner } from './car-schema.js';
import { EXAMPLE_CORNER } from './example-corner.js';
import { EXAMPLE_DRIVEWAY } from './example-driveway.js';
import type { CornerName } from './field-ranges.js';
import { type Giver, gave, give, givenBy } from './provenance.js';

export type { CarDocument, GivenCorner, GivenCurve } from './car-schema.js';
export { CORNER_NAMES, type CornerName, MOST_HEIGHTS } from './field-ranges.js';

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
  return givenBy(car, 'corner') === 'user' || car.whole !== undefined ? car.given : { points: {} };
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
  const by = givenBy(car, 'corner');
  const hasFigures = [camber, toe, loadedRadius].some((figure) => figure !== undefined);
  const isGiven = hasMeasured(given) || hasFigures || Object.keys(points).length > 0;
  return by !== 'example' && (isGiven || whole !== undefined || curve !== undefined) ? by : undefined;
}

/** The corner to solve: what was given, over what stands in. Given points without a stated doubt have none. */
export function cornerOf(car: CarDocument): unknown {
  return car.whole ?? strutOf(car);
}

/** The strut that single values make, the given ones over those that stand in; not checked. */
export function strutOf(car: CarDocument): StrutCorner {
  return over(car.given, standInOf(car));
}

/** What stands in for a value that nobody gave: the page's own car, or the example. */
export function standInOf(car: CarDocument): StrutCorner {
  const page = gave(car, 'corner', 'page').given;
  const corner = page ? over(page, EXAMPLE_CORNER) : EXAMPLE_CORNER;
  // z is measured from the ground, so the wheel centre's height is the loaded radius until somebody measures that too.
  const { wheelCentre } = car.given.points;
  return wheelCentre ? { ...corner, loadedRadius: wheelCentre[2] } : corner;
}

function over({ points, loadedRadius, camber, toe, plusMinus }: GivenCorner, base: StrutCorner): StrutCorner {
  const point = (key: StrutPointKey): Vector3 => points[key] ?? hardPoint(base, key);
  return {
    kind: 'strut',
    wheelCentre: point('wheelCentre'),
    loadedRadius: loadedRadius ?? points.wheelCentre?.[2] ?? base.loadedRadius,
    camber: camber ?? base.camber,
    toe: toe ?? base.toe,
    lowerArm: { front: point('lowerArm.front'), rear: point('lowerArm.rear'), ball: point('lowerArm.ball') },
    strut: { top: point('strut.top'), low: point('strut.low') },
    tieRod: { inner: point('tieRod.inner'), outer: point('tieRod.outer') },
    plusMinus: plusMinusOver(points, plusMinus, base.plusMinus),
  };
}

/** Of a given point its own, else what was said of all given ones, else none; of the others that of the base. */
function plusMinusOver(points: GivenCorner['points'], own: PlusMinus = {}, base: PlusMinus = {}): PlusMinus {
  const all: PlusMinus = {};
  for (const key of STRUT_POINT_KEYS) {
    const { [key]: value = points[key] ? own.other : base.other } = points[key] ? own : base;
    if (value) all[key] = value;
  }
  return all;
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

const isPoint = (value: unknown): value is Vector3 =>
  Array.isArray(value) && value.length === 3 && value.every((x) => typeof x === 'number' && Number.isFinite(x));

/** Whether the corner was handed over whole as a double wishbone: it has no sheets to edit it with yet. */
export function isWishbone(car: CarDocument): boolean {
  return (car.whole as { kind?: unknown } | null | undefined)?.kind === 'wishbone';
}

/**
 * Takes a corner handed over whole apart, so that single values can be edited. A corner that is not complete and clean stays
 * whole as well: the solver then names what is wrong by the paths its author knows, until somebody corrects a value.
 */
export function takeCorner(data: unknown): Pick<CarDocument, 'given' | 'whole'> {
  const corner = data as Partial<StrutCorner> | null;
  const points: Partial<Record<StrutPointKey, Vector3>> = {};
  for (const key of STRUT_POINT_KEYS) {
    const found = key
      .split('.')
      .reduce<unknown>((at, name) => (at as Record<string, unknown> | null | undefined)?.[name], corner);
    if (isPoint(found)) points[key] = found;
  }
  const known = ['kind', 'wheelCentre', 'loadedRadius', 'camber', 'toe', 'lowerArm', 'strut', 'tieRod', 'plusMinus'];
  const clean =
    corner?.kind === 'strut' &&
    Object.keys(points).length === STRUT_POINT_KEYS.length &&
    Object.keys(corner).every((key) => known.includes(key)) &&
    [corner.lowerArm, corner.strut, corner.tieRod].every((part, i) => Object.keys(part!).length === [3, 2, 2][i]) &&
    [corner.loadedRadius, corner.camber, corner.toe].every((x) => typeof x === 'number');
  const given: GivenCorner = { points };
  for (const key of ['loadedRadius', 'camber', 'toe'] as const) {
    const value = corner?.[key];
    if (typeof value === 'number' && Number.isFinite(value)) given[key] = value;
  }
  if (!clean) return { given, whole: data };
  const { plusMinus } = corner as StrutCorner;
  return { given: { ...given, ...(plusMinus && { plusMinus }) } };
}

/** Bump travel at stock height, mm: a page's is that of the page's car, and says nothing of a car the user gives. */
export function bumpTravelOf(car: CarDocument): number | undefined {
  return givenBy(car, 'corner') === 'user' && givenBy(car, 'bumpTravel') === 'page' ? undefined : car.bumpTravel;
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
  givenBy(car, 'fit') === 'page' && givenBy(car, 'corner') === 'user' ? {} : endsIn(car);

/** The same; of a page's car whose reader gave other things of the kind, the page's. */
export function limitsOf(car: CarDocument): Ends {
  const own = givenEnds(car);
  return isAnyEnd(own) || givenBy(car, 'corner') === 'user' ? own : endsIn(gave(car, 'fit', 'page'));
}

/** What a link or an attribute says of heights without a car. */
export type Heights = Pick<CarDocument, 'drop' | 'dropPlusMinus' | 'bumpTravel'>;

/** A car at these heights; what they do not say stays. */
export function withHeights(car: CarDocument, heights: Heights, by: Giver): CarDocument {
  const { drop, dropPlusMinus, bumpTravel } = heights;
  const lowered = { ...car, drop, ...(dropPlusMinus !== undefined && { dropPlusMinus }) };
  return bumpTravel === undefined ? lowered : give(lowered, 'bumpTravel', by, () => ({ bumpTravel }));
}

/** A car of which no height is said but the drop. */
export const withoutHeights = ({ dropPlusMinus: _, ...car }: CarDocument): CarDocument =>
  give(car, 'bumpTravel', 'user', () => ({}));

/** How many of the hard points somebody gave. */
export function givenPointCount(car: CarDocument): number {
  return Object.keys(car.given.points).length;
}

/** The other corner of the same axle. */
export const otherCorner = (name: CornerName): CornerName =>
  (name.endsWith('left') ? name.replace('left', 'right') : name.replace('right', 'left')) as CornerName;
