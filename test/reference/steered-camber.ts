/*
 * Inclination of a wheel plane to the road's normal as it is steered about a fixed axis, in closed form: with caster τ, kingpin inclination
 * σ and static camber γ₀, at an angle δ of the plane's trace on the road (a turn plate), a left wheel's upper signs,
 *
 *     q = ± tan τ sin δ − tan σ cos δ,   inclination = atan q + asin((tan σ cos γ₀ + sin γ₀)/√(1 + q²))
 *
 * Derived, not published; caster_kpi_camber.csv holds the same by exact rotation, two independent evaluations (columns `…_groundsteer`).
 * Degrees; steer positive to the left, top outward positive, caster top rearward, kingpin inclination top inboard, no static toe.
 */
const DEGREES = 180 / Math.PI;

export function steeredInclination(
  { caster, kingpin, camber }: { caster: number; kingpin: number; camber: number },
  steer: number,
  side: 'left' | 'right',
): number {
  const [t, s] = [Math.tan(caster / DEGREES), Math.tan(kingpin / DEGREES)];
  const [static_, turned] = [camber / DEGREES, steer / DEGREES];
  const q = (side === 'left' ? 1 : -1) * t * Math.sin(turned) - s * Math.cos(turned);
  const held = (s * Math.cos(static_) + Math.sin(static_)) / Math.sqrt(1 + q * q);
  return (Math.atan(q) + Math.asin(held)) * DEGREES;
}
