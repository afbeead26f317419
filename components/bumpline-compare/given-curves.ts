import { curveFrom } from '../../core/curve/check-curve-data.js';
import type { Compared } from '../../core/curve/joint.js';
import { InputError } from '../../core/quantity/problem.js';
import type { CarCurves } from '../car/car-curves.js';
import type { NamedCurve } from './compare-view.js';

/** Curves that a page's script gives. @throws InputError of the first that is none, at `curves.` and its index */
export function givenCurves(curves: CarCurves, given: readonly NamedCurve[]): Compared[] {
  return given.map(({ curve, shares }, i) => {
    try {
      return { curve: curves.given(curve, curveFrom), shares };
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      throw new InputError(error.problems.map((problem) => ({ ...problem, path: `curves.${i}.${problem.path}` })));
    }
  });
}
