import {
  accusedClaim,
  CLEAN,
  COMMON,
  cleanStudy,
  commonClaims,
  faultStudy,
  namedClaim,
  SEEDS,
} from '../core/readings/warnings/data-warnings-study.ts';
import { FAULTS } from '../core/readings/warnings/planted-faults.ts';
import { missed } from '../core/study-limits.ts';

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

const broken = [];
const judge = (what, claims) => broken.push(...missed(claims, false).map((claim) => `${what}: ${claim}`));
console.log('seed  clean sets                  sets  accused  told of');
for (const seed of SEEDS) {
  for (const [name, care] of Object.entries(CLEAN)) {
    const sets = name.includes('2 mm') ? SETS / 5 : SETS;
    const { accused, told } = cleanStudy(seed, sets, care);
    console.log(
      `${String(seed).padStart(4)}  ${name.padEnd(26)} ${String(sets).padStart(5)} ${percent(accused)}  ${list(told)}`,
    );
    judge(`${name}, seed ${seed}`, [accusedClaim(accused, sets)]);
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
  for (const { found } of studies) judge(fault.name, [namedClaim(found, FAULTY)]);
}
console.log('\nwhat readings of one garage have in common');
for (const common of COMMON) {
  const claims = commonClaims(common, FAULTY);
  console.log(`${common.name.padEnd(100)} ${claims.map(({ what, share }) => `${what} ${percent(share)}`).join('  ')}`);
  judge(common.name, claims);
}
if (broken.length > 0) throw new Error(broken.join('\n'));
