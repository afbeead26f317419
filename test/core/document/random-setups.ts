import fc from 'fast-check';
import { type CarDocument, CORNER_NAMES, EMPTY_CAR } from '../../../core/document/car.js';
import type { Setup } from '../../../core/document/setup.js';
import type { Reading } from '../../../core/readings/reading.js';

const decimal = (most: number) =>
  fc.oneof(
    fc.integer({ min: -most, max: most }),
    fc.integer({ min: -most * 1e6, max: most * 1e6 }).map((n) => n / 1e6 + 0),
  );
const name = fc.oneof(
  fc.constantFrom('Pass 1', 'Pass 2', 'Standard arms', 'Up-going', 'Längslenker 20 mm', 'a_b~c.d&e=f%20', ''),
  fc.string({ unit: 'grapheme', maxLength: 12 }),
);
const passes = fc.oneof(fc.constantFrom(undefined, 'Pass 1', 'Pass 2', '3'), fc.option(name, { nil: undefined }));

const reading: fc.Arbitrary<Reading> = fc
  .record({
    travel: fc.oneof(
      fc.integer({ min: -8, max: 8 }).map((n) => 5 * n),
      decimal(300),
    ),
    value: decimal(15),
    pass: passes,
    going: fc.constantFrom(undefined, 'up' as const, 'down' as const),
    body: fc.option(decimal(500), { nil: undefined }),
    again: fc.boolean(),
  })
  .map(({ travel, value, pass, going, body, again }) => ({
    travel,
    value,
    ...(pass !== undefined && { pass }),
    ...(going && { going }),
    ...(body !== undefined && { body }),
    ...(again && { again: true as const }),
  }));

const setup: fc.Arbitrary<Setup> = fc
  .record({
    name,
    cornerName: fc.constantFrom(...CORNER_NAMES),
    quantity: fc.constantFrom('camber' as const, 'toe' as const),
    readings: fc.array(reading, { maxLength: 60 }),
    aside: fc.uniqueArray(fc.nat(59), { maxLength: 4 }),
    rest: fc.record(
      {
        degree: fc.integer({ min: 1, max: 9 }),
        zeroAt: decimal(150),
        givenBy: fc.constantFrom('page' as const, 'example' as const),
        doubts: fc
          .record(
            {
              gaugeScale: fc.integer({ min: 0, max: 500 }).map((n) => n / 10),
              tapeScale: fc.integer({ min: 0, max: 50 }),
              zeroHeight: fc.integer({ min: 0, max: 100 }),
              drift: fc.integer({ min: 0, max: 500 }).map((n) => n / 100),
            },
            { requiredKeys: [] },
          )
          .filter((doubts) => Object.keys(doubts).length > 0),
      },
      { requiredKeys: [] },
    ),
  })
  .map(({ aside, rest, ...shown }) => {
    const setAside = aside.filter((index) => index < shown.readings.length);
    return { ...shown, ...(setAside.length > 0 && { setAside }), ...rest };
  });

export const USERS = {
  corner: { by: 'user' },
  setups: { by: 'user' },
  drop: { by: 'user' },
  way: { by: 'user' },
} as const;

export const readCars: fc.Arbitrary<CarDocument> = fc
  .record({ setups: fc.array(setup, { minLength: 1, maxLength: 4 }), inUse: fc.nat(3), drop: decimal(100) })
  .map(({ setups, inUse, drop }) => ({
    ...EMPTY_CAR,
    by: 'readings',
    provenance: USERS,
    drop,
    setups,
    ...(inUse % setups.length > 0 && { setup: inUse % setups.length }),
  }));
