import { describe, expect, it } from 'vitest';
import { learnCorner } from '../../../core/learn/learn-corner.js';
import { TURNED, turnedRound } from '../../../core/learn/turned.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { Corner } from '../../../core/linkage/corner.js';
import { partsOn } from '../../../core/linkage/parts/part-data.js';
import { InputError } from '../../../core/quantity/problem.js';
import { DEFAULT_DOUBTS } from '../../../core/readings/doubts.js';
import type { Reading } from '../../../core/readings/reading.js';
import { randomNumbers } from '../driveway/random-car.js';
import { CARS } from './cells.js';
import { drawnAfternoon, PARTS, readAfternoon, taped } from './study.js';

const HEIGHTS = Array.from({ length: 17 }, (_, i) => -50 + 6.25 * i);
const CARS_DRAWN = 12;

/** A car taped to 2 mm and read in three passes, and one pass more of whatever linkage. */
function drawn(seed: number) {
  const random = randomNumbers(seed);
  const kind = seed % 2 ? 'strut, rack behind' : 'strut, rack ahead';
  const truth = CARS[kind](random);
  const corner = taped(random, truth, 2);
  const day = drawnAfternoon(random, DEFAULT_DOUBTS, { isAlternating: seed % 3 === 0 });
  const read = (linkage: ReturnType<typeof buildLinkage>, passes = day.passes) =>
    readAfternoon(random, linkage, { ...day, passes }, { sd: 0.03, heights: HEIGHTS });
  const readings = read(buildLinkage(truth));
  const more = (linkage: ReturnType<typeof buildLinkage>): Reading[] =>
    read(linkage, day.passes.slice(0, 1)).map((one) => ({ ...one, pass: 'd' }));
  return { truth, corner, readings, more, other: () => CARS[kind](random) };
}

const all = Array.from({ length: CARS_DRAWN }, (_, i) => drawn(i + 1));

function problemOf(corner: Corner, readings: readonly Reading[]) {
  try {
    return learnCorner({ corner, readings });
  } catch (error) {
    if (error instanceof InputError) return error.problems[0]!;
    throw error;
  }
}

describe('a pass that does not belong', () => {
  it('is named, with its own chi-square, where it was read with a lower joint on; and no slip of the gauge is told in its place', () => {
    for (const { truth, corner, readings, more } of all) {
      const on = partsOn(PARTS.joint!)(buildLinkage(truth));
      const { odd, slips } = learnCorner({ corner, readings: [...readings, ...more(on)] });
      expect(odd).toMatchObject({ pass: 'd', isEither: false });
      expect(odd!.perDof).toBeGreaterThan(5);
      expect(slips).toEqual([]);
    }
  });

  it('is named where it is of another car, unless that one happens to have the same curve', () => {
    const found = all.map(({ corner, readings, more, other }) =>
      learnCorner({ corner, readings: [...readings, ...more(buildLinkage(other()))] }),
    );
    expect(found.filter(({ odd }) => odd && odd.pass !== 'd')).toEqual([]);
    expect(found.filter(({ odd }) => odd).length).toBeGreaterThanOrEqual(0.75 * CARS_DRAWN);
  });

  it('is none of a clean set, and none of one whose gauge slipped: that is told as a slip', () => {
    for (const { corner, readings } of all) {
      expect(learnCorner({ corner, readings }).odd).toBeUndefined();
      const slipped = readings.map((one, i) =>
        one.pass === 'b' && i % 17 >= 8 ? { ...one, value: one.value + 0.3 } : one,
      );
      const { odd, slips } = learnCorner({ corner, readings: slipped });
      expect(odd).toBeUndefined();
      expect(slips.map(({ pass }) => pass)).toEqual(['b']);
    }
  });

  it('is none where it was begun some millimetres higher: that is told as its height, and taken into account', () => {
    for (const { truth, corner, readings, more } of all) {
      const high = more(buildLinkage(truth)).map((one) => ({ ...one, travel: one.travel - 6 }));
      expect(learnCorner({ corner, readings: [...readings, ...high] }).odd).toBeUndefined();
    }
  });
});

describe('readings that no corner near the taped one gives', () => {
  it.each(TURNED)('are told what would have to be turned round, and nothing else: %s', (how) => {
    const found = all.slice(0, 6).map(({ corner, readings }) => {
      const times = how === 'centimetres' ? 0.1 : how === 'inches' ? 1 / 25.4 : undefined;
      const wrong = times
        ? readings.map((one) => ({ ...one, travel: times * one.travel }))
        : turnedRound({ readings }, how).readings;
      const told = problemOf(corner, wrong);
      return 'code' in told ? told.other : (told.turned ?? (told.widened > 1 ? 'contradicting' : 'learnt'));
    });
    expect(found.filter((one) => one === how).length).toBeGreaterThanOrEqual(5);
    expect(found).not.toContain('learnt');
    expect(found.filter((one) => (TURNED as readonly unknown[]).includes(one) && one !== how)).toEqual([]);
  });

  it('of another car altogether are told nothing of the kind by a fit that does not hold', () => {
    for (const { corner, readings } of all.slice(0, 3)) {
      const told = problemOf(
        corner,
        readings.map((one) => ({ ...one, value: 8 * one.value })),
      );
      expect(told).toMatchObject({ code: 'inconsistent' });
      expect(told).not.toHaveProperty('other');
    }
  });
});
