import { describe, expect, it } from 'vitest';
import { cornering, corneringDoubt, rolled, stiffnessForInclination } from '../../../core/answers/from-source.js';
import type { LoadWithLinks, RolledRequest } from '../../../core/answers/roll-source.js';
import type { AnySource } from '../../../core/curve-sources/source.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { independentAxle } from '../../reference/independent-axle.js';
import { independentRoll } from '../../reference/independent-roll.js';
import { independentStrutSweep } from '../../reference/independent-strut.js';
import { problemsOf } from '../problems-of.js';

const GRAVITY = 9.80665;
const DEGREES = 180 / Math.PI;
const source: AnySource = { kind: 'corner', corner: EXAMPLE_CORNER };

/** Invented: the front of a small car. */
const LOAD: LoadWithLinks = {
  lateral: 0.6,
  centreOfGravityHeight: 520,
  axle: { sprungMass: 600, springRate: 28, bar: { rate: 16, motionRatio: 0.5 } },
};
const ask = (more: Partial<LoadWithLinks> = {}, drop = 0, of: AnySource = source) =>
  rolled({ source: of, drop, by: { load: { ...LOAD, ...more } } });

/** What the links say, by the independent solvers: both wheels in one frame, and the damper's length by central differences. */
function standing(drop: number) {
  const { rollCentre } = independentAxle(EXAMPLE_CORNER, drop, 0, 0);
  const sweep = independentStrutSweep(EXAMPLE_CORNER, [drop - 0.1, drop, drop + 0.1]);
  return {
    rollCentreHeight: rollCentre[1],
    track: 2 * sweep[1]!.contact[1],
    motionRatio: (sweep[0]!.damperLength - sweep[2]!.damperLength) / 0.2,
  };
}

/** Roll of one axle by virtual work: springs and a bar. */
function expectedRoll(drop: number, height: number, { springRate = 28, barRate = 16, lateral = 0.6 } = {}): number {
  const { rollCentreHeight, track, motionRatio } = standing(drop);
  const axle = {
    sprungMass: 600,
    track,
    rollCentreHeight,
    energy: (bump: number) => (springRate * (bump * motionRatio) ** 2) / 2,
    barEnergy: (apart: number) => (barRate * (apart * 0.5) ** 2) / 2,
  };
  return independentRoll([axle], height, lateral * GRAVITY, GRAVITY) * DEGREES;
}

describe('a turn rolled by lateral acceleration', () => {
  it.each([
    [0, 520],
    [25, 495],
  ])(
    '%d mm lower: roll as least energy has it with the independent roll centre, and both wheels turned by it',
    (drop, height) => {
      const { suspensionRoll, outer, load } = ask({ centreOfGravityHeight: height }, drop);
      expect(Math.abs(suspensionRoll - expectedRoll(drop, height))).toBeLessThan(1e-3);
      const expected = independentAxle(EXAMPLE_CORNER, drop, suspensionRoll, 0);
      expect(outer.inclination).toBeCloseTo(expected.inclinationRight, 6);
      expect(load!.assumesOtherAxle).toBe(true);
    },
  );

  it('shorter springs take their drop off the gap to the stop, which lets the body roll less and lifts it', () => {
    const stop = { gap: 30, rate: 60 };
    const axle = { ...LOAD.axle, stop };
    const { motionRatio } = standing(25);
    const lowered = ask({ axle, lowerThanGap: 25 }, 25);
    const there = ask({ axle: { ...axle, stop: { ...stop, gap: 30 - 25 * motionRatio } } }, 25);
    expect(lowered.suspensionRoll).toBeCloseTo(there.suspensionRoll, 3);
    expect(lowered.load!.axle.isStopTouched).toBe(true);
    expect(lowered.load!.axle.heave).toBeLessThan(0);
    expect(lowered.suspensionRoll).toBeLessThan(ask({ axle }, 25).suspensionRoll);
    // Touched as it stands: no gap is left, and none below nothing.
    expect(ask({ axle, lowerThanGap: 40 }, 25).load!.axle.stopTouchedAt).toBe(0);
  });

  it('the doubt of the centre of gravity is one of the inclination', () => {
    const [low, high] = [500, 540].map((centreOfGravityHeight) => ask({ centreOfGravityHeight }).suspensionRoll);
    const { suspensionRoll, rollUncertainty, perDegreeOfRoll } = ask({ heightUncertainty: 20 });
    expect(rollUncertainty).toBeCloseTo((high! - low!) / 2, 3);
    const { sources, outer } = corneringDoubt({
      source,
      drop: 0,
      roll: suspensionRoll,
      rollUncertainty: rollUncertainty!,
    });
    expect(outer[sources.findIndex(({ id }) => id === 'roll')]).toBeCloseTo(
      perDegreeOfRoll.outer * rollUncertainty!,
      9,
    );
  });

  it('the load that the outer wheel gains is the moment about the ground over the track', () => {
    const { load, suspensionRoll } = ask({ axle: { ...LOAD.axle, unsprungMass: 80 } });
    const { track } = standing(0);
    // m a h + m g d φ + m_u a r, all about the ground (body_roll_cases.csv checks its rows so); the centre of gravity shifts by d φ.
    const moment =
      600 * 0.6 * GRAVITY * 520 +
      (600 * GRAVITY * (load!.arm * suspensionRoll)) / DEGREES +
      80 * 0.6 * GRAVITY * EXAMPLE_CORNER.loadedRadius;
    expect(load!.axle.loadTransfer).toBeCloseTo(moment / track, 0);
  });

  it('a driveway car tells its roll centre and motion ratio as well', () => {
    const driveway: AnySource = { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY };
    const { suspensionRoll } = ask({}, 25, driveway);
    // Nearly the car of the hard points.
    expect(Math.abs(suspensionRoll - ask({}, 25).suspensionRoll)).toBeLessThan(0.4);
  });

  it('readings alone tell no roll centre and no motion ratio: both are missing, and can be given', () => {
    const curve: AnySource = { kind: 'coefficients', coefficients: [-0.6, -0.012], domain: [-80, 80] };
    const by = (more: object) => ({ load: { ...LOAD, axle: { ...LOAD.axle, ...more } } });
    const request = { source: curve, drop: 0, halfTrack: 740 };
    expect(problemsOf(() => rolled({ ...request, by: by({}) })).map(({ path }) => path)).toEqual([
      'load.axle.motionRatio',
    ]);
    expect(problemsOf(() => rolled({ ...request, by: by({ motionRatio: 0.95 }) })).map(({ path }) => path)).toEqual([
      'load.axle.rollCentreHeight',
    ]);
    const { suspensionRoll } = rolled({ ...request, by: by({ motionRatio: 0.95, rollCentreHeight: 40 }) });
    // φ = m a d/(k t²/2 + k_bar t² − m g d): Barton & Fieldhouse, Automotive Chassis Engineering, p. 174.
    const weight = 600 * GRAVITY;
    const stiffness = (28 * 0.95 ** 2 * 1480 ** 2) / 2 + 16 * 0.25 * 1480 ** 2;
    expect(suspensionRoll).toBeCloseTo(((0.6 * weight * 480) / (stiffness - weight * 480)) * DEGREES, 9);
  });

  it.each([
    ['lb/in', 160, 28.0],
    ['kg/mm', 2.9, 28.4],
    ['N/m', 28_000, 28.0],
  ])('a rate in %s without its unit is told by the unit it looks like', (unit, springRate, rate) => {
    const problems = problemsOf(() => ask({ axle: { ...LOAD.axle, springRate } }));
    expect(problems).toMatchObject([{ code: 'looks-like-unit', path: 'load.axle.springRate', names: [unit] }]);
    expect(problems[0]!.choices![0]).toBeCloseTo(rate, 1);
  });

  it('an unlikely rate counts where it is said to be in N/mm', () => {
    const axle = { ...LOAD.axle, springRate: 160 };
    expect(ask({ axle, isRateSure: true }).suspensionRoll).toBeLessThan(ask().suspensionRoll);
  });

  it('a roll beyond what a body can have is told as a roll', () => {
    const [problem] = problemsOf(() => ask({ axle: { sprungMass: 600, springRate: 9 }, lateral: 1.5 }));
    expect(problem).toMatchObject({ code: 'out-of-range', path: 'roll', limit: 15 });
  });
});

describe('a turn rolled as marks on the dampers say', () => {
  it('roll is atan((out + in)/(motion ratio × track)) with the links’ own ratio and track', () => {
    const { track, motionRatio } = standing(25);
    const answer = rolled({
      source,
      drop: 25,
      by: { marks: { outerTravel: 38, innerTravel: 34, markUncertainty: 2 } },
    });
    const roll = Math.atan(72 / (motionRatio * track)) * DEGREES;
    expect(answer.suspensionRoll).toBeCloseTo(roll, 4);
    expect(answer.rollUncertainty).toBeCloseTo(
      ((2 * Math.SQRT2) / (motionRatio * track)) * DEGREES * Math.cos(roll / DEGREES) ** 2,
      4,
    );
    expect(answer.outer.inclination).toBeCloseTo(
      cornering({ source, drop: 25, roll: answer.suspensionRoll }).outer.inclination,
      9,
    );
  });

  it('what is wrong with a mark is told by its own place', () => {
    const request: RolledRequest<AnySource> = { source, drop: 0, by: { marks: { outerTravel: -4, innerTravel: 900 } } };
    expect(problemsOf(() => rolled(request)).map(({ path }) => path)).toEqual([
      'marks.outerTravel',
      'marks.innerTravel',
    ]);
  });
});

describe('springs or a bar that bring an inclination back', () => {
  it('25 mm lower at the same lateral acceleration, each of them gives the stock inclination by the independent solvers', () => {
    const stock = ask().outer.inclination;
    const load = { ...LOAD, centreOfGravityHeight: 495 };
    const { roll, springRate, barRate } = stiffnessForInclination({ source, drop: 25, load, inclination: stock });
    expect(springRate).toBeGreaterThan(1);
    for (const change of [{ springRate: springRate! }, { barRate: barRate! }]) {
      const found = expectedRoll(25, 495, change);
      expect(Math.abs(found - roll)).toBeLessThan(1e-3);
      expect(Math.abs(independentAxle(EXAMPLE_CORNER, 25, found, 0).inclinationRight - stock)).toBeLessThan(2e-3);
    }
  });

  it('what no roll reaches is refused with the nearest inclination', () => {
    const problems = problemsOf(() => stiffnessForInclination({ source, drop: 25, load: LOAD, inclination: -8 }));
    expect(problems).toMatchObject([{ code: 'out-of-range', path: 'inclination' }]);
  });
});
