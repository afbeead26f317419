import type { DrivewayKey } from '../../core/driveway/driveway.js';
import type { StrutPointKey } from '../../core/linkage/corner.js';
import type { OverBase } from '../../core/readings/over-base.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';

interface Values {
  quantity: ReadingQuantity;
  by?: OverBase['by'];
}

const ANGLES = { camber: 'Camber', toe: 'Toe' } as const;
const FIGURES = { dials: ['front dial', 'rear dial'], tape: ['front, tape', 'rear, tape'] } as const;
const WAYS = { up: ', going up', down: ', going down' } as const;

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** Words over the columns of a table of readings, as a page's reader knows them. */
export const READINGS_HEADS = {
  travel: 'Wheel travel (mm)',
  parts: 'Parts',
  pass: 'Pass',
  direction: 'Direction',
  body: 'Body reference (mm)',
  /** In a cell of its own, with the way that the wheel went. */
  passGoing: (pass: string, going: 'up' | 'down' | undefined): string =>
    (going ? `${pass}${WAYS[going]}` : pass).replace(/^, /, ''),
  /** Over the value of a pass, or over its two figures. */
  values({ quantity, by }: Values, of: string, going: 'up' | 'down' | undefined): string[] {
    const way = going ? WAYS[going] : '';
    if (!by) return [`${of || ANGLES[quantity]}${way} (°)`];
    return FIGURES[by].map((figure) => `${capital(of ? `${of}${way}, ${figure}` : `${figure}${way}`)} (mm)`);
  },
} as const;

/** Names of rows in a table of a corner, as the reader of such a table knows them. */
export const POINT_ROWS: Readonly<Record<StrutPointKey, string>> = {
  'lowerArm.front': 'Lower arm, front pivot',
  'lowerArm.rear': 'Lower arm, rear pivot',
  'lowerArm.ball': 'Lower ball joint',
  'strut.top': 'Top mount',
  'strut.low': 'Damper, low point',
  'tieRod.inner': 'Tie rod, inner end',
  'tieRod.outer': 'Tie rod, outer end',
  wheelCentre: 'Wheel centre',
};

export const MEASURE_ROWS: Readonly<Record<Exclude<DrivewayKey, 'camber'>, string>> = {
  armLength: 'Lower arm length',
  pivotHeight: 'Height of the arm’s pivot',
  ballHeight: 'Height of the ball joint',
  wheelCentreHeight: 'Height of the wheel centre',
  topHeight: 'Height of the top mount',
  damperLean: 'Lean of the damper',
  kingpin: 'Kingpin inclination',
  ballOffset: 'Ball joint offset',
  hubOffset: 'Ball joint to the tyre’s middle',
  track: 'Track',
  caster: 'Caster',
  bumpSteer: 'Toe change over 25 mm of bump',
};

export const SINGLE_ROWS = { loadedRadius: 'Loaded radius', camber: 'Static camber', toe: 'Static toe' } as const;

export const POINT_HEADS = {
  points: ['Point', 'x (mm)', 'y (mm)', 'z (mm)'],
  measures: ['Measurement', 'Value'],
  plusMinus: '±',
  caption: (corner: string): string => `${corner} corner at stock height`,
} as const;
