import { expect, it } from 'vitest';
import { referenceCorner as ofFile } from '../core/linkage/reference-corner.js';
import strut from '../reference/derived_strut_3d.json' with { type: 'json' };
import { REFERENCE_CHANGE_40, referenceCorner } from './reference-corner.js';

/* Source: test/reference/derived_strut_3d.json, two formulations that share nothing. */
it('the corner that browser tests carry, and its camber change over 40 mm, are those of the reference file', () => {
  expect(referenceCorner).toEqual(ofFile);
  const camberAt = (travel: number) =>
    strut.results.find(({ wheel_travel_mm }) => wheel_travel_mm === travel)!.camber_deg;
  expect(REFERENCE_CHANGE_40).toBeCloseTo(camberAt(40) - camberAt(0), 5);
});
