import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as clearance from '../../../components/bumpline-clearance/bumpline-clearance.words.js';
import * as compare from '../../../components/bumpline-compare/bumpline-compare.words.js';
import { comparedSets } from '../../../components/bumpline-compare/compared-sets.js';
import * as lowering from '../../../components/bumpline-lowering/bumpline-lowering.words.js';
import * as readings from '../../../components/bumpline-readings/bumpline-readings.words.js';
import { SHARED } from '../../../components/element/first.words.js';
import { counting, fill, textOf } from '../../../components/element/sentence.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { takeCorner } from '../../../core/document/take-corner.js';

const display = { units: { length: 'mm', angle: 'degrees' }, language: 'en' } as const;

/** The same record with every word of it in capitals: what is in small letters then came from somewhere else. */
function capitals<T>(words: T): T {
  if (typeof words === 'string') {
    return words.replace(/(\{\w+\})|([^{]+)/g, (_, name?: string, text = '') => name ?? text.toUpperCase()) as T;
  }
  return Object.fromEntries(Object.entries(words as object).map(([key, value]) => [key, capitals(value)])) as T;
}

/** Units are no words. */
const small = (text: string): string[] => text.match(/\p{Ll}{2,}/gu)?.filter((word) => word !== 'mm') ?? [];

const angle = fc.double({ min: -2, max: 2, noNaN: true });
const doubt = fc.option(fc.double({ min: 0, max: 0.5, noNaN: true }), { nil: undefined });
const estimate = fc.record({ value: angle, plusMinus: doubt });
const length = fc.double({ min: -60, max: 90, noNaN: true });

/** As of an answer, as far as words look at it. */
const as = <T>(found: unknown): T => found as T;

describe('a sentence has no word that is not in its record', () => {
  it('of lowering', () => {
    const words = capitals(lowering.FIRST);
    const end = fc.record({
      travel: length,
      left: length,
      plusMinus: doubt,
      governedBy: fc.constantFrom('bumpTravel', 'stop'),
    });
    const answers = fc.record({
      drop: fc.constantFrom(-20, 0, 30),
      change: estimate,
      camberAfter: angle,
      rateBefore: estimate,
      rateAfter: estimate,
      isStraight: fc.boolean(),
      reversal: fc.option(fc.record({ travel: estimate, change: angle }), { nil: undefined }),
      bumpLeft: fc.option(length, { nil: undefined }),
      other: fc.option(fc.record({ difference: angle }), { nil: undefined }),
      budget: fc.option(
        fc.record({
          bump: fc.record({ solid: fc.option(end, { nil: undefined }), touch: fc.option(end, { nil: undefined }) }),
        }),
        { nil: undefined },
      ),
    });
    const cars = fc.record({ lowered: fc.constantFrom(undefined, 'dampers'), camber: fc.constantFrom(undefined, -1) });
    fc.assert(
      fc.property(answers, cars, (answer, { lowered, camber }) => {
        const car = as<typeof EMPTY_CAR>({ ...EMPTY_CAR, lowered, given: { points: {}, camber }, givenBy: 'user' });
        const text = lowering.spoken(as(answer), car, display, words);
        // What a limit is called stands in a list of its own.
        expect(small(text.replace(/ENDED BY [^.,]*/, '')), text).toEqual([]);
      }),
    );
  });

  it('of readings', () => {
    const words = capitals(readings.FIRST);
    const answers = fc.record({
      used: fc.constantFrom([0], [0, 1, 2]),
      passes: fc.constantFrom(1, 3),
      over: fc.constantFrom(-20, 25),
      quantity: fc.constantFrom('camber', 'toe'),
      change: fc.option(estimate, { nil: undefined }),
      repeated: fc.option(fc.double({ min: 0, max: 0.2, noNaN: true }), { nil: undefined }),
      fit: fc.constantFrom({ curve: { domain: [-20, 30] } }, { curve: { domain: [-20, 30] }, drift: {} }),
    });
    fc.assert(
      fc.property(answers, (answer) => {
        const text = readings.spoken(as(answer), display, words);
        expect(small(text), text).toEqual([]);
      }),
    );
    for (const count of [0, 1, 2]) {
      const setup = { readings: Array.from({ length: count }, (_, travel) => ({ travel })), quantity: 'toe' };
      expect(small(readings.soFar(as(setup), words))).toEqual([]);
    }
  });

  it('of parts compared', () => {
    const words = capitals(compare.FIRST);
    const told = fc.record({ value: angle, plusMinus: doubt, isTold: fc.boolean() });
    const cell = fc.record({ change: fc.option(estimate, { nil: undefined }), isBeyondSolid: fc.boolean() });
    const range = fc.constant([0, 60]);
    const interval = fc.record({ low: length, high: length, isLowOpen: fc.boolean(), isHighOpen: fc.boolean() });
    const side = fc.constantFrom('ahead', 'behind');
    const crossing = fc.oneof(
      fc.record({ kind: fc.constant('at'), drop: length, interval, range, isAheadBelow: fc.boolean() }),
      fc.record({ kind: fc.constant('two'), drops: fc.constant([10, 40]), range }),
      fc.record({ kind: fc.constant('none'), side, range }),
      fc.record({ kind: fc.constant('cannot-tell'), interval, range, side: fc.option(side, { nil: undefined }) }),
    );
    const at = fc.record({ curve: fc.constantFrom(0, 1), height: fc.constantFrom(0, 1) });
    const comparisons = fc.record({
      names: fc.constantFrom(['A', 'B'], ['AS', 'BS']),
      heights: fc.constantFrom([0, 25], [-5, 30]),
      comparison: fc.record({
        cells: fc.array(fc.array(cell, { minLength: 2, maxLength: 2 }), { minLength: 2, maxLength: 2 }),
        breakEvens: fc.array(fc.record({ change: crossing }), { minLength: 1, maxLength: 1 }),
      }),
      from: at,
      to: at,
      net: fc.option(fc.record({ total: told }), { nil: undefined }),
    });
    fc.assert(
      fc.property(comparisons, (found) => {
        const text = compare.spoken(as(found), '40 mm', display, words);
        expect(small(text), text).toEqual([]);
      }),
    );
  });

  it('of clearance', () => {
    const words = capitals(clearance.FIRST);
    const gap = fc.record({
      travel: length,
      toe: fc.double({ min: -40, max: 40, noNaN: true }),
      isAhead: fc.boolean(),
      gap: length,
      plusMinus: fc.double({ min: 0, max: 9, noNaN: true }),
    });
    const end = fc.record({ travel: length, left: length, governedBy: fc.constantFrom('stop', 'bumpTravel') });
    const verdict = fc.constantFrom('clears', 'close', 'touches');
    const answers = fc.record({
      drop: fc.constantFrom(0, 25),
      allowance: fc.constant(3),
      wheels: fc.record({ innerEdge: fc.constantFrom(-4, 0, 3) }),
      places: fc.array(fc.record({ decisive: gap, ride: gap, margin: fc.constant(5), verdict }), {
        minLength: 2,
        maxLength: 2,
      }),
      worst: fc.constantFrom(undefined, 0, 1),
      verdict: fc.option(verdict, { nil: undefined }),
      contact: fc.option(fc.record({ travel: length, place: fc.constantFrom(0, 1) }), { nil: undefined }),
      budget: fc.record({
        bump: fc.record({ solid: fc.option(end, { nil: undefined }), touch: fc.option(end, { nil: undefined }) }),
      }),
    });
    const places = [
      { name: 'LIP', at: { clock: 10.5 } },
      { name: '', at: { out: 0 } },
    ];
    const asked = fc.record({ isLeft: fc.boolean(), lock: fc.constantFrom(undefined, 30), isSteering: fc.boolean() });
    fc.assert(
      fc.property(answers, asked, (answer, how) => {
        const text = clearance.spoken(as({ answer, places, ...how }), '', '25 mm', '10 mm', display, words);
        expect(small(text), text).toEqual([]);
      }),
    );
  });
});

describe('the line that says whose numbers they are has no word that is not in its record', () => {
  /** What all elements share stands in a record of its own. */
  const shared = new RegExp(
    [
      SHARED.exampleNot.replace('{car}', ''),
      SHARED.thePages,
      SHARED.theExamples,
      SHARED.yourCar,
      SHARED.pagesCar,
      SHARED.example,
    ].join('|'),
    'g',
  );
  const ofElement = (text: string): string[] => small(text.replace(shared, ''));
  const { given } = takeCorner(EXAMPLE_CORNER);
  const { camber: _, toe: __, ...bare } = given;
  const setup = {
    name: 'ARMS',
    cornerName: 'Front left',
    quantity: 'camber',
    readings: [{ travel: 0, value: -1 }],
  } as const;
  const setups = [setup, { ...setup, name: 'JOINT', setAside: [0] }];
  const providers = [undefined, { corner: { by: 'user' } }, { corner: { by: 'page' } }] as const;
  const cars = providers.flatMap((provenance) =>
    [
      { given },
      { given: bare },
      { given: { points: { wheelCentre: [0, 740, 300] } } },
      { given: { points: {} } },
    ].flatMap((part) =>
      (['points', 'driveway', 'readings'] as const).map((by) =>
        as<CarDocument>({
          ...EMPTY_CAR,
          ...(provenance && { provenance: { ...provenance, setups: { by: 'user' } } }),
          by,
          ...part,
          setups,
        }),
      ),
    ),
  );

  it('of lowering', () => {
    const words = capitals(lowering.FIRST);
    for (const car of cars) expect(ofElement(lowering.ownership(car, words)), lowering.ownership(car)).toEqual([]);
  });
  it('of parts compared, and what says that the parts are an example’s', () => {
    const words = capitals(compare.FIRST);
    for (const car of [...cars, { ...EMPTY_CAR, provenance: providers[1]!, given }]) {
      // Name and count of the car's own curve are told by another function, from the same record.
      const sets = comparedSets(car);
      const told = {
        ...sets,
        ...(sets.own && { own: { ...sets.own, name: 'OWN', ...(sets.own.count && { count: '4/6' }) } }),
      };
      expect(ofElement(compare.ownership(as(told), car, words)), compare.ownership(sets, car)).toEqual([]);
      expect(ofElement(compare.notYours(car, words)), compare.notYours(car)).toEqual([]);
    }
  });
});

describe('fill', () => {
  it('puts parts in, plain or as they come, with a capital where the pattern asks for one, and values between asterisks', () => {
    const parts = { place: 'the lip', gap: [{ text: '3 mm', role: 'value' as const }], when: 'at bump' };
    expect(fill('{When}, {place} is {gap} away: *too {when}*.', parts)).toEqual([
      { text: 'At bump' },
      { text: ', ' },
      { text: 'the lip' },
      { text: ' is ' },
      { text: '3 mm', role: 'value' },
      { text: ' away: ' },
      { text: 'too at bump', role: 'value' },
      { text: '.' },
    ]);
  });
  it('reads no pattern in what is put in', () => {
    expect(textOf(fill('{name}: {name}', { name: '*{name}* of {parts}' }))).toBe(
      '*{name}* of {parts}: *{name}* of {parts}',
    );
  });
  it('takes the form of one for one, and else that of many', () => {
    const forms = { one: '{count} reading', many: '{count} readings' };
    expect([0, 1, 2].map((count) => counting(count, forms))).toEqual(['0 readings', '1 reading', '2 readings']);
  });
});
