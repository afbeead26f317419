import { describe, expect, it } from 'vitest';
import { clearance, clearanceSteered } from '../../../core/answers/clearance.js';
import { doubtOf, gapOf, motionParts, sharesOf } from '../../../core/answers/clearance-gaps.js';
import { clearanceQuestions } from '../../../core/answers/clearance-questions.js';
import type { ClearanceRequest } from '../../../core/answers/clearance-request.js';
import { envelopeOf } from '../../../core/answers/envelope-of.js';
import { tried, wheelMotion } from '../../../core/answers/from-source.js';
import type { WheelMotionRequest } from '../../../core/answers/wheel-motion.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { EXAMPLE_FITMENT, EXAMPLE_LIMITS } from '../../../core/document/example-fitment.js';
import type { DrivewayMeasurements } from '../../../core/driveway/driveway.js';
import { drivewayCorner } from '../../../core/driveway/driveway-corner.js';
import { readDriveway } from '../../../core/driveway/read-driveway.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { motionOf } from '../../../core/linkage/motion.js';
import { compareWheels } from '../../../core/wheel/compare-wheels.js';
import { Poses } from '../../../core/wheel/gaps.js';
import { placed } from '../../../core/wheel/placed.js';
import type { WheelMotion } from '../../../core/wheel/wheel-motion.js';
import { aPlace } from '../wheel/gap-cases.js';
import { finished } from './finished.js';

/** 97.5 % quantile of the normal distribution (tables; NIST/SEMATECH e-Handbook 1.3.6.7.1: 1.960). */
const NORMAL = 1.959964;
const LOCK = 33;
const { lock: _, ...WHEELS } = EXAMPLE_FITMENT;

/** Everything that can be measured, so that each can be measured otherwise. */
const MEASURED: DrivewayMeasurements = {
  ...EXAMPLE_DRIVEWAY,
  ballOffset: { value: 20, plusMinus: 10 },
  hubOffset: { value: 44, plusMinus: 5 },
  caster: { value: 5, plusMinus: 0.5 },
  bumpSteer: { value: -0.1, plusMinus: 0.1 },
};
const from = (driveway: DrivewayMeasurements, lock = LOCK) =>
  wheelMotion({ source: { kind: 'driveway', driveway }, lock });

const wheels = compareWheels(EXAMPLE_FITMENT.before, EXAMPLE_FITMENT.after);
const [before, envelope] = [envelopeOf(wheels.before, 0), envelopeOf(wheels.after, wheels.plane)];
const PLACES = [
  aPlace({ clock: 12, distance: 371, out: 25 }),
  aPlace({ clock: 9.2, distance: 350, out: -60 }),
  aPlace({ clock: 3, distance: 250, out: -60, from: 'inner' }),
  aPlace({ clock: 3, distance: 200, out: -60, from: 'inner' }, 'tieRod'),
  aPlace({ clock: 1, distance: 250, out: -60, from: 'inner' }, 'lowerArm'),
];
const readied = (motion: WheelMotion) => {
  const poses = new Poses(motion);
  return { moved: { poses, envelope }, all: PLACES.map((place) => placed(place, before, poses, 0, true)) };
};

describe('what a measurement does to a gap', () => {
  const base = readied(from(MEASURED));

  it.each(['caster', 'hubOffset', 'damperLean', 'pivotHeight', 'bumpSteer', 'camber'] as const)(
    'is what it does when it is a standard uncertainty off: %s',
    (key) => {
      const { value, plusMinus } = MEASURED[key]!;
      const off = readied(from({ ...MEASURED, [key]: { value: value + plusMinus / NORMAL, plusMinus } }));
      const at = base.moved.poses.motion.doubts!.findIndex(({ id }) => id === key);
      PLACES.forEach((_place, p) => {
        for (const [travel, steer] of [
          [0, 0],
          [55, 0],
          [-40, -LOCK],
          [30, 17],
          [60, LOCK],
        ] as const) {
          const expected =
            gapOf(off.moved, off.all[p]!, travel, steer) - gapOf(base.moved, base.all[p]!, travel, steer);
          const part = motionParts(base.moved, base.all[p]!, travel, steer)[at]!;
          // Its points are moved along their derivatives, and its samples are further apart.
          expect(Math.abs(part - expected)).toBeLessThan(0.03 + 0.03 * Math.abs(expected));
        }
      });
    },
  );

  it('is nothing to what goes with the wheel', () => {
    const one = placed(
      aPlace({ clock: 12, distance: 288, out: -21, from: 'inner' }, 'carrier'),
      before,
      base.moved.poses,
      0,
      true,
    );
    for (const [travel, steer] of [
      [50, 0],
      [50, LOCK],
    ] as const) {
      for (const part of motionParts(base.moved, one, travel, steer)) expect(Math.abs(part)).toBeLessThan(0.02);
      expect(doubtOf(base.moved, one, travel, steer)).toBeCloseTo(5, 3);
    }
  });

  it('is most of the ± at lock where neither caster nor hub’s offset is known, and names them', () => {
    const { caster: _c, hubOffset: _h, ...six } = MEASURED;
    const unknown = readied(from(six));
    const [lip, liner] = unknown.all;
    // Steered so that the tyre comes forward to the liner, and so that its top leans out under the lip.
    const shares = sharesOf(unknown.moved, liner!, 50, -LOCK);
    expect(shares[0]).toMatchObject({ id: 'hubOffset', label: 'ball joint to the tyre’s middle' });
    expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(sharesOf(unknown.moved, lip!, 50, LOCK)[0]).toMatchObject({ id: 'caster', label: 'caster' });
    const known = doubtOf(base.moved, base.all[1]!, 50, -LOCK);
    expect(doubtOf(unknown.moved, liner!, 50, -LOCK)).toBeGreaterThan(1.5 * known);
    expect(doubtOf(unknown.moved, liner!, 0, 0)).toBeLessThan(5.5);
  });
});

const request = (motion: WheelMotion, places = PLACES): ClearanceRequest => ({
  motion,
  isLeft: true,
  ...WHEELS,
  places,
  limits: EXAMPLE_LIMITS,
  drop: 25,
});

describe('the verdict', () => {
  it('is of where least is left once the ± is off, though the gap is not the smallest there', () => {
    // Low in front of the tyre: a little nearer on the way into bump than at full droop, where toe is far less sure.
    const place = aPlace({ clock: 8.6, distance: 330, out: 10 }, 'body', { plusMinus: 1 });
    const [found] = finished(clearanceSteered(request(from(EXAMPLE_DRIVEWAY), [place]))).places;
    const { worst, decisive, verdict } = found!;
    expect(decisive.gap).toBeGreaterThan(worst.gap + 1);
    expect(decisive.gap - decisive.plusMinus).toBeLessThan(worst.gap - worst.plusMinus - 1);
    // 10 mm of margin and 3 of allowance would be left of the smallest gap.
    expect(worst.gap - worst.plusMinus).toBeGreaterThan(13);
    expect(verdict).toBe('close');
  });
});

describe('a motion without hard points', () => {
  const curve = { kind: 'coefficients', coefficients: [-0.6, -0.014, 1e-4], domain: [-70, 95] } as const;
  const ask = (more: Partial<WheelMotionRequest> = {}) =>
    wheelMotion({ source: { ...curve, coefficients: [...curve.coefficients], domain: [-70, 95] }, ...more });
  const plusMinus = (motion: WheelMotion, travel = 55, place = 2) => {
    const { moved, all } = readied(motion);
    return doubtOf(moved, all[place]!, travel, 0);
  };

  it('is in doubt by what a gauge on the hub does not tell, and less where the way sideways is told', () => {
    expect(plusMinus(ask())).toBeGreaterThan(5.5);
    expect(plusMinus(ask({ sideways: -0.03 }))).toBeLessThan(plusMinus(ask()));
    expect(plusMinus(ask(), 0)).toBeCloseTo(5, 6);
  });

  it('is in doubt by the curve’s own ± as well', () => {
    const sure = { source: { ...curve, coefficients: [...curve.coefficients], domain: [-70, 95] as [number, number] } };
    const unsure = { source: { ...sure.source, standardUncertainties: [0, 0.02, 0] } };
    // Over the tyre, 2.1 degrees more or less of lean at 55 mm count most.
    const [more, less] = [unsure, sure].map((ask) => plusMinus(wheelMotion(ask), 55, 0));
    expect(more).toBeGreaterThan(less! + 1);
  });

  it('goes along the arc of common links where nobody said, and straight as told', () => {
    const at = (motion: WheelMotion, travel: number) => motion.centre[3 * motion.travel.indexOf(travel) + 1]!;
    // Links of 350 to 450 mm, level: their ends come inboard by t²/2L.
    expect(at(ask(), 50)).toBeLessThan(-(50 ** 2) / (2 * 1.5 * 450));
    expect(at(ask(), 50)).toBeGreaterThan(-(50 ** 2) / (2 * 350));
    expect(at(ask({ sideways: 0 }), 50)).toBe(0);
  });
});

describe('a car that was measured as it stands, already lowered', () => {
  const STOOD = 25;
  const exactly = (values: Record<string, number>): DrivewayMeasurements =>
    Object.fromEntries(Object.entries(values).map(([key, value]) => [key, { value, plusMinus: 0 }]));
  // In front view alone: of a leaned strut what is assumed of the rod depends on where it stands.
  const stock = {
    armLength: 338,
    pivotHeight: 193,
    ballHeight: 176,
    wheelCentreHeight: 302,
    topHeight: 822,
    damperLean: 8,
    ballOffset: 20,
    hubOffset: 44,
    track: 1476,
    caster: 0,
    bumpSteer: 0,
    camber: -0.6,
  };
  const lowered = () => {
    const motion = motionOf(buildLinkage(drivewayCorner(readDriveway(exactly(stock)))), Float64Array.of(0, STOOD));
    const [ball, low, top, wheel, spin] = (['ball', 'low', 'upper', 'wheelCentre', 'spin'] as const).map((name) =>
      motion[name].subarray(3),
    ) as [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];
    return {
      ...stock,
      pivotHeight: stock.pivotHeight - STOOD,
      topHeight: stock.topHeight - STOOD,
      ballHeight: ball[2]! - STOOD,
      wheelCentreHeight: wheel[2]! - STOOD,
      damperLean: (Math.atan2(low[1]! - top[1]!, top[2]! - low[2]!) * 180) / Math.PI,
      hubOffset: wheel[1]! - ball[1]!,
      camber: (Math.atan2(-spin[2]!, spin[1]!) * 180) / Math.PI,
    };
  };

  it('meets its arch where it would have met it when its links were measured before', () => {
    const ask = (values: Record<string, number>, measuredAt?: number) =>
      clearance({
        ...request(
          wheelMotion({ source: { kind: 'driveway', driveway: exactly(values) }, ...(measuredAt && { measuredAt }) }),
        ),
        measuredAt: STOOD,
        limits: { stopGap: 20, stopLength: 50 },
      });
    const [stood, then] = [ask(lowered(), STOOD), ask(stock)];
    expect(stood.budget.bump.solid!.travel).toBeCloseTo(then.budget.bump.solid!.travel, 3);
    stood.places.forEach(({ worst, solid }, p) => {
      expect(worst.gap).toBeCloseTo(then.places[p]!.worst.gap, 2);
      expect(solid!.gap).toBeCloseTo(then.places[p]!.solid!.gap, 2);
    });
    // Taken for measured at stock height it would be another car.
    const wrong = ask(lowered());
    expect(Math.abs(wrong.places[0]!.solid!.gap - then.places[0]!.solid!.gap)).toBeGreaterThan(0.3);
  });

  it('is asked so by the question of an element', () => {
    const ask = (measuredAt: number) =>
      finished(
        clearanceQuestions.clearanceSteered(
          tried({
            source: { kind: 'driveway', driveway: exactly(stock) },
            isLeft: true,
            ...WHEELS,
            places: PLACES.slice(0, 1),
            limits: EXAMPLE_LIMITS,
            drop: 25,
            measuredAt,
          }),
        ),
      );
    expect(ask(20).motion.travel[0]! - ask(0).motion.travel[0]!).toBeCloseTo(20, 9);
  });
});

it('a motion that is handed to a page carries no doubt with it, but its gaps’ ±', () => {
  const source = { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY } as const;
  const asked = tried({
    source,
    lock: LOCK,
    isLeft: true,
    ...WHEELS,
    places: PLACES,
    limits: EXAMPLE_LIMITS,
    drop: 25,
  });
  const { source: _, ...request } = asked;
  const motion = finished(clearanceQuestions.wheelMotion(asked));
  for (const answer of [
    clearanceQuestions.clearanceSwept({ ...request, motion }),
    finished(clearanceQuestions.clearanceSteered(asked)),
  ]) {
    expect(answer.motion.doubts).toBeUndefined();
    for (const motion of answer.steered) expect(motion?.doubts).toBeUndefined();
    expect(answer.places[1]!.solid!.plusMinus).toBeGreaterThan(5.2);
  }
});

it('hard points without a stated ± leave a gap the ± of its place', () => {
  const corner = { ...EXAMPLE_CORNER, plusMinus: {} };
  const { moved, all } = readied(wheelMotion({ source: { kind: 'corner', corner }, lock: LOCK }));
  expect(doubtOf(moved, all[0]!, 50, LOCK)).toBe(5);
  const stated = readied(wheelMotion({ source: { kind: 'corner', corner: EXAMPLE_CORNER }, lock: LOCK }));
  expect(doubtOf(stated.moved, stated.all[1]!, 50, LOCK)).toBeGreaterThan(5.05);
});
