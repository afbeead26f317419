/** How a car is lowered decides what is lost: shorter springs, or a height-adjustable lower body of the damper. */
export type Lowered = 'springs' | 'dampers';

/**
 * What ends wheel travel, as found at the car where it stood. mm; "on the rod" means along the damper. All may be left out.
 */
export interface TravelLimits {
  /** On the rod, from the bump stop to what it meets. */
  stopGap?: number;
  /** Half-width of its 95 % interval. */
  stopGapPlusMinus?: number;
  /** Of the stop as it was made, uncompressed. */
  stopLength?: number;
  /** What was cut off it. The gap is what was found with it cut. */
  stopTrimmed?: number;
  /** Which share of the stop's length can be pressed together before it is solid, 0 to 1. Without it one is assumed, with its doubt. */
  stopUsable?: number;
  /** On the rod, until the damper itself bottoms, and until it is fully drawn out. */
  strokeBump?: number;
  /** On the rod, until it is fully drawn out. */
  strokeDroop?: number;
  /** Along the spring, until its coils touch. */
  springBind?: number;
  /** Wheel travel from where it was measured until a driveshaft's joint is at its end. */
  shaftBump?: number;
  /** The same in droop. */
  shaftDroop?: number;
  /** −d(damper length)/d(travel), where no linkage is known to follow. */
  motionRatio?: number;
}

/** What the corner weighs and what carries it. N, N/mm, kg. */
export interface CornerLoads {
  springRate?: number;
  /** Of the bump stop: linear, or a few points of force over compression. */
  stopRate?: number;
  stopPoints?: readonly (readonly [compression: number, force: number])[];
  /** With which the damper's gas pushes its rod out. */
  gasForce?: number;
  /** Under this wheel, on the scales. */
  cornerMass?: number;
  /** Of it, what the spring does not carry. */
  unsprungMass?: number;
  tyreRate?: number;
  /** Total wheel load asked about, as a multiple of the static sprung corner load: 2 for "2 g". Default 2. */
  loadFactor?: number;
}

export const TRAVEL_LIMIT_KEYS = [
  'stopGap',
  'stopGapPlusMinus',
  'stopLength',
  'stopTrimmed',
  'stopUsable',
  'strokeBump',
  'strokeDroop',
  'springBind',
  'shaftBump',
  'shaftDroop',
  'motionRatio',
] as const satisfies readonly (keyof TravelLimits)[];

export const CORNER_LOAD_KEYS = [
  'springRate',
  'stopRate',
  'gasForce',
  'cornerMass',
  'unsprungMass',
  'tyreRate',
  'loadFactor',
] as const satisfies readonly (keyof CornerLoads)[];

/**
 * Common practice, no source: a foam stop is solid at about half its length. A rubber one gives about a third, a soft foam two
 * thirds: where nobody gave the share, any between these is as likely.
 */
export const USUAL_STOP_USABLE = 0.5;
export const ASSUMED_STOP_USABLE = [1 / 3, 2 / 3] as const;
export const USUAL_LOAD_FACTOR = 2;
