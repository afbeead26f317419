import { EXAMPLE_READINGS } from '../readings/example-readings.js';
import type { Setup } from './setup.js';

/**
 * The example car with other joints, their ball 22 mm lower and the tie rod's end with it. Made, not measured: smooth curves with
 * about 0.02° of scatter, written down to 0.01°, one pass up and one down with another zero.
 */
const ROWS: readonly (readonly [travel: number, up: number, down: number])[] = [
  [-30, 0.31, 0.24],
  [-25, 0.15, 0.1],
  [-20, 0.02, -0.05],
  [-15, -0.13, -0.17],
  [-10, -0.23, -0.31],
  [-5, -0.37, -0.41],
  [0, -0.46, -0.53],
  [5, -0.58, -0.63],
  [10, -0.66, -0.74],
  [15, -0.77, -0.83],
  [20, -0.85, -0.9],
  [25, -0.93, -1],
  [30, -1.02, -1.06],
  [35, -1.08, -1.14],
  [40, -1.13, -1.21],
  [45, -1.2, -1.26],
  [50, -1.24, -1.3],
  [55, -1.29, -1.34],
  [60, -1.31, -1.39],
  [65, -1.35, -1.4],
];

/** The example's own readings go to 50 mm; to compare over 40 mm from 25 mm lower one reads further. */
const MORE: readonly (readonly [travel: number, value: number])[] = [
  [55, -1.12],
  [60, -1.13],
  [65, -1.14],
];

/** Two sets of parts of the invented example car. */
export const EXAMPLE_SETUPS: readonly Setup[] = [
  {
    name: 'Standard joints',
    cornerName: 'Front left',
    quantity: 'camber',
    readings: [
      ...EXAMPLE_READINGS,
      ...MORE.map(([travel, value]) => ({ travel, value, pass: 'Pass 1', going: 'up' as const })),
    ],
  },
  {
    name: 'Lowered joints',
    cornerName: 'Front left',
    quantity: 'camber',
    readings: [
      ...ROWS.map(([travel, value]) => ({ travel, value, pass: 'Pass 1', going: 'up' as const })),
      ...ROWS.map(([travel, , value]) => ({ travel, value, pass: 'Pass 2', going: 'down' as const })).reverse(),
    ],
  },
];
