import type { Curve } from '../../core/curve/curve.js';
import type { Compared } from '../../core/curve/joint.js';
import type { Setup } from '../../core/document/setup.js';
import { InputError } from '../../core/quantity/problem.js';
import { fit } from '../../core/worker/layers/fit.generated.js';
import type { CarCurves } from '../car/car-curves.js';
import { haveLayer } from '../car/source-layers.js';
import type { NamedCurve } from './compare-view.js';

// The example, and most of what is compared, are readings.
haveLayer('readings', fit);

export const isSame = (some: readonly Setup[], others: readonly Setup[]): boolean =>
  some.length === others.length && some.every((setup, i) => setup === others[i]);

/** The curve of each set. @throws InputError of the first that cannot be fitted */
export const setCurves = (curves: CarCurves, setups: readonly Setup[]): Promise<Curve[]> =>
  Promise.all(setups.map((setup) => curves.camber(curves.sources.ofSetup(setup))));

/** Curves that a page's script gives. @throws InputError of the first that is none, at `curves.` and its index */
export function givenCurves(curves: CarCurves, given: readonly NamedCurve[]): Compared[] {
  return given.map(({ curve, shares }, i) => {
    try {
      return { curve: curves.given(curve), shares };
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      throw new InputError(error.problems.map((problem) => ({ ...problem, path: `curves.${i}.${problem.path}` })));
    }
  });
}
