import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../core/quantity/problem.js';
import { pathOfLengths, shortenedBetween } from '../../../core/travel/damper-path.js';
import { cornerUnderLoad, type LoadRequest } from '../../../core/travel/loads.js';
import type { CornerLoads, TravelLimits } from '../../../core/travel/travel-limits.js';

const GRAVITY = 9.80665;
/** Invented: a motion ratio that goes from 0.6 to 1.0. */
const travels = Float64Array.from({ length: 81 }, (_, i) => -80 + 2.5 * i);
const bentLength = (z: number) => 500 - 0.76 * z - 0.001 * z * z;
const path = pathOfLengths(travels, travels.map(bentLength))!;
const corner = { springRate: 30, cornerMass: 380, unsprungMass: 40 };
const ask = (loads: CornerLoads, limits: TravelLimits = {}, rest: Partial<LoadRequest> = {}) =>
  cornerUnderLoad({ path, limits, loads, drop: 0, ...rest });
const refusal = (request: unknown) => {
  try {
    cornerUnderLoad(request as LoadRequest);
  } catch (error) {
    if (error instanceof InputError) return error.problems.map(({ code, path: at }) => `${at}: ${code}`);
    throw error;
  }
  return [];
};
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('ride frequencies and static deflections', () => {
  // test/reference/ride_frequency_cases.csv: Barton & Fieldhouse, Automotive Chassis Engineering, Springer 2018, eq. 3.33, p. 179,
  // and elementary mechanics, evaluated.
  const rows = readFileSync(new URL('../../reference/ride_frequency_cases.csv', import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .slice(2)
    .map((line) => {
      const cells = line.replace(/^"[^"]*",|^[^,]*,/, '').split(',');
      const name = line.slice(0, line.length - cells.join(',').length - 1).replaceAll('"', '');
      const [spring, ratio, wheel, tyre, ride, mass, onWheel, onTyre, deflection] = cells.map(Number);
      return {
        name,
        spring: spring! || wheel!,
        ratio: ratio! || 1,
        wheel,
        tyre,
        ride,
        mass,
        onWheel,
        onTyre,
        deflection,
      };
    });
  const corners = rows.filter(({ mass }) => mass! > 0);
  const deflections = rows.filter(({ mass }) => !mass);

  it('holds eleven rows', () => {
    expect(corners).toHaveLength(5);
    expect(deflections).toHaveLength(6);
  });

  it.each(corners)('$name', ({ spring, ratio, wheel, tyre, ride, mass, onWheel, onTyre, deflection }) => {
    const answer = ask(
      { springRate: spring, cornerMass: mass! + 30, unsprungMass: 30, tyreRate: tyre! },
      { motionRatio: ratio },
    );
    expect(answer.sprungMass).toBeCloseTo(mass!, 6);
    expect(answer.wheelRate).toBeCloseTo(wheel!, 6);
    expect(answer.rideFrequency).toBeCloseTo(onWheel!, 6);
    expect(answer.rideFrequencyOnTyre).toBeCloseTo(onTyre!, 6);
    expect(1000 * ride!).toBeCloseTo((2 * Math.PI * answer.rideFrequencyOnTyre!) ** 2 * mass!, 1);
    // Once more its weight takes it as far again.
    expect(answer.travelAtLoad).toBeCloseTo(deflection!, 4);
    expect(answer.reaches).toBe('none');
  });

  it.each(deflections)('$name', ({ onWheel, deflection }) => {
    const springRate = (300 * GRAVITY) / deflection!;
    const { rideFrequency, travelAtLoad } = ask({ springRate, cornerMass: 340, unsprungMass: 40 }, { motionRatio: 1 });
    expect(rideFrequency).toBeCloseTo(onWheel!, 6);
    expect(travelAtLoad).toBeCloseTo(deflection!, 6);
  });
});

describe('a motion ratio that changes', () => {
  /** The wheel's force from the closed form of the path, nothing of the code under test. */
  const wheelForce = (z: number, drop: number) => {
    const ratio = (at: number) => 0.76 + 0.002 * at;
    const weight = (corner.cornerMass - corner.unsprungMass) * GRAVITY;
    return (weight / ratio(drop) + corner.springRate * (bentLength(drop) - bentLength(z))) * ratio(z);
  };

  it.each([-40, 0, 30, 70])('wheel rate at a drop of %d mm is the numerical derivative of F·MR', (drop) => {
    const { wheelRate } = ask(corner, {}, { drop });
    expect(wheelRate).toBeCloseTo((wheelForce(drop + 0.01, drop) - wheelForce(drop - 0.01, drop)) / 0.02, 5);
    const ratio = 0.76 + 0.002 * drop;
    expect(wheelRate - corner.springRate * ratio ** 2).toBeGreaterThan(3);
  });

  it.each([1, 1.3, 1.8])('at %d times its weight the corner is in equilibrium', (loadFactor) => {
    const { travelAtLoad, load } = ask({ ...corner, loadFactor }, {}, { drop: 20 });
    expect(wheelForce(20 + travelAtLoad, 20)).toBeCloseTo(load, 6);
    expect(load).toBeCloseTo(loadFactor * 340 * GRAVITY, 9);
  });
});

describe('load and stop', () => {
  const stopped = { motionRatio: 0.9, stopGap: 36, stopLength: 60 };

  it('constant motion ratio, no stop: travel is (n − 1)·W/(k·MR²)', () => {
    fc.assert(
      fc.property(
        number(1, 3),
        number(5, 200),
        number(0.2, 1.5),
        number(50, 600),
        (loadFactor, springRate, motionRatio, mass) => {
          const { travelAtLoad, reaches } = ask(
            { springRate, cornerMass: mass + 30, unsprungMass: 30, loadFactor },
            { motionRatio },
          );
          const expected = ((loadFactor - 1) * mass * GRAVITY) / (springRate * motionRatio ** 2);
          fc.pre(expected < 4000);
          expect(Math.abs(travelAtLoad - expected)).toBeLessThan(1e-8 * Math.max(1, expected));
          expect(reaches).toBe('none');
        },
      ),
      { endOnFailure: true },
    );
  });

  // 340 kg: W = 3334.261 N. The gap closes after 40 mm of wheel travel; from there the stop's rate adds to the spring's.
  it('a linear stop adds its rate once the gap has closed', () => {
    const answer = ask({ ...corner, stopRate: 60, loadFactor: 1.5 }, stopped);
    const beyond = (0.5 * 340 * GRAVITY - 30 * 0.81 * 40) / (90 * 0.81);
    expect(answer).toMatchObject({
      travelAtLoad: expect.closeTo(40 + beyond, 6),
      stopCompression: expect.closeTo(0.9 * beyond, 6),
      reaches: 'stop',
      shortOfSolid: expect.closeTo(66 / 0.9 - 40 - beyond, 6),
    });
    expect(answer).not.toHaveProperty('atLeast');
  });

  it('points of a progressive stop: straight between them, and on along the last two', () => {
    const stopPoints = [
      [10, 200],
      [20, 800],
    ] as const;
    // Compression c after 36 + c mm on the rod: 0.9·(W/0.9 + 30·(36 + c) + force(c)).
    const factorAt = (c: number, force: number) => 1 + (0.9 * (30 * (36 + c) + force)) / (340 * GRAVITY);
    for (const [c, force] of [
      [5, 100],
      [10, 200],
      [15, 500],
      [25, 1100],
    ] as const) {
      for (const points of [stopPoints, [[0, 0] as const, ...stopPoints]]) {
        const { stopCompression } = ask({ ...corner, stopPoints: points, loadFactor: factorAt(c, force) }, stopped);
        expect(stopCompression).toBeCloseTo(c, 6);
      }
    }
  });

  it('more than is balanced when the stop is solid ends there', () => {
    const answer = ask({ ...corner, stopRate: 30, loadFactor: 5 }, stopped);
    expect(answer).toMatchObject({
      reaches: 'solid',
      travelAtLoad: expect.closeTo(66 / 0.9, 9),
      stopCompression: expect.closeTo(30, 9),
      shortOfSolid: 0,
    });
  });

  it('a lower car is nearer its stop; with shorter lower bodies it is not', () => {
    const at = (drop: number, lowered: 'springs' | 'dampers') =>
      ask({ ...corner, stopRate: 60, loadFactor: 1.5 }, stopped, { drop, lowered }).stopCompression;
    expect(at(30, 'springs')).toBeGreaterThan(at(0, 'springs') + 5);
    expect(at(30, 'dampers')).toBeCloseTo(at(0, 'dampers'), 6);
  });

  it('a car that rests on its stop at ride height has the stop’s rate in its own', () => {
    const resting = ask({ ...corner, stopRate: 60 }, stopped, { drop: 50 });
    expect(resting.wheelRate).toBeCloseTo(90 * 0.81, 6);
    expect(ask({ ...corner, stopRate: 60, loadFactor: 1 }, stopped, { drop: 50 }).travelAtLoad).toBeCloseTo(0, 9);
  });

  it('of a stop nobody knows the force of, only that it is reached', () => {
    expect(ask({ ...corner, loadFactor: 2 }, stopped)).toMatchObject({
      reaches: 'stop',
      travelAtLoad: expect.closeTo(40, 9),
      atLeast: true,
    });
    expect(ask({ ...corner, loadFactor: 1.1 }, stopped)).not.toHaveProperty('atLeast');
  });

  it('a load that takes the damper beyond what is known of it: at least so far', () => {
    expect(ask({ ...corner, loadFactor: 4 })).toMatchObject({ travelAtLoad: 120, atLeast: true, reaches: 'none' });
  });

  it('more load never takes the wheel less far, nor frees the stop', () => {
    const order = { none: 0, stop: 1, solid: 2 };
    const factor = number(1, 6);
    fc.assert(
      fc.property(factor, factor, number(0, 80), number(0, 200), number(-20, 60), (a, b, stopGap, stopRate, drop) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((loadFactor) =>
          ask({ ...corner, stopRate, loadFactor }, { stopGap, stopLength: 50, strokeBump: 90 }, { drop }),
        );
        expect(more!.travelAtLoad).toBeGreaterThanOrEqual(less!.travelAtLoad - 1e-9);
        expect(more!.stopCompression).toBeGreaterThanOrEqual(less!.stopCompression - 1e-9);
        expect(order[more!.reaches]).toBeGreaterThanOrEqual(order[less!.reaches]);
      }),
      { endOnFailure: true },
    );
  });

  it('the damper’s gas is part of what carries the weight: it changes none of this', () => {
    expect(ask({ ...corner, stopRate: 40, gasForce: 250 }, stopped)).toEqual(ask({ ...corner, stopRate: 40 }, stopped));
  });

  it('the stop’s compression is along the rod, not at the wheel', () => {
    const { travelAtLoad, stopCompression } = ask({ ...corner, stopRate: 20 }, { stopGap: 20 });
    expect(stopCompression).toBeCloseTo(shortenedBetween(path, 0, travelAtLoad) - 20, 9);
  });
});

describe('refused', () => {
  it('what is needed and not given', () => {
    expect(refusal({ path: undefined, limits: { stopGap: 3 }, loads: {}, drop: 0 })).toEqual([
      'limits.motionRatio: missing',
      'loads.springRate: missing',
      'loads.cornerMass: missing',
      'loads.unsprungMass: missing',
    ]);
    expect(refusal({ path: undefined, limits: {}, loads: corner, drop: 0 })).toEqual(['limits.motionRatio: missing']);
  });

  it('all that is wrong, of limits and loads, at once', () => {
    const loads = {
      springRate: 0,
      stopRate: -1,
      gasForce: Number.NaN,
      cornerMass: 300,
      unsprungMass: 300,
      tyreRate: 'soft',
      loadFactor: 0.5,
      stopPoints: [[5, 100], [5, 200], [8, 150], 7],
    };
    expect(refusal({ path, limits: { stopGap: -1 }, loads, drop: 0 })).toEqual([
      'limits.stopGap: out-of-range',
      'loads.springRate: out-of-range',
      'loads.stopRate: out-of-range',
      'loads.gasForce: not-finite',
      'loads.tyreRate: not-a-number',
      'loads.loadFactor: out-of-range',
      'loads.unsprungMass: out-of-range',
      'loads.stopPoints.1.0: coincide',
      'loads.stopPoints.2.1: out-of-range',
      'loads.stopPoints.3: wrong-shape',
    ]);
  });

  it('a drop at which the damper’s motion is not known', () => {
    expect(refusal({ path, limits: {}, loads: corner, drop: 130 })).toEqual(['drop: outside-domain']);
  });
});

describe('a stop against the weight that rests on its corner', () => {
  /*
   * The invented corner of the page on bump travel: 28 N/mm, ratio 0.96, 335 kg sprung, 22 mm of gap, 25 mm of a 50 mm stop usable.
   * At twice its static load of 3285.23 N the spring carries 3285.23 + 28 · 0.96² · 48.958 = 4548.59 N where the stop is solid; the other
   * 2021.87 N are the stop's. Which stop does that: 2021.87 / 0.96 = 2106.11 N over its 25 mm.
   */
  const limits: TravelLimits = { stopGap: 22, stopLength: 50, motionRatio: 0.96 };
  const loads: CornerLoads = { springRate: 28, cornerMass: 380, unsprungMass: 45, stopRate: 2106.11 / 25 };

  it('that is solid at twice the static load takes 62 % of that weight by then, enough to lift the car off its stands', () => {
    const { staticLoad, travelAtLoad } = ask(loads, limits, { path: undefined });
    expect(travelAtLoad).toBeCloseTo(47 / 0.96, 3);
    const byStop = 2 * staticLoad - (staticLoad + 28 * 0.96 ** 2 * travelAtLoad);
    expect(byStop).toBeGreaterThan(2000);
    expect(byStop / staticLoad).toBeCloseTo(0.615, 3);
  });
});
