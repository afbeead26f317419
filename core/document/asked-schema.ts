import * as v from 'valibot';
import { ROD_THREADS } from '../alignment/rod-threads.js';
import { RACK_SIDES, TOE_ADJUSTMENTS } from '../linkage/toe-adjustment.js';
import { CAMBER_COSTS, COST_ORDERS } from './camber-costs.js';
import { COMPARED_FIGURES } from './compared-figures.js';
import { number } from './corner-schema.js';
import { MOST_HEIGHTS } from './counts.js';
import {
  ALIGNMENT_RANGES,
  CAMBER,
  CAMBER_ADDED_RANGES,
  CAMBER_READ_LOWER,
  CELL,
  DEGREE,
  DROP,
  PREDICT_RANGES,
  TOE_RANGES,
  TRAVEL,
} from './field-ranges.js';
import { leastCostSchema } from './least-cost-schema.js';
import { LINKS_FROM } from './links-from.js';
import { MOST_PREDICTIONS, PREDICTED_OF } from './predicted-words.js';
import { predictionSchema } from './prediction-schema.js';
import { list, maybe, numbers, record } from './schema-shapes.js';
import { TOE_FROM, TOLD_WHEELS } from './told-wheels.js';
import { turnSchema } from './turn-schema.js';

const cellIndex = v.pipe(number(CELL), v.integer());
const cell = v.pipe(v.strictTuple([cellIndex, cellIndex]), v.readonly());

/** What is asked of a car, and what is said of it besides its parts: all that one person gives field by field. */
export const asked = {
  /** What is compared: drops, mm, the first being the reference's own, and the bump from each over which changes are looked at. */
  compare: maybe(
    record({
      heights: maybe(list(number(DROP), MOST_HEIGHTS)),
      over: maybe(number(TRAVEL)),
      /** The two cells that somebody chose: curve and height, counted from 0 in what is shown. */
      from: maybe(cell),
      to: maybe(cell),
      /** What the cells show. */
      show: maybe(v.picklist(COMPARED_FIGURES)),
    }),
  ),
  /** The travel from zero over which readings are asked about, mm. */
  readingsOver: maybe(number(TRAVEL)),
  /** The degree of curve that a reader looks at readings of a page or the example with; their own hold it themselves. */
  readingsDegree: maybe(v.pipe(number(DEGREE), v.integer())),
  /**
   * What is asked of toe, and what helps to answer it: whether it is made from the links although readings are there; the bump over which it is told, mm; whether of one wheel or of both; the
   * diameter across which it is told as a length; what is moved to flatten it and by how much, mm upward; how far the rack stands
   * from the middle, mm to the left; the steering's ratio; and for readings of toe alone the tie rod, its lever, and on which side of
   * the axle they are.
   */
  toe: maybe(
    record({
      ...numbers(TOE_RANGES),
      from: maybe(v.picklist(TOE_FROM)),
      wheels: maybe(v.picklist(TOLD_WHEELS)),
      adjust: maybe(v.picklist(TOE_ADJUSTMENTS)),
      rackSide: maybe(v.picklist(RACK_SIDES)),
    }),
  ),
  /** What is asked about a turn, and what rolls the body. Degrees, mm, m, kg, N/mm. */
  turn: maybe(turnSchema),
  /**
   * What is asked of adding static camber: degrees, negative adds negative camber; the bump over which the change of camber is told, mm;
   * what the ways are sorted by, and whether the other way round.
   */
  camberAdded: maybe(
    record({
      ...numbers(CAMBER_ADDED_RANGES),
      sortBy: maybe(v.picklist(CAMBER_COSTS)),
      order: maybe(v.picklist(COST_ORDERS)),
    }),
  ),
  /**
   * What stands on the alignment sheet: hub centre to arch lip of both corners of the axle, mm, now, wanted and afterwards; camber and toe
   * of each wheel as read, as wanted, and how near they are to come, degrees; the tie rod's thread; and what was read across a tread after
   * driving, at one static camber or two.
   */
  alignment: maybe(record({ ...numbers(ALIGNMENT_RANGES), thread: maybe(v.picklist(ROD_THREADS)) })),
  /** What is asked of parts that are not fitted yet: the bump over which their change is told, mm, and of which angle. */
  predict: maybe(record({ ...numbers(PREDICT_RANGES), of: maybe(v.picklist(PREDICTED_OF)) })),
  /** What was predicted, kept for when the parts are on and measured; the oldest first. */
  predictions: maybe(list(predictionSchema, MOST_PREDICTIONS)),
  /** Whether every answer takes the links as readings correct them; without it as they were measured. */
  links: maybe(v.picklist(LINKS_FROM)),
  /** What is asked about reaching the wanted inclination of a turn at the least cost. */
  leastCost: maybe(leastCostSchema),
  /** How it was lowered; see LoweringRequest. */
  lowered: maybe(v.picklist(['springs', 'dampers'])),
  /** How much lower the car stood when its static camber was read, mm; see LoweringRequest. */
  camberReadLower: maybe(number(CAMBER_READ_LOWER)),
  /** The drop at which the values were measured, mm, on a car that was lowered already; without it they are those of stock height. */
  measuredAt: maybe(number(DROP)),
  /** The same axle's other side: its own drop, mm, and its own static camber, degrees. Its links are the mirror image. */
  other: maybe(record({ drop: number(DROP), camber: number(CAMBER) })),
};
