import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CarDocument, EMPTY_CAR, withDrop } from '../../../core/document/car.js';
import { carSchema, type Prediction } from '../../../core/document/car-schema.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_FITMENT, EXAMPLE_LIMITS } from '../../../core/document/example-fitment.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { byUser, isAnyUsers, pagesOnly, usersFields, usersOnly, withUsers } from '../../../core/document/own-car.js';
import { give } from '../../../core/document/provenance.js';
import { EXAMPLE_SETUP } from '../../../core/document/setups.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { cars } from './random-cars.js';
import { fittedCars } from './random-fitments.js';
import { readCars } from './random-setups.js';

const anyCar = fc.oneof(cars, fittedCars, readCars);
const { stopGap, ...limits } = EXAMPLE_LIMITS;

/** A page that gives everything a page can give. */
const corner = give(EMPTY_CAR, 'corner', 'page', () => takeCorner(EXAMPLE_CORNER));
const fitted = give(corner, 'fit', 'page', () => ({ fit: EXAMPLE_FITMENT, stopGap: stopGap!, limits }));
const travelled = give(fitted, 'bumpTravel', 'page', () => ({ bumpTravel: 62 }));
const PAGE: CarDocument = {
  ...withDrop({ ...travelled, dropPlusMinus: 2 }, 45, 'page'),
  by: 'points',
};

/** Invented. */
const PREDICTION: Prediction = {
  ...{ made: '2026-11-30', version: '0.1.0', name: 'Joint 22 mm lower', alignment: 'as-fitted', quantity: 'camber' },
  parts: [{ part: 'ballJointExtended', mm: 22, correctTieRod: true, plusMinus: 0.5 }],
  ...{ drop: 25, over: 40, from: 'points', readings: 52, passes: 3, byTape: 0.067, start: -30, step: 10 },
  change: [0.61, 0.49, 0.36, 0.24, 0.12, 0, -0.118, -0.24],
  plusMinus: [0.04, 0.03, 0.022, 0.01, 0.004, 0, 0.004, 0.011],
};

/** One value for each field of the schema that a user can give. */
const GIVEN: Partial<Record<keyof CarDocument, Partial<CarDocument>>> = {
  given: { given: { points: {}, camber: -1 } },
  setups: { setups: [EXAMPLE_SETUP], by: 'readings' },
  setup: { setups: [EXAMPLE_SETUP, EXAMPLE_SETUP], setup: 1 },
  fitted: { setups: [{ ...EXAMPLE_SETUP, parts: [{ part: 'armLonger', mm: 10 }] }], fitted: 0 },
  drop: { drop: 41 },
  dropPlusMinus: { dropPlusMinus: 3 },
  cornerName: { cornerName: 'Rear left' },
  by: { by: 'points' },
  bumpTravel: { bumpTravel: 55 },
  stopGap: { stopGap: 40 },
  limits: { limits: { stopLength: 50 } },
  loads: { loads: { springRate: 25 } },
  fit: { fit: { lock: 34 } },
  compare: { compare: { heights: [0, 33], over: 35, from: [0, 1], to: [1, 0], show: 'toeChange' } },
  readingsOver: { readingsOver: 28 },
  readingsDegree: { readingsDegree: 3 },
  toe: {
    toe: {
      from: 'links',
      over: 35,
      wheels: 'both',
      across: 432,
      adjust: 'rack',
      amount: -12,
      rack: 20,
      steeringRatio: 15.5,
      rodLength: 330,
      lever: 130,
      rackSide: 'ahead',
    },
  },
  turn: {
    turn: {
      ...{ roll: 3.5, tyreRoll: 0.7, radius: 40, wheelbase: 2.5, track: 1480, camber: -1.5, wanted: -0.5 },
      ...{ photo: 4.1, photoPlusMinus: 0.3, rollFrom: 'load' },
      marks: { outer: 38, inner: 34, motionRatio: 0.96, plusMinus: 2 },
      load: {
        ...{ lateral: 0.8, centreHeight: 520, centrePlusMinus: 40, sprungMass: 600, unsprungMass: 80, rollCentre: -12 },
        ...{
          springRate: 28,
          motionRatio: 0.95,
          barRate: 16,
          barRatio: 0.5,
          stopGap: 25,
          stopRate: 40,
          rates: 'asTyped',
        },
        ...{ otherMass: 450, otherTrack: 1470, otherRollCentre: 90, otherSpringRate: 24, otherMotionRatio: 0.7 },
        ...{ otherBarRate: 8, otherBarRatio: 0.6 },
      },
    },
  },
  camberAdded: { camberAdded: { by: -1.5, over: 30, sortBy: 'bumpSteer', order: 'reversed' } },
  alignment: {
    alignment: {
      heightLeft: 352,
      heightWanted: 330,
      heightAfterRight: 331,
      camberLeft: -0.8,
      camberWanted: -1.5,
      camberTolerance: 0.1,
      toeRight: -0.05,
      toeWanted: 0.05,
      toeTolerance: 0.05,
      pitch: 1.5,
      thread: 'pair',
      hotInner: 78,
      againOuter: 70.5,
      hotRepeat: 3,
      camberChanged: -2,
      treadMiddle: 5.2,
    },
  },
  predict: { predict: { over: 35, of: 'toe' } },
  predictions: { predictions: [PREDICTION] },
  links: { links: 'learnt' },
  leastCost: {
    leastCost: {
      tolerance: 0.2,
      camberFrom: -3,
      camberTo: -0.5,
      heightFrom: 5,
      heightTo: 35,
      joint: 22,
      jointPrice: 250,
      spring: 45,
      bar2: 30,
      bar2Price: 0,
      gapStrut: 9,
      leastBump: 40,
      mostBumpSteer: 0.3,
      mostScrub: 4,
      way: 'knuckleBolts',
      rods: 'corrected',
      bumpTravel: 'most',
      price: 'none',
    },
  },
  lowered: { lowered: 'dampers' },
  camberReadLower: { given: { points: {}, camber: -1 }, camberReadLower: 8 },
  measuredAt: { measuredAt: 20 },
  other: { other: { drop: 22, camber: -1.1 } },
};
/** What no user gives: the version, who gave what, a page's own curve, and a corner handed over whole. */
const NOBODYS = ['version', 'provenance', 'curve', 'whole'];
const FIELDS = Object.keys(carSchema.pipe[0].pipe[0].entries) as (keyof CarDocument)[];

describe('what a user gave', () => {
  it('is known of every field of the schema', () => {
    expect([...Object.keys(GIVEN), ...NOBODYS].sort()).toEqual([...FIELDS].sort());
  });

  it.each(Object.entries(GIVEN))(
    '%s goes into a link, and over what a page says, on that page and on a bare one',
    (field, more) => {
      const given = byUser({ ...EMPTY_CAR, ...more });
      const link = carFromLink(carToLink(given));
      expect(link.ok).toBe(true);
      if (!link.ok) return;
      expect(isAnyUsers(link.car)).toBe(true);
      for (const page of [EMPTY_CAR, PAGE]) {
        const car = withUsers(page, link.car);
        expect(car[field as keyof CarDocument]).toEqual(given[field as keyof CarDocument]);
        // And is still in the next link, made on that page.
        const again = carFromLink(carToLink(car));
        expect(again.ok && again.car[field as keyof CarDocument]).toEqual(given[field as keyof CarDocument]);
      }
    },
  );

  it('comes back over a page as it was, whatever it is, and the page’s own is in no link', () => {
    fc.assert(
      fc.property(anyCar, (users) => {
        const car = withUsers(PAGE, users);
        expect(carToLink(car)).toBe(carToLink(users));
        expect(carToLink(pagesOnly(car))).toBe(carToLink(EMPTY_CAR));
      }),
      { seed: 411, numRuns: 300 },
    );
    expect(carToLink(PAGE)).toBe(carToLink(EMPTY_CAR));
    expect([isAnyUsers(PAGE), isAnyUsers(EMPTY_CAR)]).toEqual([false, false]);
    expect(usersFields(PAGE)).toEqual([]);
    expect(usersOnly(PAGE)).toEqual(EMPTY_CAR);
  });
});
