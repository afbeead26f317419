import { CLEAN, cleanStudy, faultStudy, SEEDS } from '../core/readings/findings-study.ts';
import { FAULTS } from '../core/readings/planted-faults.ts';

/*
 * How often clean sets of readings accuse a reading or a pass, and how often planted faults are found and named: in full; the tests
 * run some dozens a seed of the same. Bundled and started by run.mjs. Throws when more than 2 % of clean sets accuse, or less than
 * 90 % of a fault's sets name it.
 */
const SETS = Number(process.env.SETS ?? 1500);
const FAULTY = Math.round(SETS / 10);
const percent = (share) => `${(100 * share).toFixed(1)} %`.padStart(8);
const list = (counts) =>
  Object.entries(counts)
    .sort(([, a], [, b]) => b - a)
    .slice(0, 5)
    .map(([kind, count]) => `${kind} ${count}`)
    .join(', ');

let isBad = false;
console.log('seed  clean sets                  sets  accused  told of');
for (const seed of SEEDS) {
  for (const [name, care] of Object.entries(CLEAN)) {
    const sets = name.includes('2 mm') ? SETS / 5 : SETS;
    const { accused, told } = cleanStudy(seed, sets, care);
    console.log(
      `${String(seed).padStart(4)}  ${name.padEnd(26)} ${String(sets).padStart(5)} ${percent(accused)}  ${list(told)}`,
    );
    if (!(accused <= 0.02)) isBad = true;
  }
}
console.log(
  '\nfault planted                                                              found, seed by seed           and nothing else accused   told instead',
);
for (const fault of FAULTS) {
  const studies = SEEDS.map((seed) => faultStudy(fault, seed, FAULTY));
  const instead = {};
  for (const study of studies)
    for (const [key, count] of Object.entries(study.instead)) instead[key] = (instead[key] ?? 0) + count;
  const alone = studies.reduce((sum, study) => sum + study.alone, 0) / studies.length;
  console.log(
    `${fault.name.padEnd(74)} ${studies.map(({ found }) => percent(found)).join(' ')}   ${percent(alone)}   ${list(instead)}`,
  );
  if (studies.some(({ found }) => found < 0.9)) isBad = true;
}
if (isBad) throw new Error('More than 2 % of clean sets accused, or less than 90 % of a fault named.');
