import type { Dimension, UnitSystem } from './units.js';

/** What a field holds or an answer gives. */
export type Quantity =
  | 'drop'
  | 'travel'
  | 'coordinate'
  | 'loadedRadius'
  | 'camber'
  | 'toe'
  | 'camberChange'
  | 'camberRate'
  | 'plusMinusLength'
  /** How a link or an axis stands, from level or from upright. */
  | 'linkAngle'
  /** Of a tube against the plumb line, read off a gauge. */
  | 'lean'
  | 'plusMinusAngle'
  | 'plusMinusToe'
  /** Of a scale: how far off an instrument may be, in all it shows. */
  | 'plusMinusShare'
  /** Of a gauge's zero, from the beginning of a pass to its end. */
  | 'plusMinusDrift'
  /** As a tyre's size and a rim are written: mm, percent, inches, whatever lengths are shown in. */
  | 'tyreWidth'
  | 'aspect'
  | 'rimInch'
  | 'offset'
  /** Of a part: by how much it is longer, raised, turned. */
  | 'partLength'
  | 'partAngle'
  | 'margin'
  /** What is measured between two things that do not overlap. */
  | 'gap'
  /** Hours of a clock face. */
  | 'clock'
  | 'share'
  | 'ratio'
  | 'springRate'
  | 'loadFactor'
  | 'force'
  | 'load'
  | 'mass'
  | 'frequency'
  | 'percent'
  /** Of a wheel, to straight ahead. */
  | 'steer'
  /** Of a rim or a tyre, across which toe is told as a length. */
  | 'diameter'
  /** Of a tie rod, from joint to joint; of the steering arm that it pulls on. */
  | 'rodLength'
  | 'lever'
  /** Steering wheel to road wheel. */
  | 'steeringRatio'
  /** Of the body in a turn; what the tyres add to it. */
  | 'roll'
  | 'tyreRoll'
  | 'track'
  /** Of a turn, and between the axles: m, whatever lengths are shown in. */
  | 'radius'
  | 'wheelbase'
  /** Sideways in a turn, g. */
  | 'lateral'
  /** Of the sprung mass’s centre of gravity over the road; of an axle’s roll centre. */
  | 'centreHeight'
  | 'rollCentreHeight'
  /** Of a corner: hub centre to arch lip. */
  | 'cornerHeight'
  /** Of a tie rod's thread. */
  | 'threadPitch'
  | 'turns'
  /** Across a tread: in either scale; and what is left of the tread. */
  | 'tyreTemperature'
  | 'treadDepth'
  /** Acceleration across the car. */
  | 'lateral'
  /** In any currency. */
  | 'price';

export interface QuantityTraits {
  dimension: Dimension;
  /** Whether it can be negative. */
  signed: boolean;
  /** Of a `plain` one. */
  unit: string;
  /** The finest decimal place ever shown, and the one shown where no doubt is given, in each unit. */
  decimals: Readonly<Record<'mm' | 'in' | 'degrees' | 'arcminutes', number>>;
  /** What is possible, in the unit of the API: wide enough for any road car, narrow enough to catch a slip of the key. */
  min: number;
  max: number;
}

/** A tape or a rule is read to about half a millimetre, a gauge to a few hundredths of a degree. */
const FINEST = { mm: 1, in: 2, degrees: 2, arcminutes: 0 };
/** Over 10 mm an angle changes by a tenth of a degree or less. */
const FINEST_RATE = { ...FINEST, degrees: 3, arcminutes: 1 };
/** From points a millimetre or two off. */
const FINEST_GAUGE = { ...FINEST, degrees: 1 };
const FINEST_LINK = { ...FINEST, degrees: 0 };

const traits = (dimension: Dimension, min: number, max: number, decimals = FINEST, unit = ''): QuantityTraits => ({
  dimension,
  signed: min < 0,
  unit,
  decimals,
  min,
  max,
});

const plain = (min: number, max: number, places: number, unit = ''): QuantityTraits =>
  traits('plain', min, max, { mm: places, in: places, degrees: places, arcminutes: places }, unit);

/** Limits: common practice, no source. */
export const QUANTITIES: Readonly<Record<Quantity, QuantityTraits>> = {
  drop: traits('length', -150, 150),
  travel: traits('length', -300, 300),
  coordinate: traits('length', -4000, 4000),
  loadedRadius: traits('length', 150, 600),
  camber: traits('angle', -15, 15),
  toe: traits('angle', -10, 10),
  camberChange: traits('angle', -30, 30),
  camberRate: traits('angleRate', -1, 1, FINEST_RATE),
  plusMinusLength: traits('length', 0, 100),
  linkAngle: traits('angle', -180, 180, FINEST_LINK),
  lean: traits('angle', -45, 45, FINEST_GAUGE),
  plusMinusAngle: traits('angle', 0, 20, FINEST_GAUGE),
  plusMinusToe: traits('angle', 0, 5),
  plusMinusShare: plain(0, 50, 1, '%'),
  plusMinusDrift: traits('angle', 0, 5),
  tyreWidth: plain(125, 355, 0, 'mm'),
  aspect: plain(20, 85, 0, '%'),
  rimInch: plain(3, 24, 1, 'in'),
  offset: traits('length', -100, 150),
  partLength: traits('length', -150, 150),
  partAngle: traits('angle', -20, 20),
  margin: traits('length', 0, 100),
  gap: traits('length', 0, 400),
  clock: plain(0, 12, 1, 'o’clock'),
  share: plain(0, 1, 2),
  ratio: plain(0.2, 1.5, 3),
  loadFactor: plain(1, 6, 2),
  springRate: plain(1, 1000, 1, 'N/mm'),
  force: plain(0, 5000, 0, 'N'),
  load: plain(0, 60_000, 0, 'N'),
  mass: plain(10, 3000, 0, 'kg'),
  frequency: plain(0, 20, 2, 'Hz'),
  percent: plain(-100, 100, 1, '%'),
  steer: traits('angle', 0, 55, FINEST_LINK),
  diameter: traits('length', 100, 1500),
  rodLength: traits('length', 100, 900),
  lever: traits('length', 40, 300),
  steeringRatio: plain(5, 40, 1),
  roll: traits('angle', 0, 15, FINEST_GAUGE),
  tyreRoll: traits('angle', 0, 5, FINEST_GAUGE),
  track: traits('length', 800, 2400),
  radius: plain(2, 10_000, 1, 'm'),
  wheelbase: plain(1.2, 6, 3, 'm'),
  lateral: plain(0, 3, 2, 'g'),
  centreHeight: traits('length', 100, 1500),
  rollCentreHeight: traits('length', -1000, 1000),
  cornerHeight: traits('length', 100, 1000),
  threadPitch: traits('length', 0.5, 4, { ...FINEST, mm: 2, in: 4 }),
  turns: plain(-100, 100, 2),
  tyreTemperature: plain(0, 400, 1, '°'),
  treadDepth: traits('length', 0, 20, { ...FINEST, mm: 1, in: 3 }),
  price: plain(0, 1e6, 0),
};

/** The finest decimal place in which a quantity is shown. */
export function finestDecimals(quantity: Quantity, unitSystem: UnitSystem): number {
  const { dimension, decimals } = QUANTITIES[quantity];
  return decimals[dimension === 'length' ? unitSystem.length : unitSystem.angle];
}
