import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AxleInRoll } from '../../../core/travel/axle-in-roll.js';
import { rollFromAcceleration } from '../../../core/travel/roll.js';
import { rollFromMarks } from '../../../core/travel/roll-from-marks.js';
import { stiffnessForRoll } from '../../../core/travel/stiffness-for-roll.js';
import { independentRoll, type RollingAxle } from '../../reference/independent-roll.js';
import { rowsOf } from '../../reference/rows.js';
import { seeded } from '../linkage/random-corner.js';
import { problemsOf } from '../problems-of.js';

const GRAVITY = 9.80665;

/** The springs of an axle whose roll stiffness is known, N·m/rad: k t²/2 with the rate at the wheel. */
const springsFor = (stiffness: number, track: number): number => (2 * stiffness * 1000) / track ** 2;

describe('roll from lateral acceleration', () => {
  /*
   * body_roll_cases.csv, derived, each row checked there against the moment about the ground; the last is the car of Barton & Fieldhouse,
   * Automotive Chassis Engineering, p. 174. Its g is 9.81 and the project's 9.80665: acceleration is given in m/s², so only the weight's
   * shift differs, by 0.03 % of a term that is at most 0.2 of the roll.
   */
  it.each(rowsOf('body_roll_cases.csv'))('whole car: $msf + $msr kg, $ay m/s²', (row) => {
    const axle = (end: 'f' | 'r'): AxleInRoll => {
      const track = 1000 * row[`t${end}`]!;
      return {
        sprungMass: row[`ms${end}`]!,
        track,
        rollCentreHeight: 1000 * row[`hr${end}`]!,
        springRate: springsFor(row[`k${end}`]!, track),
        unsprungMass: row[`mu${end}`]!,
        unsprungHeight: 1000 * row[`hu${end}`]!,
      };
    };
    const answer = rollFromAcceleration({
      lateral: row.ay! / GRAVITY,
      centreOfGravityHeight: 1000 * row.h!,
      axle: axle('f'),
      otherAxle: axle('r'),
    });
    expect(answer.arm).toBeCloseTo(1000 * row.arm!, 5);
    expect(Math.abs(answer.roll - row.roll_deg!)).toBeLessThanOrEqual(1.5e-4 * row.roll_deg!);
    // Per g of theirs.
    expect(Math.abs(answer.gradient - row.roll_gradient_deg_per_g!)).toBeLessThanOrEqual(
      5e-4 * row.roll_gradient_deg_per_g!,
    );
    expect(Math.abs(answer.axle.loadTransfer - row.dF_front!)).toBeLessThan(1e-4 * row.dF_front!);
    expect(Math.abs(answer.otherAxle!.loadTransfer - row.dF_rear!)).toBeLessThan(1e-4 * row.dF_rear!);
    expect(answer.assumesOtherAxle).toBe(false);
  });

  it('springs, bars and stops: the roll at which their energy is least, over random cars', () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const anyAxle = fc.record({
      sprungMass: between(350, 750),
      track: between(1350, 1600),
      rollCentreHeight: between(-60, 150),
      springRate: between(20, 60),
      motionRatio: between(0.7, 1),
      bar: fc.record({ rate: between(5, 25), motionRatio: between(0.3, 0.8) }),
      stop: fc.record({ gap: between(0, 35), rate: between(20, 300) }),
    });
    let touched = 0;
    fc.assert(
      fc.property(anyAxle, anyAxle, between(450, 600), between(0.2, 1.1), (axle, otherAxle, height, lateral) => {
        const answer = rollFromAcceleration({ lateral, centreOfGravityHeight: height, axle, otherAxle });
        if (answer.axle.isStopTouched || answer.otherAxle!.isStopTouched) touched++;
        const rolling = ({ motionRatio, springRate, bar, stop, ...rest }: typeof axle): RollingAxle => ({
          ...rest,
          energy: (bump) =>
            (springRate * (bump * motionRatio) ** 2) / 2 +
            (stop.rate * Math.max(0, bump * motionRatio - stop.gap) ** 2) / 2,
          // One end held, its rate is that of the other; so of both ends it is by how far they are apart.
          barEnergy: (apart) => (bar.rate * (apart * bar.motionRatio) ** 2) / 2,
        });
        const expected = independentRoll([rolling(axle), rolling(otherAxle)], height, lateral * GRAVITY, GRAVITY);
        // A minimum is found to the root of the working precision.
        expect(Math.abs((answer.roll * Math.PI) / 180 - expected)).toBeLessThan(1e-6);
      }),
      seeded(7, 25),
    );
    expect(touched).toBeGreaterThan(5);
  });

  const axle: AxleInRoll = { sprungMass: 600, track: 1476, rollCentreHeight: 30, springRate: 28, motionRatio: 0.95 };

  it('one axle alone is a car whose other axle is the same', () => {
    const request = { lateral: 0.8, centreOfGravityHeight: 520, axle };
    const alone = rollFromAcceleration(request);
    expect(alone.assumesOtherAxle).toBe(true);
    expect(alone.roll).toBeCloseTo(rollFromAcceleration({ ...request, otherAxle: axle }).roll, 9);
  });

  it('a stop stiffens the axle from where it is touched, and lifts its end of the car', () => {
    const request = { lateral: 0.8, centreOfGravityHeight: 520, axle };
    const free = rollFromAcceleration(request);
    const stopped = rollFromAcceleration({ ...request, axle: { ...axle, stop: { gap: 15, rate: 150 } } });
    expect(stopped.roll).toBeLessThan(free.roll);
    expect(stopped.roll).toBeGreaterThan(stopped.axle.stopTouchedAt!);
    expect(stopped.axle.heave).toBeLessThan(0);
    expect(stopped.axle.isStopTouched).toBe(true);
    // Out of reach it is none.
    const far = rollFromAcceleration({ ...request, axle: { ...axle, stop: { gap: 200, rate: 150 } } });
    expect(far.roll).toBeCloseTo(free.roll, 12);
  });

  it('the height’s uncertainty shows in the roll as the roll of two cars does that differ by it', () => {
    const request = { lateral: 0.8, centreOfGravityHeight: 520, axle };
    const at = (centreOfGravityHeight: number) => rollFromAcceleration({ ...request, centreOfGravityHeight }).roll;
    const { uncertainty } = rollFromAcceleration({ ...request, heightUncertainty: 20 });
    expect(Math.abs(uncertainty! - (at(540) - at(500)) / 2)).toBeLessThan(0.01);
  });

  it.each([
    ['axle.springRate', { axle: { ...axle, springRate: 0.16 } }],
    ['axle.springRate', { axle: { ...axle, springRate: 28_000 } }],
    ['axle.bar.rate', { axle: { ...axle, bar: { rate: 0 } } }],
    ['axle.stop.gap', { axle: { ...axle, stop: { gap: -1, rate: 50 } } }],
    ['axle.track', { axle: { ...axle, track: 1.476 } }],
    ['otherAxle.sprungMass', { otherAxle: { ...axle, sprungMass: 0 } }],
    ['lateral', { lateral: 7.8 }],
    ['centreOfGravityHeight', { centreOfGravityHeight: 0.52 }],
  ])('%s out of range is refused by its path, with the limit', (path, wrong) => {
    const [problem, ...others] = problemsOf(() =>
      rollFromAcceleration({ lateral: 0.8, centreOfGravityHeight: 520, axle, ...wrong }),
    );
    expect(problem).toMatchObject({ code: 'out-of-range', path, limit: expect.any(Number) });
    expect(others).toEqual([]);
  });

  it('a missing axle is told with all else that is wrong', () => {
    const paths = problemsOf(() => rollFromAcceleration({ lateral: -1, centreOfGravityHeight: 520 } as never));
    expect(paths.map(({ path, code }) => [path, code])).toEqual([
      ['lateral', 'out-of-range'],
      ['axle', 'missing'],
    ]);
  });

  it('a car that would lean over of itself is refused, and stands at the limit', () => {
    const soft = { lateral: 0.8, centreOfGravityHeight: 1400, axle: { ...axle, springRate: 2 } };
    const [problem] = problemsOf(() => rollFromAcceleration(soft));
    expect(problem).toMatchObject({ code: 'out-of-range', path: 'centreOfGravityHeight', value: 1400 });
    const below = { ...soft, centreOfGravityHeight: problem!.limit! - 1 };
    expect(rollFromAcceleration(below).roll).toBeGreaterThan(0);
  });
});

describe('stiffness for a roll', () => {
  const axle: AxleInRoll = {
    sprungMass: 600,
    track: 1476,
    rollCentreHeight: -20,
    springRate: 26,
    motionRatio: 0.95,
    bar: { rate: 12, motionRatio: 0.6 },
  };
  const car = { lateral: 0.8, centreOfGravityHeight: 500, axle };

  it.each([
    ['alone', {}],
    ['with another axle', { otherAxle: { ...axle, rollCentreHeight: 60, springRate: 22 } }],
    ['on its bump stop', { axle: { ...axle, stop: { gap: 12, rate: 90 } } }],
  ])('springs or bar so made roll as asked: %s', (_, more) => {
    const request = { ...car, ...more };
    const now = rollFromAcceleration(request).roll;
    for (const roll of [0.9 * now, 1.05 * now]) {
      const { springRate, barRate } = stiffnessForRoll({ ...request, roll });
      const rollWith = (change: Partial<AxleInRoll>) =>
        rollFromAcceleration({ ...request, axle: { ...request.axle, ...change } }).roll;
      expect(rollWith({ springRate: springRate! })).toBeCloseTo(roll, 8);
      expect(rollWith({ bar: { rate: barRate!, motionRatio: 0.6 } })).toBeCloseTo(roll, 8);
    }
  });

  it('what no bar can give is left out, what nothing gives is refused', () => {
    const softer = stiffnessForRoll({ ...car, roll: 10 });
    expect(softer.barRate).toBeUndefined();
    expect(softer.springRate).toBeLessThan(26);
    expect(problemsOf(() => stiffnessForRoll({ ...car, roll: 0 }))).toMatchObject([{ path: 'roll', value: 0 }]);
    expect(problemsOf(() => stiffnessForRoll({ ...car, lateral: -1, roll: Number.NaN }))).toMatchObject([
      { path: 'lateral' },
      { path: 'roll' },
    ]);
  });
});

describe('roll from marks on both dampers', () => {
  it('is the angle whose tangent is the difference of the wheels’ travel over the track', () => {
    // By hand: 36/0.9 = 40 mm outside, 27/0.9 = 30 mm inside; atan(70/1500) = 2.6719°.
    const found = rollFromMarks({ outerTravel: 36, innerTravel: 27, motionRatio: 0.9, track: 1500 });
    expect(found.outer).toBeCloseTo(40, 9);
    expect(found.inner).toBeCloseTo(-30, 9);
    expect(found.heave).toBeCloseTo(5, 9);
    expect(found.roll).toBeCloseTo(2.6719, 4);
  });

  it('its uncertainty is that of both marks', () => {
    const marks = { outerTravel: 36, innerTravel: 27, motionRatio: 0.9, innerMotionRatio: 0.8, track: 1500 };
    const at = (outer: number, inner: number) =>
      rollFromMarks({ ...marks, outerTravel: outer, innerTravel: inner }).roll;
    const { uncertainty } = rollFromMarks({ ...marks, markUncertainty: 1 });
    const apart = Math.hypot(at(36.5, 27) - at(35.5, 27), at(36, 27.5) - at(36, 26.5));
    expect(uncertainty).toBeCloseTo(apart, 5);
  });

  it('wrong marks are refused by their fields, all at once', () => {
    const problems = problemsOf(() => rollFromMarks({ outerTravel: -3, innerTravel: 20, motionRatio: 9, track: 1.5 }));
    expect(problems.map(({ path }) => path)).toEqual(['outerTravel', 'motionRatio', 'track']);
  });
});
