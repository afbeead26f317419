import {
  JOINT_LIMITS,
  JOINT_MM,
  JOINT_RATIO,
  jointStudy,
  outside,
  SEEDS,
  TIE_RODS,
} from '../core/curve/joint-study.ts';
import { quantile } from './in-turn.mjs';

/*
 * At which drop a lowered ball joint breaks even, over random three-dimensional struts: 40 mm of bump, each set of parts counted from
 * its own stock height, toe set again. In full; a test runs some of the same cars, and the pages' figures are those of the last table.
 * Bundled and started by run.mjs. Throws where all of these cars are not as the tests say of a part of them.
 */
const CARS = Number(process.env.CARS ?? 2_000);
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
const broken = [];
const whole = {};
for (const tieRod of TIE_RODS) {
  const studies = SEEDS.map((seed) => jointStudy({ seeds: [seed], cars: CARS, tieRod }));
  for (const [i, study] of studies.entries()) {
    row(`${NAMES[tieRod]}, seed ${SEEDS[i]}`, study);
    if (tieRod !== 'corrected') continue;
    for (const why of outside(study.drops, JOINT_LIMITS.corrected)) broken.push(`seed ${SEEDS[i]}: ${why}`);
    if (study.none > 0) broken.push(`corrected: ${study.none} without a break-even`);
  }
  whole[tieRod] = studies.flatMap(({ drops }) => drops).sort((a, b) => a - b);
  if (tieRod === 'corrected') continue;
  for (const why of outside(whole[tieRod], JOINT_LIMITS[tieRod])) broken.push(`${tieRod}: ${why}`);
}
if (quantile(whole.behind, 0.95) >= quantile(whole.ahead, 0.1)) broken.push('behind and ahead are not apart');
console.log('\ntie rod corrected, by how much the ball is lower');
for (const lower of [10, 15, JOINT_MM, 30]) {
  const study = jointStudy({ tieRod: 'corrected', mm: lower });
  row(`${lower} mm`, study);
  const ratio = quantile(study.drops, 0.5) / lower;
  if (Math.abs(ratio - JOINT_RATIO.ratio) >= JOINT_RATIO.within)
    broken.push(`${lower} mm: ${ratio} times what it is lower`);
}
console.log('\nas the pages print them: three seeds of 200 cars');
for (const tieRod of TIE_RODS) row(NAMES[tieRod], jointStudy({ tieRod }));
if (broken.length > 0) throw new Error(broken.join('\n'));
