import { tried } from '../../core/answers/from-source.ts';
import { leastCostSteps } from '../../core/answers/least-cost.ts';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.ts';
import { wholeGrid } from '../core/answers/least-cost-grid-study.ts';
import { abba } from './in-turn.mjs';

/*
 * How fast the setups that reach a wanted inclination are found, of the size that is usual: beside trying the whole grid another way, and
 * how long its longest step is. Bundled and started by run.mjs; nothing here passes or fails.
 */
const [PLANNED_MS, PLANNED_STEP_MS] = [300, 10];
const source = tried({ source: { kind: 'corner', corner: EXAMPLE_CORNER } }).source;
const load = {
  lateral: 0.8,
  centreOfGravityHeight: 520,
  axle: { sprungMass: 700, track: 1500, springRate: 28, bar: { rate: 20 } },
};
const request = {
  drop: 0,
  inclination: 0.5,
  tolerance: 0.1,
  load,
  camber: { from: -3.5, to: 0, step: 0.1, ways: [{ way: 'topMount', price: 300 }] },
  height: { from: 0, to: 40, step: 5, price: 800 },
  joints: [{ mm: 15, correctTieRod: true, price: 250 }, { mm: 22 }],
  springs: [
    { rate: 40, price: 200 },
    { rate: 55, price: 200 },
  ],
  bars: [{ rate: 30, price: 180 }, { rate: 40 }],
};
/** How long each step took at best, ms: under load any of them may be interrupted. */
let steps = [];
let answer;
const sink = new Float64Array(1);
const run = (more = {}) => {
  const work = leastCostSteps({ source, ...request, ...more });
  for (let i = 0; ; i++) {
    const before = performance.now();
    const { done, value } = work.next();
    steps[i] = Math.min(steps[i] ?? Number.POSITIVE_INFINITY, performance.now() - before);
    if (!done) continue;
    answer = value;
    sink[0] += value.rows.length;
    return;
  }
};
for (let i = 0; i < 10; i++) run();
const smaller = { height: { from: 0, to: 20, step: 10 }, springs: [], bars: [] };
const { ratio } = abba(
  () => run(smaller),
  () => (sink[0] += wholeGrid({ ...request, ...smaller }, EXAMPLE_CORNER).length),
  4,
);
console.log('Setups that bring the example corner to +0.5° at 0.8 g:');
console.log(`  of ${3 * 3 * 37} of them, the whole grid tried the other way takes × ${ratio.toFixed(0)}`);
for (const [name, more] of [
  ['straight', {}],
  ['steered by 8°', { steer: { angle: 8 }, inclination: 0 }],
]) {
  run(more);
  steps = [];
  const times = Array.from({ length: 7 }, () => {
    const from = performance.now();
    run(more);
    return performance.now() - from;
  }).sort((a, b) => a - b);
  console.log(
    `  ${name}, of ${answer.tried} tried ${answer.reach} reach it and ${answer.unbeaten} are unbeaten: ${((100 * times[3]) / PLANNED_MS).toFixed(0)} % of the planned ${PLANNED_MS} ms, longest step ${((100 * Math.max(...steps)) / PLANNED_STEP_MS).toFixed(0)} % of ${PLANNED_STEP_MS} ms`,
  );
}
