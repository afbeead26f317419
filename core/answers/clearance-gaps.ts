import type { End, TravelBudget } from '../travel/budget.js';
import { plusMinus95 } from '../uncertainty/combine.js';
import type { Source } from '../uncertainty/estimate.js';
import { NORMAL_95 } from '../uncertainty/normal.js';
import { type Envelope, gapTo, type Placed, type Poses } from '../wheel/gaps.js';
import { DEFAULT_PLUS_MINUS_MM } from '../wheel/place.js';
import type { WheelMotion } from '../wheel/wheel-motion.js';

/** A wheel that is moved, and where its suspension is solid. */
export interface Moved {
  poses: Poses;
  envelope: Envelope;
  solid?: End | undefined;
}

/** mm; NaN out of the links' reach. */
export const gapOf = ({ poses, envelope }: Moved, one: Placed, travel: number, rack: number): number =>
  gapTo(envelope, poses.at(travel, rack), one.at(poses, travel, rack));

/**
 * 95 % of a gap, mm. A place's distance to the wheel does not know where the car stands: both its measures carry its ±, at right
 * angles. Where the suspension is solid there is also how sure that travel is. What is not known of how the wheel moves shows in
 * how the gap changes with each cause: the place is measured at the wheel, so it goes along.
 */
export function doubtOf(moved: Moved, one: Placed, travel: number, rack: number): number {
  const { solid, poses } = moved;
  const end = solid?.travel === travel ? (solid.plusMinus ?? 0) : 0;
  const slope = end > 0 ? gapOf(moved, one, travel, rack) - gapOf(moved, one, travel - 1, rack) : 0;
  const own = [one.place.plusMinus ?? DEFAULT_PLUS_MINUS_MM, slope * end].map((plusMinus) => plusMinus / NORMAL_95);
  const parts = Float64Array.from([...own, ...motionParts(moved, one, travel, rack)]);
  return plusMinus95({ value: 0, parts }, [STATED, STATED, ...(poses.motion.doubts ?? [])]);
}

const STATED: Source = { id: 'stated', label: '', dof: Number.POSITIVE_INFINITY };

/** What each doubt of the motion does to a gap by one standard uncertainty, mm, in their order. */
export function motionParts({ poses, envelope }: Moved, one: Placed, travel: number, rack: number): number[] {
  return poses.doubted.map((other, k) => {
    // Near an end of reach the other links may end a little before: then what it did last before that.
    for (let t = travel; ; t -= Math.min(Math.abs(t), BACK_MM) * Math.sign(t)) {
      const off =
        gapOf({ poses: other, envelope }, one.doubted[k]!, t, rack) - gapOf({ poses, envelope }, one, t, rack);
      if (!Number.isNaN(off) || t === 0) return off / poses.motion.doubts![k]!.by;
    }
  });
}

const BACK_MM = 10;

/** Between the travels at which the least sure is looked for, mm. */
const SURE_STEP_MM = 10;

/**
 * Where least is left of a gap once its ± is taken off: steered, that may be where the gap is not the smallest. Looked for at the ends
 * of the range and in steps between; undefined where nothing is known of how sure the motion is. A travel a step.
 */
export function* leastSure(
  moved: Moved,
  one: Placed,
  racks: readonly number[],
  [low, high]: readonly [number, number],
): Generator<undefined, { travel: number; rack: number } | undefined> {
  if (moved.poses.doubted.length === 0) return undefined;
  let found: { travel: number; rack: number } | undefined;
  let least = Number.POSITIVE_INFINITY;
  const steps = Math.max(1, Math.ceil((high - low) / SURE_STEP_MM));
  for (let i = 0; i <= steps; i++) {
    const travel = i === steps ? high : low + ((high - low) * i) / steps;
    for (const rack of racks) {
      const left = gapOf(moved, one, travel, rack) - doubtOf(moved, one, travel, rack);
      if (left < least) [least, found] = [left, { travel, rack }];
    }
    yield;
  }
  return found;
}

/** Full droop where nobody measured it, from reference height. */
const USUAL_DROOP_MM = -60;

/** Between which travels a wheel is looked at: full droop to solid, as far as its motion is known. */
export function rangeOf({ travel }: WheelMotion, { bump, droop }: TravelBudget, drop: number): [number, number] {
  const [low, high] = [travel[0]!, travel.at(-1)!];
  return [
    Math.max(low, Math.min(drop, droop.solid?.travel ?? USUAL_DROOP_MM)),
    Math.min(high, bump.solid?.travel ?? high),
  ];
}
