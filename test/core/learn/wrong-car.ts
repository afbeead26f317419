import { learnCorner } from '../../../core/learn/learn-corner.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { type Corner, hardPoint, withHardPoint } from '../../../core/linkage/corner.js';
import { partsOn } from '../../../core/linkage/parts/part-data.js';
import type { PartData } from '../../../core/linkage/parts/part-kinds.js';
import { DEFAULT_DOUBTS } from '../../../core/readings/doubts.js';
import type { Reading } from '../../../core/readings/reading.js';
import { randomNumbers } from '../driveway/random-car.js';
import { CARS } from './cells.js';
import { isAccused, median, tried } from './coverage.js';
import { drawnAfternoon, type Outcome, outcomesOf, PARTS, readAfternoon, TAPED_MM, taped } from './study.js';

/** Readings that are few, one-sided, or of another car than was measured. */
export interface Fault {
  name: string;
  /** Heights of a pass, mm. */
  heights?: readonly number[];
  isOnePass?: true;
  /** On the car while it was read, and not said. */
  unsaid?: readonly PartData[];
  tapedMm?: number;
  changed?(reading: Reading): Reading;
  /** The taped corner, wrong. */
  mistaped?(corner: Corner): Corner;
}

const from = (low: number, high: number, count: number) =>
  Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));
const longer = (mm: number): readonly PartData[] => [{ part: 'ballJointExtended', mm, correctTieRod: true }];

/** Little, but nothing of it wrong: an answer with an honest width. */
export const LITTLE: readonly Fault[] = [
  { name: 'bump alone, 0 to 60 mm', heights: from(0, 60, 9) },
  { name: 'droop alone, −60 to 0 mm', heights: from(-60, 0, 9) },
  { name: 'bump of 30 mm alone', heights: from(0, 30, 5) },
  { name: 'a single pass', isOnePass: true },
  { name: 'five heights', heights: from(-45, 45, 5) },
  { name: 'a single pass of five heights', heights: from(-45, 45, 5), isOnePass: true },
  { name: 'a single pass of four heights', heights: from(-45, 45, 4), isOnePass: true },
];

/** Wrong. */
export const WRONG: readonly Fault[] = [
  { name: 'a joint 30 mm longer on, taped to 5 mm', unsaid: longer(30) },
  { name: 'a joint 30 mm longer on, taped to 3 mm', unsaid: longer(30), tapedMm: 3 },
  { name: 'a joint 30 mm longer on, taped to 1.5 mm', unsaid: longer(30), tapedMm: 1.5 },
  { name: 'travel of the wrong sign', changed: (one) => ({ ...one, travel: -one.travel }) },
  { name: 'camber of the wrong sign', changed: (one) => ({ ...one, value: -one.value }) },
  { name: 'heights in centimetres', changed: (one) => ({ ...one, travel: one.travel / 10 }) },
  {
    name: 'the ball joint taped 40 mm too high',
    mistaped(corner) {
      const [x, y, z] = hardPoint(corner, 'lowerArm.ball')!;
      return withHardPoint(corner, 'lowerArm.ball', [x, y, z + 40]);
    },
  },
];

export interface FaultFound {
  cars: number;
  refused: string[];
  accused: number;
  /** At 25 mm with a lower joint. */
  outcomes: (Outcome & { isAccused: boolean; isContradicted: boolean })[];
}

export function faultStudy(fault: Fault, { seed, cars }: { seed: number; cars: number }): FaultFound {
  const { heights, isOnePass, unsaid = [], tapedMm = TAPED_MM, changed, mistaped } = fault;
  const random = randomNumbers(seed);
  const found: FaultFound = { cars, refused: [], accused: 0, outcomes: [] };
  for (let n = 0; n < cars; n++) {
    const truth = CARS['strut, rack behind'](random);
    const tape = taped(random, truth, tapedMm);
    const day = drawnAfternoon(random, DEFAULT_DOUBTS);
    const all = readAfternoon(random, partsOn(unsaid)(buildLinkage(truth)), day, {
      ...(heights && { heights: [...heights] }),
    });
    const some = isOnePass ? all.filter(({ pass }) => pass === 'a') : all;
    const readings = changed ? some.map(changed) : some;
    const learnt = tried(
      () => learnCorner({ corner: mistaped?.(tape) ?? tape, readings, allowances: DEFAULT_DOUBTS }),
      found.refused,
    );
    if (!learnt) continue;
    found.accused += Number(isAccused(learnt));
    const outcomes = outcomesOf(random, truth, learnt, { joint: PARTS.joint! }).filter(({ mm }) => mm === 25);
    found.outcomes.push(
      ...outcomes.map((one) => ({ ...one, isAccused: isAccused(learnt), isContradicted: learnt.widened > 1 })),
    );
  }
  return found;
}

const isHeld = ({ error, plusMinus }: Outcome) => Math.abs(error) <= plusMinus;

/** Figures of all faults: shares of cars, medians in degrees. */
export function wrongCarRows({ seeds, cars }: { seeds: readonly number[]; cars: number }) {
  return [...LITTLE, ...WRONG].map((fault) => {
    const found = seeds.map((seed) => faultStudy(fault, { seed, cars }));
    const outcomes = found.flatMap((one) => one.outcomes);
    return {
      name: fault.name,
      cars: seeds.length * cars,
      refused: found.reduce((sum, { refused }) => sum + refused.length, 0),
      accused: found.reduce((sum, { accused }) => sum + accused, 0),
      covered: outcomes.filter(isHeld).length / outcomes.length,
      /** Narrower than the tape alone, the truth outside, and nothing said. */
      silent: outcomes.filter((one) => !isHeld(one) && !one.isAccused).length / (seeds.length * cars),
      plusMinus: outcomes.length > 0 ? median(outcomes.map((one) => one.plusMinus)) : Number.NaN,
      before: outcomes.length > 0 ? median(outcomes.map((one) => one.before)) : Number.NaN,
    };
  });
}
