import { DRIVEWAY_KEYS, isAngle } from '../driveway/driveway.js';
import { MOST_OF_A_PART } from '../linkage/parts/most-of-a-part.js';
import { QUANTITIES, type Quantity } from '../quantity/quantities.js';
import { DOUBT_KEYS, MOST_DOUBTS } from '../readings/doubts.js';
import { BASES } from '../readings/over-base.js';
import { CORNER_LOAD_KEYS, TRAVEL_LIMIT_KEYS, type TravelLimits } from '../travel/travel-limits.js';
import { MOST_SETUPS } from './counts.js';
import { TREAD_FIELDS } from './tread-fields.js';

/*
 * What each number of a car document may be: by this its schema checks a car, and a link is read. As wide as the fields that a user
 * types into read: what is impossible is told by the answer, in the field where it can be corrected. mm, degrees, N, N/mm, kg.
 */
export type Range = readonly [least: number, most: number];

const of = (quantity: Quantity): Range => [QUANTITIES[quantity].min, QUANTITIES[quantity].max];
const plus = (most: number): Range => [-most, most];

export const LENGTH = of('coordinate');
const ANGLE = of('linkAngle');
/** Hours of a clock, inches of a rim, shares and ratios. */
export const RATIO = plus(100);
export const FORCE = plus(100_000);
/** Of a measurement, the drop. */
export const PLUS_MINUS: Range = [0, 200];
export const POINT_PLUS_MINUS: Range = [0, 500];

export const DROP = of('drop');
export const TRAVEL = of('travel');
/** As wide as its field, and as a link of 2026. */
export const STOP_GAP: Range = [TRAVEL[0], QUANTITIES.gap.max];
export const CAMBER = of('camber');
export const CAMBER_READ_LOWER = of('plusMinusLength');
export const CORNER_RANGES = { camber: CAMBER, toe: of('toe'), loadedRadius: of('loadedRadius') } as const;
export const DEGREE: Range = [1, 10];
/** Which curve or height of a comparison, from 0: as many as a page's sets and a user's can be. */
export const CELL: Range = [0, 2 * MOST_SETUPS];

/** The same range for each of some names. */
const each = <K extends string>(keys: readonly K[], range: Range) =>
  Object.fromEntries(keys.map((key) => [key, range])) as Record<K, Range>;

const DRIVEWAY_RANGE = { angle: of('lean'), length: LENGTH } as const;
export const MEASURE_RANGES = Object.fromEntries(
  DRIVEWAY_KEYS.map((key) => [key, DRIVEWAY_RANGE[isAngle(key) ? 'angle' : 'length']]),
) as Record<(typeof DRIVEWAY_KEYS)[number], Range>;

/** But for the gap to the stop, which stands beside them. */
export const LIMIT_RANGES: Record<Exclude<keyof TravelLimits, 'stopGap'>, Range> = {
  ...each(
    TRAVEL_LIMIT_KEYS.filter((key) => key !== 'stopGap'),
    LENGTH,
  ),
  stopUsable: RATIO,
  motionRatio: RATIO,
};
export const LOAD_RANGES = { ...each(CORNER_LOAD_KEYS, FORCE), loadFactor: RATIO };
/** What is asked about toe. */
export const TOE_RANGES = {
  over: TRAVEL,
  across: of('diameter'),
  amount: of('partLength'),
  rack: of('partLength'),
  steeringRatio: of('steeringRatio'),
  rodLength: of('rodLength'),
  lever: of('lever'),
} as const;
/** What is asked about adding static camber. */
export const CAMBER_ADDED_RANGES = { by: of('partAngle'), over: TRAVEL } as const;
/** What is asked about reaching an inclination at the least cost: where it may be missed by, what can be set and bought. */
export const LEAST_COST_RANGES = {
  tolerance: of('plusMinusAngle'),
  ...each(['camberFrom', 'camberTo'], CAMBER),
  ...each(['heightFrom', 'heightTo'], DROP),
  ...each(['joint', 'joint2'], of('partLength')),
  ...each(['spring', 'spring2', 'bar', 'bar2'], of('springRate')),
  ...each(['wayPrice', 'heightPrice', 'jointPrice', 'joint2Price', 'springPrice', 'spring2Price'], of('price')),
  ...each(['barPrice', 'bar2Price'], of('price')),
  ...each(['gapStrut', 'leastBump', 'leastGap', 'mostScrub'], of('gap')),
  mostBumpSteer: of('plusMinusToe'),
} as const;
/** What is asked of parts that are not fitted yet. */
export const PREDICT_RANGES = { over: TRAVEL } as const;
/** What is kept of a prediction. */
export const PREDICTION_RANGES = {
  drop: DROP,
  over: TRAVEL,
  travel: TRAVEL,
  step: [0.1, 100],
  change: plus(90),
  plusMinus: [0, 90],
  count: [0, 10_000],
} as const satisfies Record<string, Range>;
/** What is asked about a turn. */
export const TURN_RANGES = {
  roll: of('roll'),
  tyreRoll: of('tyreRoll'),
  radius: of('radius'),
  wheelbase: of('wheelbase'),
  track: of('track'),
  camber: of('camber'),
  wanted: of('camber'),
  photo: of('roll'),
  photoPlusMinus: of('plusMinusAngle'),
} as const satisfies Readonly<Record<string, Range>>;
/** Cable ties on the damper rods: how far the outer one went in and the inner one out. */
export const TIE_RANGES = {
  outer: of('gap'),
  inner: of('gap'),
  motionRatio: of('ratio'),
  plusMinus: of('plusMinusLength'),
} as const satisfies Readonly<Record<string, Range>>;
/** What rolls the body at a lateral acceleration, and what answers it: this axle, and the other one. */
export const ROLL_LOAD_RANGES = {
  lateral: of('lateral'),
  centreHeight: of('centreHeight'),
  centrePlusMinus: of('plusMinusLength'),
  sprungMass: of('mass'),
  unsprungMass: of('mass'),
  rollCentre: of('rollCentreHeight'),
  springRate: of('springRate'),
  motionRatio: of('ratio'),
  barRate: of('springRate'),
  barRatio: of('ratio'),
  stopGap: of('gap'),
  stopRate: of('springRate'),
  otherMass: of('mass'),
  otherTrack: of('track'),
  otherRollCentre: of('rollCentreHeight'),
  otherSpringRate: of('springRate'),
  otherMotionRatio: of('ratio'),
  otherBarRate: of('springRate'),
  otherBarRatio: of('ratio'),
} as const satisfies Readonly<Record<string, Range>>;
/** What is read and wanted of both wheels of an axle, and across a tread afterwards. */
export const ALIGNMENT_RANGES = {
  ...each(['heightLeft', 'heightRight', 'heightWanted', 'heightAfterLeft', 'heightAfterRight'], of('cornerHeight')),
  ...each(['camberLeft', 'camberRight', 'camberWanted'], of('camber')),
  ...each(['toeLeft', 'toeRight', 'toeWanted'], of('toe')),
  ...each(['camberTolerance', 'toeTolerance'], of('plusMinusToe')),
  pitch: of('threadPitch'),
  ...each(TREAD_FIELDS.temperature, of('tyreTemperature')),
  ...each(['camberFirst', 'camberChanged'], of('camber')),
  ...each(TREAD_FIELDS.tread, of('treadDepth')),
} as const;
export const WHEEL_RANGES = {
  /** Between the bead seats, inches. */
  rimWidthInch: RATIO,
  /** Middle plane of the rim to its mounting face (ET), mm. */
  offset: LENGTH,
  /** Between hub face and rim, mm. */
  spacer: LENGTH,
  /** Measured on this rim, mm: in place of the formula, and the only way for a stretched tyre. */
  sectionWidth: LENGTH,
  /** Across the flat of the tread, mm. */
  treadWidth: LENGTH,
  /** Where tread turns into sidewall, mm. */
  shoulderRadius: LENGTH,
} as const;
export const FITMENT_RANGES = {
  /** How far the wheel turns at full lock, degrees; 0 for a rear axle. */
  lock: ANGLE,
  /** The gap to bodywork that must stay free, mm. */
  marginBodywork: LENGTH,
  /** The gap to chassis parts that must stay free, mm. */
  marginChassis: LENGTH,
  /** For flex of bushes and tyre, mm. */
  allowance: LENGTH,
  /** How far the wheel’s centre moves inboard per mm of bump. */
  sideways: RATIO,
  /** Camber that is changed with the wheels, degrees. */
  camberBy: ANGLE,
} as const;

export const READING_RANGES = { travel: LENGTH, value: ANGLE, body: LENGTH } as const;
/** Of readings by two figures: how far apart they were read. */
export const BASE: Range = BASES;
export const DOUBT_RANGES = Object.fromEntries(
  DOUBT_KEYS.map((key): [string, Range] => [key, [0, MOST_DOUBTS[key]]]),
) as Record<(typeof DOUBT_KEYS)[number], Range>;

/** Of a part: what it is asked for, and how far that can be trusted, mm or degrees. */
export const PART_LENGTH: Range = plus(MOST_OF_A_PART.mm);
export const PART_ANGLE: Range = plus(MOST_OF_A_PART.degrees);
export const PART_PLUS_MINUS: Range = [0, MOST_OF_A_PART.mm];
