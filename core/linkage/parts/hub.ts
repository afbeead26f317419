import { add, scale } from '../../math/vector.js';
import { spinAxis } from '../build-linkage.js';
import { checkNumbers, type Part, rebuilt } from './part.js';

const DEGREES = 180 / Math.PI;

/**
 * The spin axis turned in the knuckle: a machined or bent spindle, a shimmed hub. Degrees added to its camber and toe in the
 * carrier's frame. Nothing else moves, so unlike camber from the top mount it stays whole when the wheel is steered.
 */
export function spinAxisTurned({ camber, toe = 0 }: { camber: number; toe?: number }): Part {
  checkNumbers({ 'spinAxis.camber': camber, 'spinAxis.toe': toe });
  return (linkage) => {
    const [x, y, z] = linkage.carrier.spin;
    const spin = spinAxis(Math.atan2(-z, y) * DEGREES + camber, Math.atan2(x, y) * DEGREES + toe);
    return rebuilt(linkage, { carrier: { ...linkage.carrier, spin } });
  };
}

/**
 * Wheel offset or a spacer: the wheel's middle plane `mm` further outboard along the spin axis. The loaded radius stays. Ride
 * height is that of the wheel centre, so the linkage itself turns by a hair to bring the new centre to it.
 */
export function wheelOffset({ mm }: { mm: number }): Part {
  checkNumbers({ 'wheelOffset.mm': mm });
  return (linkage) => {
    const { carrier } = linkage;
    return rebuilt(linkage, {
      carrier: { ...carrier, wheelCentre: add(carrier.wheelCentre, scale(carrier.spin, mm)) },
    });
  };
}
