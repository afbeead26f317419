import fc from 'fast-check';
import type * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { type CarDocument, EMPTY_CAR, givenByUser } from '../../../core/document/car.js';
import { carSchema } from '../../../core/document/car-schema.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_FITMENT, EXAMPLE_LIMITS } from '../../../core/document/example-fitment.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { LINK_ROWS } from '../../../core/document/link-fields.js';
import type { Row } from '../../../core/document/link-rows.js';
import { byUser } from '../../../core/document/own-car.js';
import { give } from '../../../core/document/provenance.js';
import { readCar } from '../../../core/document/read-car.js';
import { EXAMPLE_SETUP } from '../../../core/document/setups.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { explainProblem } from '../../../core/quantity/explain.js';
import { InputError, type Problem } from '../../../core/quantity/problem.js';
import { cars } from './random-cars.js';
import { fittedCars } from './random-fitments.js';
import { readCars } from './random-setups.js';

const anyCar = fc.oneof(cars, fittedCars, readCars);

function problemsOf(data: unknown): Problem[] {
  try {
    readCar(data);
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.problems;
  }
}

type Path = readonly (string | number)[];
type Leaf = { path: Path; value: unknown };

/** Every value that is no list and no record, with where it stands. */
const leavesOf = (value: unknown, path: Path = []): Leaf[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, one]) => leavesOf(one, [...path, Array.isArray(value) ? Number(key) : key]))
    : [{ path, value }];

/** A copy with something else in one place. */
function withLeaf(data: unknown, [step, ...rest]: Path, value: unknown): unknown {
  if (step === undefined) return value;
  const copy = (Array.isArray(data) ? [...data] : { ...(data as object) }) as Record<string | number, unknown>;
  copy[step] = withLeaf(copy[step], rest, value);
  return copy;
}

/** Names that people read: of a point its own name has dots in it. */
const said = (path: Path): string => path.join('.');

describe('a car that is read from anything', () => {
  it('comes back as it was, and so it does from JSON and from a link', () => {
    fc.assert(
      fc.property(anyCar, (car) => {
        expect(readCar(car)).toEqual(car);
        expect(readCar(JSON.parse(JSON.stringify(car)))).toEqual(car);
        const linked = carFromLink(carToLink(car));
        expect(linked.ok && readCar(linked.car)).toEqual(car);
      }),
      { seed: 201, numRuns: 300 },
    );
  });

  it('may be of a page, with what stands in, a corner as it came and a curve', () => {
    const page = give(EMPTY_CAR, 'corner', 'page', () => takeCorner(EXAMPLE_CORNER));
    const { stopGap, ...limits } = EXAMPLE_LIMITS;
    const fitted = give(page, 'fit', 'page', () => ({ fit: EXAMPLE_FITMENT, stopGap, limits }));
    const begun = give(
      givenByUser(fitted, (given) => ({ ...given, camber: -1 })),
      'fit',
      'user',
      () => ({}),
    );
    const whole = give(EMPTY_CAR, 'corner', 'page', () => takeCorner({ kind: 'strut', camber: 'steep' }));
    const curve = {
      kind: 'coefficients' as const,
      coefficients: [-0.6, -0.014],
      domain: [-50, 50] as [number, number],
    };
    for (const car of [EMPTY_CAR, page, fitted, begun, whole, { ...EMPTY_CAR, curve }])
      expect(readCar(car)).toEqual(car);
  });

  it('is refused where one number was put out of its range, by its path and value, and only then: as a link does it', () => {
    const number = fc.oneof(
      fc.integer({ min: -6000, max: 6000 }),
      fc.integer({ min: -600, max: 600 }),
      fc.integer({ min: -20, max: 20 }),
      fc.constantFrom(-4000, 4000, -150, 151, 200, 201, 400, 401, 100_000, 100_001),
    );
    // The index of the set in use has a first one to fall back on; a step of the heights is no field.
    const counts = ({ path, value }: Leaf) => typeof value === 'number' && path[0] !== 'version' && path[0] !== 'setup';
    let refused = 0;
    fc.assert(
      fc.property(anyCar, fc.nat(), number, (car, at, value) => {
        const leaves = leavesOf(car).filter(counts);
        const { path } = leaves[at % leaves.length]!;
        const data = withLeaf(car, path, value) as CarDocument;
        const problems = problemsOf(data);
        expect(problems.length === 0).toBe(carFromLink(carToLink(data)).ok);
        if (problems.length === 0) return;
        refused++;
        const [problem] = problems as [Problem];
        expect(problems).toHaveLength(1);
        // What is set aside is wrong as a list.
        if (path.includes('setAside')) {
          expect(said(path)).toContain(problem.path);
          return;
        }
        expect(problem).toMatchObject({ path: said(path), value });
        expect(problem.code).toMatch(/^(out-of-range|not-finite)$/);
        expect(explainProblem(problem)).toMatch(/ Enter -?−?[\d.,]+ or (more|less)\.$/);
      }),
      { seed: 202, numRuns: 1500 },
    );
    expect(refused).toBeGreaterThan(300);
  });

  it('is refused where one value is of another kind, by its path', () => {
    const strange = fc.constantFrom<unknown>(Number.NaN, 'a word', null, { x: 1 }, [1, 2], Number.POSITIVE_INFINITY);
    const isFree = ({ path, value }: Leaf) =>
      typeof value === 'string' && /^(name|pass|size)$/.test(String(path.at(-1)));
    fc.assert(
      fc.property(anyCar, fc.nat(), strange, (car, at, value) => {
        const leaves = leavesOf(car).filter((leaf) => !isFree(leaf));
        const { path } = leaves[at % leaves.length]!;
        const problems = problemsOf(withLeaf(car, path, value));
        expect(problems.length).toBeGreaterThan(0);
        // Something else is wrong with what it belongs to, as well.
        expect(problems.some((problem) => said(path).startsWith(problem.path))).toBe(true);
      }),
      { seed: 203, numRuns: 600 },
    );
  });

  it('is refused with every name that it does not know, wherever it stands', () => {
    const { before } = EXAMPLE_FITMENT;
    const places = [
      { ...EXAMPLE_FITMENT.places[0], colour: 'red' },
      { ...EXAMPLE_FITMENT.places[1], at: { clock: 1, distance: 2, out: 3, in: 4 } },
    ];
    const fit = { before: { ...before, et: 45, width: 6 }, places };
    const data = { ...byUser({ ...EMPTY_CAR, fit } as CarDocument), rideHeight: 1 };
    const problems = problemsOf(data);
    expect(problems.map(({ path, value }) => `${path} ${value}`)).toEqual([
      'fit.before.et et',
      'fit.before.width width',
      'fit.places.0.colour colour',
      'fit.places.1.at.in in',
      'rideHeight rideHeight',
    ]);
    expect(new Set(problems.map(({ code }) => code))).toEqual(new Set(['wrong-shape']));
  });

  it.each<[string, string, unknown, Partial<Problem>, RegExp]>([
    ['a drop left out', 'drop', undefined, { code: 'missing' }, /^drop is missing\. Enter a value\.$/],
    [
      'a word that is none of ours',
      'lowered',
      'air',
      { code: 'unknown-name', names: ['springs', 'dampers'] },
      /Use springs or dampers\.$/,
    ],
    ['another version', 'version', 2, { code: 'wrong-shape', value: 2 }, /^version: “?2”? is not what belongs here/],
    [
      'more heights than are compared',
      'compare',
      { heights: [1, 2, 3, 4, 5, 6, 7, 8, 9] },
      { code: 'out-of-range', path: 'compare.heights.length', value: 9, limit: 8 },
      /Enter 8 or less\.$/,
    ],
    ['a set in use that is not there', 'setup', 3, { path: 'setup' }, /^setup/],
    [
      'wheels that nobody gave',
      'fit',
      EXAMPLE_FITMENT,
      { code: 'missing', path: 'provenance.fit' },
      /^provenance\.fit is missing/,
    ],
    [
      'a name that is too long',
      'setups',
      [{ ...EXAMPLE_SETUP, name: 'A'.repeat(61) }],
      { path: 'setups.0.name' },
      /Check its name, kind and length\.$/,
    ],
  ])('%s', (_, path, value, problem, words) => {
    const problems = problemsOf({ ...EMPTY_CAR, [path]: value });
    expect(problems).toMatchObject([{ path, ...problem }]);
    expect(explainProblem(problems[0]!)).toMatch(words);
  });

  it('of anything at all is refused without another error', () => {
    fc.assert(
      fc.property(fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true }), (data) => {
        expect(problemsOf(data).length).toBeGreaterThan(0);
      }),
      { seed: 204, numRuns: 500 },
    );
    const thrower = new Proxy(EMPTY_CAR, {
      get: () => {
        throw new Error('no');
      },
    });
    expect(problemsOf(thrower)).toEqual([{ code: 'wrong-shape', path: 'car', value: undefined }]);
  });
});

type Schema = v.GenericSchema & {
  entries?: Record<string, Schema>;
  wrapped?: Schema;
  item?: Schema;
  options?: Schema[];
};

/** The names of all fields of a schema, lists passed over. */
function fieldsOf(schema: Schema, path = ''): string[] {
  const inner = schema.wrapped ?? schema;
  const { options = [] } = inner.item ?? {};
  // Of a kind of thing that is one of several: all that any of them has.
  const entries = inner.entries ?? inner.item?.entries ?? Object.assign({}, ...options.map((one) => one.entries));
  if (Object.keys(entries).length === 0) return [path];
  return Object.entries<Schema>(entries).flatMap(([key, one]) => fieldsOf(one, path ? `${path}/${key}` : key));
}

const rowFields = (rows: readonly Row[], path = ''): string[] =>
  rows.flatMap((row) => {
    const under = (more: readonly string[]) => [...(path ? [path] : []), ...more].join('/');
    return 'rows' in row ? rowFields(row.rows, under(row.path)) : row.paths.map(under);
  });

describe('the table of link fields', () => {
  it('has every field of the schema, and no other', () => {
    // Not the user's: whose it is, what a page handed over; the version has its own place.
    const isPages = (field: string) =>
      /^(version|whole|curve|provenance\/.*|given\/measures\/camber\/.*|given\/plusMinus\/other)$/.test(field);
    // A set's readings and what a place is stand in one text each.
    const known = rowFields(LINK_ROWS).map((field) =>
      field
        .replace('setups/groups/readings', 'setups/readings')
        .replace('setups/order', 'setups/readings')
        .replace('fit/places/spot', 'fit/places/name'),
    );
    const isInText = (field: string) => /^(setups\/readings\/.*|fit\/places\/(fixedTo|is|at))$/.test(field);
    const fields = fieldsOf(carSchema as unknown as Schema).filter((field) => !isPages(field));
    const missing = fields.filter((field) => !known.includes(field) && !isInText(field));
    expect(missing).toEqual([]);
    expect(known.filter((field) => field !== 'setups/readings' && !fields.includes(field))).toEqual([]);
  });
});
