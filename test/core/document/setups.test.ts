import { describe, expect, it } from 'vitest';
import { type CarDocument, EMPTY_CAR, givenByUser } from '../../../core/document/car.js';
import { givenBy } from '../../../core/document/provenance.js';
import type { Setup } from '../../../core/document/setup.js';
import {
  addBeside,
  addSetup,
  emptySetup,
  removeSetup,
  renameSetup,
  withReadings,
  withSetup,
  withShown,
} from '../../../core/document/setup-edits.js';
import {
  answeredCorner,
  camberSetupOf,
  LONGEST_NAME,
  MOST_SETUPS,
  ownerOf,
  ownSetups,
  readingsInUse,
  sourceKindOf,
  useSetup,
} from '../../../core/document/setup-in-use.js';
import { EXAMPLE_SETUP, setupOf, withPageSetups } from '../../../core/document/setups.js';
import { takeSets } from '../../../core/document/take-sets.js';

const reading = { travel: 0, value: -0.5 };
const entered = (car: CarDocument, value = -0.5) =>
  withSetup(car, (setup) => ({ ...setup, readings: [...setup.readings, { travel: 0, value }] }));
const pageSetup: Setup = { name: 'Works', cornerName: 'Rear left', quantity: 'toe', readings: [reading] };
const pageCar = withPageSetups(EMPTY_CAR, [pageSetup]);
const three = ['A', 'B', 'C'].reduce((car, name) => addSetup(car, emptySetup(name, 'camber', 'Front left')), EMPTY_CAR);
const names = (car: CarDocument) => ownSetups(car).map(({ name }) => name);

describe('the set of parts in use', () => {
  it('is the example, named as such, where nobody gave readings', () => {
    expect(setupOf(EMPTY_CAR)).toEqual({ setup: EXAMPLE_SETUP, by: 'example', isOwn: false });
    expect(EXAMPLE_SETUP.name).toMatch(/example/i);
  });

  it('is the page’s before the example, and the user’s before the page’s', () => {
    expect(setupOf(pageCar)).toEqual({ setup: pageSetup, by: 'page', isOwn: false });
    expect(setupOf(entered(pageCar))).toMatchObject({ by: 'user', isOwn: true });
  });
});

describe('the first reading of one’s own', () => {
  it('begins an empty set in the example’s place, on the car’s corner', () => {
    const car = entered({ ...EMPTY_CAR, cornerName: 'Front right' });
    expect(givenBy(car, 'corner')).toBe('user');
    expect(setupOf(car).setup).toMatchObject({ cornerName: 'Front right', quantity: 'camber', readings: [reading] });
    expect(setupOf(car).setup.name).not.toMatch(/example/i);
  });

  it('keeps what a page said of the rest of the car to stand in', () => {
    const given = { points: {}, camber: -1 };
    const provenance = { ...pageCar.provenance, corner: { by: 'page' as const } };
    expect(entered({ ...pageCar, given, provenance })).toMatchObject({
      provenance: { corner: { by: 'user', standIn: { given } } },
      given: { points: {} },
    });
  });

  it('begins no car when nothing is changed', () => {
    expect(withSetup(EMPTY_CAR, (setup) => setup)).toBe(EMPTY_CAR);
    const car = entered(EMPTY_CAR);
    expect(withSetup(car, (setup) => setup)).toBe(car);
  });

  it('makes the answer from readings, but not where somebody has measured otherwise', () => {
    expect(entered(EMPTY_CAR).by).toBe('readings');
    const measured = givenByUser(EMPTY_CAR, (given) => ({
      ...given,
      measures: { armLength: { value: 350, plusMinus: 3 } },
    }));
    expect(entered(measured).by).toBe('driveway');
    const points = givenByUser({ ...EMPTY_CAR, by: 'points' }, (given) => ({
      ...given,
      points: { wheelCentre: [0, 745, 310] },
    }));
    expect(entered(points).by).toBe('points');
  });
});

describe('several sets', () => {
  it('are added at the end and used at once, and never share a name', () => {
    const car = addSetup(three, emptySetup('B', 'toe', 'Rear left'));
    expect(names(car)).toEqual(['A', 'B', 'C', 'B 2']);
    expect(setupOf(car).setup.quantity).toBe('toe');
    expect(names(renameSetup(car, 3, ' A '))).toEqual(['A', 'B', 'C', 'A 2']);
    expect(names(renameSetup(car, 0, 'Standard arms'))).toEqual(['Standard arms', 'B', 'C', 'B 2']);
    expect(renameSetup(car, 0, '  ')).toBe(car);
    expect([...names(renameSetup(car, 0, 'x'.repeat(99)))[0]!]).toHaveLength(LONGEST_NAME);
  });

  it('are no more than a link carries', () => {
    let car: CarDocument = EMPTY_CAR;
    for (let i = 0; i < MOST_SETUPS + 5; i++) car = addSetup(car, emptySetup('Arms', 'camber', 'Front left'));
    expect(ownSetups(car)).toHaveLength(MOST_SETUPS);
    expect(new Set(names(car)).size).toBe(MOST_SETUPS);
  });

  it('stay in use by themselves when another is removed', () => {
    const inUse = (car: CarDocument) => setupOf(car).setup.name;
    const second = useSetup(three, 1);
    expect(inUse(removeSetup(second, 0))).toBe('B');
    expect(inUse(removeSetup(second, 2))).toBe('B');
    expect(inUse(removeSetup(second, 1))).toBe('A');
    expect(removeSetup(second, 7)).toBe(second);
  });

  it('leave the example after the last', () => {
    let car = entered(EMPTY_CAR);
    car = removeSetup(car, 0);
    expect(setupOf(car).by).toBe('example');
    expect(sourceKindOf(car)).toBe('driveway');
  });
});

describe('an answer about camber', () => {
  it('is never made from readings of toe', () => {
    const toe = addSetup(entered(EMPTY_CAR), emptySetup('Toe', 'toe', 'Rear right'));
    expect(setupOf(toe).setup.name).toBe('Toe');
    expect(camberSetupOf(toe)?.quantity).toBe('camber');
    expect(sourceKindOf(toe)).toBe('readings');
    expect(camberSetupOf(pageCar)).toBe(undefined);
    expect(sourceKindOf(pageCar)).toBe('driveway');
  });

  it('is of the corner that the readings name', () => {
    const rear = addSetup(EMPTY_CAR, emptySetup('Rear', 'camber', 'Rear left'));
    expect(answeredCorner(rear)).toBe('Rear left');
    expect(answeredCorner({ ...rear, by: 'points' })).toBe('Front left');
  });
});

describe('a page’s readings', () => {
  it('do not replace the user’s, and go with the page’s table', () => {
    const car = entered(EMPTY_CAR);
    expect(withPageSetups(car, [pageSetup])).toBe(car);
    expect(withPageSetups(pageCar, undefined)).toEqual(EMPTY_CAR);
    expect(withPageSetups(EMPTY_CAR, [{ ...pageSetup, quantity: 'camber' }]).by).toBe('readings');
  });
});

describe('readings set aside', () => {
  const setup: Setup = {
    ...pageSetup,
    readings: [0, 1, 2, 3].map((travel) => ({ travel, value: 0 })),
    setAside: [1, 3],
  };

  it('do not count', () => {
    expect(readingsInUse(setup).map(({ travel }) => travel)).toEqual([0, 2]);
    expect(readingsInUse(pageSetup)).toBe(pageSetup.readings);
  });

  it('stay set aside when others are removed', () => {
    const next = withReadings(setup, setup.readings.slice(2));
    expect(next.setAside).toEqual([1]);
    expect(withReadings(setup, []).setAside).toBe(undefined);
  });
});

describe('sets that are not the user’s own say whose they are', () => {
  const set = (name: string): Setup => ({ ...emptySetup(name, 'camber', 'Front left'), readings: [reading] });
  const owners = (car: CarDocument) => ownSetups(car).map((setup) => [setup.name, ownerOf(car, setup)]);

  it('a page’s, once others stand beside them', () => {
    const car = addBeside(withPageSetups(EMPTY_CAR, [set('Works')]), [set('A'), set('Works')], 0);
    expect(owners(car)).toEqual([
      ['Works', 'page'],
      ['A', 'user'],
      ['Works 2', 'user'],
    ]);
    expect(setupOf(car)).toMatchObject({ by: 'user', isOwn: true, setup: { name: 'A' } });
  });

  it('the example, and a page’s, once something in them was changed; further changes go into the same set', () => {
    for (const [car, by] of [
      [EMPTY_CAR, 'example'],
      [pageCar, 'page'],
    ] as const) {
      const changed = withShown(car, (setup) => ({ ...setup, setAside: [0] }));
      expect(setupOf(changed)).toMatchObject({ by, isOwn: false, setup: { setAside: [0], givenBy: by } });
      expect(setupOf(changed).setup.name).toMatch(/, changed$/);
      const again = withShown(changed, ({ setAside: _, ...setup }) => setup);
      expect(names(again)).toEqual(names(changed));
      expect(withShown(changed, (setup) => setup)).toBe(changed);
    }
  });

  it('readings of one’s own begin beside a page’s that was changed, and in the place of the example', () => {
    const change = (car: CarDocument) => withShown(car, (setup) => ({ ...setup, setAside: [0] }));
    expect(owners(entered(change(EMPTY_CAR)))).toEqual([['Standard parts', 'user']]);
    expect(owners(entered(change(pageCar)))).toEqual([
      ['Works, changed', 'page'],
      ['Standard parts', 'user'],
    ]);
    // The example is no set to be compared with.
    expect(owners(addBeside(change(EMPTY_CAR), [set('A')]))).toEqual([['A', 'user']]);
  });
});

describe('sets taken from a sheet', () => {
  const taken = (name: string, value = -0.1) => ({
    name,
    quantity: 'camber' as const,
    readings: [{ travel: 0, value }],
  });
  const all = (car: CarDocument) =>
    ownSetups(car).map(({ name, readings }) => [name, readings.map(({ value }) => value)]);

  it('replace what is shown under the sheet’s names, the first in use', () => {
    const car = takeSets(EMPTY_CAR, [taken('Stock'), taken('Lowered', -0.2)], 'replace');
    expect(all(car)).toEqual([
      ['Stock', [-0.1]],
      ['Lowered', [-0.2]],
    ]);
    expect(setupOf(car).setup.name).toBe('Stock');
    const own = { ...entered(EMPTY_CAR), drop: 12 };
    expect(all(takeSets(own, [taken('')], 'replace'))).toEqual([['Standard parts', [-0.1]]]);
    expect(takeSets(own, [taken('Lowered')], 'replace')).toMatchObject({ drop: 12, by: 'readings' });
  });
  it('are kept beside those that are there, a page’s too, the first of them in use', () => {
    const car = takeSets(entered(EMPTY_CAR), [taken('Stock'), taken('')], 'beside');
    expect(all(car)).toEqual([
      ['Standard parts', [-0.5]],
      ['Stock', [-0.1]],
      ['Readings', [-0.1]],
    ]);
    expect(setupOf(car).setup.name).toBe('Stock');
    expect(all(takeSets(pageCar, [taken('Stock')], 'beside')).map(([name]) => name)).toEqual(['Works', 'Stock']);
  });
  it('or one is added to what is shown as further passes', () => {
    const car = takeSets(entered(EMPTY_CAR), [taken('Stock')], 'add');
    expect(setupOf(car).setup.readings).toEqual([reading, { travel: 0, value: -0.1, pass: 'Pass 2' }]);
  });
});
