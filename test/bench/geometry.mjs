import { geometry, geometryDoubt, tried } from '../../core/answers/from-source.ts';
import { geometryOf } from '../../core/answers/geometry.ts';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.ts';
import { createTravelSweep, sweepTravelInto } from '../../core/linkage/sweep.ts';
import { abba, quantile, times } from './in-turn.mjs';

/*
 * How fast the workbench's curves are made: every output of four sets of parts at 201 travels, beside the bare sweeps of the same
 * positions, which nothing can be faster than. Bundled and started by run.mjs; nothing here passes or fails.
 */
const POINTS = 201;
/** What the plan allows for eight of them. */
const PLANNED_MS = 2;
const travels = Float64Array.from({ length: POINTS }, (_, i) => -60 + (150 * i) / (POINTS - 1));
const of = { kind: 'corner', corner: EXAMPLE_CORNER };
const JOINT = { part: 'ballJointExtended', mm: 22 };
const SETS = [[], [JOINT], [{ ...JOINT, correctTieRod: true }], [{ part: 'armLonger', mm: 10 }]];
const sources = SETS.map((parts) => ({ kind: 'parts', of, parts }));
const solved = sources.map((source) => tried({ source }).source);
const out = createTravelSweep(POINTS);
const sink = new Float64Array(1);

function sweeps() {
  for (const { links } of solved) sweepTravelInto(out, links.linkage, travels);
  sink[0] += out.camber[0];
}

function answers() {
  for (const source of solved) sink[0] += geometryOf({ source, travels }).outputs.camber[0];
}

const REPEATS = 10;
const repeat = (task) => () => {
  for (let i = 0; i < REPEATS; i++) task();
};
const median = (values) =>
  quantile(
    [...values].sort((a, b) => a - b),
    0.5,
  );
const { a, ratio, quartiles } = abba(repeat(answers), repeat(sweeps), 60);
const ratios = [1 / ratio, 1 / quartiles[1], 1 / quartiles[0]].map((one) => one.toFixed(2));
console.log(`Eleven outputs of ${SETS.length} sets of parts at ${POINTS} travels, links solved:`);
console.log(
  `  × the bare sweeps ${ratios[0]} (${ratios[1]} to ${ratios[2]}); ${((100 * a) / REPEATS / PLANNED_MS).toFixed(0)} % of the planned ${PLANNED_MS} ms`,
);
const sweep = median(times(sweeps, 300));
for (const [i, source] of sources.entries()) {
  const solving = median(times(() => geometry({ source, travels }), 60)) / sweep;
  const doubt = median(times(() => geometryDoubt({ source }), 30)) / sweep;
  console.log(
    `  ${JSON.stringify(SETS[i])}: solved and swept anew × all bare sweeps ${solving.toFixed(1)}, its doubt × ${doubt.toFixed(1)}`,
  );
}
