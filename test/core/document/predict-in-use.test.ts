import { describe, expect, it } from 'vitest';
import { cornerSourceOf, sourceOfCar } from '../../../core/answers/car-request.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { EXAMPLE_SETUPS } from '../../../core/document/example-setups.js';
import { learntSourceOf } from '../../../core/document/learnt-in-use.js';
import { EXAMPLE_PARTS } from '../../../core/document/linked-sets.js';
import { byUser } from '../../../core/document/own-car.js';
import { predictInUse, withLinksFrom, withoutReadingsOf } from '../../../core/document/predict-in-use.js';
import type { Setup } from '../../../core/document/setup.js';
import { takeCorner } from '../../../core/document/take-corner.js';

const [STOCK] = EXAMPLE_SETUPS as readonly [Setup];
const [JOINT] = EXAMPLE_PARTS as readonly [Setup];
const { plusMinus: _, ...EXACT } = EXAMPLE_CORNER;
const { camber: __, ...measures } = EXAMPLE_DRIVEWAY;
const POINTS: CarDocument = byUser({ ...EMPTY_CAR, by: 'points', ...takeCorner(EXAMPLE_CORNER) });
const READ: CarDocument = byUser({ ...EMPTY_CAR, by: 'readings', setups: [STOCK] });
const BOTH: CarDocument = byUser({ ...POINTS, setups: [STOCK, JOINT] });

describe('what a prediction is made from', () => {
  it('is the example as long as nothing of a car was given, a set of parts beside it', () => {
    for (const car of [EMPTY_CAR, byUser({ ...EMPTY_CAR, setups: [JOINT], fitted: 0 })]) {
      const { isExample, needs, car: known } = predictInUse(car);
      expect([isExample, needs]).toEqual([true, []]);
      expect(learntSourceOf(known)!.readings).toHaveLength(52);
      expect(known.setups!.slice(1)).toEqual(car.setups ?? []);
    }
  });

  it('names what is missing: links, some of the points, readings', () => {
    expect(predictInUse(READ).needs).toEqual(['links']);
    expect(predictInUse(POINTS).needs).toEqual(['readings']);
    expect(predictInUse(byUser({ ...EMPTY_CAR, given: { points: {}, measures } })).needs).toEqual(['readings']);
    const { 'tieRod.inner': ___, ...points } = POINTS.given.points;
    expect(predictInUse({ ...BOTH, given: { ...POINTS.given, points } }).needs).toEqual(['points']);
    expect(predictInUse(BOTH).needs).toEqual([]);
  });

  it('counts points of which nobody said how sure they are as taped to 3 mm', () => {
    const exact = byUser({ ...EMPTY_CAR, by: 'points', ...takeCorner(EXACT), setups: [STOCK] });
    expect((learntSourceOf(exact)!.of as { corner: object }).corner).toMatchObject({ plusMinus: { other: 3 } });
    const stated = (learntSourceOf(BOTH)!.of as { corner: { plusMinus: object } }).corner.plusMinus;
    expect(stated).toMatchObject({ 'strut.low': 4, 'strut.top': 3 });
  });

  it('leaves out what was read with the parts on that are asked about, and nothing else', () => {
    const fitted: Setup = { ...JOINT, readings: STOCK.readings };
    const car = byUser({ ...BOTH, setups: [STOCK, fitted] });
    const left = withoutReadingsOf(car, fitted);
    expect(learntSourceOf(car)!.setups).toHaveLength(1);
    expect(learntSourceOf(left)!.setups).toBe(undefined);
    expect(learntSourceOf(left)!.readings).toHaveLength(52);
    expect(withoutReadingsOf({ ...car, drop: 12 }, fitted).setups).toBe(left.setups);
    expect(withoutReadingsOf(car, JOINT)).toBe(car);
  });
});

describe('links as readings correct them', () => {
  it('are taken by every answer once that is asked for, and no more once it is taken back', () => {
    const learnt = withLinksFrom(BOTH, 'learnt');
    expect(cornerSourceOf(learnt).kind).toBe('learnt');
    expect(sourceOfCar({ ...learnt, fitted: 1 })).toMatchObject({ kind: 'learnt', parts: JOINT.parts });
    expect(withLinksFrom(learnt, 'measured')).toEqual(BOTH);
    expect(cornerSourceOf(BOTH).kind).toBe('corner');
  });

  it('take the place of readings that answered by themselves', () => {
    expect(sourceOfCar(withLinksFrom({ ...BOTH, by: 'readings' }, 'learnt')).kind).toBe('learnt');
  });

  it('are not the example’s: nobody’s links are corrected by somebody’s readings', () => {
    expect(cornerSourceOf({ ...READ, links: 'learnt' }).kind).not.toBe('learnt');
  });
});
