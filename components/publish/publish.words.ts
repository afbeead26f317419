import type { DrivewayKey } from '../../core/driveway/driveway.js';
import type { StrutPointKey } from '../../core/linkage/corner.js';
import type { OverBase } from '../../core/readings/over-base.js';

/** Words of the tables that a page has of a car: in every language the English ones, which elements that read such tables know. */
export const TABLES = {
  /** Over the columns of a table of readings. */
  travel: 'Wheel travel (mm)',
  parts: 'Parts',
  pass: 'Pass',
  direction: 'Direction',
  body: 'Body reference (mm)',
  camber: 'Camber',
  toe: 'Toe',
  ways: { up: 'going up', down: 'going down' },
  /** Both figures of toe over a base, by what they were read with. */
  figures: { dials: ['front dial', 'rear dial'], tape: ['front, tape', 'rear, tape'] } satisfies Record<
    OverBase['by'],
    readonly string[]
  >,
  degrees: (name: string): string => `${name} (°)`,
  millimetres: (name: string): string => `${name} (mm)`,
  /** Over the columns of a table of a corner. */
  point: ['Point', 'x (mm)', 'y (mm)', 'z (mm)'],
  measurement: ['Measurement', 'Value'],
  plusMinus: '±',
  corner: (name: string): string => `${name} corner at stock height`,
  /** Its rows. */
  points: {
    'lowerArm.front': 'Lower arm, front pivot',
    'lowerArm.rear': 'Lower arm, rear pivot',
    'lowerArm.ball': 'Lower ball joint',
    'strut.top': 'Top mount',
    'strut.low': 'Damper, low point',
    'tieRod.inner': 'Tie rod, inner end',
    'tieRod.outer': 'Tie rod, outer end',
    wheelCentre: 'Wheel centre',
  } satisfies Record<StrutPointKey, string>,
  measures: {
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
  } satisfies Record<Exclude<DrivewayKey, 'camber'>, string>,
  singles: { loadedRadius: 'Loaded radius', camber: 'Static camber', toe: 'Static toe' },
};
