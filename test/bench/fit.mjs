import { curveFrom } from '../../core/curve/curve.ts';
import { fitCurve } from '../../core/curve/fit.ts';
import { plusMinus95 } from '../../core/uncertainty/combine.ts';
import { study } from '../core/curve/fit-coverage.ts';
import { normal, randomNumbers } from '../core/driveway/random-car.ts';
import { independentRegression } from '../reference/independent-regression.ts';
import { abba } from './abba.mjs';

/*
 * How long five passes of sixty readings take to be fitted: all degrees tried, one taken, its bands at 61 travels; beside a
 * general-purpose matrix library (ml-matrix) that fits the same model at the same degrees. Then, in full, how often the band of a
 * change holds the truth of random linkages. Bundled and started by run.mjs.
 */
const random = randomNumbers(7);
const readings = Array.from({ length: 300 }, (_, i) => {
  const travel = -40 + (100 * (i % 60)) / 59;
  const value = -0.6 - 0.014 * travel + 1.1e-4 * travel ** 2 + 0.03 * normal(random);
  return { travel, value, pass: `${Math.floor(i / 60)}` };
});
const sink = new Float64Array(1);
function ours() {
  const fit = fitCurve(readings);
  const curve = curveFrom(fit.curve);
  for (let travel = -40; travel <= 60; travel += 100 / 60) {
    sink[0] += plusMinus95(curve.changeEstimate(Math.min(travel, 60), 0), fit.curve.sources);
  }
}
function library() {
  for (let degree = 1; degree <= 6; degree++) sink[0] += independentRegression(readings, degree).change(25, 0).value;
}
for (let i = 0; i < 50; i++) ours();
const { a, b, ratio } = abba(ours, library, 30);
console.log('fit of 5 passes × 60 readings, 6 degrees tried, bands at 61 travels (budget 2 ms)');
console.log(
  `  ours ${a.toFixed(2)} ms; ml-matrix, the same model at the same degrees, ${b.toFixed(1)} ms: ${ratio.toFixed(1)} × as long`,
);

const CARS = 4_000;
const percent = (share) => `${(100 * share).toFixed(1)} %`;
console.log(`\n95 % band of a change over 25 and 50 mm, ${CARS} random linkages a seed`);
for (const seed of [1, 2, 3]) {
  for (const [name, options, averaged] of [
    ['by the evidence', {}, false],
    ['degree 3', { degree: 3 }, false],
    ['degree 2', { degree: 2 }, false],
    ['plain means, degree 3', { degree: 3 }, true],
  ]) {
    const { covered, plusMinus, degrees } = study(seed, CARS, options, averaged);
    const taken = degrees.map((count, degree) => `${degree}: ${percent(count / CARS)}`).filter(Boolean);
    console.log(
      `  seed ${seed}  ${name.padEnd(22)} covered ${covered.map(percent).join(', ')}  mean ± ${plusMinus.map((half) => half.toFixed(3)).join(', ')}°  degrees ${taken.join(', ')}`,
    );
    if (name === 'by the evidence' && !covered.every((share) => share >= 0.93 && share <= 0.97)) {
      throw new Error(`Seed ${seed}: ${covered.map(percent)} covered.`);
    }
  }
}
