import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CarDocument, CORNER_NAMES, EMPTY_CAR } from '../../../core/document/car.js';
import { carFromLink, carToLink, linkProblemText } from '../../../core/document/link.js';
import { DRIVEWAY_FIELDS, type DrivewayKey } from '../../../core/driveway/driveway.js';
import { STRUT_POINT_KEYS } from '../../../core/linkage/corner.js';

/** As people type: to a tenth of a millimetre, a hundredth of a degree. */
const typed = (least: number, most: number, step = 0.1) =>
  fc
    .integer({ min: Math.ceil(least / step), max: Math.floor(most / step) })
    .map((n) => Number((n * step).toFixed(4)) + 0);
const doubt = typed(0, 20);
const measured = (key: DrivewayKey) =>
  fc.record({ value: typed(DRIVEWAY_FIELDS[key].least, DRIVEWAY_FIELDS[key].most), plusMinus: doubt });
const keys = [
  'armLength',
  'pivotHeight',
  'ballHeight',
  'wheelCentreHeight',
  'topHeight',
  'damperLean',
  'kingpin',
] as const;
const sparse = <T>(values: Record<string, fc.Arbitrary<T>>) => fc.record(values, { requiredKeys: [] });
const filled = (part: object | undefined) => part !== undefined && Object.keys(part).length > 0;

const cars: fc.Arbitrary<CarDocument> = fc
  .record({
    corner: fc.constantFrom(...CORNER_NAMES),
    by: fc.constantFrom('driveway', 'points'),
    drop: typed(-100, 100),
    rest: sparse<unknown>({
      dropPlusMinus: doubt,
      stopGap: typed(0, 100),
      lowered: fc.constantFrom('springs', 'dampers'),
      measuredAt: typed(-60, 60),
      camberReadLower: fc.constantFrom(8, 20),
      other: fc.record({ drop: typed(-100, 100), camber: typed(-5, 5, 0.01) }),
    }),
    bumpTravel: fc.option(typed(0, 200), { nil: undefined }),
    measures: sparse(Object.fromEntries(keys.map((key) => [key, measured(key)]))),
    points: sparse(
      Object.fromEntries(
        STRUT_POINT_KEYS.map((key) => [key, fc.tuple(typed(-900, 900), typed(0, 900), typed(0, 900))]),
      ),
    ),
    single: sparse({ camber: typed(-5, 5, 0.01), toe: typed(-2, 2, 0.01), loadedRadius: typed(200, 400) }),
    sure: doubt,
  })
  .map(({ corner, by, drop, rest, bumpTravel, measures, points, single, sure }) => {
    const plusMinus = Object.fromEntries(Object.keys(points).map((key) => [key, sure]));
    return {
      ...EMPTY_CAR,
      cornerName: corner,
      by,
      givenBy: 'user',
      given: {
        points,
        ...single,
        ...(filled(measures) && { measures }),
        ...(filled(plusMinus) && { plusMinus }),
      },
      drop,
      ...rest,
      ...(bumpTravel !== undefined && { bumpTravel, bumpTravelGivenBy: 'user' }),
    } as CarDocument;
  })
  .filter(({ given, other }) => Object.keys(given).length > 1 || filled(given.points) || other !== undefined);

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
      givenBy: 'user',
      given: {
        points: {},
        camber: -1.2,
        measures: { armLength: { value: 352, plusMinus: 3 }, damperLean: { value: 9.5, plusMinus: 0.5 } },
      },
      drop: 25,
      dropPlusMinus: 3,
      bumpTravel: 70,
      bumpTravelGivenBy: 'user',
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
    const page: CarDocument = { ...EMPTY_CAR, bumpTravel: 62, bumpTravelGivenBy: 'page', drop: 20 };
    expect(carToLink(page)).toMatch(/^car=1&corner=front-left&by=driveway&drop=20&check=\w+$/);
  });
});

describe('a link that something happened to', () => {
  it('is refused when a character was changed or lost, or its end is missing', () => {
    fc.assert(
      fc.property(cars, fc.nat(), fc.constantFrom('0', '7', '-', '&', ''), (car, place, other) => {
        const link = carToLink(car);
        const at = 4 + (place % (link.length - 4));
        fc.pre(link[at] !== other);
        expect(carFromLink(link.slice(0, at) + other + link.slice(at + 1)).ok).toBe(false);
        expect(carFromLink(link.slice(0, at)).ok).toBe(false);
      }),
      { seed: 73, numRuns: 1000 },
    );
  });

  it.each(['', '#', '#lowering', '#why-it-slows', 'drop=30'])('%j is an ordinary anchor', (text) => {
    expect(carFromLink(text)).toEqual({ ok: false, reason: 'not-a-car' });
  });

  it('from a newer version says so; a damaged one is told from it', () => {
    // 9 with the check that goes with it: FNV-1a, 32 bit, worked out here anew.
    const body = 'car=9&drop=30';
    let hash = 2166136261n;
    for (const character of body) hash = ((hash ^ BigInt(character.charCodeAt(0))) * 16777619n) & 0xffffffffn;
    expect(carFromLink(`${body}&check=${hash.toString(36)}`)).toEqual({ ok: false, reason: 'newer' });
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
