import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPageCar } from '../../../components/page-data/page-car.js';
import { loweringRequestOf, toeSourceOf } from '../../../core/answers/car-request.js';
import { clearanceRequestOf } from '../../../core/answers/fitment-request.js';
import { type CarDocument, EMPTY_CAR, givenByUser, withDrop, withPageHeights } from '../../../core/document/car.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { isAnyUsers, pagesOnly, usersOnly, withUsers } from '../../../core/document/own-car.js';
import { asPageCar, type PageCar, withPageCar } from '../../../core/document/page-car.js';
import { EXAMPLE_SETUP, withPageSetups } from '../../../core/document/setups.js';
import { startedOver } from '../../../core/document/start-over.js';
import { cars } from '../../core/document/random-cars.js';
import { fittedCars } from '../../core/document/random-fitments.js';
import { readCars } from '../../core/document/random-setups.js';

const anyCar = fc.oneof(cars, fittedCars, readCars);
const FIRST = { seed: 12, numRuns: 200 };

/** Through the text of a page and back. */
function said(car: CarDocument): PageCar {
  const { said: found, problems } = readPageCar(JSON.parse(JSON.stringify({ car: asPageCar(car) })));
  expect(problems).toEqual([]);
  return found;
}

/** What elements ask of a car. */
const questions = (car: CarDocument) => [loweringRequestOf(car), clearanceRequestOf(car), toeSourceOf(car)];
/** What is asked besides, and which sets are used. */
const settings = ({ turn, toe, compare, camberAdded, leastCost, links, setup, fitted, cornerName }: CarDocument) =>
  JSON.stringify({ turn, toe, compare, camberAdded, leastCost, links, setup, fitted, cornerName });

describe('a whole car that a page gives', () => {
  it('is asked the same as the car that its user gave, whatever is in it, and nothing of it is a user’s', () => {
    fc.assert(
      fc.property(anyCar, (car) => {
        const page = withPageCar(EMPTY_CAR, said(car));
        expect(questions(page)).toEqual(questions(car));
        expect(settings(page)).toBe(settings(car));
        expect(isAnyUsers(page)).toBe(false);
        expect(carFromLink(carToLink(page))).toMatchObject({ ok: true, car: { provenance: {} } });
        expect(usersOnly(page)).toEqual(EMPTY_CAR);
        expect(pagesOnly(page)).toEqual(page);
      }),
      FIRST,
    );
  });

  it('is taken back, and another put in its place, without a trace', () => {
    fc.assert(
      fc.property(anyCar, anyCar, (car, other) => {
        const had = said(car);
        const page = withPageCar(EMPTY_CAR, had);
        expect(withPageCar(page, {}, had)).toEqual(EMPTY_CAR);
        const next = said(other);
        expect(withPageCar(page, next, had)).toEqual(withPageCar(EMPTY_CAR, next));
      }),
      FIRST,
    );
  });

  it('leaves alone what a user gave, and what the page says in attributes and tables', () => {
    fc.assert(
      fc.property(readCars, (car) => {
        const own = withDrop(EMPTY_CAR, 41);
        expect(withPageCar(own, said(car))).toMatchObject({ drop: 41, provenance: { drop: { by: 'user' } } });
        const given = withPageHeights(withPageSetups(EMPTY_CAR, [EXAMPLE_SETUP]), { drop: 17, bumpTravel: 50 }, true);
        expect(withPageCar(given, { ...said(car), bumpTravel: 60 })).toMatchObject({
          drop: 17,
          bumpTravel: 50,
          setups: [EXAMPLE_SETUP],
        });
      }),
      FIRST,
    );
  });

  const lowered: PageCar = {
    given: { points: {}, measures: { armLength: { value: 320, plusMinus: 3 } } },
    measuredAt: 20,
    other: { drop: 30, camber: -1 },
    turn: { roll: 2.5 },
  };

  it('says nothing of the car that a user begins, but still asks the same', () => {
    const page = withPageCar(EMPTY_CAR, lowered);
    expect(page).toMatchObject({ measuredAt: 20, other: { drop: 30, camber: -1 } });
    const own = givenByUser(page, (given) => ({ ...given, camber: -1 }));
    expect([own.measuredAt, own.other, own.turn]).toEqual([undefined, undefined, { roll: 2.5 }]);
    expect(startedOver(own)).toMatchObject({ measuredAt: 20, other: { drop: 30, camber: -1 } });
    const link = carFromLink(carToLink(givenByUser(EMPTY_CAR, (given) => ({ ...given, camber: -1 }))));
    expect(link.ok && withUsers(page, link.car).measuredAt).toBe(undefined);
  });

  it('keeps what a user changed of what is asked, by field; taken back, the page’s stands again', () => {
    const page = withPageCar(EMPTY_CAR, lowered);
    const own: CarDocument = { ...page, turn: { roll: 3 } };
    expect(usersOnly(own)).toEqual({ ...EMPTY_CAR, turn: { roll: 3 } });
    expect(withPageCar(own, { ...lowered, measuredAt: 25 }, lowered)).toMatchObject({
      turn: { roll: 3 },
      measuredAt: 25,
    });
    expect(pagesOnly(own).turn).toEqual({ roll: 2.5 });
  });
});

describe('readPageCar', () => {
  const problems = (data: unknown) =>
    readPageCar(data as { car: unknown }).problems.map(({ code, path, value }) => [code, path, value]);

  it('takes as much of a document as there is to say, a saved file among them', () => {
    expect(readPageCar({ car: { setups: [EXAMPLE_SETUP] } })).toMatchObject({
      said: { setups: [EXAMPLE_SETUP] },
      problems: [],
    });
    expect(Object.keys(readPageCar({ car: { setups: [EXAMPLE_SETUP] } }).said)).toEqual(['setups']);
    const file = withDrop({ ...EMPTY_CAR, bumpTravel: 60, provenance: { bumpTravel: { by: 'user' } } }, 20);
    expect(readPageCar({ car: file }).said).toMatchObject({ drop: 20, bumpTravel: 60 });
  });

  it('names what is wrong by its path, all at once, and takes nothing of it', () => {
    const wrong = { drop: 'low', setups: [{ ...EXAMPLE_SETUP, quantity: 'caster' }], colour: 'red' };
    expect(problems({ car: wrong, fit: {} })).toEqual([
      ['unknown-name', 'JSON script', 'fit'],
      ['unknown-name', 'car.setups.0.quantity', 'caster'],
      ['not-a-number', 'car.drop', 'low'],
      ['wrong-shape', 'car.colour', 'colour'],
    ]);
    expect(readPageCar({ car: { ...wrong, bumpTravel: 60 } }).said).toEqual({});
    for (const none of [null, 3, 'car', []])
      expect(problems({ car: none })[0]!.slice(0, 2)).toEqual(['wrong-shape', 'car']);
  });
});
