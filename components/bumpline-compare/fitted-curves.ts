import type { ReadingsSource } from '../../core/answers/readings-source.js';
import { type Curve, curveFrom } from '../../core/curve/curve.js';
import type { CurveData } from '../../core/curve/curve-data.js';
import type { Compared } from '../../core/curve/joint.js';
import type { Setup } from '../../core/document/setup.js';
import { readingsInUse } from '../../core/document/setup-in-use.js';
import { InputError } from '../../core/quantity/problem.js';
import type { AskOptions } from '../../core/worker/protocol.js';
import { readingsBridge } from '../../core/worker/readings-bridge.js';
import type { NamedCurve } from './compare-view.js';

export const isSame = (some: readonly Setup[], others: readonly Setup[]): boolean =>
  some.length === others.length && some.every((setup, i) => setup === others[i]);

const remembered = new WeakMap<Setup, Curve>();

/** The curve of each set, fitted in the core of readings: once, as long as the set is the same. @throws InputError of the first that cannot be */
export async function fittedCurves(setups: readonly Setup[], options: AskOptions): Promise<Curve[]> {
  const curves: Curve[] = [];
  for (const setup of setups) {
    let curve = remembered.get(setup);
    if (!curve) {
      const { degree, zeroAt, doubts } = setup;
      const source: ReadingsSource = {
        kind: 'readings',
        readings: readingsInUse(setup),
        ...(degree !== undefined && { degree }),
        ...(zeroAt !== undefined && { zeroAt }),
        ...(doubts && { doubts }),
      };
      const fitted = await readingsBridge().ask('fitReadings', source, options);
      curve = curveFrom(fitted.curve);
      remembered.set(setup, curve);
    }
    curves.push(curve);
  }
  return curves;
}

const made = new WeakMap<CurveData, Curve>();

/** Curves that a page's script gives: made once. @throws InputError of the first that is none, at `curves.` and its index */
export function givenCurves(given: readonly NamedCurve[]): Compared[] {
  return given.map(({ curve: data, shares }, i) => {
    let curve = made.get(data);
    if (!curve) {
      try {
        curve = curveFrom(data);
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        throw new InputError(error.problems.map((problem) => ({ ...problem, path: `curves.${i}.${problem.path}` })));
      }
      made.set(data, curve);
    }
    return { curve, shares };
  });
}
