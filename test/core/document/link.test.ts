import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CarDocument, EMPTY_CAR, MOST_HEIGHTS, withDrop } from '../../../core/document/car.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { linkProblemText } from '../../../core/document/link-problem.js';
import { STRUT_POINT_KEYS } from '../../../core/linkage/corner.js';
import { parseQuantity } from '../../../core/quantity/parse.js';
import { METRIC } from '../../../core/quantity/units.js';
import { cars, MEASURED_KEYS } from './random-cars.js';

describe('a link that carries a car', () => {
  it('gives back the same car', () => {
    fc.assert(
      fc.property(cars, (car) => {
        expect(carFromLink(`#${carToLink(car)}`)).toEqual({ ok: true, car });
      }),
      { seed: 71, numRuns: 500 },
    );
  });

  it('can be read by people, and is written the same for ever', () => {
    const car: CarDocument = {
      ...EMPTY_CAR,
      cornerName: 'Front right',
      provenance: { corner: { by: 'user' }, bumpTravel: { by: 'user' } },
      given: {
        points: {},
        camber: -1.2,
        measures: { armLength: { value: 352, plusMinus: 3 }, damperLean: { value: 9.5, plusMinus: 0.5 } },
      },
      drop: 25,
      dropPlusMinus: 3,
      bumpTravel: 70,
      lowered: 'dampers',
    };
    expect(carToLink(car)).toBe(
      'car=1&corner=front-right&by=driveway&drop=25~3&bumpTravel=70&lowered=dampers&armLength=352~3&damperLean=9.5~0.5&camber=-1.2&check=19sv00n',
    );
  });

  it('needs no escaping, and stays short with everything in it', () => {
    fc.assert(
      fc.property(cars, (car) => {
        const link = carToLink(car);
        expect(link).toMatch(/^[\w.,~=&-]+$/);
        expect(link.length).toBeLessThan(1200);
      }),
      { seed: 72, numRuns: 200 },
    );
  });

  it('leaves out what belongs to a page', () => {
    const page: CarDocument = { ...EMPTY_CAR, bumpTravel: 62, provenance: { bumpTravel: { by: 'page' } }, drop: 20 };
    expect(carToLink(page)).toMatch(/^car=1&drop=20&check=\w+$/);
    const lowered: CarDocument = { ...page, provenance: { bumpTravel: { by: 'page' }, drop: { by: 'page' } } };
    expect(carToLink(lowered)).toMatch(/^car=1&check=\w+$/);
    expect(carToLink(EMPTY_CAR)).toBe(carToLink(lowered));
  });

  it('says the drop of somebody who gave the example’s own', () => {
    const car = withDrop(EMPTY_CAR, EMPTY_CAR.drop);
    expect(carToLink(car)).toMatch(/^car=1&drop=30&check=\w+$/);
    expect(carFromLink(carToLink(car))).toEqual({ ok: true, car });
  });
});

/** FNV-1a, 32 bit, worked out anew, so that a text can be wrong and still have the check that goes with it. */
function checked(body: string): string {
  let hash = 2166136261n;
  for (const character of body) hash = ((hash ^ BigInt(character.charCodeAt(0))) * 16777619n) & 0xffffffffn;
  return `${body}&check=${hash.toString(36)}`;
}

const userCar = (more: Partial<CarDocument>): CarDocument => ({
  ...EMPTY_CAR,
  provenance: { corner: { by: 'user' }, drop: { by: 'user' }, way: { by: 'user' } },
  ...more,
});

describe('a car that cannot be solved yet', () => {
  it.each(['33', '3380'])('keeps an arm length of %s mm, so that a reload tells the same problem', (text) => {
    const parsed = parseQuantity(text, 'coordinate', METRIC);
    const value = parsed.ok ? parsed.value : Number.NaN;
    const car = userCar({ given: { points: {}, measures: { armLength: { value, plusMinus: 3 } } } });
    expect(carFromLink(carToLink(car))).toEqual({ ok: true, car });
  });
});

describe('what a link leaves out and what it keeps', () => {
  it('has one static camber, whatever the measures say', () => {
    const measures = { camber: { value: -0.6, plusMinus: 0.1 } };
    const link = carToLink(userCar({ given: { points: {}, camber: -1, measures } }));
    expect(carFromLink(link)).toMatchObject({ ok: true, car: { given: { points: {}, camber: -1 } } });
  });

  it('keeps the other side, which somebody gave beside the example', () => {
    const other = { drop: 22, camber: -1.1 };
    expect(carFromLink(carToLink({ ...EMPTY_CAR, other }))).toMatchObject({ ok: true, car: { other } });
  });

  it('carries every point and every measure in less than 2000 characters', () => {
    const points = Object.fromEntries(
      STRUT_POINT_KEYS.map((key) => [key, [-1234.5678, 1234.5678, 1234.5678]] as const),
    );
    const measures = Object.fromEntries(
      MEASURED_KEYS.map((key) => [key, { value: -12.345678, plusMinus: 12.345678 }] as const),
    );
    const car = userCar({ given: { points, measures, plusMinus: { other: 12.345678 }, camber: -1.234567 } });
    const link = carToLink(car);
    expect(link.length).toBeLessThan(2000);
    expect(carFromLink(link).ok).toBe(true);
  });
});

describe('a link whose check is right and whose text is not', () => {
  const body = 'car=1&corner=front-left&by=driveway&drop=30';
  it('is read as far as here', () => expect(carFromLink(checked(body)).ok).toBe(true));

  it.each([
    ['an unknown name', `${body}&rideHeight=1`],
    ['a name that every object has', `${body}&constructor=1`],
    ['a name twice', `${body}&drop=30`],
    ['a name without a value', `${body}&toe`],
    ['an empty pair', `${body}&`],
    ['an unknown word', `${body}&lowered=air`],
    ['a drop out of range', body.replace('30', '151')],
    ['a camber out of range', `${body}&camber=-15.1`],
    ['a coordinate out of range', `${body}&strut.top=0,4001,800`],
    ['a negative ±', `${body}&armLength=338~-3`],
    ['two ±', `${body}&armLength=338~3~3`],
    ['a measurement without its ±', `${body}&armLength=338`],
    ['a comma for the decimal mark in a drop', body.replace('30', '30,5')],
    ['a comma for the decimal mark in a measurement', `${body}&armLength=338,5~3`],
    ['a point with two coordinates', `${body}&strut.top=0,574~3`],
    ['a point with four', `${body}&strut.top=0,574,822,1~3`],
    ['an exponent', body.replace('30', '3e1')],
    ['no number at all', body.replace('30', 'Infinity')],
    ['version 0', body.replace('car=1', 'car=0')],
  ])('%s: damaged', (_, text) => {
    expect(carFromLink(checked(text))).toEqual({ ok: false, reason: 'damaged' });
  });

  it('never throws, and a car that comes back is written as it was read', () => {
    const name = fc.constantFrom(
      'drop',
      'toe',
      'camber',
      'other',
      'strut.top',
      'armLength',
      'lowered',
      '__proto__',
      '',
    );
    const value = fc.oneof(fc.string(), fc.constantFrom('1', '-0', '1~2', '1,2', '1,2,3', '1,2,3~4', 'springs', 'NaN'));
    const pairs = fc.array(fc.tuple(name, value).map((pair) => `&${pair.join('=')}`));
    fc.assert(
      fc.property(pairs, (more) => {
        const read = carFromLink(checked(body + more.join('')));
        if (read.ok) expect(carFromLink(carToLink(read.car))).toEqual(read);
      }),
      { seed: 75, numRuns: 2000 },
    );
  });
});

describe('a link that something happened to', () => {
  it('is the same car when a messenger escaped its commas and tildes', () => {
    fc.assert(
      fc.property(cars, (car) => {
        const sent = carToLink(car).replaceAll('~', '%7E').replaceAll(',', '%2c');
        expect(carFromLink(sent)).toEqual({ ok: true, car });
      }),
      { seed: 76 },
    );
  });

  it('is refused when a character was changed or lost, or its end is missing', () => {
    fc.assert(
      fc.property(
        cars,
        fc.nat(),
        fc.oneof(fc.constantFrom('0', '7', '-', '&', ''), fc.string({ minLength: 1, maxLength: 1 })),
        (car, place, other) => {
          const link = carToLink(car);
          const at = 4 + (place % (link.length - 4));
          fc.pre(link[at] !== other);
          expect(carFromLink(link.slice(0, at) + other + link.slice(at + 1)).ok).toBe(false);
          expect(carFromLink(link.slice(0, at)).ok).toBe(false);
        },
      ),
      { seed: 73, numRuns: 1000 },
    );
  });

  it.each(['', '#', '#lowering', '#why-it-slows', 'drop=30'])('%j is an ordinary anchor', (text) => {
    expect(carFromLink(text)).toEqual({ ok: false, reason: 'not-a-car' });
  });

  it('from a newer version says so; a damaged one is told from it', () => {
    const body = 'car=9&drop=30';
    expect(carFromLink(checked(body))).toEqual({ ok: false, reason: 'newer' });
    expect(carFromLink(`${body}&check=0`)).toEqual({ ok: false, reason: 'damaged' });
    expect(linkProblemText('newer')).not.toBe(linkProblemText('damaged'));
  });

  it('of any text is refused without an error', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (a, b) => {
        expect(carFromLink(a).ok).toBe(false);
        expect(carFromLink(`car=1&${a}&check=${b}`).ok).toBe(false);
      }),
      { seed: 74 },
    );
  });
});

describe('what is compared', () => {
  it('goes into the link and comes back; too many heights are damage', () => {
    const car = { ...EMPTY_CAR, compare: { heights: [0, 25, -10.5], over: 35 } };
    const read = carFromLink(carToLink(car));
    expect(read).toMatchObject({ ok: true, car: { compare: car.compare } });
    const many = { ...EMPTY_CAR, compare: { heights: Array.from({ length: MOST_HEIGHTS + 1 }, (_, i) => i) } };
    expect(carFromLink(carToLink(many))).toEqual({ ok: false, reason: 'damaged' });
    expect(carToLink(EMPTY_CAR)).not.toContain('heights');
  });
});
