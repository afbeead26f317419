import { SEEDS } from '../core/driveway/coverage.ts';
import { partCoverage, partsMissed, STUDIED } from '../core/driveway/part-coverage.ts';

/*
 * What a part is said to change on a car that was measured in the driveway, over random three-dimensional cars, in full; the tests run
 * fewer of the same. Bundled and started by run.mjs. Throws at the end where a seed does not keep what is claimed.
 */
const CARS = Number(process.env.CARS ?? 1_000);
const percent = (share) => `${(100 * share).toFixed(1)} %`.padStart(8);

console.log(
  `${'part, over 40 mm of bump'.padEnd(36)}covered, a seed           mean ±    rms error  roll centre covered, mean ±, 95 %, its change  toe 95 %`,
);
const broken = [];
for (const [name, part] of Object.entries(STUDIED)) {
  const found = SEEDS.map((seed) => partCoverage(part, { seed, cars: CARS }));
  const [first] = found;
  console.log(
    `${name.padEnd(34)}${found.map((one) => percent(one.covered)).join('')}  ${first.plusMinus.toFixed(4)}°  ${first.error.toFixed(4)}°    ${percent(first.rollCentreCovered)} ${first.rollCentrePlusMinus.toFixed(1)} mm  ${first.rollCentre.toFixed(1)} mm  ${percent(first.rollCentreChangeCovered)} ${first.rollCentreChangePlusMinus.toFixed(1)} mm ${first.rollCentreChange.toFixed(1)} mm           ${first.toe.toFixed(2)}°`,
  );
  for (const one of found) broken.push(...partsMissed(name, one, CARS, false));
}
if (broken.length > 0) throw new Error(broken.join('\n'));
