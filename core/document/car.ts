import type { CurveData } from '../curve/curve-data.js';
import type { DrivewayMeasurements } from '../driveway/driveway.js';
import {
  hardPoint,
  type PlusMinus,
  STRUT_POINT_KEYS,
  type StrutCorner,
  type StrutPointKey,
  type Vector3,
} from '../linkage/corner.js';
import type { CornerLoads, TravelLimits } from '../travel/travel-limits.js';
import type { CornerName } from './corner-name.js';
import { EXAMPLE_CORNER } from './example-corner.js';
import { EXAMPLE_DRIVEWAY } from './example-driveway.js';
import type { Fit } from './fit.js';
import type { Setup } from './setup.js';

/** What is known of one corner. Only what somebody gave; the example stands in for the rest. */
export interface GivenCorner {
  points: Partial<Record<StrutPointKey, Vector3>>;
  loadedRadius?: number;
  camber?: number;
  toe?: number;
  /** 95 % half-widths, mm, by point. */
  plusMinus?: PlusMinus;
  /** What was measured in the driveway, but for static camber. */
  measures?: DrivewayMeasurements;
}

/** A curve that somebody else made: power coefficients of camber over travel (degrees, mm; constant term first), or a fit with its doubt. */
export type GivenCurve =
  | { kind: 'coefficients'; coefficients: number[]; domain: [number, number]; standardUncertainties?: number[] }
  | { kind: 'curve'; curve: CurveData };

export { CORNER_NAMES, type CornerName } from './corner-name.js';

/**
 * One car, as plain immutable data: what somebody gave and nothing derived from it. mm and degrees. A corner handed over whole
 * (`whole`) is kept as it came, so that its problems can be told by its own paths.
 */
export interface CarDocument {
  readonly version: 1;
  readonly cornerName: CornerName;
  /** What the answer is made from where no curve is given: hard points, what can be measured in a driveway, or readings. */
  readonly by: 'driveway' | 'points' | 'readings';
  /** Who gave the values: the page that shows the element, or the person in front of it. */
  readonly givenBy: 'page' | 'user';
  readonly given: GivenCorner;
  readonly whole?: unknown;
  /** Once a user gives values: what the page had given, which stands in for the rest; without it the example does. */
  readonly standIn?: GivenCorner;
  /** A curve in place of hard points. */
  readonly curve?: GivenCurve;
  /** Sets of parts with their readings. */
  readonly setups?: readonly Setup[];
  /** Index of the one in use; 0 without it. */
  readonly setup?: number;
  /** 'page' where a page gave them; else they are the user's. */
  readonly setupsGivenBy?: 'page' | 'user';
  readonly drop: number;
  readonly dropPlusMinus?: number;
  readonly bumpTravel?: number;
  /** In its place: the gap to the bump stop along the damper's rod, mm. */
  readonly stopGap?: number;
  /** What is compared: drops, mm, the first being the reference's own, and the bump from each over which changes are looked at. */
  readonly compare?: { readonly heights?: readonly number[]; readonly over?: number };
  /** What else ends travel, and when the stop is solid, as found at the height the car stood. */
  readonly limits?: Omit<TravelLimits, 'stopGap'>;
  readonly loads?: CornerLoads;
  /** Wheels and what they can meet. */
  readonly fit?: Fit;
  /** 'page' where a page gave limits, loads, wheels and places. */
  readonly fitGivenBy?: 'page' | 'user';
  /** Once a user gives any of it: what the page had given. */
  readonly fitStandIn?: Pick<CarDocument, 'fit' | 'limits' | 'stopGap'>;
  /** How it was lowered; see LoweringRequest. */
  readonly lowered?: 'springs' | 'dampers';
  /** How much lower the car stood when its static camber was read, mm; see LoweringRequest. */
  readonly camberReadLower?: number;
  /** The drop at which the values were measured, mm, on a car that was lowered already; without it they are those of stock height. */
  readonly measuredAt?: number;
  /** The same axle's other side: its own drop, mm, and its own static camber, degrees. Its links are the mirror image. */
  readonly other?: { readonly drop: number; readonly camber: number };
  /** 'page' where a page gave it with its own car. */
  readonly bumpTravelGivenBy?: 'page' | 'user';
}

export const EXAMPLE_DROP_MM = 30;

/** The document that nothing was given to yet. */
export const EMPTY_CAR: CarDocument = {
  version: 1,
  cornerName: 'Front left',
  by: 'driveway',
  givenBy: 'page',
  given: { points: {} },
  drop: EXAMPLE_DROP_MM,
};

/** What the user gave; of a page's corner with mistakes in it, all that could be read, to be corrected. */
export function ownOf({ given, givenBy, whole }: CarDocument): GivenCorner {
  return givenBy === 'user' || whole !== undefined ? given : { points: {} };
}

/** Of a camber that an alignment sheet or a gauge gave, degrees: common practice, no source. */
const CAMBER_PLUS_MINUS = 0.1;

/**
 * What was measured in the driveway: the user's own as soon as there is any, and nothing in place of the rest, which the solver
 * then assumes widely; until then the page's or the example's.
 */
export function drivewayOf({ given, standIn }: CarDocument): DrivewayMeasurements {
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
export function cornerGivenBy({ givenBy, given, whole, curve }: CarDocument): 'user' | 'page' | undefined {
  const { points, camber, toe, loadedRadius } = given;
  const hasFigures = [camber, toe, loadedRadius].some((figure) => figure !== undefined);
  const isGiven = hasMeasured(given) || hasFigures || Object.keys(points).length > 0;
  return isGiven || whole !== undefined || curve !== undefined ? givenBy : undefined;
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
export function standInOf({ given, givenBy, standIn }: CarDocument): StrutCorner {
  const page = givenBy === 'page' ? given : standIn;
  const corner = page ? over(page, EXAMPLE_CORNER) : EXAMPLE_CORNER;
  // z is measured from the ground, so the wheel centre's height is the loaded radius until somebody measures that too.
  const { wheelCentre } = given.points;
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
  const { whole, ...rest } = car;
  if (car.givenBy === 'user' || whole !== undefined) return { ...rest, givenBy: 'user', given: change(car.given) };
  const { points, ...others } = car.given;
  const isExample = Object.keys(points).length + Object.keys(others).length === 0;
  return { ...rest, givenBy: 'user', given: change({ points: {} }), ...(!isExample && { standIn: car.given }) };
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
export function bumpTravelOf({ givenBy, bumpTravel, bumpTravelGivenBy }: CarDocument): number | undefined {
  return givenBy === 'user' && bumpTravelGivenBy === 'page' ? undefined : bumpTravel;
}

type Ends = Pick<CarDocument, 'stopGap' | 'limits'>;

/** What ends travel, as given; a page's is that of the page's car, and says nothing of a car the user gives. */
export function limitsOf(car: CarDocument): Ends {
  const { givenBy, fitGivenBy, fitStandIn = {} } = car;
  const isNone = ({ stopGap, limits }: Ends) => stopGap === undefined && Object.keys(limits ?? {}).length === 0;
  const own: Ends = fitGivenBy !== 'page' || givenBy !== 'user' ? car : {};
  const { stopGap, limits } = isNone(own) && givenBy !== 'user' ? fitStandIn : own;
  return { ...(stopGap !== undefined && { stopGap }), ...(limits && { limits }) };
}

/** What a link or an attribute says of heights without a car. */
export type Heights = Pick<CarDocument, 'drop' | 'dropPlusMinus' | 'bumpTravel' | 'bumpTravelGivenBy'>;

/** The heights of a document alone. */
export function heightsIn({ drop, dropPlusMinus, bumpTravel, bumpTravelGivenBy }: CarDocument): Heights {
  return {
    drop,
    ...(dropPlusMinus !== undefined && { dropPlusMinus }),
    ...(bumpTravel !== undefined && { bumpTravel }),
    ...(bumpTravelGivenBy !== undefined && { bumpTravelGivenBy }),
  };
}

/** How many of the hard points somebody gave. */
export function givenPointCount(car: CarDocument): number {
  return Object.keys(car.given.points).length;
}

/** The other corner of the same axle. */
export const otherCorner = (name: CornerName): CornerName =>
  (name.endsWith('left') ? name.replace('left', 'right') : name.replace('right', 'left')) as CornerName;
