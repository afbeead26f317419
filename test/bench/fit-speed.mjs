import MultivariateLinearRegression from 'ml-regression-multivariate-linear';
import { curveFrom } from '../../core/curve/curve.ts';
import { fitCurve } from '../../core/curve/fit.ts';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.ts';
import { buildLinkage } from '../../core/linkage/build-linkage.ts';
import { sweepTravel } from '../../core/linkage/sweep.ts';
import { plusMinus95 } from '../../core/uncertainty/combine.ts';
import { normal, randomNumbers } from '../core/driveway/random-car.ts';
import { abba, quantile, times } from './in-turn.mjs';

/*
 * How fast a fit is: five passes of sixty readings, all degrees tried, beside a regression library that gets the same model as a
 * matrix, once for each degree. Bundled and started by run.mjs. Compare the ratio; single times are for orientation.
 */
const PASSES = 5;
const HEIGHTS = 60;
const MOST_DEGREE = 6;
const random = randomNumbers(1);
const linkage = buildLinkage(EXAMPLE_CORNER);
const oneSeries = () =>
  Array.from({ length: PASSES }, (_, pass) => {
    const heights = Array.from({ length: HEIGHTS }, (_, i) => -60 + 2 * i);
    const { camber } = sweepTravel(
      linkage,
      heights.map((height) => height + 0.4 * normal(random)),
    );
    const zero = 0.1 * normal(random);
    return heights.map((travel, i) => ({
      travel,
      value: camber[i] + zero + 0.02 * normal(random),
      pass: `Pass ${pass + 1}`,
      going: i % 2 ? 'up' : 'down',
    }));
  }).flat();
/** In turn, so that no answer is remembered from the run before. */
const series = Array.from({ length: 40 }, oneSeries);
let turn = 0;
const sink = new Float64Array(1);

const fitted = () => {
  const found = fitCurve(series[turn++ % series.length]);
  sink[0] += found.residualSd;
  return found;
};
/** The curve with the bands of value, of change from height 0 and of a reading, at 101 heights. */
const withBands = () => {
  const { curve: data, residualSd } = fitted();
  const curve = curveFrom(data);
  const [low, high] = curve.domain;
  for (let i = 0; i <= 100; i++) {
    const travel = low + ((high - low) * i) / 100;
    const value = curve.estimate(travel);
    sink[0] += plusMinus95(value, data.sources) + plusMinus95(curve.changeEstimate(travel, 0), data.sources);
    sink[0] += Math.hypot(residualSd, curve.standardError(travel));
  }
};
/** As the library is used: one matrix for each degree, travel scaled so that its normal equations can be solved. */
const peer = () => {
  const readings = series[turn++ % series.length];
  for (let degree = 1; degree <= MOST_DEGREE; degree++) {
    const design = readings.map(({ travel, pass, going }) => [
      ...Array.from({ length: degree }, (_, k) => (travel / 60) ** (k + 1)),
      ...Array.from(
        { length: PASSES - 1 },
        (_, p) => Number(pass === `Pass ${p + 1}`) - Number(pass === `Pass ${PASSES}`),
      ),
      going === 'up' ? 0.5 : -0.5,
    ]);
    const found = new MultivariateLinearRegression(
      design,
      readings.map(({ value }) => [value]),
    );
    sink[0] += found.stdError;
  }
};
const repeat = (task, count) => () => {
  for (let i = 0; i < count; i++) task();
};

const REPEATS = 10;
const QUADS = 40;
const firstEver = times(withBands, 1)[0];
const alone = abba(repeat(fitted, REPEATS), peer, QUADS);
const banded = abba(repeat(withBands, REPEATS), peer, QUADS);
const single = times(withBands, 200);

const line = (name, ...cells) => console.log(name.padEnd(52), ...cells);
const milliseconds = (ms) => `${ms.toFixed(3)} ms`;
const ratio = (found) => `${(found.ratio * REPEATS).toFixed(1)} × faster`;
console.log(
  `Node ${process.version}, ${PASSES * HEIGHTS} readings in ${PASSES} passes; medians of ${QUADS} ABBA quads`,
);
line(`peer: ml-regression-multivariate-linear, degrees 1 to ${MOST_DEGREE}`, milliseconds(alone.b));
line('fit, all candidates, offsets, residuals, outliers', milliseconds(alone.a / REPEATS), ratio(alone));
line('the same with three bands at 101 heights', milliseconds(banded.a / REPEATS), ratio(banded));
line('  single runs', `median ${milliseconds(quantile(single, 0.5))}, p95 ${milliseconds(quantile(single, 0.95))}`);
line('  first ever', milliseconds(firstEver));
if (!Number.isFinite(sink[0])) throw new Error('A task gave no number.');
