import { DEG } from '../math/angle.js';
import type { Linkage } from './linkage.js';
import { rebuilt } from './parts/part.js';

/** A linkage with the wheel leaned on its knuckle, degrees, top outward positive. No joint moves. */
export function leanedBy(linkage: Linkage, degrees: number): Linkage {
  if (degrees === 0) return linkage;
  const { carrier } = linkage;
  const [x, y, z] = carrier.spin;
  const [angle, size] = [Math.atan2(-z, y) + degrees * DEG, Math.hypot(y, z)];
  return rebuilt(linkage, { carrier: { ...carrier, spin: [x, size * Math.cos(angle), -size * Math.sin(angle)] } });
}
