import { curveOf } from '../../../core/curve/curve.js';
import { solveKnownParts } from '../../../core/curve-sources/solve-parts.js';
import { type LearntCorner, learnCorner } from '../../../core/learn/learn-corner.js';
import { predictCurve } from '../../../core/learn/predict-curve.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import {
  type Corner,
  hardPoint,
  hardPointKeys,
  type Vector3,
  type WishboneCorner,
  withHardPoint,
} from '../../../core/linkage/corner.js';
import { partsOn } from '../../../core/linkage/parts/part-data.js';
import { amountsOf, type PartData, withMore } from '../../../core/linkage/parts/part-kinds.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { DEFAULT_DOUBTS, type ReadingDoubts } from '../../../core/readings/doubts.js';
import type { Reading } from '../../../core/readings/reading.js';
import { plusMinus95, standardUncertainty } from '../../../core/uncertainty/combine.js';
import { NORMAL_95 } from '../../../core/uncertainty/normal.js';
import { normal, SURE_TRAVEL_MM } from '../driveway/random-car.js';

/** Bump and droop at which a predicted change is asked, mm. */
export const ASKED_MM = [-48, -25, 25, 50] as const;
/** Heights of a pass, mm. Three passes of 17 are the 51 readings of an afternoon. */
const HEIGHTS = Array.from({ length: 17 }, (_, i) => -60 + 7.5 * i);
export const PASSES = ['a', 'b', 'c'] as const;
/** Of one coordinate by tape, standard deviation, mm. */
export const TAPED_MM = 5;

/** How much lower the studied joint is. */
export const JOINT_MM = 22;

export const PARTS: Readonly<Record<string, readonly PartData[]>> = {
  joint: [{ part: 'ballJointExtended', mm: JOINT_MM, correctTieRod: true }],
  arm: [{ part: 'armLonger', mm: 10 }],
  topMount: [{ part: 'topMountMoved', vector: [0, -15, 0] }],
};

/** No allowances: gauge and tape are what they say. */
export const EXACT: Required<ReadingDoubts> = { gaugeScale: 0, tapeScale: 0, zeroHeight: 0, drift: 0 };

/** What is wrong with an afternoon's readings beside their scatter: drawn from what is stated, or a fixed bias. */
export interface Afternoon {
  gaugeScale: number;
  tapeScale: number;
  zeroHeight: number;
  drift: number;
  /** Up less down, degrees. */
  way: number;
  passes: readonly { zero: number; height: number; drift: number; isDown?: boolean }[];
}

/** Drawn from the stated doubts. */
export function drawnAfternoon(
  random: () => number,
  doubts: Required<ReadingDoubts>,
  { isAlternating = false }: { isAlternating?: boolean } = {},
): Afternoon {
  const of = (key: keyof ReadingDoubts) => (doubts[key] / NORMAL_95) * normal(random);
  return {
    gaugeScale: of('gaugeScale'),
    tapeScale: of('tapeScale'),
    zeroHeight: of('zeroHeight'),
    drift: of('drift'),
    way: isAlternating ? 0.25 * normal(random) : 0,
    passes: PASSES.map((_, p) => ({
      zero: normal(random),
      height: 0.5 * of('zeroHeight'),
      drift: 0.3 * of('drift'),
      isDown: isAlternating && p % 2 === 1,
    })),
  };
}

/** Camber or toe of a linkage as such an afternoon reads it. */
export function readAfternoon(
  random: () => number,
  linkage: ReturnType<typeof buildLinkage>,
  { gaugeScale, tapeScale, zeroHeight, drift, way, passes }: Afternoon,
  { sd = 0.05, quantity = 'camber' as 'camber' | 'toe', heights = HEIGHTS } = {},
): Reading[] {
  return passes.flatMap(({ zero, height, drift: own, isDown }, p) => {
    const order = isDown ? [...heights].reverse() : heights;
    const at = Float64Array.from(order, (travel) => travel * (1 + tapeScale / 100) + zeroHeight + height);
    const angles = sweepTravel(linkage, at)[quantity];
    return order.map(
      (travel, i): Reading => ({
        travel,
        value:
          zero +
          (isDown ? -way / 2 : way / 2) +
          angles[i]! * (1 + gaugeScale / 100) +
          (drift + own) * (i / (order.length - 1) - 0.5) +
          sd * normal(random),
        pass: PASSES[p]!,
        going: isDown ? 'down' : 'up',
      }),
    );
  });
}

/** An unequal-arm double wishbone, every point several centimetres about; that moves as far as every car of the study. */
export function drawnWishbone(random: () => number): WishboneCorner {
  const about = ([x, y, z]: Vector3, [a, b, c]: Vector3): Vector3 => [
    x + a * (2 * random() - 1),
    y + b * (2 * random() - 1),
    z + c * (2 * random() - 1),
  ];
  for (;;) {
    const wheelCentre = about([0, 750, 310], [15, 40, 30]);
    const corner: WishboneCorner = {
      kind: 'wishbone',
      wheelCentre,
      loadedRadius: wheelCentre[2],
      camber: -1.5 + 2 * random(),
      toe: 0.2 * (2 * random() - 1),
      lowerArm: {
        front: about([150, 360, 200], [40, 30, 20]),
        rear: about([-170, 365, 205], [40, 30, 20]),
        ball: about([0, 715, 190], [15, 20, 20]),
      },
      upperArm: {
        front: about([110, 450, 470], [30, 25, 20]),
        rear: about([-130, 455, 470], [30, 25, 20]),
        ball: about([-15, 690, 500], [15, 20, 25]),
      },
      tieRod: {
        inner: about([-145, 370, 258], [20, 20, 15]),
        outer: about([-140, 695, 255], [15, 15, 15]),
      },
    };
    try {
      const { reach } = buildLinkage(corner);
      if (reach.bump >= SURE_TRAVEL_MM + 15 && reach.droop <= -SURE_TRAVEL_MM - 15) return corner;
    } catch {
      // Does not close.
    }
  }
}

/** The corner as a tape finds it. */
export function taped(random: () => number, corner: Corner, sd = TAPED_MM): Corner {
  const off = hardPointKeys(corner).reduce<Corner>((of, key) => {
    const [x, y, z] = hardPoint(of, key)!;
    return withHardPoint(of, key, [x + sd * normal(random), y + sd * normal(random), z + sd * normal(random)]);
  }, corner);
  return { ...off, plusMinus: { other: NORMAL_95 * sd } };
}

/** Parts as they really are: each amount within its tolerance, and a rod's end that was made to match a joint within the same. */
export const asMade = (random: () => number, parts: readonly PartData[]): PartData[] => {
  const off = (plusMinus: number) => (plusMinus / NORMAL_95) * normal(random);
  const made = parts.map((data) =>
    amountsOf(data).reduce((of, { path, plusMinus }) => withMore(of, path, off(plusMinus)), data),
  );
  const matches = parts.flatMap((data): PartData[] =>
    'correctTieRod' in data && data.correctTieRod
      ? [{ part: 'tieRodEndRaised', mm: off(amountsOf(data)[0]!.plusMinus) }]
      : [],
  );
  return [...made, ...matches];
};

/** One predicted change against the truth: degrees. */
export interface Outcome {
  part: string;
  mm: number;
  /** The true change. */
  real: number;
  error: number;
  plusMinus: number;
  /** Standard uncertainty: in a linear problem with normal errors nothing does better. */
  sd: number;
  /** Of the tape alone. */
  before: number;
  beforeError: number;
}

/** What is predicted of a car of which only the taped corner and the readings are known. */
export function outcomesOf(
  random: () => number,
  truth: Corner,
  learnt: LearntCorner,
  parts: Readonly<Record<string, readonly PartData[]>> = PARTS,
  made: (random: () => number, parts: readonly PartData[]) => PartData[] = asMade,
): Outcome[] {
  return Object.entries(parts).flatMap(([part, data]) => {
    const really = partsOn(made(random, data))(buildLinkage(truth));
    const at = Float64Array.from([0, ...ASKED_MM]);
    const angles = sweepTravel(really, at).camber;
    const predicted = curveOf(predictCurve(learnt, data));
    const tape = curveOf(solveKnownParts(learnt.before, data, 'as-fitted').camber);
    return ASKED_MM.flatMap((mm, i): Outcome[] => {
      const real = angles[i + 1]! - angles[0]!;
      const of = predicted.changeEstimate(mm, 0);
      const first = tape.changeEstimate(mm, 0);
      return Number.isFinite(real + of.value + first.value)
        ? [
            {
              part,
              mm,
              real,
              error: of.value - real,
              plusMinus: plusMinus95(of, predicted.data.sources),
              sd: standardUncertainty(of),
              before: plusMinus95(first, tape.data.sources),
              beforeError: first.value - real,
            },
          ]
        : [];
    });
  });
}

export const learnt = (corner: Corner, readings: readonly Reading[], allowances: ReadingDoubts = DEFAULT_DOUBTS) =>
  learnCorner({ corner, readings, allowances });
