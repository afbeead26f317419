import { describe, expect, it } from 'vitest';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { fullBumpOf } from '../../../core/document/full-bump.js';
import { byUser } from '../../../core/document/own-car.js';
import { travelBudget } from '../../../core/travel/budget.js';
import type { Place } from '../../../core/wheel/place.js';

/*
 * How far a corner is raised by hand. Expected heights by subtraction, from the worked example of the page on bump travel: 22 mm of gap
 * and half of a 50 mm stop on a rod with the ratio 0.96 end bump at 48.96 mm; 367 mm from hub centre to arch lip are then 318.04 mm.
 */

const LIMITS = { stopGap: 22, stopLength: 50, motionRatio: 0.96 };
const { stopGap, ...limits } = LIMITS;
const lip: Place = { name: 'arch lip', fixedTo: 'body', is: 'bodywork', at: { clock: 12, distance: 367, out: 20 } };
const own: CarDocument = { ...EMPTY_CAR, provenance: { corner: { by: 'user' }, fit: { by: 'user' } }, stopGap, limits };
const withLip: CarDocument = { ...own, fit: { places: [lip] } };
const solidAt = (drop: number, more: object = {}) =>
  travelBudget({ path: undefined, limits: LIMITS, drop, ...more }).bump.solid;

describe('the height to which a corner is raised by hand', () => {
  it('is hub to arch less the bump to solid, rounded so that nobody raises further', () => {
    expect(fullBumpOf(withLip, solidAt(0), 0)).toEqual({ shorter: 48, hubToArch: 319, whose: 'yours' });
  });

  it('stays where it is on shorter springs, while what is left shrinks by the drop', () => {
    expect(fullBumpOf(withLip, solidAt(30), 30)).toEqual({ shorter: 18, hubToArch: 319, whose: 'yours' });
  });

  it('comes nearer to the arch by the drop where the dampers were shortened: the rod keeps its gap', () => {
    const car = { ...withLip, lowered: 'dampers' as const };
    expect(fullBumpOf(car, solidAt(30, { lowered: 'dampers' }), 30)).toMatchObject({ shorter: 48, hubToArch: 289 });
  });

  it('is counted from where the lip was measured, on a car that was lowered already', () => {
    // 337 mm at 30 mm lower are 367 at stock height; the gap was found there too.
    const car: CarDocument = {
      ...own,
      measuredAt: 30,
      fit: { places: [{ ...lip, at: { clock: 0, distance: 337, out: 20 } }] },
    };
    const solid = travelBudget({ path: undefined, limits: { ...LIMITS, stopGap: 0 }, drop: 30, measuredAt: 30 }).bump
      .solid;
    // 25 / 0.96 = 26.04 mm above where it stands.
    expect(fullBumpOf(car, solid, 30)).toMatchObject({ shorter: 26, hubToArch: 311 });
  });

  it('is not lost to the rounding of a sum: 32 mm are 32 mm', () => {
    expect(fullBumpOf(own, { travel: 62 - 1e-12, governedBy: 'stop' }, 30)?.shorter).toBe(32);
  });

  it('has no place on the arch to go by where no lip was measured straight above the hub', () => {
    const at = (place: Partial<Place>) =>
      fullBumpOf({ ...own, fit: { places: [{ ...lip, ...place }] } }, solidAt(0), 0);
    expect(at({ at: { clock: 11, distance: 367, out: 20 } })).toEqual({ shorter: 48, whose: 'yours' });
    expect(at({ name: 'liner screw' })?.hubToArch).toBeUndefined();
    expect(at({ fixedTo: 'carrier' })?.hubToArch).toBeUndefined();
    expect(at({ at: { clock: 12, distance: 367, out: -20, from: 'inner' } })?.hubToArch).toBeUndefined();
    expect(at({ name: 'Arch lip ' })?.hubToArch).toBe(319);
  });
});

describe('no height is given', () => {
  it('where nobody knows where the suspension is solid, or only that it is not before', () => {
    expect(fullBumpOf(withLip, undefined, 0)).toBeUndefined();
    expect(fullBumpOf(withLip, { travel: 48, governedBy: 'stop', atLeast: true }, 0)).toBeUndefined();
  });

  it('where the car stands on its solid stop', () => {
    expect(fullBumpOf(withLip, solidAt(49), 49)).toBeUndefined();
  });
});

describe('whose height it is', () => {
  const solid = { travel: 50, governedBy: 'stop' as const };
  it('the example’s while nobody has given what ends travel, and never with the lip of another car', () => {
    const car: CarDocument = { ...EMPTY_CAR, provenance: own.provenance, fit: { places: [lip] } };
    expect(fullBumpOf(car, solid, 0)).toEqual({ shorter: 50, whose: 'example' });
  });

  it('the page’s where the page gave it', () => {
    const car: CarDocument = { ...withLip, provenance: { corner: { by: 'page' }, fit: { by: 'page' } } };
    expect(fullBumpOf(car, solid, 0)).toMatchObject({ whose: 'page', hubToArch: 317 });
  });

  it('the one’s who gave the bump travel, where that ends it', () => {
    const car: CarDocument = { ...EMPTY_CAR, bumpTravel: 62, provenance: { bumpTravel: { by: 'page' } } };
    const end = { travel: 62, governedBy: 'bumpTravel' as const };
    expect(fullBumpOf(car, end, 30)).toEqual({ shorter: 32, whose: 'page' });
    expect(fullBumpOf(byUser(car), end, 30)?.whose).toBe('yours');
  });

  it('the page’s as soon as any of it is, where nobody says which of them ends it', () => {
    const car: CarDocument = {
      ...own,
      provenance: { fit: { by: 'user' }, bumpTravel: { by: 'page' } },
      bumpTravel: 62,
    };
    expect(fullBumpOf(car, { travel: 49 }, 0)?.whose).toBe('page');
  });
});
