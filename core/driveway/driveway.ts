/** Something measured: mm or degrees, and the half-width of its 95 % interval in the same unit. */
export interface Measured {
  value: number;
  plusMinus: number;
}

/**
 * What can be measured of a strut without taking the car apart: lengths in mm, angles in degrees, everything in front view (the
 * transverse plane through the ball joint), on level ground, at the height the car stands at. Whatever is left out is assumed.
 */
export interface DrivewayMeasurements {
  /** From the lower arm's pivot axis to the centre of its ball joint. */
  armLength?: Measured;
  /** Above the floor: the arm's pivot axis, where the transverse plane through the ball joint cuts it. */
  pivotHeight?: Measured;
  /** Above the floor: the ball joint's centre. */
  ballHeight?: Measured;
  /** Above the floor. */
  wheelCentreHeight?: Measured;
  /** Above the floor: the top mount's centre. */
  topHeight?: Measured;
  /** Of the damper's tube: positive when its top leans inboard. By an angle gauge laid on it, zeroed on the same floor. */
  damperLean?: Measured;
  /**
   * Kingpin inclination, ball joint to top mount, from an alignment sheet. Stands in where the lean was not measured, at the cost
   * of the ball joint's offset; not read beside a lean. It is no lean: the camber rate follows the damper's sliding axis.
   */
  kingpin?: Measured;
  /** The ball joint outboard of the damper's axis, at right angles to it. */
  ballOffset?: Measured;
  /** The wheel centre outboard of the ball joint. */
  hubOffset?: Measured;
  /** Between the two wheel centres. Only the roll centre asks for it. */
  track?: Measured;
  /**
   * Caster of the steering axis, ball joint to top mount, in side view and relative to the body: positive when the top leans
   * rearward. From an alignment sheet. It turns toe and lock into camber.
   */
  caster?: Measured;
  /** Bump steer: how far this wheel's toe changes over the first `BUMP_STEER_OVER_MM` of bump, positive toe-in. */
  bumpSteer?: Measured;
  /** Static camber, positive top outward. Turns changes into values; a change does not need it. */
  camber?: Measured;
}

export type DrivewayKey = keyof DrivewayMeasurements;
export type AssumableKey = Exclude<DrivewayKey, 'camber' | 'kingpin'>;

/** mm of bump over which bump steer is given. */
export const BUMP_STEER_OVER_MM = 25;

/** A measurement as it is used: as given, or assumed. */
export interface Taken extends Measured {
  measured: boolean;
  /** The height above which an assumed one was put. Its doubt moves both. */
  above?: AssumableKey;
}

/** What is known of one corner from the driveway, with everything that was left out filled in. */
export interface Driveway {
  /** Nothing here tells where the tie rod is: there is no toe curve to be had from it. */
  answersToe: false;
  /** Its corner was corrected by readings: what is not plane of the bare corner is in it, what parts change besides is known better. */
  isLearnt?: true;
  /** By name: lengths in mm, angles in degrees, each with its ±. */
  taken: Readonly<Record<AssumableKey, Taken>>;
  /** In place of the lean. */
  kingpin?: Measured;
  /** Undefined: only changes of camber are known. */
  camber?: Measured;
}

/** What stands in for a measurement that was not made. */
export interface Assumption extends Measured {
  /** `value` is counted from this height. */
  above?: AssumableKey;
}

/** What there is to know about a measurement before it is made. */
export interface DrivewayField {
  /** For people, in sentences. */
  label: string;
  /** What is possible, mm or degrees. */
  least: number;
  most: number;
  /** Without it, the measurement is just not there. */
  assumed?: Assumption;
}

/** A height comes after the one it is counted from. Limits and assumptions, which are wide: common practice, no source. */
export const DRIVEWAY_FIELDS: Readonly<
  Record<AssumableKey, DrivewayField & { assumed: Assumption }> & Record<DrivewayKey, DrivewayField>
> = {
  wheelCentreHeight: {
    label: 'height of the wheel centre',
    least: 150,
    most: 600,
    assumed: { value: 310, plusMinus: 40 },
  },
  ballHeight: {
    label: 'height of the ball joint',
    least: 40,
    most: 500,
    assumed: { value: -125, plusMinus: 40, above: 'wheelCentreHeight' },
  },
  pivotHeight: {
    label: 'height of the arm’s pivot axis',
    least: 40,
    most: 500,
    assumed: { value: 10, plusMinus: 50, above: 'ballHeight' },
  },
  topHeight: {
    label: 'height of the top mount',
    least: 300,
    most: 1500,
    assumed: { value: 530, plusMinus: 80, above: 'wheelCentreHeight' },
  },
  armLength: { label: 'lower arm length', least: 150, most: 700, assumed: { value: 350, plusMinus: 80 } },
  damperLean: { label: 'lean of the damper', least: -10, most: 35, assumed: { value: 8, plusMinus: 6 } },
  // Uniform from 0 to 40: standard uncertainty 40/√12 (GUM, JCGM 100:2008, 4.3.7), times 1.96.
  ballOffset: { label: 'ball joint offset', least: -50, most: 100, assumed: { value: 20, plusMinus: 22.6 } },
  hubOffset: {
    label: 'ball joint to the tyre’s middle',
    least: -100,
    most: 200,
    assumed: { value: 45, plusMinus: 40 },
  },
  track: { label: 'track', least: 800, most: 2400, assumed: { value: 1500, plusMinus: 150 } },
  // Uniform, as the ball joint's offset: from 3 to 9 degrees, and 0.012 degrees a mm either way.
  caster: { label: 'caster', least: -5, most: 20, assumed: { value: 6, plusMinus: 3.4 } },
  bumpSteer: { label: 'bump steer', least: -3, most: 3, assumed: { value: 0, plusMinus: 0.34 } },
  kingpin: { label: 'kingpin inclination', least: -10, most: 40 },
  camber: { label: 'static camber', least: -15, most: 15 },
};

export const DRIVEWAY_KEYS = Object.keys(DRIVEWAY_FIELDS) as DrivewayKey[];

/** Where what is assumed of caster, degrees, and of bump steer, degrees a mm, ends. The ± of a car beyond covers it only when they are given. */
export const COVERED = { caster: 9, bumpSteer: 0.012 } as const;

/** Whether a measurement is in degrees; the rest are in mm. */
export const isAngle = (key: DrivewayKey): boolean => ANGLES.has(key);

const ANGLES: ReadonlySet<DrivewayKey> = new Set(['damperLean', 'kingpin', 'camber', 'caster', 'bumpSteer']);

/** How sure one is, as a 95 % half-width: mm of a length, degrees of an angle and of toe. Common practice, no source. */
export const HOW_SURE = {
  length: { careful: 1, tape: 3, guess: 10 },
  angle: { careful: 0.2, gauge: 0.5, guess: 2 },
  toe: { careful: 0.05, gauge: 0.1, guess: 0.3 },
} as const;

/** What is counted in which of these. */
export const scaleOfMeasure = (key: DrivewayKey): keyof typeof HOW_SURE =>
  key === 'bumpSteer' ? 'toe' : isAngle(key) ? 'angle' : 'length';
