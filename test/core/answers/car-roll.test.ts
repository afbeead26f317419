import { describe, expect, it } from 'vitest';
import { loadOf, marksOf, rollPlace } from '../../../core/answers/car-roll.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { isOtherAxleHalf, loadMissing, photoRoll, rollWayOf } from '../../../core/document/turn-roll.js';
import type { TurnSettings } from '../../../core/document/turn-settings.js';

const car = (turn: TurnSettings, more: Partial<CarDocument> = {}): CarDocument => ({ ...EMPTY_CAR, ...more, turn });
const LOAD = { lateral: 0.8, centreHeight: 520, sprungMass: 600, springRate: 28 };

describe('where the roll of a car comes from', () => {
  it.each([
    ['typed', {}],
    ['typed', { roll: 4, marks: { outer: 38, inner: 34 } }],
    ['typed', { rollFrom: 'marks', marks: { inner: 38 } }],
    ['marks', { rollFrom: 'marks', marks: { outer: 38 } }],
    ['marks', { rollFrom: 'marks', marks: { outer: 38, inner: 34 }, roll: 4 }],
    ['typed', { rollFrom: 'photo' }],
    ['photo', { rollFrom: 'photo', photo: 4 }],
    ['typed', { rollFrom: 'load', load: { lateral: 0.8 } }],
    ['load', { rollFrom: 'load', load: LOAD }],
  ] as const)('%s: as chosen once it is whole', (way, turn) => {
    expect(rollWayOf(car(turn))).toBe(way);
  });

  it('springs and corner weights of the page about lowering stand in for those of the axle, two corners to an axle', () => {
    const loads = { springRate: 28, cornerMass: 340, unsprungMass: 40, stopRate: 50 };
    const found = car({ load: { lateral: 0.8, centreHeight: 520 } }, { loads, stopGap: 20 });
    expect(loadMissing(found)).toEqual([]);
    expect(loadOf(found, 0).axle).toEqual({
      sprungMass: 600,
      unsprungMass: 80,
      springRate: 28,
      stop: { gap: 20, rate: 50 },
    });
    expect(loadMissing(car({}))).toEqual(['lateral', 'springRate', 'sprungMass', 'centreHeight']);
  });

  it('lower by the drop the centre of gravity is too, and of the stop’s gap what shorter springs take', () => {
    const stopped = { ...LOAD, stopGap: 30, stopRate: 40 };
    const springs = loadOf(car({ load: stopped }, { measuredAt: 10 }), 25);
    expect([springs.centreOfGravityHeight, springs.lowerThanGap]).toEqual([495, 15]);
    const dampers = loadOf(car({ load: stopped }, { lowered: 'dampers' }), 25);
    expect([dampers.centreOfGravityHeight, dampers.lowerThanGap]).toEqual([495, undefined]);
  });

  it('a ± is half the 95 % interval: the request takes the standard uncertainty', () => {
    expect(loadOf(car({ load: { ...LOAD, centrePlusMinus: 39.2 } }), 0).heightUncertainty).toBeCloseTo(20, 3);
    expect(marksOf(car({ marks: { outer: 38, inner: 34, plusMinus: 3.92 } })).markUncertainty).toBeCloseTo(2, 4);
    expect(photoRoll(car({ photo: 4.1, tyreRoll: 0.6, photoPlusMinus: 0.392 })).uncertainty).toBeCloseTo(0.2, 5);
  });

  it('a photo shows the tyres’ share as well: it is taken off where it is known', () => {
    expect(photoRoll(car({ photo: 4.1, tyreRoll: 0.6 })).roll).toBe(3.5);
    expect(photoRoll(car({ photo: 4.1 })).roll).toBe(4.1);
  });

  it('without a figure of the inner damper its wheel falls as far as the outer one rises', () => {
    expect(marksOf(car({ marks: { outer: 38 }, track: 1480 }))).toEqual({
      outerTravel: 38,
      innerTravel: 38,
      track: 1480,
    });
  });

  it('the other axle counts once it is whole', () => {
    const half = car({ load: { ...LOAD, otherMass: 450, otherTrack: 1470 } });
    expect([isOtherAxleHalf(half), loadOf(half, 0).otherAxle]).toEqual([true, undefined]);
    const whole = car({ load: { ...half.turn!.load, otherRollCentre: 90, otherSpringRate: 24, otherBarRate: 8 } });
    expect(isOtherAxleHalf(whole)).toBe(false);
    expect(loadOf(whole, 0).otherAxle).toEqual({
      sprungMass: 450,
      track: 1470,
      rollCentreHeight: 90,
      springRate: 24,
      bar: { rate: 8 },
    });
  });

  it('a problem of the request is told where its value stands in the car', () => {
    expect(rollPlace('load.axle.springRate')).toBe('turn.load.springRate');
    expect(rollPlace('marks.track')).toBe('turn.track');
    expect(rollPlace('roll')).toBeUndefined();
  });
});
