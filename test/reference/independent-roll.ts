/*
 * A second computation of a car's steady roll, by virtual work. Nothing is imported from core/.
 *
 * Method: the energy of springs, bars and stops as a function of roll and of how far each axle rises (small angles), less the work of the
 * sideways force and of the weight, m g d φ²/2, is least: golden sections over the rise of each axle inside, over roll outside. No
 * stiffness is ever written down. Units N, mm, radians. Source: principle of least potential energy, any textbook of mechanics.
 */
export interface RollingAxle {
  sprungMass: number;
  track: number;
  rollCentreHeight: number;
  /** Force of one wheel over its bump, N: springs and stop as energy, N·mm, of a wheel's travel. */
  energy: (bump: number) => number;
  /** Of the bar, by how much further the outer wheel is in bump than the inner one, mm. */
  barEnergy?: (apart: number) => number;
}

function lowest(of: (x: number) => number, from: number, to: number): number {
  const share = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  for (let i = 0; i < 90; i++) {
    const [a, b] = [high - share * (high - low), low + share * (high - low)];
    if (of(a) < of(b)) high = b;
    else low = a;
  }
  return (low + high) / 2;
}

/** Energy of an axle at a roll, its rise free. */
function energyOf({ track, energy, barEnergy }: RollingAxle, roll: number): number {
  const side = (roll * track) / 2;
  const at = (rise: number) => energy(side + rise) + energy(rise - side);
  return at(lowest(at, -60, 20)) + (barEnergy?.(2 * side) ?? 0);
}

/** Roll, radians. @param lateral acceleration and gravity in m/s² */
export function independentRoll(axles: readonly RollingAxle[], height: number, lateral: number, gravity: number): number {
  const mass = axles.reduce((all, axle) => all + axle.sprungMass, 0);
  const arm = height - axles.reduce((all, axle) => all + axle.sprungMass * axle.rollCentreHeight, 0) / mass;
  const whole = (roll: number) =>
    axles.reduce((all, axle) => all + energyOf(axle, roll), 0) - mass * arm * (lateral * roll + (gravity * roll * roll) / 2);
  return lowest(whole, 0, 0.3);
}
