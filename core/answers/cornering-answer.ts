import type { LimitingLink } from '../linkage/linkage.js';
import type { Source } from '../uncertainty/estimate.js';

/** One wheel in the turn. Degrees: camber and inclination positive top outward, toe positive in. */
export interface WheelInTurn {
  /** From stock height, mm, bump positive. */
  travel: number;
  /** To the body. */
  camber: number;
  /** Of the wheel plane to the road's normal: what the tyre sees. */
  inclination: number;
  /** NaN where the source does not tell it and nobody set it: of a driveway, and of curves. */
  toe: number;
  /**
   * Where the wheel plane points to the body, positive into the turn; NaN of curves. What each wheel of a driveway does other than their
   * mean rests on a tie rod that is assumed.
   */
  steer: number;
  /** They add up to `inclination` in this order. */
  bars: InclinationBars;
}

/** What an inclination is made of, degrees. */
export interface InclinationBars {
  /** Camber at the drop, straight ahead. */
  static: number;
  /** Change of camber to the body from there to the wheel's travel in the turn, rack in the middle. */
  travel: number;
  /** Change of inclination to the body as the rack goes where it is in the turn: what caster and kingpin inclination do. */
  steer: number;
  /** The body's roll on its suspension: outer wheel positive, inner negative. */
  roll: number;
  /** What the tyres add to it. */
  tyre: number;
  /** What is left over: a wheel that points aside takes less than the whole roll. */
  rest: number;
}

/** How far a wheel can move in the turn, mm from stock height: as far as its links reach, or its camber is known. */
export interface WheelReach {
  /** The lower end, mm. */
  droop: number;
  /** The upper end, mm. */
  bump: number;
  /** Of links. */
  droopEndedBy?: LimitingLink;
  /** Of links. */
  bumpEndedBy?: LimitingLink;
}

export interface CorneringAnswer {
  /** The wheel on the outside of the turn. */
  outer: WheelInTurn;
  /** The wheel on the inside. */
  inner: WheelInTurn;
  /** Of the body over the road, the tyres' share with it, degrees. */
  roll: number;
  /** mm into the turn. */
  rack: number;
  /** What the geometry of the radius asks of the wheels so that none of them scrubs, degrees. Only where a radius was given. */
  ackermann?: { outer: number; inner: number };
  /** mm over the road, and along it from the body's middle towards the outer wheel; see `axleAt`. Only from links. */
  rollCentre?: { height: number; offset: number };
  /** By how much each inclination changes with a degree more of suspension roll, rack held. */
  perDegreeOfRoll: { outer: number; inner: number };
  /** Only from curves; that of links is asked for apart (`corneringDoubtSteps`). */
  doubt?: CorneringDoubt;
  /** `first`: which wheel is nearer to its end, the outer one in bump or the inner one in droop. */
  limits: { outer: WheelReach; inner: WheelReach; first: 'outer' | 'inner' };
}

/** How far the two inclinations are known: parts in degrees, one standard uncertainty each. */
export interface CorneringDoubt {
  /** What the parts are of, in their order. */
  sources: Source[];
  /** Of the outer wheel’s inclination, degrees. */
  outer: Float64Array;
  /** Of the inner wheel’s, degrees. */
  inner: Float64Array;
}

/** A car at its drop, its alignment set, ready to be rolled. */
export interface CarInTurn {
  /** @throws InputError where a wheel does not reach: see `corneringOf` */
  at(roll: number): CorneringAnswer;
}
