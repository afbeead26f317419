import type { BodyPoints, CarrierPoints, DamperEnd, LinkLengths } from './link-parts.js';
import type { Solver } from './solver.js';

/**
 * A corner made ready to be moved. Three kinds of quantities are kept apart because a part changes one of them: points fixed to
 * the body, points fixed to the wheel carrier, and link lengths. Nothing here changes after it was built; a part makes a new one.
 */
export interface Linkage {
  readonly kind: 'strut' | 'wishbone';
  readonly body: BodyPoints;
  readonly carrier: CarrierPoints;
  readonly lengths: LinkLengths;
  readonly damperEnd?: DamperEnd;
  /** Which of the two assemblies of the tie rod, and of the upper arm, this linkage is. */
  readonly branch: { readonly tieRod: 1 | -1; readonly upperArm: 1 | -1 };
  readonly loadedRadius: number;
  /** Height of the wheel centre at travel 0: the ride height, which a part does not change. */
  readonly wheelCentreZ: number;
  /** Lower arm's angle at travel 0 with the rack in the middle, radians. */
  readonly home: number;
  /** How far it can be moved with the rack in the middle. */
  readonly reach: Reach;
  /** What the solver makes of all this once, so that a position costs nothing twice. */
  readonly solver: Solver;
}

/** The ends of wheel travel that the links themselves allow. A damper or a bump stop usually ends it before. */
export interface Reach {
  /** Wheel travel at full droop, mm, negative. */
  droop: number;
  /** Wheel travel at full bump, mm, positive. */
  bump: number;
  /**
   * The link that runs out: `tieRod`, `strut` (the axis no longer reaches the top mount), `upperArm`, or `lowerArm` where the
   * wheel centre turns back although every link still joins a little further on.
   */
  droopEndedBy: LimitingLink;
  /** The link that runs out at full bump. */
  bumpEndedBy: LimitingLink;
  /** The same ends as angles of the lower arm, radians. */
  droopAngle: number;
  /** At full bump, radians. */
  bumpAngle: number;
}

export type LimitingLink = 'tieRod' | 'strut' | 'upperArm' | 'lowerArm';
