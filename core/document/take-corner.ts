import { STRUT_POINT_KEYS, type StrutCorner, type StrutPointKey, type Vector3 } from '../linkage/corner.js';
import type { CarDocument, GivenCorner } from './car-schema.js';

const isPoint = (value: unknown): value is Vector3 =>
  Array.isArray(value) && value.length === 3 && value.every((x) => typeof x === 'number' && Number.isFinite(x));

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
