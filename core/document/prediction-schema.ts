import * as v from 'valibot';
import { ALIGNMENTS } from '../curve-sources/source.js';
import { number } from './corner-schema.js';
import { LONGEST_NAME, MOST_PARTS } from './counts.js';
import { PREDICTION_RANGES } from './field-ranges.js';
import { partSchema } from './part-schema.js';
import { MOST_SAMPLES, PREDICTED_FROM, PREDICTED_OF } from './predicted-words.js';
import { list, maybe, record } from './schema-shapes.js';

const { drop, over, travel, step, change, plusMinus, count } = PREDICTION_RANGES;
const name = v.pipe(
  v.string(),
  v.check((text) => [...text].length <= LONGEST_NAME),
);
const whole = v.pipe(number(count), v.integer());

/** What was predicted of a set of parts before anybody fitted it, and what from. mm and degrees; travels from stock height, half-widths of 95 % intervals. */
export const predictionSchema = v.pipe(
  record({
    /** The day, as ISO 8601 writes it, and the version of what predicted. */
    made: v.pipe(v.string(), v.isoDate()),
    version: v.pipe(v.string(), v.regex(/^\d{1,4}\.\d{1,4}\.\d{1,4}$/)),
    /** Of the set. */
    name,
    parts: list(partSchema, MOST_PARTS),
    alignment: maybe(v.picklist(ALIGNMENTS)),
    quantity: v.picklist(PREDICTED_OF),
    drop: number(drop),
    over: number(over),
    /** What the links were from, how many readings corrected them, and in how many passes. */
    from: v.picklist(PREDICTED_FROM),
    readings: whole,
    passes: whole,
    /** What the tape alone would have left open of the change over that bump. */
    byTape: number(plusMinus),
    /** The first travel of the samples, and how far apart they are. */
    start: number(travel),
    step: number(step),
    /** At each of them, from where the car stands at that drop. */
    change: list(number(change), MOST_SAMPLES),
    plusMinus: list(number(plusMinus), MOST_SAMPLES),
  }),
  v.check(({ change: changes, plusMinus: doubts }) => changes.length > 1 && changes.length === doubts.length),
);
