import { describe, expect, it } from 'vitest';
import { pageFitment } from '../../../components/bumpline-clearance/page-fitment.js';
import { clearanceRequestOf } from '../../../core/answers/fitment-request.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { partsBy } from '../../../core/document/whose-parts.js';

const attributes = { wheelBefore: '205/55R16, 6.5, 45', wheelAfter: '225/45R17, 7.5, 35' };
const given = (json?: unknown) =>
  pageFitment({ drop: undefined, fit: undefined, limits: undefined, lock: undefined, ...attributes }, json);
const { plusMinus: _, ...corner } = EXAMPLE_CORNER;

describe('what a page says of wheels', () => {
  it('moves them by the hard points of its script, which are the page’s and nobody else’s', () => {
    const { recipe, problems } = given({ corner, drop: 25 });
    const car = recipe(EMPTY_CAR);
    expect(problems).toEqual([]);
    expect(partsBy(car)).toMatchObject({ motion: 'page', before: 'page', after: 'page', places: 'example' });
    expect(clearanceRequestOf(car).source).toEqual({ kind: 'corner', corner: { ...corner, plusMinus: {} } });
    expect(car.drop).toBe(25);
    // The same again changes nothing; a user's own car is left alone.
    expect(recipe(car)).toEqual(car);
    const own: CarDocument = {
      ...EMPTY_CAR,
      provenance: { corner: { by: 'user' } },
      given: { points: {}, camber: -1 },
    };
    expect(recipe(own)).toMatchObject({
      provenance: { corner: { by: 'user' } },
      by: 'driveway',
      given: { camber: -1 },
    });
  });

  it('names hard points that are none by their own paths, and answers of no other car', () => {
    const { tieRod: _rod, ...broken } = corner;
    const car = given({ corner: broken }).recipe(EMPTY_CAR);
    expect(clearanceRequestOf(car).source).toEqual({ kind: 'corner', corner: broken });
  });

  it('stands in where a user has begun before it came, or a link has brought some of it', () => {
    const begun: CarDocument = { ...EMPTY_CAR, fit: { before: { offset: 40 } }, provenance: { fit: { by: 'user' } } };
    const car = given({ limits: { stopGap: 20, stopLength: 40 } }).recipe(begun);
    expect(car.fit).toEqual({ before: { offset: 40 } });
    const { before, after, limits } = clearanceRequestOf(car);
    expect(before).toEqual({ size: '205/55R16', rimWidthInch: 6.5, offset: 40 });
    expect(after).toEqual({ size: '225/45R17', rimWidthInch: 7.5, offset: 35 });
    expect(limits).toEqual({ stopGap: 20, stopLength: 40 });
    expect(partsBy(car)).toMatchObject({ before: 'page', after: 'page', limits: 'page' });
  });
});
