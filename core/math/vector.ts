/** Plain 3-vectors for set-up work. The solver's inner loop keeps its own scalars and allocates nothing. */
export type Vec = readonly [number, number, number];

export const subtract = (a: Vec, b: Vec): Vec => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const add = (a: Vec, b: Vec): Vec => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const scale = (a: Vec, k: number): Vec => [a[0] * k, a[1] * k, a[2] * k];
export const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const length = (a: Vec): number => Math.hypot(a[0], a[1], a[2]);
export const distance = (a: Vec, b: Vec): number => length(subtract(a, b));
/** Unit vector along a. NaN for the zero vector: callers refuse that before. */
export const unit = (a: Vec): Vec => scale(a, 1 / length(a));
export const middle = (a: Vec, b: Vec): Vec => scale(add(a, b), 0.5);
