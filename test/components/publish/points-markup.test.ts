import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointsMarkup } from '../../../components/publish/points-markup.js';
import type { GivenCorner } from '../../../core/document/car.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { readPointSheet } from '../../../core/document/point-sheet.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { STRUT_POINT_KEYS } from '../../../core/linkage/corner.js';
import { cars } from '../../core/document/random-cars.js';
import { randomCar, randomNumbers } from '../../core/driveway/random-car.js';
import { type ReadTable, tablesIn } from './read-markup.js';

/** A corner as a page reads it from a piece of HTML. */
function cornerIn(html: string): GivenCorner {
  const [{ rows, caption, attributes }] = tablesIn(html) as [ReadTable];
  const { given, problems } = readPointSheet({ rows, caption }, attributes.lang!);
  expect(problems).toEqual([]);
  return given;
}

function expectSame(found: GivenCorner, given: GivenCorner): void {
  for (const key of STRUT_POINT_KEYS) {
    const { [key]: point } = given.points;
    expect(found.points[key]?.length).toBe(point?.length);
    for (const [axis, mm] of (point ?? []).entries()) expect(found.points[key]![axis]).toBeCloseTo(mm, 5);
    const { [key]: doubt = given.plusMinus?.other } = given.plusMinus ?? {};
    expect(found.plusMinus?.[key]).toEqual(point && doubt);
  }
  for (const key of ['camber', 'toe', 'loadedRadius'] as const) {
    if (given[key] === undefined) expect(found[key]).toBeUndefined();
    else expect(found[key]).toBeCloseTo(given[key], 5);
  }
  expect(found.measures).toEqual(given.measures);
}

describe('a corner as a table is read back', () => {
  const random = randomNumbers(33);
  const corners = Array.from({ length: 30 }, (_, i) => [i, ['en', 'de'][i % 2]!] as const);

  it.each(corners)(
    'with hard points to a fraction of a micrometre, whatever place is shown, and the ± of each: %i',
    (i, language) => {
      const doubts = [undefined, { other: 2.5 }, { other: 3, 'strut.top': 6 }][i % 3];
      const { given } = takeCorner({ ...randomCar(random), ...(doubts && { plusMinus: doubts }) });
      const { html, isExact } = pointsMarkup(given, 'Front left corner at stock height', language);
      expect(isExact).toBe(true);
      expectSame(cornerIn(html), given);
      const shown = [...html.matchAll(/>([^<]+)<\/data>/g)].map(([, text]) => text!);
      expect(shown.length).toBeGreaterThan(8);
      expect(shown.filter((text) => !/^−?\d+(?:[.,]\d{1,3})?(?: mm|°)?$/.test(text))).toEqual([]);
    },
  );

  it('with what was measured in the driveway, and its ±', () => {
    const { camber, ...measures } = EXAMPLE_DRIVEWAY;
    const given = { points: {}, measures, camber: camber!.value };
    const { html, isExact } = pointsMarkup(given, '', 'en');
    expect(isExact).toBe(true);
    expectSame(cornerIn(html), given);
    expect(html).toContain('<tr><th scope="row">Lower arm length</th><td>338 mm</td><td>3 mm</td></tr>');
    expect(html).not.toContain('<caption>');
  });

  it('where it says that it is, whatever the documents hold', () => {
    let exact = 0;
    fc.assert(
      fc.property(cars, fc.constantFrom('en', 'de'), ({ given }, language) => {
        const { html, isExact } = pointsMarkup(given, 'Corner', language);
        if (!isExact || html === '') return;
        exact++;
        expectSame(cornerIn(html), given);
      }),
      { seed: 3, numRuns: 150 },
    );
    expect(exact).toBeGreaterThan(50);
  });

  it('and none is written of a corner of which nothing is known', () => {
    expect(pointsMarkup({ points: {} }, 'Corner', 'en').html).toBe('');
  });
});
