import { ROD_THREADS } from '../alignment/rod-threads.js';
import { ALIGNMENTS } from '../curve-sources/source.js';
import { STRUT_POINT_KEYS, type Vector3 } from '../linkage/corner.js';
import { RACK_SIDES, TOE_ADJUSTMENTS } from '../linkage/toe-adjustment.js';
import { FRONT_SIGNS, PAIR_GAUGES } from '../readings/over-base.js';
import { MOST_READINGS } from '../readings/reading.js';
import type { Place } from '../wheel/place.js';
import { CAMBER_COSTS, COST_ORDERS } from './camber-costs.js';
import { COMPARED_FIGURES } from './compared-figures.js';
import { COST_WEIGHTS, JOINT_RODS, LEAST_COSTS, SETTING_WAYS } from './cost-weights.js';
import { MOST_HEIGHTS, MOST_PARTS, MOST_PLACES, MOST_SETUPS, MOST_STOP_POINTS } from './counts.js';
import {
  ALIGNMENT_RANGES,
  BASE,
  CAMBER,
  CAMBER_ADDED_RANGES,
  CAMBER_READ_LOWER,
  CELL,
  CORNER_RANGES,
  DEGREE,
  DOUBT_RANGES,
  DROP,
  FITMENT_RANGES,
  FORCE,
  LEAST_COST_RANGES,
  LENGTH,
  LIMIT_RANGES,
  LOAD_RANGES,
  MEASURE_RANGES,
  PLUS_MINUS,
  POINT_PLUS_MINUS,
  PREDICT_RANGES,
  RATIO,
  type Range,
  ROLL_LOAD_RANGES,
  STOP_GAP,
  TIE_RANGES,
  TOE_RANGES,
  TRAVEL,
  TURN_RANGES,
  WHEEL_RANGES,
} from './field-ranges.js';
import { PART_ROWS, readPart } from './link-parts.js';
import { type Spot, spot } from './link-place.js';
import { PREDICTION_ROWS, readPrediction } from './link-predictions.js';
import { type Grouped, group, grouped, order, ungrouped } from './link-readings.js';
import { field, fields, type Row } from './link-rows.js';
import {
  cornerName,
  doubted,
  list,
  name,
  number,
  orTilde,
  size,
  sound,
  type Text,
  tuple,
  whole,
  word,
  writeNumber as write,
} from './link-text.js';
import { LINKS_FROM } from './links-from.js';
import { MOST_PREDICTIONS, PREDICTED_OF } from './predicted-words.js';
import { RATES_ARE, ROLL_WAYS } from './roll-ways.js';
import type { Setup } from './setup.js';
import { TOE_FROM, TOLD_WHEELS } from './told-wheels.js';

/*
 * Every field of a car in a link, in the order in which they are written. Sets of parts and places are numbered from 1, and what
 * else is known of one stands under keys of its own:
 *
 *     setup1=Standard.arms&setup1.at=front-left&setup1.p1=Pass.1~up~-30to15by5,25~0.03,-0.1,…&setup=1
 *     &setup2=Lower.joint&setup2.at=front-left&setup2.part1=ballJointExtended&setup2.part1.mm=22&setup2.part1.correctTieRod=1&fitted=2
 *     &stopLength=60&springRate=25&stopPoints=10,400,20,1200&wheelBefore=205/55R16,6.5,45&wheelBefore.spacer=5
 *     &place1=arch.lip,body,bodywork,clock,11.5,330,12~5&place2=drop.link,between,chassis,point,0,640,300&place2.share=0.4
 */

const numbers = (ranges: Readonly<Record<string, Range>>, ...path: string[]): Row[] =>
  Object.entries(ranges).map(([key, range]) => field(key, [...path, key], number(range)));

const length = number(LENGTH);
const point = tuple<Vector3>(length, length, length);

const SETUP_ROWS: readonly Row[] = [
  field('', 'name', name, { isRequired: true }),
  field('at', 'cornerName', cornerName, { isRequired: true }),
  field('read', 'quantity', word(['camber', 'toe']), { usual: 'camber' }),
  field('from', 'givenBy', word(['page', 'example'])),
  field('degree', 'degree', whole(DEGREE)),
  field('zeroAt', 'zeroAt', number(DROP)),
  fields(
    'over',
    ['overBase.by', 'overBase.base', 'overBase.front'],
    tuple(word(PAIR_GAUGES), number(BASE), word(FRONT_SIGNS)),
  ),
  ...numbers(DOUBT_RANGES, 'doubts'),
  {
    key: 'p',
    path: ['groups'],
    rows: [field('', 'readings', group)],
    most: MOST_READINGS,
    written: (readings: Setup['readings']) => ({ readings }),
    read: ({ readings }: Pick<Setup, 'readings'>) => readings,
  },
  field('order', 'order', order),
  field('aside', 'setAside', list(whole([0, MOST_READINGS]))),
  { key: 'part', path: ['parts'], rows: PART_ROWS, most: MOST_PARTS, read: readPart },
  field('alignment', 'alignment', word(ALIGNMENTS)),
];

function readSetup({ groups = [], order: across, ...setup }: Omit<Setup, 'readings'> & Partial<Grouped>): Setup {
  const readings = ungrouped({ groups, order: across });
  const { setAside = [] } = setup;
  sound(
    (setAside.every((index) => index < readings.length) && new Set(setAside).size === setAside.length) || undefined,
  );
  return { ...setup, readings };
}

const { rimWidthInch, offset, ...OTHER_WHEEL_RANGES } = WHEEL_RANGES;

const WHEEL_ROWS: readonly Row[] = [
  fields(
    '',
    ['size', 'rimWidthInch', 'offset'],
    tuple(orTilde(size), orTilde(number(rimWidthInch)), orTilde(number(offset))),
    { isRequired: true },
  ),
  ...numbers(OTHER_WHEEL_RANGES),
  field(
    'rimProtector',
    'rimProtector',
    word([false, true], (has) => (has ? '1' : '0')),
  ),
];

/** A wheel of which nothing is given is none. */
const readWheel = (wheel: object): object => sound(Object.keys(wheel).length > 0 ? wheel : undefined);

const PLACE_ROWS: readonly Row[] = [
  fields('', ['spot', 'plusMinus'], doubted(spot, [0, LENGTH[1]]), { isRequired: true }),
  field('share', 'share', number(RATIO)),
];

const stopPoint = tuple(length, number(FORCE));
const stopPoints: Text<readonly (readonly [number, number])[]> = {
  write: (points) => points.flat().map(write).join(','),
  read(text) {
    const figures = text.split(',');
    sound(figures.length <= 2 * MOST_STOP_POINTS || undefined);
    const found: (readonly [number, number])[] = [];
    for (let i = 0; i < figures.length; i += 2) found.push(stopPoint.read(figures.slice(i, i + 2).join(',')));
    return found;
  },
};

// Static camber is one value for both ways, under its own name.
const { camber: _, ...OWN_MEASURES } = MEASURE_RANGES;
const { camber, toe, loadedRadius } = CORNER_RANGES;

const cell = tuple(whole(CELL), whole(CELL));

const TURN_KEYS: Readonly<Record<keyof typeof TURN_RANGES, string>> = {
  roll: 'roll',
  tyreRoll: 'tyreRoll',
  radius: 'turnRadius',
  wheelbase: 'wheelbase',
  track: 'turnTrack',
  camber: 'turnCamber',
  wanted: 'turnWanted',
  photo: 'rollPhoto',
  photoPlusMinus: 'rollPhotoPlusMinus',
};

/** Alone, a length would not tell what it is of. */
const TOE_KEYS: Readonly<Record<keyof typeof TOE_RANGES, string>> = {
  over: 'toeOver',
  across: 'toeAcross',
  amount: 'toeAmount',
  rack: 'rackAt',
  steeringRatio: 'steeringRatio',
  rodLength: 'rodLength',
  lever: 'steeringArm',
};

const leastCostKey = (key: string): string => `least${key.slice(0, 1).toUpperCase()}${key.slice(1)}`;

export const LINK_ROWS: readonly Row[] = [
  // Left out where nobody but the page or the example gave them; older links always say them.
  field('corner', 'cornerName', cornerName),
  field('by', 'by', word(['driveway', 'points', 'readings'])),
  fields('drop', ['drop', 'dropPlusMinus'], doubted(number(DROP), PLUS_MINUS)),
  field('bumpTravel', 'bumpTravel', number(TRAVEL)),
  field('stopGap', 'stopGap', number(STOP_GAP)),
  field('lowered', 'lowered', word(['springs', 'dampers'])),
  field('measuredAt', 'measuredAt', number(DROP)),
  ...Object.entries(OWN_MEASURES).map(([key, range]) => {
    const path = ['given', 'measures', key];
    return fields(
      key,
      [
        [...path, 'value'],
        [...path, 'plusMinus'],
      ],
      doubted(number(range), PLUS_MINUS, true),
    );
  }),
  ...STRUT_POINT_KEYS.map((key) =>
    fields(
      key,
      [
        ['given', 'points', key],
        ['given', 'plusMinus', key],
      ],
      doubted(point, POINT_PLUS_MINUS),
    ),
  ),
  field('camber', 'given.camber', number(camber)),
  field('camberReadLower', 'camberReadLower', number(CAMBER_READ_LOWER)),
  field('toe', 'given.toe', number(toe)),
  field('loadedRadius', 'given.loadedRadius', number(loadedRadius)),
  fields('other', ['other.drop', 'other.camber'], tuple(number(DROP), number(CAMBER))),
  field('heights', 'compare.heights', list(number(DROP), MOST_HEIGHTS)),
  field('compareOver', 'compare.over', number(TRAVEL)),
  field('compareFrom', 'compare.from', cell),
  field('compareTo', 'compare.to', cell),
  field('compareShow', 'compare.show', word(COMPARED_FIGURES)),
  field('readingsOver', 'readingsOver', number(TRAVEL)),
  field('readingsDegree', 'readingsDegree', whole(DEGREE)),
  ...Object.entries(TOE_RANGES).map(([key, range]) =>
    field(TOE_KEYS[key as keyof typeof TOE_RANGES], ['toe', key], number(range)),
  ),
  ...Object.entries(TURN_RANGES).map(([key, range]) =>
    field(TURN_KEYS[key as keyof typeof TURN_RANGES], ['turn', key], number(range)),
  ),
  field('rollFrom', 'turn.rollFrom', word(ROLL_WAYS)),
  ...Object.entries(TIE_RANGES).map(([key, range]) => field(`ties.${key}`, ['turn', 'marks', key], number(range))),
  ...Object.entries(ROLL_LOAD_RANGES).map(([key, range]) =>
    field(`rollLoad.${key}`, ['turn', 'load', key], number(range)),
  ),
  field('rollLoad.rates', 'turn.load.rates', word(RATES_ARE)),
  field('addCamber', 'camberAdded.by', number(CAMBER_ADDED_RANGES.by)),
  field('addCamberOver', 'camberAdded.over', number(CAMBER_ADDED_RANGES.over)),
  field('addCamberSort', 'camberAdded.sortBy', word(CAMBER_COSTS)),
  field('addCamberOrder', 'camberAdded.order', word(COST_ORDERS)),
  ...Object.entries(ALIGNMENT_RANGES).map(([key, range]) =>
    field(`alignment.${key}`, ['alignment', key], number(range)),
  ),
  field('alignment.thread', 'alignment.thread', word(ROD_THREADS)),
  ...Object.entries(LEAST_COST_RANGES).map(([key, range]) =>
    field(leastCostKey(key), ['leastCost', key], number(range)),
  ),
  field(leastCostKey('way'), 'leastCost.way', word(SETTING_WAYS)),
  field(leastCostKey('rods'), 'leastCost.rods', word(JOINT_RODS)),
  ...LEAST_COSTS.map((key) => field(leastCostKey(key), ['leastCost', key], word(COST_WEIGHTS))),
  field('predictOver', 'predict.over', number(PREDICT_RANGES.over)),
  field('predictOf', 'predict.of', word(PREDICTED_OF)),
  { key: 'prediction', path: ['predictions'], rows: PREDICTION_ROWS, most: MOST_PREDICTIONS, read: readPrediction },
  field('links', 'links', word(LINKS_FROM)),
  field('toeFrom', 'toe.from', word(TOE_FROM)),
  field('toeWheels', 'toe.wheels', word(TOLD_WHEELS)),
  field('toeBy', 'toe.adjust', word(TOE_ADJUSTMENTS)),
  field('rackSide', 'toe.rackSide', word(RACK_SIDES)),
  {
    key: 'setup',
    path: ['setups'],
    rows: SETUP_ROWS,
    most: MOST_SETUPS,
    written: ({ readings, ...setup }: Setup) => ({ ...setup, ...grouped(readings) }),
    read: readSetup,
  },
  field('setup', 'setup', whole([1, MOST_SETUPS])),
  field('fitted', 'fitted', whole([1, MOST_SETUPS])),
  ...numbers(LIMIT_RANGES, 'limits'),
  ...numbers(LOAD_RANGES, 'loads'),
  field('stopPoints', 'loads.stopPoints', stopPoints),
  { key: 'wheelBefore', path: ['fit', 'before'], rows: WHEEL_ROWS, read: readWheel },
  { key: 'wheelAfter', path: ['fit', 'after'], rows: WHEEL_ROWS, read: readWheel },
  {
    key: 'place',
    path: ['fit', 'places'],
    rows: PLACE_ROWS,
    most: MOST_PLACES,
    written: ({ plusMinus, share, ...place }: Place) => ({ spot: place, plusMinus, share }),
    read: ({ spot: place, ...others }: Pick<Place, 'plusMinus' | 'share'> & { spot: Spot }) => ({
      ...place,
      ...others,
    }),
  },
  ...numbers(FITMENT_RANGES, 'fit'),
];
