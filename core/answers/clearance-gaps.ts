import type { End, TravelBudget } from '../travel/budget.js';
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
 * angles. Where the suspension is solid there is also how sure that travel is.
 */
export function doubtOf(moved: Moved, one: Placed, travel: number, rack: number): number {
  const { solid } = moved;
  const end = solid?.travel === travel ? (solid.plusMinus ?? 0) : 0;
  const slope = end > 0 ? gapOf(moved, one, travel, rack) - gapOf(moved, one, travel - 1, rack) : 0;
  return Math.hypot(one.place.plusMinus ?? DEFAULT_PLUS_MINUS_MM, slope * end);
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
