import { describe, expect, it } from 'vitest';
import { carOf, sourceOf } from '../../../components/page-data/page-source.js';
import { EMPTY_CAR, withPageHeights } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_FITMENT } from '../../../core/document/example-fitment.js';
import { fitmentByUser } from '../../../core/document/limits-in-use.js';
import { give } from '../../../core/document/provenance.js';

describe('a corner that a page hands over', () => {
  const light = { problems: [] };
  const page = sourceOf({ corner: EXAMPLE_CORNER, light });

  it('takes nothing from what was said of heights, limits and wheels, whoever said it', () => {
    const high = withPageHeights(EMPTY_CAR, { drop: 20, dropPlusMinus: 2, bumpTravel: 60 }, false);
    const limited = give(high, 'fit', 'page', () => ({ limits: { stopLength: 50 }, stopGap: 34 }));
    const own = fitmentByUser(limited, () => ({ fit: { before: EXAMPLE_FITMENT.before } }));
    for (const before of [high, limited, own]) {
      const { given, by, provenance, ...rest } = carOf(page, before, false);
      const { given: _, by: __, provenance: was, ...kept } = before;
      expect(rest).toEqual(kept);
      expect(provenance).toEqual({ ...was, corner: { by: 'page' } });
      expect(by).toBe('points');
      expect(given.camber).toBe(EXAMPLE_CORNER.camber);
    }
  });

  it('is nobody’s where it says nothing', () => {
    expect(carOf(sourceOf({ light }), EMPTY_CAR, false)).toEqual(EMPTY_CAR);
  });
});
