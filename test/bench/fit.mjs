import {
  AVERAGED_MOST,
  CRITERION_MOST,
  coverage,
  fewClaims,
  heldClaims,
  levelClaims,
  METHODS,
  plainClaim,
  SEEDS,
} from '../core/curve/fit-coverage.ts';
import { CELLS } from '../core/curve/noise-cells.ts';
import { missed } from '../core/study-limits.ts';

/*
 * How often the 95 % band of a fitted camber change holds the truth of random three-dimensional linkages, in full; the tests run fewer
 * of the same. Bundled and started by run.mjs. First whatever goes wrong in a garage, cell by cell, with the band of scatter alone
 * beside it; then how the degree is chosen. Throws when a cell misses its goal (test/core/curve/noise-cells.ts).
 */
const SERIES = Number(process.env.SERIES ?? 500);
const percent = (share) => (Number.isNaN(share) ? '–' : `${(100 * share).toFixed(1)} %`).padStart(7);
const widths = (plusMinus) => plusMinus.map((width) => width.toFixed(3)).join(' ');
const broken = [];
const judge = (what, claims) => broken.push(...missed(claims, false).map((claim) => `${what}: ${claim}`));

console.log(`${SEEDS.length * SERIES} sets a cell, seeds ${SEEDS.join(', ')} together; then each seed by itself`);
console.log(
  'cell                                                 goal    scatter alone              all doubt: 25 mm  50 mm   ±, °         at most 20 readings   by seed, 50 mm',
);
for (const cell of CELLS) {
  const { name, goal, noise, options, plainMost } = cell;
  const before = coverage({ seeds: SEEDS, series: SERIES, noise, method: METHODS.plain });
  const now = coverage({ seeds: SEEDS, series: SERIES, noise, options });
  const bySeed = SEEDS.map((seed) => coverage({ seeds: [seed], series: SERIES, noise, options }).covered.at(-1));
  console.log(
    `${name.padEnd(52)} ${goal.padEnd(7)} ${before.covered.map(percent).join('')}  ±${widths(before.plusMinus)}  ${now.covered.map(percent).join('')}  ±${widths(now.plusMinus)}  ${now.few.map(percent).join('')} (${now.fewCount})  ${bySeed.map(percent).join('')}`,
  );
  if (goal !== 'beyond') judge(name, [...heldClaims(cell, now), ...fewClaims(now)]);
  if (plainMost !== undefined) judge(`${name}, scatter alone`, [plainClaim(plainMost, before)]);
}

console.log(
  '\nseries  scatter alone, independent, by method   25 mm   50 mm   ±, °          value at 0   accused  degree',
);
const print = (what, study) => {
  const found = coverage({ seeds: [SEEDS[0]], series: 2_000, method: METHODS.plain, ...study });
  const { covered, plusMinus, level, accused, degree, series } = found;
  console.log(
    `${String(series).padStart(6)}  ${what.padEnd(38)} ${covered.map(percent).join(' ')}   ${widths(plusMinus)}   ${percent(level)}   ${percent(accused)}  ${degree.toFixed(2)}`,
  );
};
print('the degree as chosen', { seeds: SEEDS });
const { automatic: _, plain: __, ...others } = METHODS;
for (const [what, method] of Object.entries(others)) print(what, { method });
const passesOf = ({ readings }) => new Set(readings.map(({ pass }) => pass)).size;
for (const passes of [1, 2, 3, 4, 5]) print(`${passes} passes`, { only: (series) => passesOf(series) === passes });
print('fewer than 25 readings', { only: ({ readings }) => readings.length < 25 });
print('more than 80 readings', { only: ({ readings }) => readings.length > 80 });
print('fine gauge, 0.03°', { noise: { gauge: [0.03, 0.03] } });
print('coarse gauge, 0.1°', { noise: { gauge: [0.1, 0.1] } });
print('careful: 0.01 to 0.02°, 0.3 mm', { noise: { gauge: [0.01, 0.02], travelError: 0.3 } });

const whole = { seeds: SEEDS, series: SERIES };
judge('in turn', levelClaims(coverage({ ...whole, noise: { layout: 'in turn' } })));
judge('AICc alone', [plainClaim(CRITERION_MOST, coverage({ ...whole, method: METHODS['AICc alone'] }), 0)]);
judge('averaged', [plainClaim(AVERAGED_MOST, coverage({ ...whole, method: METHODS.averaged }))]);
if (broken.length > 0) throw new Error(broken.join('\n'));
