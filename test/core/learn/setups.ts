import { curveOf } from '../../../core/curve/curve.js';
import { solveKnownParts } from '../../../core/curve-sources/solve-parts.js';
import { type LearntCorner, learnCorner } from '../../../core/learn/learn-corner.js';
import { predictCurve } from '../../../core/learn/predict-curve.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { Corner } from '../../../core/linkage/corner.js';
import type { Linkage } from '../../../core/linkage/linkage.js';
import { partsOn } from '../../../core/linkage/parts/part-data.js';
import type { PartData } from '../../../core/linkage/parts/part-kinds.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { DEFAULT_DOUBTS } from '../../../core/readings/doubts.js';
import type { ReadingQuantity } from '../../../core/readings/reading.js';
import { plusMinus95 } from '../../../core/uncertainty/combine.js';
import { randomNumbers } from '../driveway/random-car.js';
import { CARS } from './cells.js';
import { asMade, drawnAfternoon, PARTS, readAfternoon, taped } from './study.js';

/** What was read of a car: camber with the stock parts, camber with a lower joint on, toe with the stock parts. */
export type Read = 'stock' | 'joint' | 'toe';

/** One predicted change, degrees. */
export interface SetupOutcome {
  part: string;
  quantity: ReadingQuantity;
  mm: number;
  error: number;
  plusMinus: number;
  before: number;
}

/** mm of travel. */
const ASKED_MM = [-25, 25] as const;

const ASKED: Readonly<Record<string, readonly PartData[]>> = { stock: [], joint: PARTS.joint!, arm: PARTS.arm! };

/** Cars of which this and that was read, on afternoons with one gauge and one tape; the joint's own amount is off by its tolerance. */
export function setupStudy(read: readonly Read[], { seed, cars }: { seed: number; cars: number }): SetupOutcome[] {
  const random = randomNumbers(seed);
  return Array.from({ length: cars }, () => {
    const truth = CARS['strut, rack behind'](random);
    const corner = taped(random, truth);
    const stock = buildLinkage(truth);
    const joint = partsOn(asMade(random, PARTS.joint!))(stock);
    const arm = partsOn(asMade(random, PARTS.arm!))(stock);
    const learnt = learnCorner(readOf(random, read, { corner, stock, joint }));
    return Object.entries({ stock, joint, arm }).flatMap(([part, really]) => outcomes(learnt, part, really));
  }).flat();
}

function readOf(
  random: () => number,
  read: readonly Read[],
  { corner, stock, joint }: { corner: Corner; stock: Linkage; joint: Linkage },
) {
  const day = drawnAfternoon(random, DEFAULT_DOUBTS);
  const { gaugeScale, tapeScale, drift } = day;
  const other = { ...drawnAfternoon(random, DEFAULT_DOUBTS), gaugeScale, tapeScale, drift };
  const ofToe = { ...drawnAfternoon(random, DEFAULT_DOUBTS), tapeScale };
  const sets = {
    readings: readAfternoon(random, stock, day),
    onJoint: readAfternoon(random, joint, other),
    toe: readAfternoon(random, stock, ofToe, { quantity: 'toe' }),
  };
  return {
    corner,
    allowances: DEFAULT_DOUBTS,
    ...(read.includes('stock') && { readings: sets.readings }),
    ...(read.includes('joint') && { setups: [{ parts: PARTS.joint!, readings: sets.onJoint }] }),
    ...(read.includes('toe') && { toe: sets.toe }),
  };
}

function outcomes(learnt: LearntCorner, part: string, really: Linkage): SetupOutcome[] {
  const swept = sweepTravel(really, [0, ...ASKED_MM]);
  return (['camber', 'toe'] as const).flatMap((quantity) => {
    const predicted = curveOf(predictCurve(learnt, ASKED[part]!, quantity));
    const tape = curveOf(solveKnownParts(learnt.before, ASKED[part]!, 'as-fitted')[quantity]!);
    return ASKED_MM.flatMap((mm, i): SetupOutcome[] => {
      const change = predicted.changeEstimate(mm, 0);
      const error = change.value - (swept[quantity][i + 1]! - swept[quantity][0]!);
      const plusMinus = plusMinus95(change, predicted.data.sources);
      const before = plusMinus95(tape.changeEstimate(mm, 0), tape.data.sources);
      return Number.isFinite(error + before) ? [{ part, quantity, mm, error, plusMinus, before }] : [];
    });
  });
}

export const isHeld = ({ error, plusMinus }: { error: number; plusMinus: number }): boolean =>
  Math.abs(error) <= plusMinus;
