import type { DamperFoot, Vector3 } from './corner.js';

/** Points fixed to the body, at reference height: mm, x forward, y left, z up. */
export interface BodyPoints {
  readonly lowerFront: Vector3;
  readonly lowerRear: Vector3;
  readonly tieInner: Vector3;
  /** Strut: centre of the top mount. */
  readonly top?: Vector3;
  /** Wishbone. */
  readonly upperFront?: Vector3;
  readonly upperRear?: Vector3;
  /** Wishbone with a damper: its end on the body. */
  readonly damperTop?: Vector3;
}

/** Points fixed to the wheel carrier, in its own frame: origin where the wheel centre was as built, axes the car's at reference height; mm. */
export interface CarrierPoints {
  readonly lowerBall: Vector3;
  readonly tieOuter: Vector3;
  readonly wheelCentre: Vector3;
  /** Outboard unit spin axis. */
  readonly spin: Vector3;
  /** Strut: a second point on the damper's sliding axis, and the unit vector along it towards the top mount. */
  readonly damperLow?: Vector3;
  readonly damperAxis?: Vector3;
  /** Wishbone. */
  readonly upperBall?: Vector3;
}

/** A point of an arm in the arm's own frame, mm: along the pivot axis from the middle between its pivots (forward positive), away from it, and at right angles to both. */
export interface ArmPoint {
  readonly station: number;
  readonly radius: number;
  readonly rise: number;
}

/**
 * An arm is a rigid triangle: its ball joint has a station along the pivot axis and a distance from it, mm. The station counts from
 * the middle between the pivots, so that pivots moved apart, as two bushes alike give way, leave the ball between them.
 */
export interface ArmShape {
  readonly station: number;
  readonly radius: number;
}

export interface LinkLengths {
  readonly lowerArm: ArmShape;
  readonly upperArm?: ArmShape;
  readonly tieRod: number;
}

/** Where a wishbone's damper ends below: on an arm, or on the carrier. */
export type DamperEnd =
  | { readonly on: Exclude<DamperFoot, 'carrier'>; readonly at: ArmPoint }
  | { readonly on: 'carrier'; readonly at: Vector3 };
