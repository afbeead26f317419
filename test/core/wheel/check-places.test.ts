import { expect, it } from 'vitest';
import { checkPlaces } from '../../../core/wheel/check-places.js';
import { FIXED_TO, type Place } from '../../../core/wheel/place.js';
import { aPlace } from './gap-cases.js';

const GOOD = aPlace({ clock: 12, distance: 330, out: 15 });

function problemsOf(places: unknown): [string, string][] {
  try {
    checkPlaces(places as Place[]);
  } catch (error) {
    return (error as { problems: { path: string; code: string }[] }).problems.map(({ path, code }) => [path, code]);
  }
  return [];
}

it('takes every way a place may be fixed and measured', () => {
  const places = FIXED_TO.map((fixedTo) => ({ ...GOOD, fixedTo }));
  expect(
    problemsOf([...places, { ...GOOD, at: { point: [-300, -200, 100] }, plusMinus: 0, share: 1, is: 'chassis' }]),
  ).toEqual([]);
  expect(problemsOf([])).toEqual([]);
});

it('names every bad field of every place at once, by its path', () => {
  const bad = [
    { ...GOOD, fixedTo: 'wheel', is: 'other', plusMinus: -1, share: 1.5, at: { clock: 13, distance: -5, out: 2000 } },
    GOOD,
    { ...GOOD, at: { point: [Number.NaN, 'far', 2000] }, plusMinus: 51 },
    { ...GOOD, at: undefined },
    null,
    { ...GOOD, at: { clock: undefined, distance: 'long', out: Number.POSITIVE_INFINITY } },
    { ...GOOD, at: { point: undefined } },
  ];
  expect(problemsOf(bad)).toEqual([
    ['places.0.fixedTo', 'wrong-shape'],
    ['places.0.is', 'wrong-shape'],
    ['places.0.plusMinus', 'out-of-range'],
    ['places.0.share', 'out-of-range'],
    ['places.0.at.clock', 'out-of-range'],
    ['places.0.at.distance', 'out-of-range'],
    ['places.0.at.out', 'out-of-range'],
    ['places.2.plusMinus', 'out-of-range'],
    ['places.2.at.point.0', 'not-finite'],
    ['places.2.at.point.1', 'not-a-number'],
    ['places.2.at.point.2', 'out-of-range'],
    ['places.3.at', 'missing'],
    ['places.4', 'wrong-shape'],
    ['places.5.at.clock', 'missing'],
    ['places.5.at.distance', 'not-a-number'],
    ['places.5.at.out', 'not-finite'],
    ['places.6.at.point.0', 'missing'],
    ['places.6.at.point.1', 'missing'],
    ['places.6.at.point.2', 'missing'],
  ]);
  expect(problemsOf(undefined)).toEqual([['places', 'wrong-shape']]);
});

it('refuses a sidewall that is neither the outer nor the inner one', () => {
  expect(problemsOf([{ ...GOOD, at: { ...GOOD.at, from: 'top' } }])).toEqual([['places.0.at.from', 'wrong-shape']]);
  expect(problemsOf([{ ...GOOD, at: { ...GOOD.at, from: 'inner' } }])).toEqual([]);
});
