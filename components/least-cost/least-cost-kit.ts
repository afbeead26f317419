import type { CarDocument } from '../../core/document/car.js';
import { isWishbone } from '../../core/document/car.js';
import { SETTING_WAYS } from '../../core/document/cost-weights.js';
import { type LeastCostSettings, withLeastCost } from '../../core/document/least-cost-settings.js';
import { withTurn } from '../../core/document/turn-settings.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { worded } from '../../core/quantity/words.js';
import { upper } from '../element/sentence.js';
import type { OptionGroup, SheetSpec } from '../inputs/sheet-spec.js';
import { turnSheet } from '../inputs/turn-sheet.js';
import { NAMES } from './least-cost.labels.js';

const { sheets: WORDS } = NAMES;

type NumberKey = {
  [K in keyof LeastCostSettings]-?: LeastCostSettings[K] extends number | undefined ? K : never;
}[keyof LeastCostSettings];

/** Settings that are given one by one on one sheet; what stands in for them, where something does. */
function together(
  keys: readonly (readonly [key: NumberKey, quantity: Quantity, signed?: 'signed'])[],
  { title, howTo, labels }: { title: string; howTo: string; labels: readonly string[] },
  standIn?: (car: CarDocument) => readonly number[],
  /** What is chosen on it besides. */
  chosen?: 'way' | 'rods',
): SheetSpec {
  const partly = {
    read: ({ leastCost }: CarDocument) => keys.map(([key]) => leastCost?.[key]),
    write: (car: CarDocument, values: readonly (number | undefined)[]) =>
      withLeastCost(car, Object.fromEntries(keys.map(([key], i) => [key, values[i]]))),
  };
  return {
    key: `leastCost.${keys[0]![0]}`,
    title,
    howTo,
    optional: true,
    fields: keys.map(([key, quantity, signed], i) => ({
      path: `leastCost.${key}`,
      label: labels[i]!,
      quantity,
      ...(signed && { signed: true }),
    })),
    read: (car) => {
      const given = partly.read(car).filter((value) => value !== undefined);
      return given.length > 0 || (chosen && car.leastCost?.[chosen]) ? given : undefined;
    },
    write: (car, values) => {
      const written = partly.write(car, values ?? []);
      return values || !chosen ? written : withLeastCost(written, { [chosen]: undefined });
    },
    partly,
    ...(standIn && { standIn }),
  };
}

/** What camber is set by, until somebody says otherwise: a plate, of a wishbone another arm. */
export const usualWay = (car: CarDocument) => (isWishbone(car) ? 'longerArm' : 'topMount');

const BY: OptionGroup = worded(() => ({
  legend: WORDS.camber.by,
  items: SETTING_WAYS.map((id) => ({ id, label: upper(NAMES.ways[id]), short: NAMES.ways[id] })),
  read: (car) => car.leastCost?.way ?? usualWay(car),
  write: (car, id) => withLeastCost(car, { way: id as (typeof SETTING_WAYS)[number] }),
  offers: (car, id) => !isWishbone(car) || !(id === 'topMount' || id === 'knuckleBolts'),
}));

const RODS: OptionGroup = worded(() => ({
  legend: WORDS.joints.rods,
  items: [
    { id: 'kept', label: upper(WORDS.joints.kept), short: WORDS.joints.kept },
    { id: 'corrected', label: upper(WORDS.joints.corrected), short: WORDS.joints.corrected },
  ],
  read: ({ leastCost }) => leastCost?.rods ?? 'kept',
  write: (car, id) => withLeastCost(car, { rods: id === 'corrected' ? id : undefined }),
}));

export const USUAL_TOLERANCE_DEG = 0.1;
/** What is tried until somebody says otherwise, degrees and mm: as far as road cars are set. Common practice, no source. */
export const USUAL_CAMBER_DEG = [-4, 0] as const;
const USUAL_LOWER_MM = 30;
export const usualHeights = ({ drop }: CarDocument): readonly [number, number] => [drop, drop + USUAL_LOWER_MM];

export const WANTED_SHEET: SheetSpec = worded(() => ({
  key: 'turn.wanted',
  ...WORDS.wanted,
  fields: [{ path: 'turn.wanted', label: WORDS.wanted.label, quantity: 'camber', signed: true }],
  optional: true,
  read: ({ turn }) => (turn?.wanted === undefined ? undefined : [turn.wanted]),
  write: (car, values) => withTurn(car, { wanted: values?.[0] }),
}));

/** What of the turn's load matters most here; the rest of it is asked for where the roll itself is. */
const LOAD_SHEET: SheetSpec = worded(() => ({
  ...turnSheet('load', { key: 'turn.load', ...WORDS.load }, [
    ['load.lateral', 'lateral'],
    ['load.sprungMass', 'mass'],
    ['load.centreHeight', 'centreHeight'],
    ['load.springRate', 'springRate'],
    ['load.barRate', 'springRate', 'optional'],
  ]),
  caution: 'hardTurn',
}));

/** Limits, parts and prices, in the order of the list. */
export const SEARCH_SHEETS: readonly SheetSpec[] = worded(() => [
  together([['tolerance', 'plusMinusAngle']], { ...WORDS.tolerance, labels: [WORDS.tolerance.label] }, () => [
    USUAL_TOLERANCE_DEG,
  ]),
  {
    ...together(
      [
        ['camberFrom', 'camber', 'signed'],
        ['camberTo', 'camber', 'signed'],
        ['wayPrice', 'price'],
      ],
      WORDS.camber,
      () => USUAL_CAMBER_DEG,
      'way',
    ),
    options: [BY],
  },
  together(
    [
      ['heightFrom', 'drop'],
      ['heightTo', 'drop'],
      ['heightPrice', 'price'],
    ],
    WORDS.height,
    usualHeights,
  ),
  {
    ...together(
      [
        ['joint', 'partLength'],
        ['jointPrice', 'price'],
        ['joint2', 'partLength'],
        ['joint2Price', 'price'],
      ],
      WORDS.joints,
      undefined,
      'rods',
    ),
    caution: 'lowJoint',
    options: [RODS],
  },
  LOAD_SHEET,
  together(
    [
      ['spring', 'springRate'],
      ['springPrice', 'price'],
      ['spring2', 'springRate'],
      ['spring2Price', 'price'],
    ],
    WORDS.springs,
  ),
  together(
    [
      ['bar', 'springRate'],
      ['barPrice', 'price'],
      ['bar2', 'springRate'],
      ['bar2Price', 'price'],
    ],
    WORDS.bars,
  ),
  together(
    [
      ['leastBump', 'gap'],
      ['mostBumpSteer', 'plusMinusToe'],
      ['mostScrub', 'gap'],
    ],
    WORDS.limits,
  ),
  together(
    [
      ['gapStrut', 'gap'],
      ['leastGap', 'gap'],
    ],
    WORDS.gap,
  ),
]);

const OWN = new Map([WANTED_SHEET, ...SEARCH_SHEETS].map((sheet) => [sheet.key, sheet]));

export const leastCostSheet = (key: string): SheetSpec | undefined => OWN.get(key);

/** The sheet on which a field stands. */
export const sheetWith = (path: string): SheetSpec | undefined =>
  [...OWN.values()].find(({ fields }) => fields.some((field) => field.path === path));
