import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LoweringAnswer, lowering } from '../../../core/answers/lowering.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import type { DrivewayKey, DrivewayMeasurements } from '../../../core/driveway/driveway.js';
import threeD from '../../reference/derived_strut_3d.json' with { type: 'json' };
import plane from '../../reference/derived_strut_planar.json' with { type: 'json' };
import { type PlaneStrut, planeStrutCamberChange } from '../../reference/independent-plane-strut.js';
import { measure, readOff, shareOf, six } from '../driveway/coverage.js';
import { plausibleDriveway } from '../driveway/random-driveway.js';
import { referenceCorner } from '../linkage/reference-corner.js';

const ask = (driveway: unknown, drop: number): LoweringAnswer =>
  lowering({ source: { kind: 'driveway', driveway }, drop });
const of = (value: number) => ({ value, plusMinus: 0 });
const seeded = (seed: number, numRuns: number) => ({ seed, numRuns, endOnFailure: true });

/** 97.5 % quantile of the normal distribution (tables; NIST/SEMATECH e-Handbook 1.3.6.7.1: 1.960). */
const NORMAL = 1.959964;

/* test/reference/derived_strut_planar.json: closed-form plane geometry, ball joint on the strut axis. */
describe('the derived plane strut, measured without error', () => {
  const { arm_inner, ball_joint, strut_top, wheel_centre } = plane.points_yz_mm as unknown as Record<
    string,
    [number, number]
  >;
  const measured: DrivewayMeasurements = {
    armLength: of(Math.hypot(ball_joint![0] - arm_inner![0], ball_joint![1] - arm_inner![1])),
    pivotHeight: of(arm_inner![1]),
    ballHeight: of(ball_joint![1]),
    wheelCentreHeight: of(wheel_centre![1]),
    topHeight: of(strut_top![1]),
    damperLean: of((Math.atan2(ball_joint![0] - strut_top![0], strut_top![1] - ball_joint![1]) * 180) / Math.PI),
    ballOffset: of(0),
    hubOffset: of(wheel_centre![0] - ball_joint![0]),
    track: of(2 * wheel_centre![0]),
  };

  it.each(plane.results)('changes camber to 1e-7° at $wheel_travel_mm mm', ({ wheel_travel_mm, camber_change_deg }) => {
    expect(Math.abs(ask(measured, wheel_travel_mm).change.value - camber_change_deg)).toBeLessThan(1e-7);
  });

  it('has its camber rate and its reversal', () => {
    const { rateBefore, reversal } = ask(measured, 0);
    expect(rateBefore.value).toBeCloseTo(plane.design.camber_rate_deg_per_mm, 9);
    expect(reversal!.travel.value).toBeCloseTo(plane.camber_reversal.wheel_travel_mm, 4);
    expect(reversal!.change).toBeCloseTo(plane.camber_reversal.camber_change_deg, 7);
  });
});

const valuesOf = (given: DrivewayMeasurements): PlaneStrut =>
  Object.fromEntries(Object.entries(given).map(([key, { value }]) => [key, value])) as unknown as PlaneStrut;

/* Against test/reference/independent-plane-strut.ts: bisection in front view, nothing shared. */
describe('a plane strut of any plausible proportions', () => {
  it('changes camber as the independent calculation says, to 1e-6°', () => {
    fc.assert(
      fc.property(plausibleDriveway, fc.double({ min: -50, max: 60, noNaN: true }), (given, drop) => {
        const expected = planeStrutCamberChange(valuesOf(given), drop);
        expect(Math.abs(ask(given, drop).change.value - expected)).toBeLessThan(1e-6);
      }),
      seeded(91, 100),
    );
  });

  it('owes each measurement the share of its doubt that differences of the independent calculation give it', () => {
    fc.assert(
      fc.property(plausibleDriveway, fc.constantFrom(-30, 25, 40), (given, drop) => {
        const { change, contributions } = ask(given, drop);
        for (const key of Object.keys(given) as (keyof typeof given)[]) {
          const shifted = (by: number) =>
            planeStrutCamberChange({ ...valuesOf(given), [key]: given[key].value + by }, drop);
          const expected =
            key === 'track' ? 0 : (Math.abs(shifted(0.01) - shifted(-0.01)) / 0.02) * given[key].plusMinus;
          const part = Math.sqrt(shareOf(contributions, key)) * change.plusMinus!;
          expect(Math.abs(part - expected)).toBeLessThan(1e-6);
        }
        const sum = contributions.reduce((total, { share }) => total + share, 0);
        expect(sum).toBeCloseTo(1, 12);
      }),
      seeded(92, 40),
    );
  });
});

describe('what was not measured', () => {
  const full = ask(EXAMPLE_DRIVEWAY, 30);
  const without = (key: DrivewayKey) => ask({ ...EXAMPLE_DRIVEWAY, [key]: undefined }, 30);

  // Not the arm's length: the one that is assumed is close to the example's, and a longer arm has a smaller change to be unsure of.
  it.each(['pivotHeight', 'ballHeight', 'damperLean', 'topHeight'] as const)(
    'counts with its whole doubt: without %s the band is wider, and more of it comes from there',
    (key) => {
      const { change, contributions } = without(key);
      expect(change.plusMinus!).toBeGreaterThan(full.change.plusMinus!);
      const share = shareOf(contributions, key);
      expect(share).toBeGreaterThan(2 * shareOf(full.contributions, key));
      // And the truth of the invented car lies in it.
      const truth = lowering({ source: { kind: 'corner', corner: EXAMPLE_CORNER }, drop: 30 }).change.value;
      expect(Math.abs(change.value - truth)).toBeLessThan(change.plusMinus!);
    },
  );

  it('is the next to measure: the largest contribution comes first', () => {
    expect(without('damperLean').contributions[0]!.id).toBe('damperLean');
    expect(ask({}, 30).contributions[0]!.id).toBe('pivotHeight');
  });

  it('moves with the height it was put above, and so does the doubt', () => {
    // Ball joint and pivot together up and down change next to nothing: the arm keeps its angle.
    const { contributions } = without('pivotHeight');
    expect(shareOf(contributions, 'ballHeight')).toBeLessThan(0.001);
    const flipped = without('ballHeight').contributions;
    expect(shareOf(flipped, 'pivotHeight')).toBeLessThan(0.001);
  });
});

describe('what an answer from the driveway says', () => {
  const answer = ask(EXAMPLE_DRIVEWAY, 30);

  it('agrees with the hard points of the same invented car, and is less sure', () => {
    const byPoints = lowering({ source: { kind: 'corner', corner: EXAMPLE_CORNER }, drop: 30 });
    expect(Math.abs(answer.change.value - byPoints.change.value)).toBeLessThan(0.02);
    expect(answer.change.plusMinus!).toBeGreaterThan(byPoints.change.plusMinus!);
  });

  it('names measurements and the method, largest share first, and no toe', () => {
    expect(answer.contributions.slice(0, 4).map(({ label }) => label)).toEqual([
      'the method',
      'height of the arm’s pivot axis',
      'lean of the damper',
      'height of the ball joint',
    ]);
    expect(answer.driveway!.answersToe).toBe(false);
    expect(answer.curve.quantity).toBe('camber');
  });

  it('is plain data, with the measurements, the corner made of them and its motion', () => {
    expect(structuredClone(answer)).toEqual(answer);
    expect(answer.driveway!.taken.armLength).toEqual({ value: 338, plusMinus: 3, measured: true });
    expect(answer.corner!.kind).toBe('strut');
    expect(answer.motion!.travel.length).toBeGreaterThan(10);
  });

  it('needs no static camber for a change; with it the curve has values, with their doubt', () => {
    const { camber, ...without } = EXAMPLE_DRIVEWAY;
    const { change } = ask(without, 30);
    expect(change.value).toBeCloseTo(answer.change.value, 12);
    expect(change.plusMinus).toBeCloseTo(answer.change.plusMinus!, 12);
    const { curve } = answer;
    if (curve.kind !== 'sampled') throw new Error(curve.kind);
    const at = curve.travel.indexOf(0);
    expect(curve.value[at]).toBeCloseTo(camber!.value, 12);
    const column = curve.sources.findIndex(({ id }) => id === 'camber');
    expect(curve.parts[at * curve.sources.length + column]! * NORMAL).toBeCloseTo(camber!.plusMinus, 6);
  });

  it('has a rate and a reversal whose doubt is that of the same sources', () => {
    const { reversal } = answer;
    const travel = reversal!.travel.value;
    // First order, by asking again with each measurement elsewhere; the method by its own two figures (driveway-doubt.ts).
    const spread = (read: (answer: LoweringAnswer) => number, method: number) => {
      const all: DrivewayMeasurements = {
        ...EXAMPLE_DRIVEWAY,
        ballOffset: answer.driveway!.taken.ballOffset,
        hubOffset: answer.driveway!.taken.hubOffset,
      };
      let sum = method ** 2;
      for (const key of Object.keys(all) as DrivewayKey[]) {
        const { value, plusMinus } = all[key]!;
        const [up, down] = [0.05, -0.05].map((by) =>
          read(
            ask(
              {
                ...all,
                [key]: { value: value + by, plusMinus },
                ballOffset: all.ballOffset && {
                  value: all.ballOffset.value + (key === 'ballOffset' ? by : 0),
                  plusMinus: 1,
                },
                hubOffset: {
                  value: all.hubOffset!.value + (key === 'hubOffset' ? by : 0),
                  plusMinus: 1,
                },
              },
              30,
            ),
          ),
        );
        sum += (((up! - down!) / 0.1) * (plusMinus / NORMAL)) ** 2;
      }
      return NORMAL * Math.sqrt(sum);
    };
    const methodSlope = (t: number) => Math.hypot(4.5e-4, 2 * 1.5e-5 * t);
    const rate = spread(({ rateAfter }) => rateAfter.value, methodSlope(30));
    // Parts change linearly between samples 2.5 mm apart.
    expect(answer.rateAfter.plusMinus! / rate).toBeGreaterThan(0.95);
    expect(answer.rateAfter.plusMinus! / rate).toBeLessThan(1.05);
    const bend =
      (ask(EXAMPLE_DRIVEWAY, travel + 2).rateAfter.value - ask(EXAMPLE_DRIVEWAY, travel - 2).rateAfter.value) / 4;
    const where = spread((shifted) => shifted.reversal!.travel.value, methodSlope(travel) / bend);
    expect(reversal!.travel.plusMinus! / where).toBeGreaterThan(0.95);
    expect(reversal!.travel.plusMinus! / where).toBeLessThan(1.05);
  });

  it('refuses bad measurements by their own names, beside a bad drop', () => {
    expect(() => ask({ armLength: { value: 13.3, plusMinus: 1 } }, Number.NaN)).toThrow(
      /drop: not-finite.*armLength\.value: looks-like-inches/,
    );
  });
});

/* test/reference/derived_strut_3d.json: two unrelated formulations of a three-dimensional strut with bump steer. */
describe('the derived three-dimensional strut, read off in front view', () => {
  const trueChange = (travel: number) =>
    threeD.results.find(({ wheel_travel_mm }) => wheel_travel_mm === travel)!.camber_deg - threeD.design_camber_deg;
  const exact = measure(six(referenceCorner), 0, 0);

  it.each([-60, -40, -30, -20, -10, 10, 20, 30, 40, 60])(
    'lies in the band at %i mm, with no error of measurement',
    (travel) => {
      const { change } = ask(exact, travel);
      expect(Math.abs(change.value - trueChange(travel))).toBeLessThan(change.plusMinus!);
    },
  );

  it('is missed by up to 6 % within 60 mm, by nothing but the plane reading', () => {
    const errors = [-60, -40, -20, 20, 40, 60].map((travel) =>
      Math.abs(ask(exact, travel).change.value / trueChange(travel) - 1),
    );
    expect(Math.max(...errors)).toBeLessThan(0.06);
    expect(Math.max(...errors)).toBeGreaterThan(0.03);
  });

  it('is missed by more than 30 % when kingpin inclination is taken for the lean', () => {
    const { kingpin } = measure(readOff(referenceCorner), 0, 0);
    for (const travel of [20, 30, 40]) {
      const wrong = ask({ ...exact, damperLean: kingpin }, travel).change.value / trueChange(travel) - 1;
      expect(wrong).toBeGreaterThan(0.3);
    }
  });

  it('is held by the band when kingpin inclination comes in its own field, which costs a band of more than twice the width', () => {
    const kingpin = ask(measure(six(referenceCorner, 'kingpin'), 3, 0.5), 30);
    const lean = ask(measure(six(referenceCorner), 3, 0.5), 30);
    expect(Math.abs(kingpin.change.value - trueChange(30))).toBeLessThan(kingpin.change.plusMinus!);
    expect(kingpin.contributions[0]!.id).toBe('ballOffset');
    expect(kingpin.contributions[0]!.share).toBeGreaterThan(0.5);
    expect(shareOf(lean.contributions, 'ballOffset')).toBeLessThan(0.01);
    expect(kingpin.change.plusMinus! / lean.change.plusMinus!).toBeGreaterThan(1.7);
  });
});
