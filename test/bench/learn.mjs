import { BIASED, SEEDS, STATED } from '../core/learn/cells.ts';
import { claimsMissed, median, pooled, rootMeanSquare, rowsOf, study } from '../core/learn/coverage.ts';
import { drivewayClaims, drivewayRows, learntDriveway, pooledDriveways } from '../core/learn/driveway-coverage.ts';
import { heightStudy, slipStudy } from '../core/learn/faults.ts';
import { furtherStudy } from '../core/learn/further.ts';
import { EXACT } from '../core/learn/study.ts';
import { wrongCarRows } from '../core/learn/wrong-car.ts';
import { missed } from '../core/study-limits.ts';
import { peerTable } from './learn-peer.mjs';

/*
 * How well a corner that readings have corrected tells what a part not yet bought would change, over random invented cars, in full; the
 * tests run fewer of the same. Bundled and started by run.mjs. Throws at the end where a cell does not keep what is claimed.
 * CARS: so many of each cell and seed. TABLES: which of them, by name, with commas between.
 */
const CARS = Number(process.env.CARS ?? 500);
const FEWER = Math.ceil(CARS / 3);
const wanted = process.env.TABLES?.split(',');
const percent = (share) => `${(100 * share).toFixed(1)} %`.padStart(8);
const degrees = (value) => `${value.toFixed(4)}°`.padStart(9);
const broken = [];
const seeds = (cell) => SEEDS.map((seed) => 3 * cell + seed);
const table = (name, print) => {
  if (!wanted || wanted.includes(name)) print();
};

function printCell(cell, c, cars) {
  const found = pooled(seeds(c).map((seed) => study(cell, { seed, cars })));
  const { cars: all, accused, slipped, contradicted, refused } = found;
  console.log(
    `${cell.name} (${cell.goal}; ${all} cars, ${refused.length} refused): accused ${percent(accused / all)}, of a slip ${percent(slipped / all)}, contradicting ${percent(contradicted / all)}`,
  );
  for (const row of rowsOf(found.outcomes)) {
    console.log(
      `  ${row.part.padEnd(10)}${String(row.mm).padStart(4)} mm  held ${percent(row.covered)} of ${row.draws}  ±${degrees(row.plusMinus)}  tape alone ±${degrees(row.before)} (held ${percent(row.beforeCovered)})  ${row.narrower.toFixed(2).padStart(5)} times narrower  rms ${degrees(row.rms)}, ${row.overBound.toFixed(2)} of the bound`,
    );
  }
  broken.push(...claimsMissed(cell, found, false));
  return found;
}

const baselines = [];
table('stated', () => {
  console.log('What is wrong with the readings is drawn from what is stated of gauge and tape:');
  STATED.forEach((cell, c) => {
    baselines.push([cell.name, printCell(cell, c, CARS).baseline]);
  });
  console.log(
    '\nA joint lower by 22 mm with its rod: the stock curve moved by 1.1 times that, beside the links, rms error:',
  );
  for (const [name, all] of baselines) {
    for (const mm of [-48, -25, 25, 50]) {
      const own = all.filter((one) => one.mm === mm);
      if (own.length === 0) continue;
      const held = own.filter(({ error, plusMinus }) => Math.abs(error) <= plusMinus).length / own.length;
      const [plain, links] = [({ error }) => error, ({ ofModel }) => ofModel].map((of) => rootMeanSquare(own.map(of)));
      console.log(
        `  ${name.padEnd(52)}${String(mm).padStart(4)} mm  ${degrees(plain)} (its own band holds ${percent(held)})  links ${degrees(links)}`,
      );
    }
  }
});

table('biased', () => {
  console.log('\nA fixed bias, all else right; strut, rack behind, a lower joint with its rod:');
  BIASED.forEach((cell, c) => {
    printCell(cell, 100 + c, cell.goal === 'beyond' ? FEWER : CARS);
  });
});

table('passes', () => {
  console.log('\nA slip of 0.2° in one of three passes; inside: two readings at least on either side:');
  STATED.forEach((cell, c) => {
    const found = seeds(200 + c).map((seed) => slipStudy(cell, { seed, cars: FEWER }));
    const of = (key) => found.reduce((sum, one) => sum + one[key], 0);
    console.log(
      `  ${cell.name.padEnd(52)} told ${percent(of('told') / of('inside'))} of ${of('inside')}, there and of its sign ${percent(of('inPlace') / of('told'))}; anywhere ${percent(of('toldAnywhere') / of('anywhere'))}; clean sets accused ${percent(of('accused') / of('clean'))}`,
    );
    if (cell.isAlternating) return;
    const claims = [{ what: 'slips told', share: of('told') / of('inside'), draws: of('inside'), least: 0.9 }];
    broken.push(...missed(claims, false).map((claim) => `${cell.name}: ${claim}`));
  });
  console.log('\nOne of three passes started 1 to 3 mm off:');
  STATED.forEach((cell, c) => {
    if (cell.doubts.zeroHeight === 0) return;
    const found = seeds(300 + c).map((seed) => heightStudy(cell, { seed, cars: FEWER, isAsked: true }));
    const cars = 3 * FEWER;
    const covered = found.reduce((sum, one) => sum + one.covered, 0) / cars;
    const rows = rowsOf(found.flatMap(({ outcomes }) => outcomes));
    console.log(
      `  ${cell.name.padEnd(52)} its height held ${percent(covered)} of ${cars}, ±${median(found.flatMap(({ plusMinus }) => plusMinus)).toFixed(1)} mm; the joint's change at ${rows.map(({ mm, covered: held }) => `${mm} mm ${percent(held)}`).join(', ')}`,
    );
    const claims = [{ what: 'heights', share: covered, draws: cars, least: 0.93 }];
    broken.push(...missed(claims, false).map((claim) => `${cell.name}: ${claim}`));
  });
});

table('driveway', () => {
  console.log(
    '\nFrom six measurements and readings, three-dimensional cars; camber change over 40 mm with a part on, toe set again:',
  );
  for (const [name, more] of [
    ['mixed ±, allowances', {}],
    ['mixed ±, exact', { doubts: EXACT }],
    ['tape and gauge, exact', { doubts: EXACT, level: 1 }],
  ]) {
    const rows = drivewayRows(pooledDriveways(SEEDS.map((seed) => learntDriveway({ seed, cars: FEWER, ...more }))));
    for (const { what, draws, covered, plusMinus, before, rms } of rows) {
      const digits = before === undefined ? 1 : 4;
      const unit = before === undefined ? ' mm' : '°';
      console.log(
        `  ${name.padEnd(24)}${what.padEnd(44)} held ${percent(covered)} of ${draws}  ±${plusMinus.toFixed(digits)}${unit}${before === undefined ? '' : `, six measurements alone ±${before.toFixed(4)}°`}  rms ${rms.toFixed(digits)}${unit}`,
      );
    }
    broken.push(...missed(drivewayClaims(rows), false).map((claim) => `${name}: ${claim}`));
  }
});

table('wrong', () => {
  console.log(
    '\nReadings of another car than was measured, few of them, or on one side; a lower joint with its rod, at 25 mm:',
  );
  for (const { name, cars, refused, accused, covered, silent, plusMinus, before } of wrongCarRows({
    seeds: SEEDS,
    cars: Math.ceil(FEWER / 2),
  })) {
    console.log(
      `  ${name.padEnd(44)} refused ${percent(refused / cars)}  accused ${percent(accused / cars)}  held ${percent(covered)} of the rest  ±${degrees(plusMinus)} (tape ±${degrees(before)})  falsely narrow and nothing said ${percent(silent)}`,
    );
  }
});

table('further', () => {
  console.log('\nWhat a further measurement was said to bring a ± to, and what it brought it to, median of cars:');
  for (const cars of ['strut, rack behind', 'strut, rack ahead', 'wishbone', 'driveway']) {
    for (const isAlternating of [false, true]) {
      const all = Array.from({ length: 12 }, (_, seed) => furtherStudy({ seed: seed + 1, cars, isAlternating })).flat();
      for (const id of new Set(all.map((one) => one.id))) {
        const own = all.filter((one) => one.id === id);
        const of = (figure) => median(own.map(figure));
        console.log(
          `  ${cars.padEnd(20)}${(isAlternating ? 'up and down' : 'all up').padEnd(13)}${id.padEnd(24)}${String(own.length).padStart(3)} cars  ±${degrees(of(({ before }) => before))}  promised ±${degrees(of(({ promised }) => promised))}  reached ±${degrees(of(({ reached }) => reached))}  ratio ${of(({ promised, reached }) => reached / promised).toFixed(2)}`,
        );
      }
    }
  }
});

table('peer', peerTable);
if (broken.length > 0) throw new Error(broken.join('\n'));
