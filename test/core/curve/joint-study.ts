import { compareCurves } from '../../../core/answers/compare.js';
import { partCurve } from '../../../core/answers/part-curve.js';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import { ballJointExtended, toeReset } from '../../../core/linkage/parts/index.js';
import { quantile } from '../../bench/in-turn.mjs';
import { randomCar, randomNumbers } from '../driveway/random-car.js';

/** Seeds of the tests and of the bench. */
export const SEEDS = [1, 2, 3] as const;
/** Of each seed: from these the pages' figures are made. */
export const CARS = 200;
/** mm of bump over which camber changes are compared. */
export const BUMP_MM = 40;
/** By how much the joint's ball is lower, mm. */
export const JOINT_MM = 22;

/** With the tie rod's outer end lowered alike; not, on a car whose tie rod lies behind its axle; not, and it lies before it. */
export type TieRod = 'corrected' | 'behind' | 'ahead';
export const TIE_RODS: readonly TieRod[] = ['corrected', 'behind', 'ahead'];

/**
 * The first drop, mm, from which a lowered joint adds no more camber over the bump than the standard one from stock height. Both are
 * counted from their own stock height, toe is set again after the joint went in.
 */
export function jointBreakEven(corner: StrutCorner, isTieRodCorrected: boolean, mm = JOINT_MM): number | undefined {
  const joint = ballJointExtended({ mm, correctTieRod: isTieRodCorrected });
  const curves = [partCurve(corner), partCurve(corner, joint, (linkage) => toeReset(linkage, corner.toe))];
  const { breakEvens } = compareCurves({
    curves: curves.map((data) => ({ curve: curveFrom(data) })),
    heights: [0],
    bump: BUMP_MM,
  });
  const change = breakEvens[0]?.change;
  if (change?.kind === 'at') return change.drop;
  return change?.kind === 'two' ? change.drops[0] : undefined;
}

const isRodBehind = ({ lowerArm, tieRod }: StrutCorner): boolean => tieRod.outer[0] < lowerArm.ball[0];

/** Random three-dimensional struts, those of which it is true that their tie rod lies so. */
export function* jointCars(seed: number, cars: number, tieRod: TieRod): Generator<StrutCorner> {
  const random = randomNumbers(seed);
  for (let n = 0; n < cars; n++) {
    const corner = randomCar(random);
    if (tieRod === 'corrected' || isRodBehind(corner) === (tieRod === 'behind')) yield corner;
  }
}

export interface JointStudy {
  /** mm, ascending, of the cars that have a break-even within the travel of their links. */
  drops: number[];
  none: number;
}

/** The break-even drops of random cars with a lowered joint. */
export function jointStudy({
  seeds = SEEDS,
  cars = CARS,
  tieRod,
  mm = JOINT_MM,
}: {
  seeds?: readonly number[];
  cars?: number;
  tieRod: TieRod;
  mm?: number;
}): JointStudy {
  const drops: number[] = [];
  let none = 0;
  for (const seed of seeds) {
    for (const corner of jointCars(seed, cars, tieRod)) {
      const drop = jointBreakEven(corner, tieRod === 'corrected', mm);
      if (drop === undefined) none++;
      else drops.push(drop);
    }
  }
  return { drops: drops.sort((a, b) => a - b), none };
}

/** What the study says of its cars, mm: the median within so much, and the quantiles named above or below so much. */
export interface JointLimits {
  median: readonly [mm: number, within: number];
  above?: readonly [share: number, mm: number];
  below?: readonly [share: number, mm: number];
}

/** With the tie rod corrected, of every seed; and with it left alone, of all seeds together. */
export const JOINT_LIMITS: Record<TieRod, JointLimits> = {
  corrected: { median: [24.4, 0.4], above: [0.025, 22.5], below: [0.975, 27.8] },
  behind: { median: [14, 1.5] },
  ahead: { median: [33, 2.5] },
};
/** Median over what the joint was lowered by, at 10 as at 30 mm, and within how much. */
export const JOINT_RATIO = { ratio: 1.1, within: 0.05 } as const;

/** Where drops are not what is said; a median or quantile of fewer cars keeps the same limits. */
export function outside(drops: readonly number[], { median, above, below }: JointLimits): string[] {
  const [middle, within] = median;
  const found = (share: number) => quantile(drops, share).toFixed(2);
  return [
    ...(Math.abs(quantile(drops, 0.5) - middle) < within ? [] : [`median ${found(0.5)}, not ${middle} ± ${within}`]),
    ...(!above || quantile(drops, above[0]) > above[1]
      ? []
      : [`quantile ${above[0]} ${found(above[0])}, not above ${above[1]}`]),
    ...(!below || quantile(drops, below[0]) < below[1]
      ? []
      : [`quantile ${below[0]} ${found(below[0])}, not below ${below[1]}`]),
  ];
}
