import type { DamperPath } from './damper-path.js';
import type { Lowered, TravelLimits } from './travel-limits.js';

/** How much wheel travel is left at a drop, and what ends it? Lengths in mm. */
export interface BudgetRequest {
  /** Of the damper. Not needed where `limits.motionRatio` is given, which a user has measured: it wins. */
  path: DamperPath | undefined;
  limits: TravelLimits;
  /** Usable bump at the wheel, from where the limits were found until something is solid: a limit of its own. */
  bumpTravel?: number;
  /** Travel, from reference height, at which the car stood when the limits were found. Default 0. */
  measuredAt?: number;
  drop: number;
  /**
   * Default `springs`: every limit stays where it is in the body's frame and comes nearer by the drop. The spring's own, as far as
   * the new spring binds where the old one did. `dampers`: what is along the rod stays as it was found, at any height; links and
   * shaft stay where they are; `bumpTravel` is what is left.
   */
  lowered?: Lowered;
  /** Travels from reference height at which the links themselves end. */
  reach?: { droop: number; bump: number };
}
