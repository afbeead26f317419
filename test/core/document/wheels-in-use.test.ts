import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearanceRequestOf } from '../../../core/answers/fitment-request.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_FITMENT } from '../../../core/document/example-fitment.js';
import type { Fitment, GivenWheel } from '../../../core/document/fitment.js';
import { fitmentByUser } from '../../../core/document/limits-in-use.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import {
  isWheelOwn,
  ownFitment,
  ownValues,
  WHEEL_VALUES,
  type WheelName,
  wheelInUse,
} from '../../../core/document/wheels-in-use.js';
import { partsBy } from '../../../core/document/whose-parts.js';
import { tyreDimensions } from '../../../core/wheel/tyre-dimensions.js';

/** Invented. */
const PAGE: Fitment = {
  before: { size: '195/65R15', rimWidthInch: 6, offset: 38 },
  after: { size: '205/50R16', rimWidthInch: 6.5, offset: 33, spacer: 3 },
};
const withPage: CarDocument = { ...EMPTY_CAR, fit: PAGE, provenance: { fit: { by: 'page' } } };
const give = (car: CarDocument, which: WheelName, change: GivenWheel): CarDocument =>
  fitmentByUser(car, ({ fit }) => ({ fit: { ...fit, [which]: { ...fit?.[which], ...change } } }));
const wheels: fc.Arbitrary<GivenWheel> = fc.record(
  {
    size: fc.constantFrom('225/45R17', '235/40R18', '185/60R14'),
    rimWidthInch: fc.constantFrom(6.5, 7.5, 8.5),
    offset: fc.integer({ min: 10, max: 55 }),
  },
  { requiredKeys: [] },
);
const names = fc.constantFrom<WheelName>('before', 'after');
const starts = fc.constantFrom(EMPTY_CAR, withPage);

describe('a wheel of which single values are given', () => {
  it('has those, and every other as it stood, but for a rim that goes by its tyre and is said to', () => {
    fc.assert(
      fc.property(starts, wheels, wheels, names, wheels, (start, before, after, which, change) => {
        const car = give(give(start, 'before', before), 'after', after);
        const was = wheelInUse(car, which);
        const now = wheelInUse(give(car, which, change), which);
        for (const value of WHEEL_VALUES) {
          if (change[value] !== undefined) {
            expect(now.spec[value]).toBe(change[value]);
            expect(now.whose[value]).toBe('yours');
          } else if (now.whose[value] === 'usual') {
            expect(value).toBe('rimWidthInch');
            expect(now.spec.rimWidthInch).toBe(tyreDimensions(now.spec.size).measuringRimInch);
          } else {
            // Of what the user gave nothing moves, nor of what stands in for the rest.
            expect(now.spec[value]).toBe(was.spec[value]);
            expect(now.whose[value]).toBe(was.whose[value]);
          }
        }
      }),
      { seed: 71, numRuns: 300 },
    );
  });

  it('counts nothing of the example or the page as the user’s', () => {
    fc.assert(
      fc.property(starts, wheels, wheels, (start, before, after) => {
        const car = give(give(start, 'before', before), 'after', after);
        const own = { before, after };
        for (const which of ['before', 'after'] as const) {
          const given = WHEEL_VALUES.filter((value) => own[which][value] !== undefined);
          const { whose } = wheelInUse(car, which);
          expect(ownValues(car, which)).toBe(given.length);
          expect(WHEEL_VALUES.filter((value) => whose[value] === 'yours')).toEqual(given);
          if (which === 'before') expect(isWheelOwn(car, which)).toBe(given.length === WHEEL_VALUES.length);
        }
        expect(ownFitment(car)).toEqual({ before, after });
      }),
      { seed: 72, numRuns: 200 },
    );
  });

  it('typed into the old wheel leaves the new one as it stood until the old one is whole', () => {
    for (const start of [EMPTY_CAR, withPage]) {
      const stood = wheelInUse(start, 'after');
      expect(wheelInUse(give(start, 'before', { offset: 12 }), 'after')).toEqual(stood);
      expect(wheelInUse(give(start, 'before', { size: '225/45R17' }), 'after')).toEqual(stood);
    }
    const whole = { size: '225/45R17', rimWidthInch: 7.5, offset: 40 };
    // Then it is asked about the user's own wheel, and said so; a page's new wheel is what that page asks about.
    expect(wheelInUse(give(EMPTY_CAR, 'before', whole), 'after')).toEqual({
      spec: whole,
      whose: { size: 'old', rimWidthInch: 'old', offset: 'old', spacer: 'old' },
    });
    expect(wheelInUse(give(withPage, 'before', whole), 'after').spec).toEqual(PAGE.after);
    const spaced = give(give(EMPTY_CAR, 'before', whole), 'after', { spacer: 15 });
    expect(wheelInUse(spaced, 'after').spec).toEqual({ ...whole, spacer: 15 });
    expect(isWheelOwn(spaced, 'after')).toBe(true);
  });

  it('with another size goes on the usual rim of that size, not on the example’s, unless a rim is given', () => {
    const car = give(EMPTY_CAR, 'after', { size: '235/40R18' });
    expect(wheelInUse(car, 'after')).toMatchObject({
      spec: { size: '235/40R18', rimWidthInch: 8.5, offset: EXAMPLE_FITMENT.after.offset },
      whose: { size: 'yours', rimWidthInch: 'usual', offset: 'example' },
    });
    expect(wheelInUse(give(car, 'after', { rimWidthInch: 8 }), 'after').spec.rimWidthInch).toBe(8);
    const rim = give(EMPTY_CAR, 'after', { rimWidthInch: 8.5 });
    expect(wheelInUse(give(rim, 'after', { size: '235/40R18' }), 'after').spec.rimWidthInch).toBe(8.5);
  });

  it('does not keep a width that was measured of another tyre', () => {
    const measured: CarDocument = {
      ...EMPTY_CAR,
      fit: { before: PAGE.before!, after: { size: '205/50R16', rimWidthInch: 6.5, offset: 33, sectionWidth: 212 } },
      provenance: { fit: { by: 'page' } },
    };
    expect(wheelInUse(give(measured, 'after', { size: '225/45R17' }), 'after').spec.sectionWidth).toBeUndefined();
    expect(wheelInUse(give(measured, 'after', { offset: 30 }), 'after').spec.sectionWidth).toBe(212);
  });

  it('goes through a link as it is, what is not given left out', () => {
    fc.assert(
      fc.property(wheels, wheels, fc.option(fc.integer({ min: 0, max: 30 })), (before, after, spacer) => {
        const own = { ...after, ...(spacer !== null && { spacer }) };
        const car = give(give(EMPTY_CAR, 'before', before), 'after', own);
        const filled = (wheel: object) => Object.keys(wheel).length > 0;
        const fit = { ...(filled(before) && { before }), ...(filled(own) && { after: own }) };
        const read = carFromLink(carToLink(car));
        expect(read.ok && read.car.fit).toEqual(filled(fit) ? fit : read.ok && undefined);
      }),
      { seed: 73, numRuns: 200 },
    );
    expect(carToLink(give(EMPTY_CAR, 'after', { offset: 35 }))).toContain('wheelAfter=~,~,35&');
  });
});

describe('whose the parts of an answer are', () => {
  it('of a page that gives the old wheel alone is the old wheel, and of the rest nobody’s but the example’s', () => {
    const car: CarDocument = { ...EMPTY_CAR, fit: { before: PAGE.before! }, provenance: { fit: { by: 'page' } } };
    expect(partsBy(car)).toEqual({
      motion: 'example',
      before: 'page',
      after: 'old',
      places: 'example',
      limits: 'example',
      drop: 'example',
    });
    expect(wheelInUse(car, 'after').spec).toEqual(PAGE.before);
  });

  it('stays the page’s where the user has given something else', () => {
    const car: CarDocument = {
      ...EMPTY_CAR,
      fit: { ...PAGE, places: [EXAMPLE_FITMENT.places[0]], marginBodywork: 6, allowance: 1, camberBy: -1 },
      limits: { stopLength: 40 },
      stopGap: 20,
      provenance: { fit: { by: 'page' } },
    };
    const begun = give(car, 'before', { offset: 44 });
    expect(partsBy(begun)).toEqual({
      motion: 'example',
      before: 'page',
      after: 'page',
      places: 'page',
      limits: 'page',
      drop: 'example',
    });
    // Nothing that the page said is lost with the first number of one's own.
    const { before, ...asked } = clearanceRequestOf(begun);
    const { before: old, ...was } = clearanceRequestOf(car);
    expect(asked).toEqual(was);
    expect(before).toEqual({ ...old, offset: 44 });
  });

  it('of hard points is the user’s only with all eight', () => {
    const points = { 'lowerArm.ball': [0, 690, 180] as const };
    const car: CarDocument = {
      ...EMPTY_CAR,
      by: 'points',
      provenance: { corner: { by: 'user' } },
      given: { points: points as object },
    };
    expect(partsBy(car).motion).toBe('example');
  });
});
