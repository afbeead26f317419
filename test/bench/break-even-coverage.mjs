import { BREAK_EVEN_CELLS, breakEvenCoverage, coveredClaim, scatterClaim } from '../core/curve/break-even-coverage.ts';
import { SEEDS } from '../core/curve/fit-coverage.ts';
import { missed } from '../core/study-limits.ts';

/*
 * How often the interval of a break-even holds the truth of random struts with and without a longer ball joint, each read in three
 * passes; the tests run fewer of the same. Bundled and started by run.mjs. Beside it the interval of scatter alone. Throws when a cell
 * misses its goal.
 */
const SETS = Number(process.env.SETS ?? 500);
const percent = (share) => `${(100 * share).toFixed(1)} %`.padStart(7);
const broken = [];
console.log(`${SEEDS.length * SETS} pairs a cell, seeds ${SEEDS.join(', ')} together; then each seed by itself`);
console.log('cell                                          goal    scatter alone     all doubt  width  open   by seed');
for (const cell of BREAK_EVEN_CELLS) {
  const { name, goal } = cell;
  const before = breakEvenCoverage(SEEDS, SETS, { ...cell, options: { plain: true } });
  const { covered, width, open, pairs } = breakEvenCoverage(SEEDS, SETS, cell);
  const bySeed = SEEDS.map((seed) => breakEvenCoverage([seed], SETS, cell).covered);
  console.log(
    `${name.padEnd(45)} ${goal.padEnd(7)} ${percent(before.covered)} ${before.width.toFixed(1).padStart(5)} mm  ${percent(covered)} ${width.toFixed(1).padStart(5)} mm ${percent(open)}  ${bySeed.map(percent).join('')}`,
  );
  const claims = [
    ...(goal === 'beyond' ? [] : [coveredClaim(cell, { covered, pairs })]),
    ...(cell.plainMost === undefined ? [] : [scatterClaim(cell.plainMost, before)]),
  ];
  broken.push(...missed(claims, false).map((claim) => `${name}: ${claim}`));
}
if (broken.length > 0) throw new Error(broken.join('\n'));
