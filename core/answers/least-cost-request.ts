import type { TriedSource } from '../curve-sources/solved-source.js';
import type { CostWeight, LeastCost, SETTING_WAYS } from '../document/cost-weights.js';
import type { AxleInRoll } from '../travel/axle-in-roll.js';
import type { RollRequest } from '../travel/roll-request.js';
import type { Lowered } from '../travel/travel-limits.js';
import type { SteerInTurn } from './cornering-request.js';

/** A way of setting static camber that somebody has, or would buy. */
export type OwnWay = (typeof SETTING_WAYS)[number];

/** What is bought. Without a price it is unknown what it costs; 0 is of what one has. Any currency, one for all. */
interface Priced {
  price?: number;
}

/** From, to, and by what it can be set: multiples of `step`. */
interface Span {
  from: number;
  to: number;
  step?: number;
}

/**
 * What makes the body roll in the turn, instead of an angle: then height, springs and bars change it. The roll centre of the axle is that
 * of its links as set up, and its springs' motion ratio is that of the strut unless it is given. The centre of gravity comes down with the
 * car; the other axle stays as it is given.
 */
export interface LoadInTurn extends Pick<RollRequest, 'lateral' | 'centreOfGravityHeight' | 'otherAxle'> {
  /** Default track: that of the links. */
  axle: Omit<AxleInRoll, 'rollCentreHeight' | 'track'> & Partial<Pick<AxleInRoll, 'track'>>;
  /** How much lower the springs hold the car at `drop` than where the gap to its stop was measured, mm at the wheel. Default 0. */
  lowerThanGap?: number;
  /** Spring rates are what they are, however unlikely. */
  isRateSure?: boolean;
}

/** Which setups bring the outer wheel to a wanted inclination to the road, and what does each cost? mm, degrees, N/mm. */
export interface LeastCostRequest<S = TriedSource> {
  /** Links: hard points or a driveway, bare or with parts on. */
  source: S;
  /** How far below stock height the car rides now. */
  drop: number;
  /** Where the source was measured, and its camber read: see `CorneringRequest`. */
  measuredAt?: number;
  camberReadLower?: number;
  /** Toe-in of each wheel that is set again with every setup. Default: that of the source where it was measured. */
  toe?: number;
  /** Of the outer wheel to the road, top outward positive. */
  inclination: number;
  /** By how much it may be missed. Default 0.1. */
  tolerance?: number;
  /** Suspension roll, the same for all setups; or what makes it. */
  roll?: number;
  load?: LoadInTurn;
  tyreRoll?: number;
  steer?: SteerInTurn;
  /** Static camber where the car then stands, and by what it can be set. Without it camber stays as height and parts leave it. */
  camber?: Span & {
    /** Default: plates at the top mount; of a wishbone a longer arm. */
    ways?: readonly ({ way: OwnWay } & Priced)[];
  };
  /** Drops. Without it the car stays as high as it rides. `price`: of whatever lowers it, or raises it. */
  height?: Span & Priced;
  /** How the car is lowered: with springs, or their seats, bump travel goes. Default 'springs'. */
  lowered?: Lowered;
  /** Extended ball joints; 0 mm, none, is always tried. */
  joints?: readonly ({ mm: number; correctTieRod?: boolean } & Priced)[];
  /** Other springs, and other bars, than those of `load`; only with it. */
  springs?: readonly ({ rate: number } & Priced)[];
  bars?: readonly ({ rate: number } & Priced)[];
  /** Droop and bump over which bump steer is told. Default [−40, 40]. */
  window?: readonly [number, number];
  /** As the car is: bump travel left at the wheel, gap from strut to tyre. */
  bumpLeft?: number;
  gapStrut?: number;
  limits?: {
    /** At least, at the wheel; needs `bumpLeft`. */
    bumpLeft?: number;
    /** At least; needs `gapStrut`. */
    gapStrut?: number;
    /** At most, peak to peak over the window. */
    bumpSteer?: number;
    /** At most, either way. */
    scrubChange?: number;
  };
  /** Default: all matter. */
  weights?: Partial<Record<LeastCost, CostWeight>>;
}

export const USUAL_TOLERANCE_DEG = 0.1;
export const USUAL_CAMBER_STEP_DEG = 0.1;
export const USUAL_HEIGHT_STEP_MM = 5;
export const USUAL_WINDOW_MM = [-40, 40] as const;
