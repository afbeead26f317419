import * as v from 'valibot';
import { STRUT_POINT_KEYS, WISHBONE_POINT_KEYS } from '../linkage/corner.js';

/** Coordinates in mm. Cars fit into this; anything beyond it is a slip of the keys or another unit. */
export const LARGEST_COORDINATE_MM = 4000;
export const LOADED_RADIUS_MM = [150, 600] as const;
export const STATIC_CAMBER_DEG = [-15, 15] as const;
export const STATIC_TOE_DEG = [-10, 10] as const;

const number = v.pipe(v.number(), v.finite());
const coordinate = v.pipe(number, v.minValue(-LARGEST_COORDINATE_MM), v.maxValue(LARGEST_COORDINATE_MM));
const between = ([least, most]: readonly [number, number]) => v.pipe(number, v.minValue(least), v.maxValue(most));
const point = v.strictTuple([coordinate, coordinate, coordinate]);
const doubt = v.optional(v.pipe(number, v.minValue(0), v.maxValue(500)));

const arm = v.strictObject({ front: point, rear: point, ball: point });
const plusMinusOf = (keys: readonly string[]) =>
  v.exactOptional(v.strictObject(v.entriesFromList([...keys, 'other'], doubt)));

const common = {
  wheelCentre: point,
  // Inches slip in here first: read any number, judge its size with the other points.
  loadedRadius: number,
  camber: between(STATIC_CAMBER_DEG),
  toe: between(STATIC_TOE_DEG),
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
        on: v.exactOptional(v.picklist(['lowerArm', 'upperArm', 'carrier'])),
      }),
    ),
    plusMinus: plusMinusOf([...WISHBONE_POINT_KEYS, 'damper.top', 'damper.low']),
  }),
};
