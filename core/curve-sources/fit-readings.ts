import { curveOf } from '../curve/curve.js';
import { fitCurve } from '../curve/fit.js';
import { reZeroedCurve } from '../curve/re-zeroed-curve.js';
import { InputError } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import type { SolvedSource } from './solved-source.js';
import type { ReadingsSource } from './source.js';

/**
 * The curve of some readings, counted from stock height.
 *
 * @throws InputError with every problem of the readings.
 */
export function fitReadings(source: ReadingsSource): SolvedSource {
  const { readings, quantity = 'camber', degree, zeroAt = 0, doubts, inOrder, plain } = source;
  const { min, max } = QUANTITIES.drop;
  if (typeof zeroAt !== 'number') throw new InputError([{ code: 'not-a-number', path: 'zeroAt', value: zeroAt }]);
  if (!(zeroAt >= min && zeroAt <= max)) {
    throw new InputError([{ code: 'out-of-range', path: 'zeroAt', value: zeroAt, limit: zeroAt < min ? min : max }]);
  }
  const fit = fitCurve(readings, {
    ...doubts,
    quantity,
    ...(degree !== undefined && { degree }),
    ...(inOrder !== undefined && { inOrder }),
    ...(plain !== undefined && { plain }),
  });
  const curve = curveOf(fit.curve);
  return {
    [quantity]: reZeroedCurve(fit.curve, zeroAt),
    readings: {
      degree: fit.degree,
      travel: Float64Array.from(readings, ({ travel }) => travel + zeroAt),
      value: fit.residuals.map((residual, i) => curve.value(readings[i]!.travel) + residual),
    },
  };
}
