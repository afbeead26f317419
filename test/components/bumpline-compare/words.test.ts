import { describe, expect, it } from 'vitest';
import {
  crossingWords,
  notYours,
  ownership,
  type Told,
} from '../../../components/bumpline-compare/bumpline-compare.words.js';
import { comparedSets, firstCells } from '../../../components/bumpline-compare/compared-sets.js';
import { reachText } from '../../../components/bumpline-compare/reach-text.js';
import { type Reaches, whatReaches } from '../../../components/bumpline-compare/what-reaches.js';
import type { Crossing } from '../../../core/curve/break-even.js';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import { curveFromCoefficients } from '../../../core/curve/from-coefficients.js';
import { type CarDocument, EMPTY_CAR, givenByUser } from '../../../core/document/car.js';
import { EXAMPLE_SETUPS } from '../../../core/document/example-setups.js';
import type { Giver } from '../../../core/document/provenance.js';
import type { Setup } from '../../../core/document/setup.js';
import { addSetup } from '../../../core/document/setup-edits.js';

const display = { units: { length: 'mm', angle: 'degrees' }, language: 'en' } as const;
const say = (crossing: object, name = 'Lowered joints') =>
  crossingWords({ range: [0, 60], ...crossing } as Crossing, name, display)
    .map(({ text }) => text)
    .join('')
    .replace(/\s/g, ' ')
    .trim();
const interval = (low: number, high: number, isLowOpen = false, isHighOpen = false) => ({
  low,
  high,
  isLowOpen,
  isHighOpen,
});

describe('where two sets break even, in words', () => {
  it('is a drop with its ± where the interval is about even', () => {
    expect(say({ kind: 'at', drop: 23, interval: interval(19, 27), isAheadBelow: true })).toBe(
      'Below 23 ± 4 mm of drop lowered joints are ahead.',
    );
    expect(say({ kind: 'at', drop: 23, interval: interval(19, 27), isAheadBelow: false }, 'Longer arm')).toBe(
      'Above 23 ± 4 mm of drop longer arm is ahead.',
    );
  });
  it('names both ends where it is not, and the one that is known where the other is open', () => {
    expect(say({ kind: 'at', drop: 20, interval: interval(18, 31), isAheadBelow: true })).toContain(
      '20 mm (18 mm to 31 mm)',
    );
    expect(say({ kind: 'at', drop: 50, interval: interval(38, 60, false, true), isAheadBelow: true })).toContain(
      '50 mm (at least 38 mm)',
    );
    expect(say({ kind: 'at', drop: 5, interval: interval(0, 12, true), isAheadBelow: true })).toContain(
      '5 mm (at most 12 mm)',
    );
  });
  it('says plainly that there is none, that there are two, or that it cannot be told', () => {
    expect(say({ kind: 'none', side: 'behind' })).toBe(
      'Lowered joints are behind all the way between 0 mm and 60 mm of drop.',
    );
    expect(say({ kind: 'two', drops: [20, 50], interval: interval(10, 60) })).toBe(
      'Lowered joints are even at 20 mm and again, past the reversal, at 50 mm of drop.',
    );
    expect(say({ kind: 'cannot-tell', side: 'ahead', interval: interval(18.6, 60, false, true) })).toBe(
      'Up to 18 mm of drop lowered joints are ahead; whether they break even between there and 60 mm cannot be told.',
    );
    expect(say({ kind: 'cannot-tell', interval: interval(0, 60, true, true) })).toBe(
      'Where they break even cannot be told between 0 mm and 60 mm of drop.',
    );
  });
});

describe('whose the sets are', () => {
  const set = (name: string, givenBy?: 'page' | 'example', quantity: Setup['quantity'] = 'camber'): Setup => ({
    name,
    cornerName: 'Front left',
    quantity,
    readings: [{ travel: 0, value: -0.5 }],
    ...(givenBy && { givenBy }),
  });
  const said = (setups: readonly Setup[], by: Giver = 'user') => {
    const car: CarDocument = {
      ...EMPTY_CAR,
      provenance: { setups: { by } },
      ...(setups.length > 0 && { setups }),
    };
    const compared = comparedSets(car);
    return [ownership(compared, car), compared.sets.map(({ name }) => name), firstCells(compared).to.curve];
  };
  const example = EXAMPLE_SETUPS.map(({ name }) => name);

  it('the example is nobody’s', () => {
    expect(said([])).toEqual(['Example', example, 1]);
    // Toe is no camber, and an example that was changed is one still.
    expect(said([set('Toe', undefined, 'toe')])).toEqual(['Example', example, 1]);
    expect(said([set('Example, changed', 'example')])).toEqual(['Example', example, 1]);
  });
  it('a user’s take its place, and two of them stand before a page’s', () => {
    expect(said([set('A')])).toEqual(['1 set of parts, yours', ['A'], 1]);
    expect(said([set('P', 'page'), set('Q', 'page'), set('A')])).toEqual([
      '3 sets of parts: 1 yours, 2 from a page',
      ['P', 'Q', 'A'],
      2,
    ]);
    expect(said([set('P', 'page'), set('A'), set('B')])).toEqual([
      '3 sets of parts: 2 yours, 1 from a page',
      ['A', 'B', 'P'],
      1,
    ]);
    expect(said([set('P'), set('Q')], 'page')).toEqual(['2 sets of parts of this page', ['P', 'Q'], 1]);
  });
  it('beside a car that was given the example says first that it is another', () => {
    // Static camber alone makes no curve.
    const measured = givenByUser(EMPTY_CAR, (given) => ({ ...given, camber: -1 }));
    const page: CarDocument = {
      ...EMPTY_CAR,
      provenance: { corner: { by: 'page' } },
      given: { points: {}, toe: 0.1 },
    };
    expect(notYours(measured)).toBe('Not your car: the example’s parts. ');
    expect(ownership(comparedSets(measured), measured)).toBe('Example, not your car');
    expect(notYours(page)).toBe('Not the car of this page: the example’s parts. ');
    expect(notYours(EMPTY_CAR)).toBe('');
    // Readings of toe alone are no parts of a camber comparison, and no car either.
    expect(notYours(addSetup(EMPTY_CAR, set('Toe', undefined, 'toe')))).toBe('');
  });
});

describe('where the bump that is asked for was not measured', () => {
  const curve = (end: number) => ({
    curve: curveFrom(curveFromCoefficients({ quantity: 'camber', coefficients: [-0.5, -0.014], domain: [-40, end] })),
  });
  const reaches = (ends: [number, number], heights: number[], bump: number, solid?: number) =>
    whatReaches(
      { curves: ends.map(curve), heights, bump, ...(solid !== undefined && { solid }) },
      { from: { curve: 0, height: 0 }, to: { curve: 1, height: 1 } },
      1,
    );
  it('says the most bump that both have, and the lowest height that has it', () => {
    expect(reaches([70, 70], [0, 25], 40)).toBe(undefined);
    expect(reaches([60, 50], [0, 30], 40)).toEqual({
      at: { curve: 1, height: 1 },
      end: 50,
      isSolid: false,
      bump: 20,
      drop: 10,
    });
    expect(reaches([15, 80], [0, 30], 40)).toEqual({ at: { curve: 0, height: 0 }, end: 15, isSolid: false, bump: 15 });
    expect(reaches([60, 33], [0, 30], 40)).toEqual({ at: { curve: 1, height: 1 }, end: 33, isSolid: false });
    expect(reaches([80, 80], [0, 30], 40, 55.5)).toEqual({
      at: { curve: 1, height: 1 },
      end: 55.5,
      isSolid: true,
      bump: 25,
      drop: 15,
    });
  });
  it('in words, with the height that it is from', () => {
    const told = { names: ['Stock', 'Lowered joints'], heights: [0, 30] } as unknown as Told;
    const text = (reach: Reaches) => reachText(reach, told, display).replace(/\s/g, ' ');
    expect(text(reaches([60, 50], [0, 30], 40)!)).toBe(
      'Lowered joints: the readings end at +50 mm, 20 mm of bump from 30 mm lower.',
    );
    expect(text({ at: { curve: 1, height: 1 }, end: 20, isSolid: false })).toBe(
      'Lowered joints: the readings end at +20 mm, above 30 mm lower.',
    );
    expect(text({ at: { curve: 0, height: 0 }, end: 35, isSolid: true })).toBe(
      'The suspension is solid at +35 mm, 35 mm of bump from stock height.',
    );
  });
});
