import * as v from 'valibot';
import { STRUT_POINT_KEYS, WISHBONE_POINT_KEYS } from '../linkage/corner.js';
import { CORNER_RANGES, LENGTH, POINT_PLUS_MINUS, type Range } from './field-ranges.js';

export const number = ([least, most]: Range) => v.pipe(v.number(), v.finite(), v.minValue(least), v.maxValue(most));
const coordinate = number(LENGTH);
export const point = v.pipe(v.strictTuple([coordinate, coordinate, coordinate]), v.readonly());
const doubt = v.optional(number(POINT_PLUS_MINUS));

const arm = v.strictObject({ front: point, rear: point, ball: point });
const plusMinusOf = (keys: readonly string[]) =>
  v.exactOptional(v.strictObject(v.entriesFromList([...keys, 'other'], doubt)));

const common = {
  wheelCentre: point,
  // Inches slip in here first: read any number, judge its size with the other points.
  loadedRadius: v.pipe(v.number(), v.finite()),
  camber: number(CORNER_RANGES.camber),
  toe: number(CORNER_RANGES.toe),
  lowerArm: arm,
  tieRod: v.strictObject({ inner: point, outer: point }),
};

/** The schema of a corner, by its kind. Names it does not know are refused, so that a misspelt point is not silently missing. */
export const cornerSchemas = {
  strut: v.strictObject({
    kind: v.literal('strut'),
    ...common,
    strut: v.strictObject({ top: point, low: point }),
    plusMinus: plusMinusOf(STRUT_POINT_KEYS),
  }),
  wishbone: v.strictObject({
    kind: v.literal('wishbone'),
    ...common,
    upperArm: arm,
    damper: v.exactOptional(
      v.strictObject({
        top: point,
        low: point,
        on: v.exactOptional(v.union([v.literal('lowerArm'), v.literal('upperArm'), v.literal('carrier')])),
      }),
    ),
    plusMinus: plusMinusOf([...WISHBONE_POINT_KEYS, 'damper.top', 'damper.low']),
  }),
};
