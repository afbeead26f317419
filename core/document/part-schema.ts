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
  v.strictObject({ part: v.literal(name), plusMinus: maybe(number(PART_PLUS_MINUS)), ...entries });

/** A part as it stands in a set: `PartData`. What it does to a corner is told where it is asked. */
export const partSchema = v.pipe(
  v.variant('part', [
    part('ballJointExtended', { mm, joint: which, stud: maybe(point), correctTieRod }),
    part('ballJointMoved', { vector, joint: which, correctTieRod }),
    part('armLonger', { mm, arm: which }),
    part('innerPivotsRaised', { front: mm, rear: mm, arm: which }),
    part('topMountMoved', { vector }),
    part('knuckleBoltsTurned', { degrees, otherBolt: point, axis: maybe(point) }),
    part('spinAxisTurned', { camber: degrees, toe: maybe(degrees) }),
    part('tieRodEndRaised', { mm }),
    part('tieRodLonger', { mm }),
    part('rackRaised', { mm }),
    part('wheelOffset', { mm }),
  ]),
  v.readonly(),
);
