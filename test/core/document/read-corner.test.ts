import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { readCorner } from '../../../core/document/read-corner.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { type Corner, hardPoint, STRUT_POINT_KEYS, type StrutCorner } from '../../../core/linkage/corner.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { InputError, type Problem } from '../../../core/quantity/problem.js';
import { randomCorner, seeded } from '../linkage/random-corner.js';
import { referenceCorner } from '../linkage/reference-corner.js';

// biome-ignore lint/suspicious/noExplicitAny: data of any shape is what these tests are about
type Loose = Record<string, any>;

/** A deep copy of a good corner, to be spoilt. */
const spoilt = (spoil: (corner: Loose) => void): unknown => {
  const corner = JSON.parse(JSON.stringify(referenceCorner)) as Loose;
  spoil(corner);
  return corner;
};

function problemsOf(data: unknown): Problem[] {
  try {
    readCorner(data);
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return (error as InputError).problems;
  }
  throw new Error('Was accepted.');
}

const only = (data: unknown): Problem => {
  const problems = problemsOf(data);
  expect(problems).toHaveLength(1);
  return problems[0]!;
};

describe('a good corner', () => {
  it('passes unchanged and survives JSON', () => {
    fc.assert(
      fc.property(randomCorner, (corner) => {
        expect(readCorner(corner)).toEqual(corner);
        expect(readCorner(JSON.parse(JSON.stringify(corner)))).toEqual(corner);
      }),
      seeded(51, 50),
    );
  });
  it('may state how sure each point is', () => {
    expect(readCorner(EXAMPLE_CORNER)).toEqual(EXAMPLE_CORNER);
  });
  it('is a copy: what happens to the data later does not reach it', () => {
    const data = spoilt(() => {}) as Loose;
    const corner = readCorner(data);
    data.lowerArm.ball[1] = 0;
    expect(corner).toEqual(referenceCorner);
  });
});

describe('a hard point below the road is refused, as z is measured up from the ground', () => {
  it.each(STRUT_POINT_KEYS)('%s', (key) => {
    const [part, end] = key.split('.') as [string, string | undefined];
    for (const z of [-178, 0]) {
      const data = spoilt((corner) => {
        (end ? corner[part][end] : corner[part])[2] = z;
      });
      expect(problemsOf(data)).toContainEqual({ code: 'out-of-range', path: `${key}.2`, value: z, limit: 0 });
    }
  });
});

describe('a number that is not one is told by its path, with its value', () => {
  const cases: [string, (corner: Loose) => void, Problem][] = [
    ['left out', (c) => delete c.camber, { code: 'missing', path: 'camber', value: undefined }],
    ['null', (c) => (c.toe = null), { code: 'missing', path: 'toe', value: null }],
    ['empty text', (c) => (c.lowerArm.ball[2] = ''), { code: 'missing', path: 'lowerArm.ball.2', value: '' }],
    ['NaN', (c) => (c.strut.top[0] = NaN), { code: 'not-finite', path: 'strut.top.0', value: NaN }],
    ['infinite', (c) => (c.loadedRadius = Infinity), { code: 'not-finite', path: 'loadedRadius', value: Infinity }],
    ['text', (c) => (c.wheelCentre[1] = '745'), { code: 'not-a-number', path: 'wheelCentre.1', value: '745' }],
    ['an object', (c) => (c.camber = {}), { code: 'not-a-number', path: 'camber', value: undefined }],
    ['a point of two', (c) => c.tieRod.inner.pop(), { code: 'missing', path: 'tieRod.inner.2', value: undefined }],
    ['a point of four', (c) => c.tieRod.inner.push(1), { code: 'wrong-shape', path: 'tieRod.inner.3', value: 1 }],
    ['a point as text', (c) => (c.strut.low = 'here'), { code: 'wrong-shape', path: 'strut.low', value: 'here' }],
    ['a point left out', (c) => delete c.strut.low, { code: 'missing', path: 'strut.low', value: undefined }],
    ['an arm left out', (c) => delete c.lowerArm, { code: 'missing', path: 'lowerArm', value: undefined }],
    ['another kind', (c) => (c.kind = 'trailing'), { code: 'wrong-shape', path: 'kind', value: 'trailing' }],
    [
      'too far away',
      (c) => (c.tieRod.outer[0] = -4001),
      { code: 'out-of-range', path: 'tieRod.outer.0', value: -4001, limit: -4000 },
    ],
    ['too much camber', (c) => (c.camber = -15.5), { code: 'out-of-range', path: 'camber', value: -15.5, limit: -15 }],
    ['too much toe', (c) => (c.toe = 11), { code: 'out-of-range', path: 'toe', value: 11, limit: 10 }],
    [
      'a wheel too small',
      (c) => (c.loadedRadius = 149),
      { code: 'out-of-range', path: 'loadedRadius', value: 149, limit: 150 },
    ],
    [
      'a wheel too large',
      (c) => (c.loadedRadius = 601),
      { code: 'out-of-range', path: 'loadedRadius', value: 601, limit: 600 },
    ],
    [
      'a negative doubt',
      (c) => (c.plusMinus = { 'strut.top': -1 }),
      { code: 'out-of-range', path: 'plusMinus.strut.top', value: -1, limit: 0 },
    ],
  ];
  it.each(cases)('%s', (_, spoil, expected) => {
    expect(only(spoilt(spoil))).toEqual(expected);
  });
  it('no corner at all', () => {
    expect(only(undefined)).toEqual({ code: 'missing', path: 'corner', value: undefined });
    expect(only(42)).toEqual({ code: 'wrong-shape', path: 'corner', value: 42 });
  });
});

describe('a name that means nothing is told, not passed over', () => {
  it('a misspelt point: the wrong name and the missing right one', () => {
    const data = spoilt((c) => {
      c.lowerArm.bal = c.lowerArm.ball;
      delete c.lowerArm.ball;
    });
    expect(problemsOf(data)).toEqual([
      { code: 'missing', path: 'lowerArm.ball', value: undefined },
      { code: 'wrong-shape', path: 'lowerArm.bal', value: 'bal' },
    ]);
  });
  it('every such name, wherever it stands', () => {
    const data = spoilt((c) => {
      Object.assign(c, { wheelCenter: 1, tierod: {}, constructor: 1 });
      Object.assign(c.tieRod, { outher: [], iner: [] });
      c.plusMinus = { 'lowerArm.bal': 2, others: 1 };
    });
    expect(problemsOf(data).map(({ code, path }) => `${code} ${path}`)).toEqual([
      'wrong-shape tieRod.outher',
      'wrong-shape tieRod.iner',
      'wrong-shape plusMinus.lowerArm.bal',
      'wrong-shape plusMinus.others',
      'wrong-shape wheelCenter',
      'wrong-shape tierod',
      'wrong-shape constructor',
    ]);
  });
});

describe('points that cannot stand where they are', () => {
  it('the same point twice', () => {
    const data = spoilt((c) => {
      c.tieRod.outer = [...c.tieRod.inner];
    });
    expect(only(data)).toMatchObject({
      code: 'coincide',
      path: 'tieRod.outer',
      other: 'tieRod.inner',
      value: '-140 345 268',
    });
  });
  it('two pivots too near each other to make an axis', () => {
    const data = spoilt((c) => {
      c.lowerArm.rear = [20, 345, 205];
    });
    expect(only(data)).toMatchObject({
      code: 'no-direction',
      path: 'lowerArm.rear',
      other: 'lowerArm.front',
      limit: 20,
    });
  });
  it('two points of the damper too near each other to give a direction', () => {
    const data = spoilt((c) => {
      c.strut.low = [-35, 585, 820];
    });
    expect(only(data)).toMatchObject({ code: 'no-direction', path: 'strut.low', other: 'strut.top', limit: 20 });
  });
  it('ball joint on the pivot axis', () => {
    const data = spoilt((c) => {
      c.lowerArm = { front: [150, 700, 185], rear: [-150, 700, 185], ball: [0, 700, 190] };
    });
    expect(only(data)).toMatchObject({ code: 'cannot-close', path: 'lowerArm.ball' });
  });
  it('links that cannot move', () => {
    // The outer end lies on the steering axis: the rod cannot hold the wheel.
    const data = spoilt((c) => {
      c.tieRod.outer = [-8.75, 685.625, 266.25];
    });
    expect(only(data)).toMatchObject({ code: 'cannot-close', path: 'tieRod' });
  });
  it('inboard and outboard ends swapped, top and bottom swapped', () => {
    const swap = (object: Loose, a: string, b: string) => {
      [object[a], object[b]] = [object[b], object[a]];
    };
    expect(only(spoilt((c) => swap(c.tieRod, 'inner', 'outer')))).toMatchObject({
      code: 'ends-swapped',
      path: 'tieRod.outer',
      other: 'tieRod.inner',
    });
    expect(only(spoilt((c) => swap(c.lowerArm, 'front', 'ball'))).code).toBe('ends-swapped');
    expect(only(spoilt((c) => swap(c.strut, 'top', 'low')))).toMatchObject({ code: 'ends-swapped', path: 'strut.top' });
  });
});

describe('a whole corner in another convention gets one problem, not thirty', () => {
  const inEveryPoint = (change: (point: number[]) => number[]) =>
    spoilt((c) => {
      for (const key of STRUT_POINT_KEYS) {
        const [part, end] = key.split('.') as [string, string | undefined];
        if (end) c[part][end] = change(c[part][end]);
        else c[part] = change(c[part]);
      }
    }) as Loose;
  it('inches typed as millimetres', () => {
    const inches = inEveryPoint((point) => point.map((mm) => mm / 25.4));
    expect(only({ ...inches, loadedRadius: 310 / 25.4 })).toMatchObject({
      code: 'looks-like-inches',
      path: 'loadedRadius',
      limit: 150,
    });
    expect(only({ ...inches, loadedRadius: 310 })).toMatchObject({ code: 'looks-like-inches', path: 'wheelCentre' });
  });
  it('the right corner', () => {
    const right = inEveryPoint(([x, y, z]) => [x!, -y!, z!]);
    expect(only(right)).toEqual({ code: 'looks-like-right-corner', path: 'wheelCentre.1', value: -745 });
  });
});

describe('every problem at once', () => {
  it('numbers, names and points in one error, whose code and field are the first', () => {
    const data = spoilt((c) => {
      delete c.kind;
      c.camber = 'much';
      c.lowerArm.ball[0] = NaN;
      c.strut.bottom = 1;
      c.strut.low = [-35, 585, 830];
      c.loadedRadius = 900;
    });
    try {
      readCorner(data);
      expect.unreachable();
    } catch (error) {
      const { problems, code, field, message } = error as InputError;
      expect(problems).toEqual([
        { code: 'missing', path: 'kind', value: undefined },
        { code: 'not-a-number', path: 'camber', value: 'much' },
        { code: 'not-finite', path: 'lowerArm.ball.0', value: NaN },
        { code: 'wrong-shape', path: 'strut.bottom', value: 'bottom' },
        { code: 'out-of-range', path: 'loadedRadius', value: 900, limit: 600 },
        { code: 'no-direction', path: 'strut.low', value: '-35 585 830', other: 'strut.top', limit: 20 },
      ]);
      expect([code, field]).toEqual(['missing', 'kind']);
      for (const { path } of problems) expect(message).toContain(path);
    }
  });
});

describe('anything at all ends in an InputError with code and field, or in a corner that works', () => {
  /** The only two ways out. */
  function check(data: unknown) {
    let corner: Corner;
    try {
      corner = readCorner(data);
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      const { code, field, problems, message } = error as InputError;
      expect(code).toMatch(/^[a-z-]+$/);
      expect(field.length).toBeGreaterThan(0);
      expect(message.length).toBeGreaterThan(0);
      // Problems cross the worker's boundary.
      expect(structuredClone(problems)).toEqual(problems);
      return;
    }
    const zero = sweepTravel(buildLinkage(corner), [0]);
    expect(zero.reached[0]).toBe(1);
    expect(Math.abs(zero.camber[0]! - corner.camber)).toBeLessThan(1e-6);
    expect(Math.abs(zero.toe[0]! - corner.toe)).toBeLessThan(1e-6);
  }
  const anything = fc.anything({
    maxDepth: 4,
    withBigInt: true,
    withBoxedValues: true,
    withDate: true,
    withMap: true,
    withNullPrototype: true,
    withObjectString: true,
    withSet: true,
    withSparseArray: true,
    withTypedArray: true,
    withUnicodeString: true,
  } as fc.ObjectConstraints);

  it('arbitrary values', () => {
    fc.assert(fc.property(anything, check), seeded(61, 3000));
  });

  it('a good corner with arbitrary values in arbitrary places', () => {
    const places = [
      'kind',
      'loadedRadius',
      'camber',
      'toe',
      'plusMinus',
      'lowerArm',
      'strut',
      'tieRod',
      ...STRUT_POINT_KEYS,
      ...STRUT_POINT_KEYS.flatMap((key) => [`${key}.0`, `${key}.2`]),
    ];
    const changes = fc.array(fc.tuple(fc.constantFrom(...places), anything), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(changes, (list) => {
        const corner = spoilt((target) => {
          for (const [path, value] of list) {
            const steps = path.split('.');
            const last = steps.pop()!;
            const parent = steps.reduce<unknown>((at, step) => (at as Loose | undefined)?.[step], target);
            try {
              if (typeof parent === 'object' && parent !== null) Reflect.set(parent, last, value);
            } catch {
              // A typed array takes no such value.
            }
          }
        });
        check(corner);
      }),
      seeded(62, 2000),
    );
  });

  it('numbers of every size in every place', () => {
    const numbers = fc.array(fc.double(), { minLength: 24, maxLength: 24 });
    const sane = fc.array(fc.double({ min: -900, max: 900, noNaN: true }), { minLength: 24, maxLength: 24 });
    fc.assert(
      fc.property(fc.oneof(numbers, sane), fc.double({ min: -15, max: 15, noNaN: true }), (values, camber) => {
        const at = (i: number) => values.slice(3 * i, 3 * i + 3);
        check({
          kind: 'strut',
          wheelCentre: at(0),
          loadedRadius: 300,
          camber,
          toe: 0,
          lowerArm: { front: at(1), rear: at(2), ball: at(3) },
          strut: { top: at(4), low: at(5) },
          tieRod: { inner: at(6), outer: at(7) },
        });
      }),
      seeded(63, 2000),
    );
  });

  it('functions, symbols, throwing getters and proxies', () => {
    const trap = new Proxy(
      {},
      { get: () => boom(), has: () => boom(), ownKeys: () => boom(), getPrototypeOf: () => boom() },
    );
    function boom(): never {
      throw new Error('trap');
    }
    const revoked = () => {
      const { proxy, revoke } = Proxy.revocable([], {});
      revoke();
      return proxy;
    };
    const getter = (key: string) =>
      Object.defineProperty(spoilt(() => {}) as object, key, { enumerable: true, get: boom });
    let reads = 0;
    const second = Object.defineProperty(spoilt((c) => (c.camber = 'x')) as object, 'wheelCentre', {
      enumerable: true,
      get: () => (reads++ === 0 ? [0, 745, 310] : boom()),
    });
    for (const data of [
      trap,
      revoked(),
      second,
      () => 1,
      Symbol('corner'),
      10n,
      getter('camber'),
      getter('lowerArm'),
      { ...referenceCorner, lowerArm: trap },
      { ...referenceCorner, wheelCentre: revoked() },
      { ...referenceCorner, camber: Symbol('much') },
      { ...referenceCorner, camber: () => 1 },
      { ...referenceCorner, camber: 1n },
      { ...referenceCorner, toe: trap },
      { ...referenceCorner, '': 1 },
      { ...referenceCorner, corner: 1 },
      Object.assign(Object.create(null), referenceCorner, { extra: 1 }),
    ]) {
      expect(() => readCorner(data)).toThrow(InputError);
      check(data);
    }
  });

  it('a good corner without a prototype is as good', () => {
    const bare = Object.assign(Object.create(null), referenceCorner);
    expect(readCorner(bare)).toEqual(referenceCorner);
  });

  it('a long list by mistake does not make a long list of problems', () => {
    expect(problemsOf(new Array(5000).fill(1)).length).toBeLessThan(40);
  });
});

describe('points by name', () => {
  it('hardPoint finds every one of them', () => {
    const corner: StrutCorner = referenceCorner;
    expect(STRUT_POINT_KEYS.map((key) => hardPoint(corner, key))).toEqual([
      corner.lowerArm.front,
      corner.lowerArm.rear,
      corner.lowerArm.ball,
      corner.strut.top,
      corner.strut.low,
      corner.tieRod.inner,
      corner.tieRod.outer,
      corner.wheelCentre,
    ]);
  });
});
