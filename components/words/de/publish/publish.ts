import type { TABLES } from '../../../publish/publish.words.js';

/**
 * Of tables that a page has of a car, in every language: elements read them back, and the headings, names and directions that they
 * understand are the English ones (`core/document/point-rows`, `core/readings/table`).
 */
export const TABLES_DE: typeof TABLES = {
  travel: 'Wheel travel (mm)',
  parts: 'Parts',
  pass: 'Pass',
  direction: 'Direction',
  body: 'Body reference (mm)',
  camber: 'Camber',
  toe: 'Toe',
  ways: { up: 'going up', down: 'going down' },
  figures: { dials: ['front dial', 'rear dial'], tape: ['front, tape', 'rear, tape'] },
  degrees: (name) => `${name} (°)`,
  millimetres: (name) => `${name} (mm)`,
  point: ['Point', 'x (mm)', 'y (mm)', 'z (mm)'],
  measurement: ['Measurement', 'Value'],
  plusMinus: '±',
  corner: (name) => `${name} corner at stock height`,
  points: {
    'lowerArm.front': 'Lower arm, front pivot',
    'lowerArm.rear': 'Lower arm, rear pivot',
    'lowerArm.ball': 'Lower ball joint',
    'strut.top': 'Top mount',
    'strut.low': 'Damper, low point',
    'tieRod.inner': 'Tie rod, inner end',
    'tieRod.outer': 'Tie rod, outer end',
    wheelCentre: 'Wheel centre',
  },
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
  },
  singles: { loadedRadius: 'Loaded radius', camber: 'Static camber', toe: 'Static toe' },
};
