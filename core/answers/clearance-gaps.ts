import { causeOf } from '../linkage/causes.js';
import type { End, TravelBudget } from '../travel/budget.js';
import { type Contribution, contributions, plusMinus95 } from '../uncertainty/combine.js';
import type { Source } from '../uncertainty/estimate.js';
import { NORMAL_95 } from '../uncertainty/normal.js';
import { type Envelope, gapTo, type Poses } from '../wheel/gaps.js';
import { DEFAULT_PLUS_MINUS_MM } from '../wheel/place.js';
import type { Placed } from '../wheel/placed.js';
import type { Spot } from '../wheel/tightest.js';
import type { WheelMotion } from '../wheel/wheel-motion.js';

/** A wheel that is moved, and where its suspension is solid. */
export interface Moved {
  poses: Poses;
  envelope: Envelope;
  solid?: End | undefined;
}

/** mm; NaN out of the links' reach. @param steer degrees; see Poses */
export const gapOf = ({ poses, envelope }: Moved, one: Placed, travel: number, steer: number): number =>
  gapTo(envelope, poses.at(travel, steer), one.at(poses, travel, steer));

/** How much of the carrier's way a place in between goes: 95 % of it. Common practice, no source. */
const SHARE_PLUS_MINUS = 0.15;

/**
 * 95 % of a gap, mm. A place's distance to the wheel does not know where the car stands: both its measures carry its ±, at right
 * angles. Where the suspension is solid there is also how sure that travel is; of what goes a share of the way, how sure the share.
 * What is not known of how the wheel moves shows in how the gap changes with each cause of it; the place was measured at the wheel,
 * so it goes along.
 */
export function doubtOf(moved: Moved, one: Placed, travel: number, steer: number): number {
  const stated = statedParts(moved, one, travel, steer);
  const { doubts } = moved.poses.motion;
  if (!doubts) return Math.hypot(...stated);
  const parts = Float64Array.from([Math.hypot(...stated) / NORMAL_95, ...motionParts(moved, one, travel, steer)]);
  return plusMinus95({ value: 0, parts }, [STATED[0], ...doubts]);
}

/** What that ± is made of, the largest first. */
export function sharesOf(moved: Moved, one: Placed, travel: number, steer: number): Contribution[] {
  const stated = statedParts(moved, one, travel, steer).map((plusMinus) => plusMinus / NORMAL_95);
  const parts = Float64Array.from([...stated, ...motionParts(moved, one, travel, steer)]);
  return contributions({ value: 0, parts }, [...STATED, ...(moved.poses.motion.doubts ?? [])], causeOf);
}

const stated = (id: string, label: string): Source => ({ id, label, dof: Number.POSITIVE_INFINITY });
const STATED = [
  stated('place', 'the place as measured'),
  stated('solid', 'where the suspension is solid'),
  stated('share', 'how much of the way the place goes'),
] as const;

/** 95 % of a place itself, of the travel at which it is solid, and of the share of the way that it goes, mm of gap. */
function statedParts(moved: Moved, one: Placed, travel: number, steer: number): [number, number, number] {
  const { solid, poses, envelope } = moved;
  const end = solid?.travel === travel ? (solid.plusMinus ?? 0) : 0;
  const slope = end > 0 ? gapOf(moved, one, travel, steer) - gapOf(moved, one, travel - 1, steer) : 0;
  const further = one.further?.(poses, travel, steer, SHARE_PLUS_MINUS);
  const share = further ? gapTo(envelope, poses.at(travel, steer), further) - gapOf(moved, one, travel, steer) : 0;
  return [one.place.plusMinus ?? DEFAULT_PLUS_MINUS_MM, slope * end, share];
}

/** What each doubt of the motion does to a gap by one standard uncertainty, mm, in their order. */
export function motionParts(moved: Moved, one: Placed, travel: number, steer: number): number[] {
  const { poses, envelope } = moved;
  const gap = gapOf(moved, one, travel, steer);
  return poses.doubted.map((other, k) => {
    const { by } = poses.motion.doubts![k]!;
    const doubted = { poses: other, envelope };
    const off = gapOf(doubted, one.doubted[k]!, travel, steer) - gap;
    if (!Number.isNaN(off)) return off / by;
    // Near an end of reach the other links may end a little before: then what it did last before that.
    for (let t = travel; t !== 0; ) {
      t -= Math.min(Math.abs(t), BACK_MM) * Math.sign(t);
      const back = gapOf(doubted, one.doubted[k]!, t, steer) - gapOf(moved, one, t, steer);
      if (!Number.isNaN(back)) return back / by;
    }
    return off;
  });
}

const BACK_MM = 10;

/** Between the travels at which the least sure is looked for, mm. */
const SURE_STEP_MM = 10;

/**
 * Where least is left of a gap once its ± is taken off: steered, that may be where the gap is not the smallest. Looked for at the ends
 * of the range and in steps between, of a motion that is known for certain only at its end where solid is in doubt; undefined where
 * neither is. A travel a step.
 */
export function* leastSure(
  moved: Moved,
  one: Placed,
  [low, high]: readonly [number, number],
): Generator<undefined, Spot | undefined> {
  const { toe, doubts } = moved.poses.motion;
  if (!doubts && !(moved.solid?.travel === high && moved.solid.plusMinus)) return undefined;
  let found: Spot | undefined;
  let least = Number.POSITIVE_INFINITY;
  const steps = Math.max(1, Math.ceil((high - low) / SURE_STEP_MM));
  for (let i = doubts ? 0 : steps; i <= steps; i++) {
    const travel = i === steps ? high : low + ((high - low) * i) / steps;
    for (const steer of toe) {
      const gap = gapOf(moved, one, travel, steer);
      const left = gap - doubtOf(moved, one, travel, steer);
      if (left < least) [least, found] = [left, { travel, steer, gap }];
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
