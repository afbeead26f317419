import type { Place } from '../wheel/place.js';
import type { WheelSpec } from '../wheel/wheel.js';

/** A wheel as far as a user has given it; what stands in for the rest, `wheels-in-use.ts` tells. A page gives a whole one. */
export type GivenWheel = Readonly<Partial<WheelSpec>>;

/** Wheels and what they can meet: what somebody gave of it. Plain immutable data. */
export interface Fit {
  /** The wheel that was on when the places were measured. */
  readonly before?: GivenWheel;
  /** The wheel that is asked about. */
  readonly after?: GivenWheel;
  readonly places?: readonly Place[];
  /** Steering at full lock, degrees at reference height, either way; without it straight ahead only. */
  readonly lock?: number;
  /** What must stay free, mm. */
  readonly marginBodywork?: number;
  readonly marginChassis?: number;
  /** What bushes and carcass give way under load, mm. */
  readonly allowance?: number;
  /** Sideways motion of the wheel over travel, mm outboard per mm of bump, where only readings are known. */
  readonly sideways?: number;
  /** Static camber changed with the wheels, degrees: negative leans the top further in. */
  readonly camberBy?: number;
}

/** Places that one car can have. */
export const MOST_PLACES = 24;

/** Points of a stop’s force over its compression. */
export const MOST_STOP_POINTS = 12;
