import { expect, it } from 'vitest';
import { asLinks } from '../../../core/document/as-links.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { addFitted, EXAMPLE_PARTS, linkedSets, shownSet, withLinkedSet } from '../../../core/document/linked-sets.js';
import { byUser } from '../../../core/document/own-car.js';
import { addParts, addSetup, emptySetup } from '../../../core/document/setup-edits.js';
import { fittedSetup } from '../../../core/document/setup-in-use.js';
import { takeCorner } from '../../../core/document/take-corner.js';

const user = (more: Partial<CarDocument>): CarDocument => byUser({ ...EMPTY_CAR, ...more });
const { camber: _, ...measures } = EXAMPLE_DRIVEWAY;
const { given } = takeCorner(EXAMPLE_CORNER);

it('asLinks knows a car by its points, by a driveway only where one was measured, and never by readings or a curve', () => {
  expect(asLinks(EMPTY_CAR).by).toBe('points');
  expect(asLinks(user({ given })).by).toBe('points');
  expect(asLinks(user({ given: { points: {}, measures } })).by).toBe('driveway');
  expect(asLinks(user({ given: { ...given, measures } })).by).toBe('driveway');
  expect(asLinks(user({ given: { ...given, measures }, by: 'points' })).by).toBe('points');
  expect(asLinks(user({ given: { points: {}, measures }, by: 'readings' })).by).toBe('driveway');
  expect(asLinks(addSetup(EMPTY_CAR, emptySetup('Mine', 'camber', 'Front left'))).by).toBe('points');
  const curve = { kind: 'coefficients', coefficients: [0, -0.01], domain: [-40, 60] } as const;
  expect(asLinks({ ...EMPTY_CAR, curve: { ...curve, coefficients: [0], domain: [-40, 60] } }).curve).toBeUndefined();
  expect(asLinks({ ...EMPTY_CAR, by: 'readings', whole: { kind: 'wishbone' } }).by).toBe('points');
});

it('asLinks gives the same object for the same car, so that nothing is solved twice', () => {
  const own = user({ given, by: 'points' });
  expect(asLinks(own)).toBe(own);
  expect(asLinks(EMPTY_CAR)).toBe(asLinks(EMPTY_CAR));
});

it('linkedSets are the sets with parts, whoever gave them, and the example’s where there are none', () => {
  expect(linkedSets(EMPTY_CAR).map(({ setup, by, index }) => [setup, by, index])).toEqual(
    EXAMPLE_PARTS.map((setup) => [setup, 'example', undefined]),
  );
  const read = addSetup(EMPTY_CAR, emptySetup('Read', 'camber', 'Front left'));
  expect(linkedSets(read)[0]!.by).toBe('example');
  const car = addParts(read, 'Arm', [{ part: 'armLonger', mm: 10 }]);
  expect(linkedSets(car).map(({ setup, by, index }) => [setup.name, by, index])).toEqual([['Arm', 'user', 1]]);
  const two = addFitted(car, 'Joint', [{ part: 'ballJointExtended', mm: 22 }]);
  expect(fittedSetup(two)?.name).toBe('Joint');
  expect(shownSet(two, linkedSets(two))).toBe(1);
});

it('withLinkedSet changes the user’s own set in its place, and of any other begins one of theirs', () => {
  const car = addFitted(EMPTY_CAR, 'Joint', [{ part: 'ballJointExtended', mm: 22 }]);
  const [own] = linkedSets(car);
  const changed = withLinkedSet(car, own!, (setup) => ({ ...setup, alignment: 'as-fitted' }));
  expect(changed.setups).toHaveLength(1);
  expect(changed.setups![0]!.alignment).toBe('as-fitted');
  const [example] = linkedSets(EMPTY_CAR);
  const begun = withLinkedSet(EMPTY_CAR, example!, (setup) => ({ ...setup, alignment: 'as-fitted' }));
  expect(linkedSets(begun)).toMatchObject([{ by: 'user', setup: { alignment: 'as-fitted' } }]);
  expect(fittedSetup(begun)).toEqual(begun.setups![0]);
  expect(withLinkedSet(EMPTY_CAR, example!, (setup) => setup)).toBe(EMPTY_CAR);
});
