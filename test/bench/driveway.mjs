import {
  AS_MEASURED_MOST,
  AT_LEAST,
  BEYOND_MOST,
  coverage,
  heldClaim,
  RATE_LEAST,
  SEEDS,
  WITH_CARE,
  WITHIN,
} from '../core/driveway/coverage.ts';
import { MUCH_BUMP_STEER, MUCH_CASTER, ORDINARY, STEERING } from '../core/driveway/random-car.ts';
import { missed } from '../core/study-limits.ts';

/*
 * How often the band of a driveway answer holds the true camber change of random three-dimensional cars, in full; the tests run
 * fewer of the same. Bundled and started by run.mjs. Throws at the end where a seed does not keep what is claimed: 93 to 97 % held, of
 * cars with much caster whose bump steer is as small as that of others more, for what is assumed of it is wide.
 */
const CARS = Number(process.env.CARS ?? 3_000);
const FEWER = Math.ceil(CARS / 3);
const percent = (share) => `${(100 * share).toFixed(1)} %`.padStart(8);

console.log(
  `${'what'.padEnd(52)} cars  covered, a seed            of the rate, a seed        as measured   mean ±    rms error`,
);
const broken = [];
/** @param claimsOf what is claimed of each seed */
function print(what, study, claimsOf = () => []) {
  const { cars = CARS, ...rest } = study;
  const found = SEEDS.map((seed) => coverage({ seed, cars, ...rest }));
  const [first] = found;
  const each = (of) => found.map((one) => percent(of(one))).join('');
  console.log(
    `${what.padEnd(50)} ${String(cars).padStart(5)}${each((one) => one.covered)}${each((one) => one.rateCovered)}  ${percent(first.asMeasured)}  ${first.plusMinus.toFixed(4)}°  ${first.error.toFixed(4)}°`,
  );
  for (const one of found) broken.push(...missed(claimsOf(one, cars), false).map((claim) => `${what}: ${claim}`));
}

const held = (limits) => (one, cars) => [heldClaim(one, cars, limits)];
const asMeasured = (one, draws, most) => ({ what: 'as measured', share: one.asMeasured, draws, most });
const beyond = (most) => (one, draws) => [{ what: 'covered', share: one.covered, draws, most }];

print('six measurements, mixed ±', { kind: ORDINARY }, (one, cars) => [
  heldClaim(one, cars, WITHIN),
  { what: 'rate', share: one.rateCovered, draws: cars, least: RATE_LEAST },
  asMeasured(one, cars, AS_MEASURED_MOST.mixed),
]);
print('kingpin in the lean’s place', { kind: ORDINARY, lean: 'kingpin' });
print('with caster', { kind: ORDINARY, also: ['caster'] }, held(WITHIN));
print('with caster and bump steer', { kind: ORDINARY, also: ['caster', 'bumpSteer'] }, held(WITHIN));
print('bump steer up to 0.012° a mm', { kind: STEERING }, held(WITHIN));
print('caster of 8 to 13°, given', { kind: MUCH_CASTER, also: ['caster'] }, held(AT_LEAST));
print('bump steer of 0.015 to 0.03° a mm, given', { kind: MUCH_BUMP_STEER, also: ['bumpSteer'] }, held(WITHIN));
print('the same, with caster', { kind: MUCH_BUMP_STEER, also: ['caster', 'bumpSteer'] }, held(WITHIN));

const few = { cars: FEWER, kind: ORDINARY };
for (const [level, name] of ['careful', 'tape and gauge', 'guess'].entries()) {
  print(`all ${name}`, { ...few, level }, (one, cars) =>
    level === 0 ? [heldClaim(one, cars, WITH_CARE), asMeasured(one, cars, AS_MEASURED_MOST.careful)] : [],
  );
}
print('all tape and gauge, kingpin', { ...few, level: 1, lean: 'kingpin' }, held([WITHIN[0], 1]));
for (const [level, name] of ['careful', 'tape and gauge'].entries()) {
  print(`all ${name}, with caster and bump steer`, { ...few, level, also: ['caster', 'bumpSteer'] });
}
print('raised by 25 to 40 mm', { ...few, drops: [-40, -25] });
print('lowered by 50 to 60 mm', { ...few, drops: [50, 60] });

console.log('\nBeyond what is covered:');
print('caster of 8 to 13°, not given', { cars: FEWER, kind: MUCH_CASTER }, beyond(BEYOND_MOST.caster));
print(
  'bump steer of 0.015 to 0.03° a mm, not given',
  { cars: FEWER, kind: MUCH_BUMP_STEER },
  beyond(BEYOND_MOST.bumpSteer),
);
if (broken.length > 0) throw new Error(broken.join('\n'));
