import { Matrix, solve } from 'ml-matrix';
import { compareCurves } from '../../core/answers/compare.ts';
import { curveFrom } from '../../core/curve/curve.ts';
import { fitCurve } from '../../core/curve/fit.ts';
import { normal, randomNumbers } from '../core/driveway/random-car.ts';
import { abba, quantile, times } from './in-turn.mjs';

/*
 * How long a break-even takes to solve with its interval, by change and by rate, with the two cells: beside a matrix library that
 * gets one cubic a set of readings and bisects the difference, without any ±. Bundled and started by run.mjs. Compare the ratio.
 */
const random = randomNumbers(7);
const readingsOf = (rate, bend) =>
  Array.from({ length: 14 }, (_, i) => {
    const travel = -30 + 10 * i;
    return { travel, value: rate * travel + bend * travel * travel + 0.01 * normal(random) };
  });
const sets = [readingsOf(-0.014, 0.0001), readingsOf(-0.018, 0.0001)];
const curves = sets.map((readings) => ({ curve: curveFrom(fitCurve(readings).curve) }));
const sink = new Float64Array(1);

/** Never the same bump twice running: what was asked last is remembered. */
let turn = 0;
const solved = () => {
  const bump = 40 + (turn++ % 97) / 1000;
  const [found] = compareCurves({ curves, heights: [0, 25], bump }).breakEvens;
  sink[0] += found.change.drop;
};
const peer = () => {
  const [old, now] = sets.map((readings) => {
    const design = new Matrix(readings.map(({ travel }) => [1, travel, travel ** 2, travel ** 3]));
    const values = Matrix.columnVector(readings.map(({ value }) => value));
    const found = solve(design, values).to1DArray();
    return (travel) => found.reduce((sum, coefficient, power) => sum + coefficient * travel ** power, 0);
  });
  const difference = (drop) => now(drop + 40) - now(drop) - (old(40) - old(0));
  let [low, high] = [0, 50];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (difference(middle) < 0) low = middle;
    else high = middle;
  }
  sink[0] += low;
};

const found = abba(solved, peer, 60);
const single = times(solved, 400);
const milliseconds = (ms) => `${ms.toFixed(3)} ms`;
console.log(`Node ${process.version}, two sets of 14 readings; medians of 60 ABBA quads`);
console.log('peer: ml-matrix, two cubics and a bisection, no ±'.padEnd(52), milliseconds(found.b));
console.log(
  'two cells, break-even with interval, by change and rate'.padEnd(52),
  milliseconds(found.a),
  `${found.ratio.toFixed(2)} × as fast (budget 1 ms)`,
);
console.log(
  '  single runs'.padEnd(52),
  `median ${milliseconds(quantile(single, 0.5))}, p95 ${milliseconds(quantile(single, 0.95))}`,
);
if (!Number.isFinite(sink[0])) throw new Error('A task gave no number.');
