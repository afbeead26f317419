import type { Vector3 } from '../linkage/corner.js';

/** What a place is fixed to, and so how it moves against the wheel. */
export type FixedTo =
  /** Arch lip, liner, screws, inner panel, leg: it stays, the wheel moves. */
  | 'body'
  /** Damper tube, spring perch, knuckle: it moves and steers with the wheel, so its gap never changes. */
  | 'carrier'
  /** A tie rod's and an arm's joints are known from the linkage. */
  | 'tieRod'
  | 'lowerArm'
  /** Driveshaft, anti-roll bar and its link, the spring's coils: it goes a share of the way with the carrier. */
  | 'between';

export const FIXED_TO: readonly FixedTo[] = ['body', 'carrier', 'tieRod', 'lowerArm', 'between'];

/** What a tyre can meet: where it was measured with the old wheel on, at the height the car stood. Lengths mm. */
export interface Place {
  /** For people: "arch lip", "liner screw". */
  name: string;
  fixedTo: FixedTo;
  /** Bodywork wants another margin than chassis parts. */
  is: 'bodywork' | 'chassis';
  at: ClockPosition | { point: Vector3 };
  /** Half-width of the 95 % interval of each of its measures. Default 5. */
  plusMinus?: number;
  /** `between`: how much of the carrier's way it goes, 0 (at the body) to 1 (at the wheel). */
  share?: number;
}

/**
 * Seen square from outside. `clock`: hours, 12 straight up; on a left wheel 9 is forward and 3 rearward, on a right one the
 * other way round.
 */
export interface ClockPosition {
  clock: number;
  /** From the hub's centre, straight, in the plane seen. */
  distance: number;
  /** The distance is counted from the tread of the wheel that was on, straight out from the hub; negative below the tread. */
  beyond?: 'tread';
  /** How far it lies outboard of the tyre's sidewall at that clock position, by plumb line or level; negative inboard. */
  out: number;
  /** Which sidewall: default the outer. */
  from?: 'outer' | 'inner';
}

export const DEFAULT_PLUS_MINUS_MM = 5;

/** Degrees from straight up, positive forward. */
export function forwardOf(clock: number, isLeft: boolean): number {
  return (isLeft ? -30 : 30) * clock;
}
