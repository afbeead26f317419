import { JOINT_MM, jointStudy, quantile, SEEDS, TIE_RODS } from '../core/curve/joint-study.ts';

/*
 * At which drop a lowered ball joint breaks even, over random three-dimensional struts: 40 mm of bump, each set of parts counted from
 * its own stock height, toe set again. In full; a test runs some of the same cars, and the pages' figures are those of the last table.
 * Bundled and started by run.mjs.
 */
const CARS = 2_000;
const mm = (value) => value.toFixed(2).padStart(7);
const row = (name, { drops, none }) =>
  console.log(
    name.padEnd(34),
    String(drops.length + none).padStart(5),
    String(none).padStart(5),
    ...[0.5, 0.025, 0.975].map((share) => mm(quantile(drops, share))),
  );
const NAMES = {
  corrected: 'tie rod corrected',
  behind: 'not corrected, behind the axle',
  ahead: 'not corrected, ahead of the axle',
};

console.log('break-even drop, mm                cars  none   median    2.5 %   97.5 %');
for (const tieRod of TIE_RODS) {
  for (const seed of SEEDS) row(`${NAMES[tieRod]}, seed ${seed}`, jointStudy({ seeds: [seed], cars: CARS, tieRod }));
}
console.log('\ntie rod corrected, by how much the ball is lower');
for (const lower of [10, 15, JOINT_MM, 30]) row(`${lower} mm`, jointStudy({ tieRod: 'corrected', mm: lower }));
console.log('\nas the pages print them: three seeds of 200 cars');
for (const tieRod of TIE_RODS) row(NAMES[tieRod], jointStudy({ tieRod }));
