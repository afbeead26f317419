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
import { gave } from './provenance.js';

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
