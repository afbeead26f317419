import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { type Fit, MOST_PLACES, MOST_STOP_POINTS } from '../../../core/document/fit.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { byUser } from '../../../core/document/provenance.js';
import { EXAMPLE_SETUP } from '../../../core/document/setups.js';
import { CORNER_LOAD_KEYS, type CornerLoads, TRAVEL_LIMIT_KEYS } from '../../../core/travel/travel-limits.js';
import { FIXED_TO, type Place } from '../../../core/wheel/place.js';
import type { WheelSpec } from '../../../core/wheel/wheel.js';

const decimal = (least: number, most: number) =>
  fc.oneof(
    fc.integer({ min: least, max: most }),
    fc.integer({ min: least * 1e6, max: most * 1e6 }).map((n) => n / 1e6 + 0),
  );
const text = fc.oneof(
  fc.constantFrom(
    '205/55R16',
    '205/55 R16 91V',
    'arch lip',
    'Schraube, hinten',
    'a_b~c.d&e=f%2F;//',
    'ä2f€',
    '/2f/',
    '',
  ),
  fc.string({ unit: 'grapheme', maxLength: 12 }),
);
const sparse = <K extends string>(keys: readonly K[], of: (key: K) => fc.Arbitrary<number>) =>
  fc
    .record(Object.fromEntries(keys.map((key) => [key, of(key)])), { requiredKeys: [] })
    .map((found) => found as Partial<Record<K, number>>);
const isFilled = (part: object) => Object.keys(part).length > 0;

const wheel: fc.Arbitrary<WheelSpec> = fc.record(
  {
    size: text,
    rimWidthInch: decimal(3, 14),
    offset: decimal(-100, 120),
    spacer: decimal(0, 60),
    sectionWidth: decimal(100, 400),
    treadWidth: decimal(100, 400),
    shoulderRadius: decimal(0, 60),
    rimProtector: fc.boolean(),
  },
  { requiredKeys: ['size', 'rimWidthInch', 'offset'] },
);
const clock = fc.record(
  {
    clock: decimal(0, 12),
    distance: decimal(0, 500),
    out: decimal(-300, 300),
    from: fc.constantFrom('outer' as const, 'inner' as const),
  },
  { requiredKeys: ['clock', 'distance', 'out'] },
);
const point = fc.record({ point: fc.tuple(decimal(-4000, 4000), decimal(-4000, 4000), decimal(-4000, 4000)) });
const place: fc.Arbitrary<Place> = fc.record(
  {
    name: text,
    fixedTo: fc.constantFrom(...FIXED_TO),
    is: fc.constantFrom('bodywork' as const, 'chassis' as const),
    at: fc.oneof(clock, point),
    plusMinus: decimal(0, 50),
    share: decimal(0, 1),
  },
  { requiredKeys: ['name', 'fixedTo', 'is', 'at'] },
);
const fit: fc.Arbitrary<Fit> = fc.record(
  {
    before: wheel,
    after: wheel,
    places: fc.array(place, { minLength: 1, maxLength: MOST_PLACES }),
    lock: decimal(0, 60),
    marginBodywork: decimal(0, 40),
    marginChassis: decimal(0, 40),
    allowance: decimal(0, 40),
    sideways: decimal(-1, 1),
    camberBy: decimal(-8, 8),
  },
  { requiredKeys: [] },
);
const limits: fc.Arbitrary<NonNullable<CarDocument['limits']>> = sparse(
  TRAVEL_LIMIT_KEYS.filter((key) => key !== 'stopGap'),
  (key) => (key === 'stopUsable' || key === 'motionRatio' ? decimal(0, 1) : decimal(-300, 300)),
);
const loads: fc.Arbitrary<CornerLoads> = fc
  .tuple(
    sparse(CORNER_LOAD_KEYS, (key) => decimal(0, key === 'loadFactor' ? 5 : 1000)),
    fc.array(fc.tuple(decimal(0, 100), decimal(0, 20_000)), { maxLength: MOST_STOP_POINTS }),
  )
  .map(([single, stopPoints]) => ({ ...single, ...(stopPoints.length > 0 && { stopPoints }) }));

/** Nothing but what this test is about; `more` is what a car can have beside it. */
const cars: fc.Arbitrary<CarDocument> = fc
  .record({
    limits,
    loads,
    fit,
    more: fc.constantFrom<Partial<CarDocument>>(
      {},
      { given: { points: {}, camber: -1.2 }, stopGap: 12 },
      { provenance: { corner: { by: 'user' } }, by: 'readings', setups: [EXAMPLE_SETUP] },
    ),
  })
  .filter((parts) => [parts.limits, parts.loads, parts.fit].some(isFilled))
  .map(({ more, ...parts }) => {
    const filled = Object.fromEntries(Object.entries(parts).filter(([, part]) => isFilled(part)));
    const car = byUser({ ...EMPTY_CAR, ...more, ...filled });
    return { ...car, provenance: { ...car.provenance, ...more.provenance } };
  });

/** FNV-1a, 32 bit, worked out anew, so that a text can be wrong and still have the check that goes with it. */
function checked(body: string): string {
  let hash = 2166136261n;
  for (const character of body) hash = ((hash ^ BigInt(character.charCodeAt(0))) * 16777619n) & 0xffffffffn;
  return `${body}&check=${hash.toString(36)}`;
}

/** Invented. */
const OWN: CarDocument = {
  ...EMPTY_CAR,
  limits: { stopLength: 60, stopUsable: 0.5, shaftDroop: -80 },
  loads: {
    springRate: 25,
    stopPoints: [
      [10, 400],
      [20, 1200],
    ],
  },
  fit: {
    before: { size: '205/55R16', rimWidthInch: 6.5, offset: 45 },
    after: { size: '225/45 R17', rimWidthInch: 8, offset: 35, spacer: 5, sectionWidth: 230, rimProtector: true },
    places: [
      {
        name: 'arch lip',
        fixedTo: 'body',
        is: 'bodywork',
        at: { clock: 11.5, distance: 330, out: 12 },
        plusMinus: 5,
      },
      {
        name: 'Längslenker',
        fixedTo: 'carrier',
        is: 'chassis',
        at: { clock: 3, distance: 200, out: -8, from: 'inner' },
      },
      { name: 'drop link', fixedTo: 'between', is: 'chassis', at: { point: [0, 640, 300] }, share: 0.4 },
    ],
    lock: 34,
    marginBodywork: 6,
    camberBy: -0.5,
  },
  provenance: { fit: { by: 'user' } },
};

describe('a link that carries limits, loads, wheels and places', () => {
  it('gives back the same car', () => {
    fc.assert(
      fc.property(cars, (car) => {
        expect(carFromLink(`#${carToLink(car)}`)).toEqual({ ok: true, car });
      }),
      { seed: 91, numRuns: 500, endOnFailure: true },
    );
  });

  it('survives what messengers escape', () => {
    fc.assert(
      fc.property(cars, (car) => {
        const link = carToLink(car);
        expect(link).toMatch(/^[\w.,~=&/-]+$/);
        const sent = link.replaceAll('~', '%7e').replaceAll(',', '%2C').replaceAll('/', '%2F');
        expect(carFromLink(sent)).toEqual({ ok: true, car });
      }),
      { seed: 92, endOnFailure: true },
    );
  });

  it('can be read by people, and is written the same for ever', () => {
    expect(carToLink(OWN)).toBe(
      checked(
        'car=1&corner=front-left&by=driveway&drop=30&stopLength=60&stopUsable=0.5&shaftDroop=-80' +
          '&springRate=25&stopPoints=10,400,20,1200&wheelBefore=205/55R16,6.5,45' +
          '&wheelAfter=225/45.R17,8,35&wheelAfter.spacer=5&wheelAfter.sectionWidth=230&wheelAfter.rimProtector=1' +
          '&place1=arch.lip,body,bodywork,clock,11.5,330,12~5' +
          '&place2=L_e4_ngslenker,carrier,chassis,inner,3,200,-8' +
          '&place3=drop.link,between,chassis,point,0,640,300&place3.share=0.4' +
          '&lock=34&marginBodywork=6&camberBy=-0.5',
      ),
    );
  });

  it('keeps hard points the page’s, and the rest the user’s', () => {
    expect(carFromLink(carToLink(OWN))).toMatchObject({ ok: true, car: { provenance: OWN.provenance } });
  });

  it('keeps values to six decimals', () => {
    const read = carFromLink(carToLink({ ...OWN, limits: { stopLength: 100 / 3 }, loads: { springRate: 2e-7 } }));
    expect(read.ok && read.car).toMatchObject({ limits: { stopLength: 33.333333 }, loads: { springRate: 0 } });
  });

  it.each(['page', undefined] as const)('leaves out what is not the user’s: %s', (by) => {
    expect(carToLink({ ...OWN, provenance: by ? { fit: { by } } : {} })).toBe(carToLink(EMPTY_CAR));
  });

  it('says nothing where nothing is given', () => {
    const car: CarDocument = { ...EMPTY_CAR, limits: {}, loads: { stopPoints: [] }, fit: { places: [] } };
    expect(carToLink({ ...car, provenance: { fit: { by: 'user' } } })).toBe(carToLink(EMPTY_CAR));
    expect(carFromLink(carToLink(EMPTY_CAR))).toEqual({ ok: true, car: EMPTY_CAR });
  });

  it('is refused when a character was changed or lost, or its end is missing', () => {
    const others = fc.oneof(
      fc.constantFrom('0', '7', '-', '&', ',', '~', '/', '.', '%', ''),
      fc.string({ minLength: 1, maxLength: 1 }),
    );
    fc.assert(
      fc.property(cars, fc.nat(), others, (car, place, other) => {
        const link = carToLink(car);
        const at = 4 + (place % (link.length - 4));
        fc.pre(link[at] !== other);
        expect(carFromLink(link.slice(0, at) + other + link.slice(at + 1)).ok).toBe(false);
        expect(carFromLink(link.slice(0, at)).ok).toBe(false);
      }),
      { seed: 93, numRuns: 1000, endOnFailure: true },
    );
  });
});
