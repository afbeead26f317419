import { describe, expect, it } from 'vitest';
import { type ClearanceAnswer, clearance, clearanceSteered } from '../../../core/answers/clearance.js';
import { clearanceRequestOf } from '../../../core/answers/fitment-request.js';
import { wheelMotion } from '../../../core/answers/from-source.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { ASSUMED_LOCK } from '../../../core/document/fitment-in-use.js';
import type { WheelMotion } from '../../../core/wheel/wheel-motion.js';
import {
  CLEARANCE_SCENARIOS,
  type ClearanceScenario,
  STRAIGHT_UP_CORNER,
  STRAIGHT_UP_CORNER_TOLERANCE_MM,
  STRAIGHT_UP_CORNER_TRAVEL_MM,
  STRAIGHT_UP_CURVE,
  STRAIGHT_UP_RATIO,
} from '../../reference/clearance-scenarios.js';
import { finished } from './finished.js';

const curve = { ...STRAIGHT_UP_CURVE, coefficients: [0], domain: [-80, 120] as [number, number] };
const byCurve = wheelMotion({ source: curve, sideways: 0 });
const byPoints = wheelMotion({ source: { kind: 'corner', corner: STRAIGHT_UP_CORNER }, lock: 5 });

function expectAnswer(
  answer: ClearanceAnswer,
  { expected }: ClearanceScenario,
  tolerance: number,
  travelTolerance = tolerance,
  plusMinus = expected.plusMinus,
) {
  const [place] = answer.places;
  const near = (found: number | undefined, wanted: number, within = tolerance) =>
    expect(Math.abs((found ?? Number.NaN) - wanted)).toBeLessThan(within);
  near(answer.budget.bump.touch?.travel, expected.touch);
  near(answer.budget.bump.solid?.travel, expected.solid);
  near(place!.worst.gap, expected.gap);
  near(place!.worst.travel, expected.travel, travelTolerance);
  near(place!.ride.gap, expected.rideGap);
  near(place!.solid?.gap, expected.solidGap);
  expect(place!.worst.plusMinus).toBeCloseTo(plusMinus, 3);
  expect(answer.verdict).toBe(expected.verdict);
  if (expected.contact === undefined) expect(answer.contact).toBeUndefined();
  else near(answer.contact?.travel, expected.contact);
}

describe.each(CLEARANCE_SCENARIOS)('$name', (scenario) => {
  const { fit, limits, drop } = scenario;
  const ask = (motion: WheelMotion, more = {}) => ({
    motion,
    isLeft: true,
    ...fit,
    limits: { ...limits, ...more },
    drop,
  });

  it('as reckoned by hand, from a curve', () => {
    const { plusMinusOfCurve } = scenario.expected;
    const request = ask(byCurve, STRAIGHT_UP_RATIO);
    for (const answer of [clearance(request), finished(clearanceSteered(request))]) {
      expectAnswer(answer, scenario, 0.005, 0.005, plusMinusOfCurve);
    }
  });

  it('as reckoned by hand, from hard points whose wheel moves nearly straight up', () => {
    expectAnswer(clearance(ask(byPoints)), scenario, STRAIGHT_UP_CORNER_TOLERANCE_MM, STRAIGHT_UP_CORNER_TRAVEL_MM);
  });

  it('is asked the same by a car document', () => {
    const { stopGap, ...rest } = limits;
    const car: CarDocument = {
      ...EMPTY_CAR,
      by: 'points',
      whole: STRAIGHT_UP_CORNER,
      fit,
      limits: rest,
      stopGap: stopGap!,
      provenance: { corner: { by: 'page' }, fit: { by: 'page' } },
      drop,
    };
    const { source, lock, ...request } = clearanceRequestOf(car);
    // A front wheel is turned even where nobody gave its lock.
    expect(lock).toBe(ASSUMED_LOCK);
    expect(source).toEqual({ kind: 'corner', corner: STRAIGHT_UP_CORNER });
    const { motion: _, ...asked } = ask(byPoints);
    expect(request).toEqual(asked);
  });
});

it('those hard points move the wheel straight up to 0.3 mm, upright, millimetre for millimetre of damper', () => {
  const straight = wheelMotion({ source: { kind: 'corner', corner: STRAIGHT_UP_CORNER } });
  straight.travel.forEach((t, i) => {
    if (Math.abs(t) > 60) return;
    expect(Math.abs(straight.centre[3 * i]!)).toBeLessThan(1e-6);
    expect(Math.abs(straight.centre[3 * i + 1]!)).toBeLessThan(0.4);
    expect(straight.spin[3 * i + 1]).toBeCloseTo(1, 9);
  });
  const { travel, shortening } = straight.damper!;
  const at = (t: number) => shortening[travel.indexOf(t)]!;
  expect((at(50) - at(-50)) / 100).toBeCloseTo(1, 3);
});
