import type { End, TravelBudget } from '../travel/budget.js';
import { type Envelope, gapTo, type Poses } from '../wheel/gaps.js';
import { DEFAULT_PLUS_MINUS_MM } from '../wheel/place.js';
import type { Placed } from '../wheel/placed.js';
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
 */
export function doubtOf(moved: Moved, one: Placed, travel: number, steer: number): number {
  const { solid, poses, envelope } = moved;
  const end = solid?.travel === travel ? (solid.plusMinus ?? 0) : 0;
  const slope = end > 0 ? gapOf(moved, one, travel, steer) - gapOf(moved, one, travel - 1, steer) : 0;
  const further = one.further?.(poses, travel, steer, SHARE_PLUS_MINUS);
  const share = further ? gapTo(envelope, poses.at(travel, steer), further) - gapOf(moved, one, travel, steer) : 0;
  return Math.hypot(one.place.plusMinus ?? DEFAULT_PLUS_MINUS_MM, slope * end, share);
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
