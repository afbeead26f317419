import * as v from 'valibot';
import { HARD_POINT_KEYS } from '../linkage/corner.js';

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

/** The one schema of a corner. Names it does not know are refused, so that a misspelt point is not silently missing. */
export const strutCornerSchema = v.strictObject({
  kind: v.literal('strut'),
  wheelCentre: point,
  // Inches slip in here first: read any number, judge its size with the other points.
  loadedRadius: number,
  camber: between(STATIC_CAMBER_DEG),
  toe: between(STATIC_TOE_DEG),
  lowerArm: v.strictObject({ front: point, rear: point, ball: point }),
  strut: v.strictObject({ top: point, low: point }),
  tieRod: v.strictObject({ inner: point, outer: point }),
  plusMinus: v.exactOptional(v.strictObject(v.entriesFromList([...HARD_POINT_KEYS, 'other'], doubt))),
});
