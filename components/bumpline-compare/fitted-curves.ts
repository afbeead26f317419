import type { ReadingsSource } from '../../core/answers/readings-source.js';
import { type Curve, curveFrom } from '../../core/curve/curve.js';
import type { Setup } from '../../core/document/setup.js';
import { readingsInUse } from '../../core/document/setup-in-use.js';
import type { AskOptions } from '../../core/worker/protocol.js';
import { readingsBridge } from '../../core/worker/readings-bridge.js';

const remembered = new WeakMap<Setup, Curve>();

/** The curve of each set, fitted in the core of readings: once, as long as the set is the same. @throws InputError of the first that cannot be */
export async function fittedCurves(setups: readonly Setup[], options: AskOptions): Promise<Curve[]> {
  const curves: Curve[] = [];
  for (const setup of setups) {
    let curve = remembered.get(setup);
    if (!curve) {
      const { degree, zeroAt } = setup;
      const source: ReadingsSource = {
        kind: 'readings',
        readings: readingsInUse(setup),
        ...(degree !== undefined && { degree }),
        ...(zeroAt !== undefined && { zeroAt }),
      };
      const fitted = await readingsBridge().ask('fitReadings', source, options);
      curve = curveFrom(fitted.curve);
      remembered.set(setup, curve);
    }
    curves.push(curve);
  }
  return curves;
}
