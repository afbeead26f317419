import { describe, expect, it } from 'vitest';
import { doubtHint, limitsOfDriveway } from '../../../components/bumpline-clearance/doubt-words.js';
import { clearanceQuestions } from '../../../core/answers/clearance-questions.js';
import { clearanceRequestOf } from '../../../core/answers/fitment-request.js';
import { tried } from '../../../core/answers/from-source.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { EXAMPLE_FITMENT, EXAMPLE_LIMITS } from '../../../core/document/example-fitment.js';
import type { DrivewayMeasurements } from '../../../core/driveway/driveway.js';
import type { Place } from '../../../core/wheel/place.js';
import { finished } from '../../core/answers/finished.js';

const MM = { units: { length: 'mm', angle: 'degrees' }, language: 'en' } as const;
const INCH = { units: { length: 'in', angle: 'degrees' }, language: 'en' } as const;
const { camber, ...MEASURES } = EXAMPLE_DRIVEWAY;
const { stopGap, ...LIMITS } = EXAMPLE_LIMITS;

/** In front of the tyre as it comes forward at lock, and over its shoulder as its top leans out. */
const LINER: Place = {
  name: 'liner',
  fixedTo: 'body',
  is: 'bodywork',
  at: { clock: 9.2, distance: 352, out: -60 },
  plusMinus: 2,
};

const carOf = (measures: DrivewayMeasurements, places: readonly Place[] = [LINER]): CarDocument => ({
  ...EMPTY_CAR,
  provenance: { corner: { by: 'user' }, fit: { by: 'user' } },
  given: { points: {}, measures: { ...MEASURES, ...measures }, camber: camber!.value },
  fit: { before: EXAMPLE_FITMENT.before, after: EXAMPLE_FITMENT.after, places: [...places], lock: 33 },
  limits: LIMITS,
  stopGap,
  drop: 25,
});
const hintOf = (car: CarDocument, display: typeof MM | typeof INCH = MM) => {
  const request = tried(clearanceRequestOf(car));
  return doubtHint(finished(clearanceQuestions.clearanceSteered(request)), car, display)?.replaceAll('\u202f', ' ');
};
const CASTER = { caster: { value: 3, plusMinus: 0.5 } };
const HUB = { hubOffset: { value: 44, plusMinus: 3 } };

describe('what is said of the ± of a gap from six measurements', () => {
  it('is what to measure next, where the ball joint lies under the tyre', () => {
    expect(hintOf(carOf({}))).toMatch(
      /^Of this ± \d+ mm, \d\d % comes from the ball joint to the tyre’s middle: measure it next\.$/,
    );
    expect(hintOf(carOf({}), INCH)).toMatch(/^Of this ± [\d.]+ in, /);
  });

  it('is no longer that once it was measured', () => {
    const known = hintOf(carOf({ ...CASTER, ...HUB }));
    expect(known ?? '').not.toContain('ball joint to the tyre');
    expect(known ?? '').not.toContain('next');
  });

  it('names the cars that it does not cover, by what was not given', () => {
    expect(limitsOfDriveway(carOf({}), MM)).toBe(
      'The ± does not cover a car with more than 9° of caster or more than 0.012° of bump steer for each mm unless you enter them.',
    );
    expect(limitsOfDriveway(carOf(CASTER), MM)).toBe(
      'The ± does not cover a car with more than 0.012° of bump steer for each mm unless you enter it.',
    );
    expect(limitsOfDriveway(carOf({ ...CASTER, bumpSteer: { value: 0, plusMinus: 0.1 } }), MM)).toBeUndefined();
    expect(limitsOfDriveway({ ...carOf({}), by: 'points', whole: EXAMPLE_CORNER }, MM)).toBeUndefined();
  });

  it('is nothing where the place itself is most of it, or nothing was measured', () => {
    const lip = { ...LINER, at: { clock: 12, distance: 371, out: 25 }, plusMinus: 20 };
    expect(hintOf(carOf({}, [lip]))).toBeUndefined();
    expect(hintOf(carOf({}, []))).toBeUndefined();
  });
});
