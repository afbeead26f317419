import { ONE_SET, setsStudy, TWO_SETS } from '../core/readings/sets-study.ts';

/*
 * How often passes of one set of parts are told to differ, and passes of two sets found and parted between them, without any names:
 * in full; the tests run some dozens a seed of the same. Bundled and started by run.mjs. Throws when more than 2 % of the passes of
 * one set are parted.
 */
const TABLES = Number(process.env.TABLES ?? 500);
const SEEDS = [1, 2, 3];
const percent = (share) => `${(100 * share).toFixed(1)} %`.padStart(8);

let isBad = false;
console.log('passes of one set                             parted, seed by seed');
for (const [name, table] of Object.entries(ONE_SET)) {
  const studies = SEEDS.map((seed) => setsStudy(seed, TABLES, table));
  console.log(`${name.padEnd(44)} ${studies.map(({ parted }) => percent(parted)).join(' ')}`);
  if (studies.some(({ parted }) => parted > 0.02)) isBad = true;
}
console.log('\npasses of two sets, the second a lower joint   parted, seed by seed          exactly between the sets');
for (const [name, table] of Object.entries(TWO_SETS)) {
  const studies = SEEDS.map((seed) => setsStudy(seed, TABLES, table));
  const list = (key) => studies.map((study) => percent(study[key])).join(' ');
  console.log(`${name.padEnd(44)} ${list('parted')}   ${list('exact')}`);
}
if (isBad) throw new Error('More than 2 % of passes of one set parted.');
