import type { CurveData } from '../curve/curve-data.js';
import {
  type PlusMinus,
  STRUT_POINT_KEYS,
  type StrutCorner,
  type StrutPointKey,
  type Vector3,
} from '../linkage/corner.js';
import { EXAMPLE_CORNER } from './example-corner.js';

/** What is known of one corner. Only what somebody gave; the example stands in for the rest. */
export interface GivenCorner {
  points: Partial<Record<StrutPointKey, Vector3>>;
  loadedRadius?: number;
  camber?: number;
  toe?: number;
  /** 95 % half-widths, mm, by point. */
  plusMinus?: PlusMinus;
}

/** A curve that somebody else made: power coefficients of camber over travel (degrees, mm; constant term first), or a fit with its doubt. */
export type GivenCurve =
  | { kind: 'coefficients'; coefficients: number[]; domain: [number, number]; standardUncertainties?: number[] }
  | { kind: 'curve'; curve: CurveData };

/**
 * One car, as plain immutable data: what somebody gave and nothing derived from it. mm and degrees. A corner handed over whole
 * (`whole`) is kept as it came, so that its problems can be told by its own paths.
 */
export interface CarDocument {
  readonly version: 1;
  readonly cornerName: string;
  /** Who gave the values: the page that shows the element, or the person in front of it. */
  readonly givenBy: 'page' | 'user';
  readonly given: GivenCorner;
  readonly whole?: unknown;
  /** A curve in place of hard points. */
  readonly curve?: GivenCurve;
  readonly drop: number;
  readonly dropPlusMinus?: number;
  readonly bumpTravel?: number;
  /** 'page' where a page gave it with its own car. */
  readonly bumpTravelGivenBy?: 'page' | 'user';
}

export const EXAMPLE_DROP_MM = 30;

/** The document that nothing was given to yet. */
export const EMPTY_CAR: CarDocument = {
  version: 1,
  cornerName: 'Front left',
  givenBy: 'page',
  given: { points: {} },
  drop: EXAMPLE_DROP_MM,
};

/** The corner to solve: what was given, over the example. Given points without a stated doubt have none. */
export function cornerOf(car: CarDocument): unknown {
  if (car.whole !== undefined) return car.whole;
  const { points, loadedRadius, camber, toe } = car.given;
  const example = EXAMPLE_CORNER;
  const corner: StrutCorner = {
    kind: 'strut',
    wheelCentre: points.wheelCentre ?? example.wheelCentre,
    loadedRadius: loadedRadius ?? example.loadedRadius,
    camber: camber ?? example.camber,
    toe: toe ?? example.toe,
    lowerArm: {
      front: points['lowerArm.front'] ?? example.lowerArm.front,
      rear: points['lowerArm.rear'] ?? example.lowerArm.rear,
      ball: points['lowerArm.ball'] ?? example.lowerArm.ball,
    },
    strut: { top: points['strut.top'] ?? example.strut.top, low: points['strut.low'] ?? example.strut.low },
    tieRod: {
      inner: points['tieRod.inner'] ?? example.tieRod.inner,
      outer: points['tieRod.outer'] ?? example.tieRod.outer,
    },
    plusMinus: plusMinusOf(car.given),
  };
  return corner;
}

/** Each point's own; else what was said of all given ones; else none for given points and the example's for its own. */
function plusMinusOf({ points, plusMinus = {} }: GivenCorner): PlusMinus {
  const all: PlusMinus = {};
  for (const key of STRUT_POINT_KEYS) {
    const example = EXAMPLE_CORNER.plusMinus?.[key] ?? EXAMPLE_CORNER.plusMinus?.other;
    const value = plusMinus[key] ?? (points[key] ? plusMinus.other : example);
    if (value) all[key] = value;
  }
  return all;
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

/** How many of the hard points somebody gave. */
export function givenPointCount(car: CarDocument): number {
  return Object.keys(car.given.points).length;
}
