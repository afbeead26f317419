import { buildLinkage } from '../../../../core/linkage/build-linkage.js';
import type { Linkage } from '../../../../core/linkage/linkage.js';
import { ballJointExtended } from '../../../../core/linkage/parts/ball-joint.js';
import { withParts } from '../../../../core/linkage/parts/part.js';
import { sweepTravel } from '../../../../core/linkage/sweep.js';
import { METRIC } from '../../../../core/quantity/units.js';
import { understand } from '../../../../core/readings/table/understand.js';
import { groupsAmong } from '../../../../core/readings/warnings/differ.js';
import { normal, randomCar, randomNumbers } from '../../driveway/random-car.js';

/** How a table of passes side by side is taken. Ranges: common practice, no source. */
export interface Table {
  /** Of each set of parts; the second has the joint. */
  passes: readonly number[];
  /** mm by which the second set's ball joint is lower, its tie rod corrected. */
  mm?: number;
  /** mm between heights. */
  step: number;
  /** Lowest and highest, mm. */
  ends: readonly [number, number];
  /** Standard deviation of the gauge, degrees. */
  gauge: number;
  /** Up less down, degrees; passes go up and down in turn. */
  play?: number;
  /** Of the gauge's zero over a pass, degrees, up to so much either way. */
  drift?: number;
  /** One reading of all with its decimal point slipped. */
  slip?: boolean;
}

interface Pass {
  travel: number;
  value: number;
}

/** Passes with another zero each, heights off by 0.7 mm, written down to 0.01°. */
function passOf(linkage: Linkage, random: () => number, table: Table, isUp: boolean): Pass[] {
  const { step, ends, gauge, play = 0, drift = 0 } = table;
  const zero = -0.25 + 0.5 * random();
  const creep = drift * (2 * random() - 1);
  const count = Math.floor((ends[1] - ends[0]) / step) + 1;
  return Array.from({ length: count }, (_, i) => {
    const travel = ends[0] + i * step;
    const { inclination } = sweepTravel(linkage, [travel + 0.7 * normal(random)]);
    const along = (isUp ? i : count - 1 - i) / (count - 1);
    const value = inclination[0]! + zero + gauge * normal(random) + (isUp ? play : -play) / 2 + creep * along;
    return { travel, value: Number(value.toFixed(2)) };
  });
}

/** A table of a random car, set after set. */
function randomTable(random: () => number, table: Table): Pass[][] {
  const standard = buildLinkage(randomCar(random));
  const other = table.mm ? withParts(standard, ballJointExtended({ mm: table.mm, correctTieRod: true })) : standard;
  const passes = table.passes.flatMap((count, set) =>
    Array.from({ length: count }, (_, p) => passOf(set === 0 ? standard : other, random, table, p % 2 === 0)),
  );
  if (table.slip) {
    const pass = passes[Math.floor(random() * passes.length)]!;
    const reading = pass[Math.floor(random() * pass.length)]!;
    reading.value *= 10;
  }
  return passes;
}

const USUAL = { step: 5, ends: [-30, 50] as const, gauge: 0.03 };
/** Passes of one set. */
export const ONE_SET: Record<string, Table> = {
  'two passes': { ...USUAL, passes: [2] },
  'three passes, gauge 0.05°': { ...USUAL, passes: [3], gauge: 0.05 },
  'four passes, gauge 0.1°': { ...USUAL, passes: [4], gauge: 0.1 },
  'two passes, every 10 mm': { ...USUAL, passes: [2], step: 10 },
  'two passes, four heights': { ...USUAL, passes: [2], step: 20, ends: [-30, 30] },
  'up and down, play 0.1°': { ...USUAL, passes: [2], play: 0.1 },
  'three passes, one figure slipped': { ...USUAL, passes: [3], slip: true },
  'two passes, one figure slipped': { ...USUAL, passes: [2], slip: true },
  'three passes, drift up to 0.05°': { ...USUAL, passes: [3], drift: 0.05 },
};
/** Passes of two sets. */
export const TWO_SETS: Record<string, Table> = {
  'one pass each, 22 mm': { ...USUAL, passes: [1, 1], mm: 22 },
  'one pass each, 22 mm, every 10 mm': { ...USUAL, passes: [1, 1], mm: 22, step: 10 },
  'one pass each, 30 mm, gauge 0.05°': { ...USUAL, passes: [1, 1], mm: 30, gauge: 0.05 },
  'three passes each, 22 mm, gauge 0.05°': { ...USUAL, passes: [3, 3], mm: 22, gauge: 0.05 },
  'two passes each, 15 mm': { ...USUAL, passes: [2, 2], mm: 15 },
};

/** Shares of tables that were parted, and parted exactly between the sets. */
export function setsStudy(seed: number, tables: number, table: Table): { parted: number; exact: number } {
  const random = randomNumbers(seed);
  let [parted, exact] = [0, 0];
  for (let n = 0; n < tables; n++) {
    const groups = groupsAmong(randomTable(random, table));
    if (groups.length > 1) parted++;
    const isInOrder = groups.flat().every((pass, i) => pass === i);
    if (isInOrder && groups.map((group) => group.length).join() === table.passes.join()) exact++;
  }
  return { parted: parted / tables, exact: exact / tables };
}

/** What became of tables without headings: a column that is the average of the others, and honest columns taken for averages. */
export interface AverageStudy {
  /** Left out, or asked about, where the last column is the average. */
  found: number;
  asked: number;
  /** Left out, and asked about, where none is. */
  wronglyLeft: number;
  wronglyAsked: number;
}

export function averageStudy(seed: number, tables: number, table: Table, decimals: 2 | 3): AverageStudy {
  const random = randomNumbers(seed);
  const counts = { found: 0, asked: 0, wronglyLeft: 0, wronglyAsked: 0 };
  for (let n = 0; n < tables; n++) {
    const passes = randomTable(random, table);
    const rows = passes[0]!.map(({ travel }, r) => [travel, ...passes.map((pass) => pass[r]!.value)]);
    const average = ([, ...values]: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    const look = (sheet: (string | number)[][]) => {
      const found = understand(
        sheet.map((row) => row.map(String)),
        { quantity: 'camber', units: METRIC },
      );
      const asked = found.questions.some(({ code }) => code === 'average');
      return { asked, isLeft: found.derived.length > 0 && !asked };
    };
    const honest = look(rows);
    if (honest.isLeft) counts.wronglyLeft++;
    if (honest.asked) counts.wronglyAsked++;
    const found = look(rows.map((row) => [...row, average(row).toFixed(decimals)]));
    if (found.isLeft) counts.found++;
    if (found.asked) counts.asked++;
  }
  return {
    found: counts.found / tables,
    asked: counts.asked / tables,
    wronglyLeft: counts.wronglyLeft / tables,
    wronglyAsked: counts.wronglyAsked / tables,
  };
}

/** Tables with an average beside them. */
export const AVERAGED: Record<string, Table> = {
  'two passes': { ...USUAL, passes: [2] },
  'three passes': { ...USUAL, passes: [3] },
  'three passes, every 10 mm': { ...USUAL, passes: [3], step: 10 },
  'three passes, six heights': { ...USUAL, passes: [3], step: 16 },
  'three passes, gauge 0.1°': { ...USUAL, passes: [3], gauge: 0.1 },
};
