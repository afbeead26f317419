import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FINE_SHEETS, WHEEL_SHEETS } from '../../../components/bumpline-clearance/fitment-sheets.js';
import { HEIGHT_SHEETS, OTHER_SHEETS, POINT_SHEETS } from '../../../components/inputs/car-sheets.js';
import { DRIVEWAY_SHEETS, LOWERED_BY_SHEET, WAY_SHEET } from '../../../components/inputs/driveway-sheets.js';
import { LIMIT_SHEETS, LOAD_SHEETS } from '../../../components/inputs/limit-sheets.js';
import type { SheetSpec } from '../../../components/inputs/sheet-spec.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_FITMENT, EXAMPLE_LIMITS } from '../../../core/document/example-fitment.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { usersOnly } from '../../../core/document/own-car.js';
import { give, givenBy } from '../../../core/document/provenance.js';
import { readCar } from '../../../core/document/read-car.js';
import { QUANTITIES } from '../../../core/quantity/quantities.js';

const SHEETS: readonly SheetSpec[] = [
  WAY_SHEET,
  LOWERED_BY_SHEET,
  ...DRIVEWAY_SHEETS,
  ...POINT_SHEETS,
  ...OTHER_SHEETS,
  ...HEIGHT_SHEETS,
  ...LIMIT_SHEETS,
  ...LOAD_SHEETS,
  ...WHEEL_SHEETS,
  ...FINE_SHEETS,
];

const { stopGap, ...limits } = EXAMPLE_LIMITS;
/** A page that gives wheels, places and limits, one that gives a corner, and none. */
const PAGES: readonly CarDocument[] = [
  EMPTY_CAR,
  give(EMPTY_CAR, 'fit', 'page', () => ({ fit: EXAMPLE_FITMENT, limits, stopGap })),
  give(EMPTY_CAR, 'corner', 'page', () => ({ given: { points: { wheelCentre: [0, 720, 300] }, camber: -1 } })),
];

/** Whatever a field reads, its ends above all. */
const typedInto = ({ fields }: SheetSpec) =>
  fc.tuple(
    ...fields.map(({ quantity, signed }) => {
      const { min, max } = QUANTITIES[quantity];
      const least = signed || min > 0 ? min : 0;
      const steps = fc.integer({ min: 0, max: 1000 }).map((n) => Math.round(least * 1e3 + n * (max - least)) / 1e3 + 0);
      return fc.oneof(fc.constantFrom(least, max), steps);
    }),
  );

interface Step {
  sheet: SheetSpec;
  values: readonly number[];
  isTakenBack: boolean;
  sure: number;
}

const step: fc.Arbitrary<Step> = fc.constantFrom(...SHEETS).chain((sheet) =>
  fc.record({
    sheet: fc.constant(sheet),
    values: typedInto(sheet),
    isTakenBack: fc.integer({ min: 0, max: 4 }).map((n) => n === 0),
    sure: fc.constantFrom(0, 0.5, 3, 20, 100),
  }),
);

function taken(car: CarDocument, { sheet, values, isTakenBack, sure }: Step): CarDocument {
  if (sheet.fields.length === 0) return car;
  if (isTakenBack) return sheet.optional || sheet.read(car) ? sheet.write(car, undefined) : car;
  const written = sheet.partly ? sheet.partly.write(car, values) : sheet.write(car, values);
  return sheet.doubt ? sheet.doubt.write(written, sure) : written;
}

describe('whatever is typed into the sheets', () => {
  it('makes a car that its schema accepts and a link brings back', () => {
    fc.assert(
      fc.property(fc.constantFrom(...PAGES), fc.array(step, { minLength: 1, maxLength: 8 }), (page, steps) => {
        const car = steps.reduce(taken, page);
        expect(readCar(car)).toEqual(car);
        const read = carFromLink(carToLink(car));
        expect(read).toMatchObject({ ok: true });
        if (!read.ok) return;
        // What a page gave, and what says something of it only, is not the user's to send on.
        const { provenance: _, given, ...own } = usersOnly(car);
        const { provenance, given: linked, ...others } = read.car;
        const { camberReadLower, ...without } = own;
        expect(withoutEmpty(others)).toEqual(withoutEmpty(givenBy(car, 'corner') === 'user' ? own : without));
        expect(linked.points).toEqual(given.points);
        expect(linked.measures).toEqual(given.measures);
        for (const part of ['bumpTravel', 'fit'] as const) expect(provenance[part]?.by ?? 'user').toBe('user');
      }),
      { seed: 301, numRuns: 800 },
    );
  });
});

/** An empty record says as much as none. */
const withoutEmpty = (value: unknown): unknown =>
  typeof value !== 'object' || value === null || Array.isArray(value)
    ? value
    : Object.fromEntries(
        Object.entries(value)
          .map(([key, one]) => [key, withoutEmpty(one)] as const)
          .filter(([, one]) => typeof one !== 'object' || one === null || Object.keys(one).length > 0),
      );
