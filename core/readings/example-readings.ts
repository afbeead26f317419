import type { Reading } from './reading.js';

/**
 * The example's readings: three passes with an angle gauge on the hub of the invented example car (core/document/example-corner.ts).
 * Made, not measured: its linkage solved at each height, the heights off by 0.4 mm, a gauge with 0.018° of scatter (both standard
 * deviations), another zero in each pass, 0.008° of play, written down to 0.01°. Five readings were not taken.
 */
const PASSES = [
  { pass: 'Pass 1', going: 'up' },
  { pass: 'Pass 2', going: 'down' },
  { pass: 'Pass 3', going: 'up' },
] as const;

/** Travel, mm, then camber in each pass, degrees. */
const ROWS: readonly (readonly [number, ...(number | null)[]])[] = [
  [-35, null, null, 0.15],
  [-30, 0.03, -0.09, 0.06],
  [-25, -0.1, -0.17, -0.06],
  [-20, -0.2, -0.28, -0.22],
  [-15, -0.35, -0.38, -0.28],
  [-10, -0.41, -0.46, -0.38],
  [-5, -0.52, -0.59, -0.47],
  [0, -0.55, -0.66, -0.55],
  [5, -0.68, -0.75, -0.64],
  [10, -0.77, -0.82, null],
  [15, -0.8, -0.89, -0.74],
  [20, -0.85, null, -0.83],
  [25, -0.96, -0.99, -0.87],
  [30, -0.97, -1.04, -0.96],
  [35, -1.01, -1.1, -1.02],
  [40, -1.05, -1.14, -1.03],
  [45, -1.07, -1.15, -1.04],
  [50, -1.1, null, -1.07],
];

/** Pass by pass, in the order in which they were taken. */
export const EXAMPLE_READINGS: readonly Reading[] = PASSES.flatMap(({ pass, going }, i) => {
  const taken = ROWS.flatMap(([travel, ...values]): Reading[] => {
    const value = values[i];
    return typeof value === 'number' ? [{ travel, value, pass, going }] : [];
  });
  return going === 'up' ? taken : taken.reverse();
});
