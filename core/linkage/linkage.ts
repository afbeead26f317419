import type { Corner, Vector3 } from './corner.js';

/**
 * A corner made ready to be moved. Three kinds of quantities are kept apart because a part changes one of them:
 * points fixed to the body, points fixed to the wheel carrier, and link lengths.
 *
 * The carrier's own frame has its origin at the lower ball joint and the car's axes at reference height.
 * Nothing here changes after it was built. Lengths in mm.
 */
export interface Linkage {
  readonly kind: 'strut';
  readonly corner: Corner;
  /** Fixed to the body. */
  readonly body: {
    /** Foot of the ball joint on the lower arm's pivot axis: centre of the circle the ball joint runs on. */
    readonly armCentre: Vector3;
    /** Unit vector along the pivot axis, pointing such that a positive arm angle raises the ball joint. */
    readonly armAxis: Vector3;
    readonly top: Vector3;
    readonly tieInner: Vector3;
  };
  /** Fixed to the carrier, from the ball joint. */
  readonly carrier: {
    /** Unit vector of the damper's sliding axis, towards the top mount. */
    readonly damperAxis: Vector3;
    /** From the ball joint to its foot on the sliding axis. */
    readonly damperFoot: Vector3;
    /** Position of the second point on the axis, from that foot, mm along `damperAxis`. */
    readonly low: number;
    readonly tieOuter: Vector3;
    readonly wheelCentre: Vector3;
    /** Outboard unit spin axis. */
    readonly spin: Vector3;
  };
  readonly lengths: { readonly arm: number; readonly tieRod: number };
  /** Unit vector from the pivot axis to the ball joint at reference height: arm angle 0. */
  readonly armOut: Vector3;
  /** armAxis × armOut: direction in which the ball joint starts upward. */
  readonly armUp: Vector3;
  /** Which of the two assemblies the reference position is: sign of the tie rod's root. */
  readonly branch: 1 | -1;
  readonly loadedRadius: number;
  /** Height of the wheel centre at arm angle 0. */
  readonly wheelCentreZ: number;
  /** How far it can be moved with the rack in the middle. */
  readonly reach: Reach;
}

/** The ends of wheel travel that the links themselves allow. A damper or a bump stop usually ends it before. */
export interface Reach {
  /** Wheel travel at full droop, mm, negative. */
  droop: number;
  /** Wheel travel at full bump, mm, positive. */
  bump: number;
  /**
   * The link that runs out: `tieRod`, `strut` (the axis no longer reaches the top mount), or `lowerArm` where the wheel centre
   * turns back although every link still joins a little further on.
   */
  droopEndedBy: LimitingLink;
  bumpEndedBy: LimitingLink;
  /** The same ends as arm angles, radians from reference. */
  droopAngle: number;
  bumpAngle: number;
}

export type LimitingLink = 'tieRod' | 'strut' | 'lowerArm';
