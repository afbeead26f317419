import { add, scale } from '../../math/vector.js';
import { InputError } from '../../quantity/problem.js';
import { spinAxis } from '../build-linkage.js';
import { checkNumbers, given } from './check.js';
import { type Part, rebuilt } from './part.js';

const DEGREES = 180 / Math.PI;

/**
 * The spin axis turned in the knuckle: a machined or bent spindle, a shimmed hub. Degrees added to its camber (top outward
 * positive) and toe-in in the carrier's frame. Changes that one direction. No point moves, so unlike camber from the top mount it
 * stays whole when the wheel is steered.
 *
 * @throws InputError from `spinAxis`, `spinAxis.camber`, `spinAxis.toe`; `out-of-range` with the bound as limit when the axis
 *   would reach 90°
 */
export function spinAxisTurned(options: { camber: number; toe?: number }): Part {
  const { camber, toe = 0 } = given(options, 'spinAxis');
  checkNumbers({ 'spinAxis.camber': camber, 'spinAxis.toe': toe });
  return (linkage) => {
    const [x, y, z] = linkage.carrier.spin;
    const now = { camber: Math.atan2(-z, y) * DEGREES, toe: Math.atan2(x, y) * DEGREES };
    const added = { camber, toe };
    const problems = (['camber', 'toe'] as const).flatMap((name) => {
      const sum = now[name] + added[name];
      const limit = Math.sign(sum) * 90 - now[name];
      const isBeyond = !(Math.abs(sum) < 90);
      return isBeyond ? [{ code: 'out-of-range' as const, path: `spinAxis.${name}`, value: added[name], limit }] : [];
    });
    if (problems.length > 0) throw new InputError(problems);
    const spin = spinAxis(now.camber + camber, now.toe + toe);
    return rebuilt(linkage, { carrier: { ...linkage.carrier, spin } });
  };
}

/**
 * Wheel offset or a spacer: the wheel's middle plane, and with it the wheel centre, `mm` further outboard along the spin axis
 * (negative: inboard). Changes that one carrier point. The loaded radius stays. Ride height is that of the wheel centre, so with
 * camber the linkage turns by a hair to bring the new centre to it.
 *
 * @throws InputError from `wheelOffset`, `wheelOffset.mm`
 */
export function wheelOffset(options: { mm: number }): Part {
  const { mm } = given(options, 'wheelOffset');
  checkNumbers({ 'wheelOffset.mm': mm });
  return (linkage) => {
    const { carrier } = linkage;
    return rebuilt(linkage, {
      carrier: { ...carrier, wheelCentre: add(carrier.wheelCentre, scale(carrier.spin, mm)) },
    });
  };
}
