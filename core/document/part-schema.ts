import * as v from 'valibot';
import { PART_JOINTS } from '../linkage/parts/part-kinds.js';
import { number, point } from './corner-schema.js';
import { PART_ANGLE, PART_LENGTH, PART_PLUS_MINUS } from './field-ranges.js';

const maybe = v.exactOptional;
const mm = number(PART_LENGTH);
const degrees = number(PART_ANGLE);
const vector = v.pipe(v.strictTuple([mm, mm, mm]), v.readonly());
const which = maybe(v.picklist(PART_JOINTS));
const correctTieRod = maybe(v.boolean());

const part = <N extends string, E extends v.ObjectEntries>(name: N, entries: E) =>
  v.strictObject({
    /** Which part it is. */
    part: v.literal(name),
    /** How far each of its amounts can be trusted (95 %), mm or degrees; 0: exact. ±1 mm or ±0.1° if left out. */
    plusMinus: maybe(number(PART_PLUS_MINUS)),
    ...entries,
  });

const ofLength = {
  /** By how much it is longer, raised or moved outboard, mm. */
  mm,
};
const moved = {
  /** By how much it is moved: x forward, y outboard, z up, mm. */
  vector,
};
const ofArm = {
  /** Which arm; the lower one if left out. */
  arm: which,
};
const ofJoint = {
  /** Which ball joint; the lower one if left out. */
  joint: which,
  /** The tie rod's outer end goes down with the joint. */
  correctTieRod,
};

/** A part as it stands in a set: `PartData`. What it does to a corner is told where it is asked. */
export const partSchema = v.pipe(
  v.variant('part', [
    part('ballJointExtended', {
      ...ofLength,
      ...ofJoint,
      /** Which way the stud points, from the carrier to the ball, of any length: x, y and z, mm; straight down if left out. */
      stud: maybe(point),
    }),
    part('ballJointMoved', { ...moved, ...ofJoint }),
    part('armLonger', { ...ofLength, ...ofArm }),
    part('innerPivotsRaised', {
      /** By how much the front pivot is raised, mm. */
      front: mm,
      /** By how much the rear pivot is raised, mm. */
      rear: mm,
      ...ofArm,
    }),
    part('topMountMoved', moved),
    part('knuckleBoltsTurned', {
      /** By how much the knuckle is turned about the other bolt, degrees. */
      degrees,
      /** Where that bolt is, mm. */
      otherBolt: point,
      /** Along the bolt, of any length: x forward, y left, z up, mm; straight forward if left out. */
      axis: maybe(point),
    }),
    part('spinAxisTurned', {
      /** What it adds to camber, degrees. */
      camber: degrees,
      /** What it adds to toe, degrees. */
      toe: maybe(degrees),
    }),
    part('tieRodEndRaised', ofLength),
    part('tieRodLonger', ofLength),
    part('rackRaised', ofLength),
    part('wheelOffset', ofLength),
  ]),
  v.readonly(),
);
