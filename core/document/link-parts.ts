import type { Vector3 } from '../linkage/corner.js';
import { PART_JOINTS, PART_KINDS, PART_NAMES, type PartData } from '../linkage/parts/part-kinds.js';
import { LENGTH, PART_ANGLE, PART_LENGTH, PART_PLUS_MINUS } from './field-ranges.js';
import { field, type Row } from './link-rows.js';
import { number, sound, type Text, tuple, word } from './link-text.js';

/*
 * A part of a set: its name, and under keys of their own what it is asked for.
 *
 *     part1=ballJointExtended&part1.mm=22&part1.correctTieRod=1&part1.plusMinus=0.5
 */
const length = number(LENGTH);
const point = tuple<Vector3>(length, length, length);
const mm = number(PART_LENGTH);
const degrees = number(PART_ANGLE);
const which = word(PART_JOINTS);
const flag = word([false, true], (is) => (is ? '1' : '0'));

const numbers = (text: Text<number>, ...keys: string[]) => keys.map((key) => field(key, key, text));

export const PART_ROWS: readonly Row[] = [
  field('', 'part', word(PART_NAMES), { isRequired: true }),
  field('vector', 'vector', tuple<Vector3>(mm, mm, mm)),
  ...numbers(mm, 'mm', 'front', 'rear'),
  ...numbers(degrees, 'degrees', 'camber', 'toe'),
  field('joint', 'joint', which),
  field('arm', 'arm', which),
  field('correctTieRod', 'correctTieRod', flag),
  ...['stud', 'otherBolt', 'axis'].map((key) => field(key, key, point)),
  field('plusMinus', 'plusMinus', number(PART_PLUS_MINUS)),
];

/** A part with all that it is asked for, and with nothing else. */
export function readPart(found: PartData): PartData {
  const { part, plusMinus: _, ...options } = found;
  const { amounts, others, optional } = PART_KINDS[part];
  const keys = Object.keys(options);
  const isAll = amounts.every((key) => optional?.includes(key) || keys.includes(key));
  const hasOthers = part !== 'knuckleBoltsTurned' || keys.includes('otherBolt');
  return (
    sound((isAll && hasOthers && keys.every((key) => [...amounts, ...others].includes(key))) || undefined) && found
  );
}
