import fc from 'fast-check';
import { ALIGNMENTS } from '../../../core/curve-sources/source.js';
import { type CarDocument, CORNER_NAMES, EMPTY_CAR } from '../../../core/document/car.js';
import { MOST_PARTS } from '../../../core/document/counts.js';
import type { Setup } from '../../../core/document/setup.js';
import type { PartData, PartName } from '../../../core/linkage/parts/part-kinds.js';
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
    pair: fc.option(fc.tuple(decimal(900), decimal(900)), { nil: undefined }),
  })
  .map(({ travel, value, pass, going, body, again, pair }) => ({
    travel,
    value,
    ...(pass !== undefined && { pass }),
    ...(going && { going }),
    ...(body !== undefined && { body }),
    ...(again && { again: true as const }),
    ...(pair && { pair }),
  }));

const mm = fc.integer({ min: -150_000, max: 150_000 }).map((n) => n / 1000 + 0);
const degrees = fc.integer({ min: -20_000, max: 20_000 }).map((n) => n / 1000 + 0);
const vector = fc.tuple(mm, mm, mm);
const which = fc.constantFrom('lower' as const, 'upper' as const);
const part = <N extends PartName>(name: N, needed: object, optional: object = {}) =>
  fc.record(
    { part: fc.constant(name), ...needed, ...optional, plusMinus: fc.nat(50) },
    { requiredKeys: ['part', ...Object.keys(needed)] as never },
  ) as unknown as fc.Arbitrary<PartData>;

/** Parts as a document can hold them. */
export const randomPart: fc.Arbitrary<PartData> = fc.oneof(
  part('ballJointExtended', { mm }, { joint: which, stud: vector, correctTieRod: fc.boolean() }),
  part('ballJointMoved', { vector }, { joint: which, correctTieRod: fc.boolean() }),
  part('armLonger', { mm }, { arm: which }),
  part('innerPivotsRaised', { front: mm, rear: mm }, { arm: which }),
  part('topMountMoved', { vector }),
  part('knuckleBoltsTurned', { degrees, otherBolt: vector }, { axis: vector }),
  part('spinAxisTurned', { camber: degrees }, { toe: degrees }),
  part('tieRodEndRaised', { mm }),
  part('tieRodLonger', { mm }),
  part('rackRaised', { mm }),
  part('wheelOffset', { mm }),
);

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
        parts: fc.array(randomPart, { minLength: 1, maxLength: MOST_PARTS }),
        alignment: fc.constantFrom(...ALIGNMENTS),
        overBase: fc.record({
          by: fc.constantFrom('dials' as const, 'tape' as const),
          base: fc.integer({ min: 20_000, max: 4_000_000 }).map((n) => n / 1000),
          front: fc.constantFrom('inboard' as const, 'outboard' as const),
        }),
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
  .record({
    setups: fc.array(setup, { minLength: 1, maxLength: 4 }),
    inUse: fc.nat(3),
    fitted: fc.nat(3),
    drop: decimal(100),
  })
  .map(({ setups, inUse, fitted, drop }) => ({
    ...EMPTY_CAR,
    by: 'readings',
    provenance: USERS,
    drop,
    setups,
    ...(inUse % setups.length > 0 && { setup: inUse % setups.length }),
    ...(setups[fitted]?.parts && { fitted }),
  }));
