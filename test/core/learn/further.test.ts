import { describe, expect, it } from 'vitest';
import { learnCorner } from '../../../core/learn/learn-corner.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { DEFAULT_DOUBTS } from '../../../core/readings/doubts.js';
import type { Reading } from '../../../core/readings/reading.js';
import { randomNumbers } from '../driveway/random-car.js';
import { referenceCorner } from '../linkage/reference-corner.js';
import { type FurtherStudy, furtherStudy, predicted } from './further.js';
import { drawnAfternoon, readAfternoon, taped } from './study.js';

const STUDIES: readonly FurtherStudy[] = [
  { seed: 1, cars: 'strut, rack behind' },
  { seed: 2, cars: 'strut, rack ahead' },
  { seed: 1, cars: 'wishbone' },
  { seed: 1, cars: 'driveway' },
  { seed: 2, cars: 'driveway' },
  { seed: 3, cars: 'driveway', isAlternating: true },
];

describe('what a further measurement is said to leave of a ±, and what it leaves once it was made', () => {
  const found = STUDIES.map(furtherStudy);

  it('is the same within 15 %, for every candidate and car: the scatter of the readings is estimated anew with them', () => {
    const off = found.flatMap((all, k) =>
      all
        .filter(({ promised, reached }) => Math.abs(reached / promised - 1) > 0.15)
        .map((one) => ({ ...STUDIES[k], ...one })),
    );
    expect(off).toEqual([]);
    expect(found.flat().length).toBeGreaterThan(3 * STUDIES.length);
  });

  it('names the one that narrows most: none that was put after it comes out narrower by more than a tenth', () => {
    for (const all of found) {
      const [first, ...others] = all;
      for (const { reached, id } of others) expect(first!.reached, id).toBeLessThan(1.1 * reached);
    }
  });

  it('is a pass the other way where all went up, since what they drift alike no other pass shows; not travel beyond their ends', () => {
    for (const [k, all] of found.entries()) {
      if (STUDIES[k]!.isAlternating) continue;
      const of = (id: string) => all.find((one) => one.id === id)!;
      expect(all[0]!.id).toBe('otherWay');
      expect(of('moreTravel').promised / of('moreTravel').before).toBeGreaterThan(0.75);
      expect(of('otherWay').reached / of('otherWay').before).toBeLessThan(0.8);
    }
  });
});

describe('more readings of the same data', () => {
  const heights = Array.from({ length: 17 }, (_, i) => -50 + 6.25 * i);
  const random = randomNumbers(5);
  const corner = taped(random, referenceCorner, 2);
  const drawn = readAfternoon(random, buildLinkage(referenceCorner), drawnAfternoon(random, DEFAULT_DOUBTS), {
    heights,
  });
  const spread = (readings: readonly Reading[]) => predicted({ kind: 'corner', corner }, readings).predicted.plusMinus!;
  const scatterOf = (readings: readonly Reading[]) => learnCorner({ corner, readings }).estimated.sets[0]!.sd;

  it('one left out of a pass makes the drift no better known: the ± is wider without it, but for its share of the scatter', () => {
    const pass = drawn.filter(({ pass: name }) => name === 'a');
    for (const left of [-25, 0, 25]) {
      const fewer = pass.filter(({ travel }) => travel !== left);
      const bySd = scatterOf(pass) / scatterOf(fewer);
      expect(spread(pass) / spread(fewer)).toBeLessThan(Math.max(1, bySd) + 0.003);
    }
  });

  it('a pass cut short makes the drift that all share no better known', () => {
    const cut = drawn.filter(({ pass, travel }) => pass !== 'b' || travel < 0);
    const bySd = scatterOf(drawn) / scatterOf(cut);
    expect(spread(drawn) / spread(cut)).toBeLessThan(Math.max(1, bySd) + 0.003);
  });
});
