import * as v from 'valibot';
import type { CurveData } from '../curve/curve-data.js';
import { ALIGNMENTS } from '../curve-sources/source.js';
import { DRIVEWAY_KEYS } from '../driveway/driveway.js';
import { STRUT_POINT_KEYS } from '../linkage/corner.js';
import { FRONT_SIGNS, PAIR_GAUGES } from '../readings/over-base.js';
import { MOST_READINGS } from '../readings/reading.js';
import { FIXED_TO } from '../wheel/place.js';
import { asked } from './asked-schema.js';
import { number, point } from './corner-schema.js';
import { CORNER_NAMES, LONGEST_NAME, MOST_PARTS, MOST_PLACES, MOST_SETUPS, MOST_STOP_POINTS } from './counts.js';
import {
  BASE,
  CORNER_RANGES,
  DEGREE,
  DOUBT_RANGES,
  DROP,
  FITMENT_RANGES,
  FORCE,
  LENGTH,
  LIMIT_RANGES,
  LOAD_RANGES,
  MEASURE_RANGES,
  PLUS_MINUS,
  POINT_PLUS_MINUS,
  RATIO,
  READING_RANGES,
  STOP_GAP,
  TRAVEL,
  WHEEL_RANGES,
} from './field-ranges.js';
import { partSchema } from './part-schema.js';
import type { predictionSchema } from './prediction-schema.js';
import { list, maybe, numbers, record } from './schema-shapes.js';

/*
 * What a car document is. The type comes from here, so this is imported for its type everywhere, and for checking only where
 * somebody hands a whole car over: the library it needs is in nobody's first answer. mm, degrees, N, N/mm, kg.
 */
const length = number(LENGTH);
const name = v.pipe(
  v.string(),
  v.check((text) => [...text].length <= LONGEST_NAME),
);
const isRecord = (value: unknown): boolean => typeof value === 'object' && value !== null;

/** What is known of one corner. Only what somebody gave; the example stands in for the rest. */
const given = v.strictObject({
  points: v.strictObject(v.entriesFromList(STRUT_POINT_KEYS, maybe(point))),
  ...numbers(CORNER_RANGES),
  /** 95 % half-widths, mm, by point. */
  plusMinus: maybe(v.strictObject(v.entriesFromList([...STRUT_POINT_KEYS, 'other'], maybe(number(POINT_PLUS_MINUS))))),
  /** What was measured in the driveway, but for static camber, which a page's alone holds. */
  measures: maybe(v.strictObject(measured())),
});

function measured() {
  const entries = DRIVEWAY_KEYS.map((key) => {
    const { [key]: range } = MEASURE_RANGES;
    return [key, maybe(v.strictObject({ value: number(range), plusMinus: number(PLUS_MINUS) }))] as const;
  });
  return Object.fromEntries(entries) as Record<(typeof entries)[number][0], (typeof entries)[number][1]>;
}

/** A curve that somebody else made: power coefficients of camber over travel (degrees, mm; constant term first), or a fit with its doubt. */
const coefficients = v.strictObject({
  kind: v.literal('coefficients'),
  coefficients: v.array(v.pipe(v.number(), v.finite())),
  domain: v.strictTuple([number(TRAVEL), number(TRAVEL)]),
  standardUncertainties: maybe(v.array(v.pipe(v.number(), v.finite(), v.minValue(0)))),
});
// A fit is judged where it is asked: it is a page's only, and no JSON.
const fitted = v.strictObject({ kind: v.literal('curve'), curve: v.custom<CurveData>(isRecord) });
const curve = v.lazy((data): typeof coefficients | typeof fitted =>
  isRecord(data) && (data as { kind?: unknown }).kind === 'curve' ? fitted : coefficients,
);

const reading = record({
  /** mm from the height that is called zero, bump positive. */
  travel: number(READING_RANGES.travel),
  /** Degrees. Camber positive top outward, toe positive in. */
  value: number(READING_RANGES.value),
  /** Readings of one pass share the gauge’s zero. */
  pass: maybe(name),
  /** Which way the wheel was moving. */
  going: maybe(v.picklist(['up', 'down'])),
  /** The first height of its pass, read once more at the end. */
  again: maybe(v.literal(true)),
  /** A reference on the body, mm upward. */
  body: maybe(number(READING_RANGES.body)),
  /** What two dials or a tape read at the front and at the rear, mm. */
  pair: maybe(v.pipe(v.strictTuple([length, length]), v.readonly())),
});

/** A named set of parts on one corner, with the readings that were taken with it. */
const setup = v.pipe(
  record({
    /** For people: "Standard arms", "Joint extensions 20 mm". */
    name,
    /** Which corner it is. */
    cornerName: v.picklist(CORNER_NAMES),
    /** What the gauge read. */
    quantity: v.picklist(['camber', 'toe']),
    /** In the order in which they were entered; the order changes no result. */
    readings: list(reading, MOST_READINGS),
    /** Indexes into `readings` of those that the user set aside. Never set by us. */
    setAside: maybe(list(v.pipe(v.number(), v.integer(), v.minValue(0)), MOST_READINGS)),
    /** Degree of the curve; without it the evidence decides. */
    degree: maybe(v.pipe(number(DEGREE), v.integer())),
    /** Whose readings these are, where a set that a page gave, or the example's, stands among the user's own: kept beside them, or changed. */
    givenBy: maybe(v.picklist(['page', 'example'])),
    /** The drop from stock height, mm, at which the wheel stood where travel is called zero. Without it: stock height. */
    zeroAt: maybe(number(DROP)),
    /** How far gauge, tape and zero height can be trusted, where somebody said it. */
    doubts: maybe(record(numbers(DOUBT_RANGES))),
    /** How toe was read by two figures, at the front and at the rear of the wheel. */
    overBase: maybe(
      record({
        /** What the two figures were read with. */
        by: v.picklist(PAIR_GAUGES),
        /** How far apart the two places are, mm. */
        base: number(BASE),
        /** Which way the front of the wheel goes where the front figure grows. */
        front: v.picklist(FRONT_SIGNS),
      }),
    ),
    /** What is put on the car's own links, one after another. */
    parts: maybe(list(partSchema, MOST_PARTS)),
    /** What is set again once they are on; without it toe. */
    alignment: maybe(v.picklist(ALIGNMENTS)),
  }),
  v.forward(
    v.check(({ readings, setAside = [] }) => {
      const isThere = setAside.every((index) => index < readings.length);
      return isThere && new Set(setAside).size === setAside.length;
    }),
    ['setAside'],
  ),
);

/** A wheel as far as a user has given it; what stands in for the rest, `wheels-in-use.ts` tells. A page gives a whole one. */
const wheel = record({
  /** On the sidewall: `225/45R17`. */
  size: maybe(name),
  ...numbers(WHEEL_RANGES),
  /** The tyre has a rib that stands over the rim’s lip. */
  rimProtector: maybe(v.boolean()),
});

const onClock = v.strictObject({
  /** Hours on a clock face seen from outside, 12 straight up; 9 is forward on a left wheel. */
  clock: number(RATIO),
  /** From the hub’s centre, mm. */
  distance: length,
  /** How far outboard of the tyre’s sidewall there, mm; negative inboard. */
  out: length,
  /** Which sidewall; the outer one if left out. */
  from: maybe(v.picklist(['outer', 'inner'])),
  /** `distance` counts from the tread of the old wheel, straight out. */
  beyond: maybe(v.literal('tread')),
});
const atPoint = v.strictObject({
  /** x, y and z of the place, as hard points have them, mm: in place of the clock. */
  point,
});

const place = v.strictObject({
  /** For people: “arch lip”. */
  name,
  /** What it is fixed to, and so how it moves against the wheel. */
  fixedTo: v.picklist(FIXED_TO),
  /** Bodywork wants another margin than chassis parts. */
  is: v.picklist(['bodywork', 'chassis']),
  /** Where it was measured, with the old wheel on. */
  at: v.lazy((at): typeof onClock | typeof atPoint => (isRecord(at) && 'point' in (at as object) ? atPoint : onClock)),
  /** How sure you are of each measure, mm (95 %). 5 if left out. */
  plusMinus: maybe(number([0, LENGTH[1]])),
  /** Of `between`: which share of the carrier’s way it goes, 0 (at the body) to 1 (at the wheel). */
  share: maybe(number(RATIO)),
});

/** Wheels and what they can meet: what somebody gave of it. What its numbers are, `WheelSpec` and the sheets of clearance tell. */
const fitment = record({
  /** The wheel that was on when the places were measured. */
  before: maybe(wheel),
  /** The wheel that is asked about. */
  after: maybe(wheel),
  /** What the tyre can meet. */
  places: maybe(list(place, MOST_PLACES)),
  ...numbers(FITMENT_RANGES),
});

/** The gap to the bump stop along the damper's rod, mm, stands beside what else ends travel and when the stop is solid. */
const ends = {
  /** From the bump stop to what it meets, along the rod, mm. */
  stopGap: maybe(number(STOP_GAP)),
  /** What else ends travel: as `TravelLimits`. */
  limits: maybe(record(numbers(LIMIT_RANGES))),
};
const stopPoint = v.pipe(v.strictTuple([length, number(FORCE)]), v.readonly());
const loads = record({ ...numbers(LOAD_RANGES), stopPoints: maybe(list(stopPoint, MOST_STOP_POINTS)) });

const by = v.picklist(['page', 'user']);
const standingIn = <E extends v.ObjectEntries>(entries: E) => maybe(record({ by, standIn: maybe(record(entries)) }));

/** One car: what somebody gave and nothing derived from it. */
const car = record({
  /** Of the form in which it is written; a page need not say it. */
  version: v.literal(1),
  /** Which corner it is. */
  cornerName: v.picklist(CORNER_NAMES),
  /** What the answer is made from where no curve is given: hard points, what can be measured in a driveway, or readings. */
  by: v.picklist(['driveway', 'points', 'readings']),
  /** Who gave each part that somebody gave; of some, what a page had given, which stands in for what the user does not give. */
  provenance: record({
    corner: standingIn({ given: maybe(given) }),
    bumpTravel: maybe(record({ by })),
    /** Of the drop with its ±, and of how the car is known and which corner: what always has a value, whoever gave it. */
    drop: maybe(record({ by })),
    way: maybe(record({ by })),
    setups: maybe(record({ by })),
    fit: standingIn({ fit: maybe(fitment), ...ends, loads: maybe(loads) }),
    /** What a page gave of all the rest: a field that still holds the page's value is the page's, one that holds another the user's. */
    asked: maybe(record({ by: v.literal('page'), standIn: record(asked) })),
  }),
  /** What is known of the corner: `points`, `measures`, `camber`, `toe`, `loadedRadius`. mm and degrees. */
  given,
  /**
   * A corner handed over with mistakes in it, or of another kind, as it came, so that its problems can be told by its own paths:
   * `checkCorner` tells them.
   */
  whole: maybe(v.unknown()),
  /** A curve in place of hard points. */
  curve: maybe(curve),
  /** Sets of parts with their readings. */
  setups: maybe(list(setup, MOST_SETUPS)),
  /** Index of the one in use; 0 without it. */
  setup: maybe(v.pipe(v.number(), v.integer(), v.minValue(0))),
  /** Index of the one whose parts are on the links that are asked; without it none. */
  fitted: maybe(v.pipe(v.number(), v.integer(), v.minValue(0))),
  /** How far below stock height the car stands, mm. */
  drop: number(DROP),
  /** Half-width of its 95 % interval, mm. */
  dropPlusMinus: maybe(number(PLUS_MINUS)),
  /** How far the wheel can rise at stock height, mm. */
  bumpTravel: maybe(number(TRAVEL)),
  /** What else ends travel, and when the stop is solid, as found at the height the car stood. */
  ...ends,
  /** What the corner weighs and what carries it: as `CornerLoads`. N, N/mm, kg. */
  loads: maybe(loads),
  /** Wheels and what they can meet. */
  fit: maybe(fitment),
  ...asked,
});

export const carSchema = v.pipe(
  car,
  v.forward(
    v.check(({ setups = [], setup: inUse = 0 }) => inUse < Math.max(1, setups.length)),
    ['setup'],
  ),
  v.forward(
    v.check(({ setups = [], fitted }) => fitted === undefined || setups[fitted]?.parts !== undefined),
    ['fitted'],
  ),
);

/** One car, as plain immutable data. mm and degrees. A corner handed over whole (`whole`) is kept as it came. */
export type CarDocument = v.InferOutput<typeof carSchema>;
/** What is known of one corner. */
export type GivenCorner = v.InferOutput<typeof given>;
export type GivenCurve = v.InferOutput<typeof curve>;
/** A named set of parts on one corner, with the readings that were taken with it. Plain immutable data; mm and degrees. */
export type Setup = v.InferOutput<typeof setup>;
/** What was predicted of a set of parts before it was fitted. Plain immutable data. */
export type Prediction = v.InferOutput<typeof predictionSchema>;
/** Wheels and what they can meet: what somebody gave of it. Plain immutable data. */
export type Fitment = v.InferOutput<typeof fitment>;
/** A wheel as far as a user has given it. */
export type GivenWheel = v.InferOutput<typeof wheel>;
