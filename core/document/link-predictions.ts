import { ALIGNMENTS } from '../curve-sources/source.js';
import type { Prediction } from './car-schema.js';
import { MOST_PARTS } from './counts.js';
import { PREDICTION_RANGES } from './field-ranges.js';
import { PART_ROWS, readPart } from './link-parts.js';
import { field, fields, type Row } from './link-rows.js';
import { list, name, number, sound, type Text, tuple, whole, word } from './link-text.js';
import { MOST_SAMPLES, PREDICTED_FROM, PREDICTED_OF } from './predicted-words.js';

/*
 * A prediction that was kept: the set's name, and under keys of their own what it was made of, and its curve.
 *
 *     prediction1=Lower.joint&prediction1.made=2026-11-30,0.1.0&prediction1.part1=ballJointExtended&prediction1.part1.mm=22
 *     &prediction1.at=25,40&prediction1.from=points,52,3,0.067&prediction1.curve=-30,10&prediction1.change=0.61,0.49,…&prediction1.plusMinus=0.04,0.03,…
 */
const { drop, over, travel, step, change, plusMinus, count } = PREDICTION_RANGES;

/** A text that is one of its kind, as it stands. */
const like = (kind: RegExp): Text<string> => ({
  write: (text) => text,
  read: (text) => sound(kind.test(text) ? text : undefined),
});

export const PREDICTION_ROWS: readonly Row[] = [
  field('', 'name', name, { isRequired: true }),
  fields('made', ['made', 'version'], tuple(like(/^\d{4}-[01]\d-[0-3]\d$/), like(/^\d{1,4}\.\d{1,4}\.\d{1,4}$/)), {
    isRequired: true,
  }),
  { key: 'part', path: ['parts'], rows: PART_ROWS, most: MOST_PARTS, read: readPart },
  field('alignment', 'alignment', word(ALIGNMENTS)),
  field('of', 'quantity', word(PREDICTED_OF), { usual: PREDICTED_OF[0] }),
  fields('at', ['drop', 'over'], tuple(number(drop), number(over)), { isRequired: true }),
  fields(
    'from',
    ['from', 'readings', 'passes', 'byTape'],
    tuple(word(PREDICTED_FROM), whole(count), whole(count), number(plusMinus)),
    { isRequired: true },
  ),
  fields('curve', ['start', 'step'], tuple(number(travel), number(step)), { isRequired: true }),
  field('change', 'change', list(number(change), MOST_SAMPLES, 2), { isRequired: true }),
  field('plusMinus', 'plusMinus', list(number(plusMinus), MOST_SAMPLES, 2), { isRequired: true }),
];

export function readPrediction(found: Prediction): Prediction {
  const prediction = { ...found, parts: found.parts ?? [] };
  return sound(prediction.change.length === prediction.plusMinus.length ? prediction : undefined);
}
