/** Vectors of the test's own, so that a slip in the project's cannot hide itself. */
export type Triple = readonly [number, number, number];

export const less = (a: Triple, b: Triple): Triple => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (a: Triple, k: number): Triple => [a[0] * k, a[1] * k, a[2] * k];
export const dot = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Triple, b: Triple): Triple => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const size = (a: Triple): number => Math.hypot(a[0], a[1], a[2]);
export const unit = (a: Triple): Triple => times(a, 1 / size(a));
export const apart = (a: Triple, b: Triple): number => size(less(a, b));

/** The i-th triple of a flat array. */
export const tripleAt = (flat: ArrayLike<number>, i: number): Triple => [
  flat[3 * i]!,
  flat[3 * i + 1]!,
  flat[3 * i + 2]!,
];

/** Where three points of the carrier are. */
export interface CarrierPoints {
  ball: Triple;
  tieOuter: Triple;
  wheelCentre: Triple;
}

/** Carries points along with the wheel carrier: what `from` shows it as, `to` shows it as. */
export function carry(from: CarrierPoints, to: CarrierPoints) {
  const axes = ({ ball, tieOuter, wheelCentre }: CarrierPoints): [Triple, Triple, Triple] => {
    const x = unit(less(tieOuter, ball));
    const z = unit(cross(x, less(wheelCentre, ball)));
    return [x, cross(z, x), z];
  };
  const before = axes(from);
  const after = axes(to);
  const direction = (v: Triple): Triple => {
    const parts = before.map((axis) => dot(v, axis));
    return [0, 1, 2].map((k) => after.reduce((sum, axis, i) => sum + parts[i]! * axis[k]!, 0)) as unknown as Triple;
  };
  const point = (p: Triple): Triple => less(direction(less(p, from.ball)), times(to.ball, -1));
  return { direction, point };
}
