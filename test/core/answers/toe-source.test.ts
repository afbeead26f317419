import { describe, expect, it } from 'vitest';
import { sourceOfCar, sourceOfSetup, toeSourceOf } from '../../../core/answers/car-request.js';
import { lowering, wheelMotion } from '../../../core/answers/from-source.js';
import { fromStockHeight } from '../../../core/answers/re-zero.js';
import { curveOf } from '../../../core/curve/curve.js';
import { solveSource } from '../../../core/curve-sources/solve-source.js';
import type { ReadingsSource } from '../../../core/curve-sources/source.js';
import { type CarDocument, EMPTY_CAR, givenByUser } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_SETUPS } from '../../../core/document/example-setups.js';
import { addParts, addSetup } from '../../../core/document/setup-edits.js';
import { camberSetupOf, fitSetup, toeSetupOf, useSetup } from '../../../core/document/setup-in-use.js';
import { withPageSetups } from '../../../core/document/setups.js';
import type { Reading } from '../../../core/readings/reading.js';
import { independentRegression } from '../../reference/independent-regression.js';
import { problemsOf } from '../problems-of.js';

/** Invented readings of toe, degrees: −0.008° a mm with a bend, and a fixed scatter without a trend. */
const READINGS: readonly Reading[] = Array.from({ length: 15 }, (_, i) => {
  const travel = 5 * i - 30;
  return { travel, value: 0.1 - 0.008 * travel - 2e-5 * travel ** 2 + 0.01 * Math.sin(97 * i * i) };
});
const TOE = { name: 'Toe', cornerName: 'Front left', quantity: 'toe', readings: READINGS } as const;
const [CAMBER] = EXAMPLE_SETUPS;
const SOURCE: ReadingsSource = { kind: 'readings', quantity: 'toe', readings: READINGS };
const CURVE = { kind: 'coefficients', coefficients: [-0.5, -0.02], domain: [-50, 50] } as const;

const isReadOf = { kind: 'readings', quantity: 'toe' };
const withPoints = (car: CarDocument) => givenByUser(car, () => ({ points: { wheelCentre: [0, 745, 310] } }));
const byPoints = withPoints({ ...EMPTY_CAR, by: 'points' });
const measured = givenByUser(EMPTY_CAR, () => ({
  points: {},
  measures: { armLength: { value: 340, plusMinus: 5 } },
}));

describe('readings of toe', () => {
  it.each([1, 2])('make the curve of toe that a regression library finds, degree %i, and none of camber', (degree) => {
    const solved = solveSource({ ...SOURCE, degree, plain: true });
    const { change } = independentRegression(READINGS, degree);
    const toe = curveOf(solved.toe!);
    for (const travel of [-30, -7.5, 20, 40]) {
      const expected = change(travel, 0);
      expect(toe.change(travel, 0)).toBeCloseTo(expected.value, 10);
      expect(toe.changeStandardError(travel, 0) / expected.standardError).toBeCloseTo(1, 8);
    }
    expect(toe.quantity).toBe('toe');
    expect(solved).not.toHaveProperty('camber');
    expect(solved.readings).toMatchObject({ degree });
  });

  it('are of camber where nothing is said', () => {
    const { quantity: _, ...plain } = SOURCE;
    expect(solveSource(plain).camber?.quantity).toBe('camber');
    expect(solveSource(plain)).not.toHaveProperty('toe');
  });

  it('of what is neither are refused by name', () => {
    const bad = { ...SOURCE, quantity: 'caster' } as never;
    expect(problemsOf(() => solveSource(bad))).toMatchObject([{ path: 'quantity', value: 'caster' }]);
  });

  it.each([
    ['lowering', () => lowering({ source: SOURCE as never, drop: 20 })],
    ['the motion of a wheel', () => wheelMotion({ source: SOURCE as never })],
    [
      'lowering, from a given curve of toe',
      () => lowering({ source: { kind: 'curve', curve: solveSource(SOURCE).toe! }, drop: 20 }),
    ],
  ])('answer nothing about camber: %s says why', (_, ask) => {
    expect(problemsOf(ask)).toEqual([
      { code: 'unknown-name', path: 'source.quantity', value: 'toe', names: ['camber'] },
    ]);
  });

  it('are counted from stock height once, by themselves', () => {
    const zeroed = solveSource({ ...SOURCE, zeroAt: 20 });
    const [here, moved] = [curveOf(zeroed.toe!), curveOf(fromStockHeight(zeroed, { measuredAt: 15 }).toe!)];
    expect(here.domain).toEqual([-10, 60]);
    expect(moved.data).toEqual(here.data);
    expect(here.change(45, 20)).toBeCloseTo(curveOf(solveSource(SOURCE).toe!).change(25, 0), 12);
  });

  it('a curve of toe that is given moves its zero with the height it was measured at', () => {
    const given = solveSource({ kind: 'curve', curve: solveSource(SOURCE).toe! });
    expect(given).not.toHaveProperty('camber');
    const moved = curveOf(fromStockHeight(given, { measuredAt: 15, camberReadLower: 10 }).toe!);
    expect(moved.value(15)).toBeCloseTo(curveOf(given.toe!).value(0), 12);
  });
});

describe('what an answer about toe is made from', () => {
  it('is the readings of toe in use, whatever else is known', () => {
    for (const before of [EMPTY_CAR, byPoints, measured, { ...EMPTY_CAR, curve: CURVE } as never]) {
      const car = addSetup(before, { ...TOE, setAside: [2], degree: 2 });
      expect(toeSourceOf(car)).toMatchObject({ ...isReadOf, degree: 2, readings: { length: 14 } });
      expect(toeSetupOf(car)?.name).toBe('Toe');
    }
  });

  it('is the first of them where readings of camber are in use and there are no hard points', () => {
    const car = addSetup(addSetup(EMPTY_CAR, TOE), CAMBER!);
    expect(toeSourceOf(car)).toMatchObject(isReadOf);
    expect(camberSetupOf(car)?.name).toBe(CAMBER!.name);
    expect(sourceOfCar(car)).not.toHaveProperty('quantity');
  });

  it('is the hard points there, where there are any that count', () => {
    const both = useSetup(addSetup(addSetup(byPoints, CAMBER!), TOE), 0);
    expect(toeSourceOf(both)?.kind).toBe('corner');
    expect(toeSetupOf(both)).toBeUndefined();
    expect(toeSourceOf(useSetup(both, 1))).toMatchObject(isReadOf);
    // Points beside a driveway that is in use do not count, and readings of toe tell more than nothing.
    const beside = withPoints(EMPTY_CAR);
    const driveway = { ...beside, given: { ...beside.given, ...measured.given, points: beside.given.points } };
    const read = useSetup(addSetup(addSetup(driveway, CAMBER!), TOE), 0);
    expect(toeSourceOf({ ...read, by: 'driveway' })).toMatchObject(isReadOf);
  });

  it('is a page’s readings of toe, until the page takes them back', () => {
    const car = withPageSetups(EMPTY_CAR, [TOE]);
    expect(toeSourceOf(car)).toEqual(sourceOfSetup(TOE));
    expect(toeSourceOf(withPageSetups(car, undefined))?.kind).toBe('corner');
  });

  it('is the hard points with the parts on that are fitted', () => {
    const parts = [{ part: 'ballJointExtended', mm: 22 }] as const;
    const car = fitSetup(addParts(byPoints, 'Joint', parts), 0);
    expect(toeSourceOf(car)).toMatchObject({ kind: 'parts', of: { kind: 'corner' }, parts });
    expect(toeSourceOf(fitSetup(car, undefined))?.kind).toBe('corner');
  });

  it('is the example’s hard points where nobody gave anything', () => {
    expect(toeSourceOf(EMPTY_CAR)).toMatchObject({ kind: 'corner', corner: { tieRod: EXAMPLE_CORNER.tieRod } });
  });

  it('is nothing on a car that was measured in the driveway, nor beside a bare curve of camber', () => {
    expect(toeSourceOf(measured)).toBeUndefined();
    expect(toeSourceOf({ ...EMPTY_CAR, curve: CURVE } as never)).toBeUndefined();
    expect(toeSourceOf(addSetup(measured, CAMBER!))).toBeUndefined();
    const ofToe = { kind: 'curve', curve: solveSource(SOURCE).toe! } as const;
    expect(toeSourceOf({ ...EMPTY_CAR, curve: ofToe })).toBe(ofToe);
  });
});
