import { describe, expect, it } from 'vitest';
import { learnCorner } from '../../../core/learn/learn-corner.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { randomNumbers } from '../driveway/random-car.js';
import { missed, ownSeeds, standardError, together } from '../study-limits.js';
import { BIASED, type Cell, STATED } from './cells.js';
import { claimsMissed, drawnCar, pooled, rootMeanSquare, rowsOf, study } from './coverage.js';
import { heightStudy, slipStudy } from './faults.js';
import { drawnAfternoon, PARTS, readAfternoon } from './study.js';

/** The full study runs in the bench: `node test/bench/run.mjs learn`. */
const CARS = 4;
const ofJoint = (cell: Cell): Cell => ({ ...cell, parts: { joint: PARTS.joint! } });
const drawn = (cells: readonly Cell[], cars = CARS) =>
  cells.map((cell, c) => pooled(ownSeeds(c).map((seed) => study(cell, { seed, cars }))));

describe('what a part would change, predicted from the stock readings of a taped corner, over random cars', () => {
  const cells = STATED.map(ofJoint);
  const found = drawn(cells);

  const kinds = ['exact', 'allowances', 'allowances, up and down in turn'];

  it.each(kinds)('is held by its band whatever the car, and never refused: %s', (kind) => {
    const all = pooled(found.filter((_, c) => cells[c]!.name.endsWith(`, ${kind}`)));
    expect(all.refused).toEqual([]);
    const claims = rowsOf(all.outcomes).map(({ mm, covered: share, draws }) => {
      return { what: `${mm} mm`, share, draws, least: 0.93, most: 0.97 };
    });
    expect(missed(claims, true)).toEqual([]);
  });

  it('is held in 93 to 97 % of all of them together, near and far', () => {
    const all = pooled(found);
    const claims = rowsOf(all.outcomes).map(({ mm, covered: share, draws }) => {
      return { what: `${mm} mm`, share, draws, least: 0.93, most: 0.97 };
    });
    expect(missed(claims, true)).toEqual([]);
    // At −48 and +50 mm beyond the bound by no more than by chance.
    for (const { mm, overBound, draws } of rowsOf(all.outcomes)) {
      const chance = 2 * Math.sqrt(1 / (2 * draws));
      expect(overBound, `rms error at ${mm} mm`).toBeLessThan((Math.abs(mm) > 25 ? 1.25 : 1.15) + chance);
    }
    expect(missed([{ what: 'accused', share: all.accused / all.cars, draws: all.cars, most: 0.02 }], true)).toEqual([]);
  });

  it('is at least 5 times narrower than from the tape alone, with the usual allowances 3.3 times, up and down in turn 5', () => {
    const median = (c: number) => rowsOf(found[c]!.outcomes).find(({ mm }) => mm === 25)!.narrower;
    cells.forEach(({ name, doubts, isAlternating }, c) => {
      // The medians of the bench are no nearer than 3 % to what is claimed; those of few cars stray by as much.
      const least = doubts.drift === 0 || isAlternating ? 5 : 3.3;
      expect(median(c), name).toBeGreaterThan(0.96 * least);
    });
  });

  it('beats the stock curve moved by 1.1 times what the joint is lower, which tells nothing where droop was not read', () => {
    const { baseline } = pooled(found);
    for (const mm of [-25, 25, 50]) {
      const own = baseline.filter((one) => one.mm === mm);
      const plain = rootMeanSquare(own.map(({ error }) => error));
      expect(rootMeanSquare(own.map(({ ofModel }) => ofModel)), `${mm} mm`).toBeLessThan(0.9 * plain);
      // Nearly suffices: some hundredths of a degree.
      expect(plain).toBeLessThan(0.05);
    }
    expect(baseline.filter(({ mm }) => mm === -48)).toEqual([]);
  });
});

describe('a fixed error of gauge, tape or part', () => {
  const inside = BIASED.filter(({ goal }) => goal === 'inside');
  it('inside its allowance leaves the truth in the band', () => {
    for (const cell of inside) expect(claimsMissed(cell, study(cell, { seed: 4, cars: CARS }), true)).toEqual([]);
  });

  it('beyond it does not: drift of 0.2° in all passes is missed more often than not', () => {
    const cell = BIASED.find(({ name }) => name.includes('drift 0.2°'))!;
    const [row] = rowsOf(study(cell, { seed: 4, cars: 3 * CARS }).outcomes);
    expect(row!.covered).toBeLessThan(0.5 + 1.645 * standardError(0.5, row!.draws));
  });
});

describe('what went wrong in one of three passes', () => {
  const upwards = STATED.filter(({ isAlternating, cars }) => !isAlternating && cars !== 'wishbone');
  it('a slip of 0.2° inside it is told in nine of ten sets, and of clean ones in one of fifty', () => {
    const found = upwards.map((cell, c) => slipStudy(cell, { seed: 30 + c, cars: 12 }));
    const told = found.map(({ inside, told: of }) => ({ what: 'told', share: of / inside, draws: inside, least: 0.9 }));
    const clean = found.map(({ clean: draws, accused }) => ({
      what: 'clean',
      share: accused / draws,
      draws,
      most: 0.02,
    }));
    expect(missed([together('told', told), together('clean', clean)], true)).toEqual([]);
    const all = found.reduce((sum, one) => sum + one.told, 0);
    const inPlace = found.reduce((sum, one) => sum + one.inPlace, 0);
    expect(inPlace / all).toBeGreaterThan(0.85);
  });

  it('a start 1 to 3 mm higher or lower is estimated with a ± that holds', () => {
    const found = STATED.filter(({ doubts }) => doubts.zeroHeight > 0).map((cell, c) =>
      heightStudy(cell, { seed: 40 + c, cars: 7 }),
    );
    const claims = found.map(({ covered, cars }) => ({
      what: 'height',
      share: covered / cars,
      draws: cars,
      least: 0.93,
    }));
    expect(missed([together('height', claims)], true)).toEqual([]);
  });

  it('one begun 20 mm higher by a finer gauge is accused in most sets, no other pass with it, and nobody where all began alike', () => {
    const cell = upwards[1]!;
    const random = randomNumbers(50);
    let told = 0;
    for (let n = 0; n < 6; n++) {
      const { truth, corner } = drawnCar(random, cell);
      const day = drawnAfternoon(random, cell.doubts);
      const readings = readAfternoon(random, buildLinkage(truth), day, { sd: 0.02 });
      const heightsOf = (of: typeof readings) => learnCorner({ corner, readings: of, allowances: cell.doubts }).passes;
      expect(heightsOf(readings).some(({ height }) => height!.isOff)).toBe(false);
      const off = heightsOf(readings.map((one) => (one.pass === 'b' ? { ...one, travel: one.travel - 20 } : one)));
      told += Number(off[1]!.height!.isOff);
      expect(off[0]!.height!.isOff || off[2]!.height!.isOff).toBe(false);
    }
    expect(told).toBeGreaterThan(3);
  });
});
