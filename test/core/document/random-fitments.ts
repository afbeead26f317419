import fc from 'fast-check';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { type Fitment, MOST_PLACES, MOST_STOP_POINTS } from '../../../core/document/fitment.js';
import { byUser } from '../../../core/document/own-car.js';
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
    beyond: fc.constant('tread' as const),
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
const fitment: fc.Arbitrary<Fitment> = fc.record(
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
export const fittedCars: fc.Arbitrary<CarDocument> = fc
  .record({
    limits,
    loads,
    fit: fitment,
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
