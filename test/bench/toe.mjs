import { toeCure, toeCureDoubt, tried } from '../../core/answers/from-source.ts';
import { toeCureOf } from '../../core/answers/toe-cure.ts';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.ts';
import { buildLinkage } from '../../core/linkage/build-linkage.ts';
import { tieRodEndRaised, toeReset } from '../../core/linkage/parts/index.ts';
import { sweepTravel } from '../../core/linkage/sweep.ts';
import { toeCorrection } from '../../core/linkage/toe-correction.ts';
import { cureCoverage, cureMissed } from '../core/answers/toe-cure-coverage.ts';
import { bruteForce } from '../core/linkage/toe-brute-force.ts';
import { abba, quantile, times } from './in-turn.mjs';

/*
 * How fast the amount that flattens toe is found, beside a plain search along amounts by parts and sweep (test/core/linkage/toe-brute-force.ts)
 * and beside one `toeReset`; and how often the band of the amounts holds what the true car needs, over random struts in full. Bundled
 * and started by run.mjs. Throws at the end where a seed of the study does not keep what is claimed.
 */
const CARS = Number(process.env.CARS ?? 1_500);
const SEEDS = [1822, 1823, 1824];
/** What the plan allows for one. */
const PLANNED_MS = 5;
const linkage = buildLinkage(EXAMPLE_CORNER);
const asked = { at: 0, window: [-40, 40], toe: EXAMPLE_CORNER.toe, adjust: 'outerEnd', range: [-30, 30] };
const sink = new Float64Array(1);
const shown = ({ ratio, quartiles }) =>
  `${ratio.toFixed(1)} (${quartiles[0].toFixed(1)} to ${quartiles[1].toFixed(1)})`;
const median = (values) =>
  quantile(
    [...values].sort((a, b) => a - b),
    0.5,
  );

const own = () => {
  sink[0] += toeCorrection(linkage, asked).minimax.after;
};
const search = () => {
  sink[0] += bruteForce(linkage, asked, 0.5, 33).spread;
};
const oneReset = () => {
  sink[0] += sweepTravel(toeReset(tieRodEndRaised({ mm: 5 })(linkage), asked.toe), [0]).toe[0];
};
const beside = abba(own, search, 20);
console.log('All three optima of the example corner, 40 mm either way:');
console.log(`  the search along amounts every 0.5 mm takes × ${shown(beside)}, and finds one of them`);
console.log(`  one toe reset of one amount takes × ${shown(abba(own, oneReset, 60))}`);
console.log(`  ${((100 * beside.a) / PLANNED_MS).toFixed(0)} % of the planned ${PLANNED_MS} ms`);

const source = { kind: 'corner', corner: { ...EXAMPLE_CORNER, plusMinus: { other: 2 } } };
const solved = tried({ source }).source;
const one = median(times(own, 60));
const answer = median(times(() => toeCureOf({ source: solved, ...asked }), 60)) / one;
const anew = median(times(() => toeCure({ source, ...asked }), 30)) / one;
const doubt = median(times(() => toeCureDoubt({ source, ...asked }), 10)) / one;
console.log(
  `  with table, path and rods × ${answer.toFixed(1)}, from hard points × ${anew.toFixed(1)}, its doubt × ${doubt.toFixed(0)}`,
);

const broken = [];
console.log(`\nAmounts of ${CARS} random struts a seed, measured to ±1.5 mm: held by their bands, mean ±`);
for (const seed of SEEDS) {
  const found = cureCoverage({ seed, cars: CARS });
  const cell = ({ covered, plusMinus }) => `${(100 * covered).toFixed(1)} % ±${plusMinus.toFixed(2)} mm`;
  console.log(
    `  seed ${seed}: zero slope ${cell(found.slope)}, least squares ${cell(found.leastSquares)}, peak to peak ${cell(found.minimax)}, none of ${found.none}`,
  );
  broken.push(...cureMissed(found, CARS, false));
}
if (broken.length > 0) throw new Error(broken.join('\n'));
