import type { CarDocument } from '../../core/document/car.js';
import type { RollWay } from '../../core/document/roll-ways.js';
import { loadInUse, loadStandIn } from '../../core/document/turn-roll.js';
import { type TurnSettings, withTurn } from '../../core/document/turn-settings.js';
import { worded } from '../../core/quantity/words.js';
import { unlikelyRate } from '../../core/travel/likely-rate.js';
import type { CautionId } from '../element/cautions.js';
import type { OptionGroup, SheetSpec } from '../inputs/sheet-spec.js';
import { changed, type TurnField, turnSheet } from '../inputs/turn-sheet.js';
import { ROLL } from './roll.labels.js';

type Values = Record<string, number | undefined>;

const sheet = (
  way: RollWay,
  name: keyof typeof ROLL.sheets,
  fields: readonly TurnField[],
  more: Partial<SheetSpec> & { caution?: CautionId } = {},
): SheetSpec => turnSheet(way, { key: `turn.roll.${name}`, ...ROLL.sheets[name] }, fields, more);

const springOf = (load: ReturnType<typeof loadInUse>, prefix: '' | 'other') =>
  prefix
    ? { springRate: load.otherSpringRate, motionRatio: load.otherMotionRatio, sprungMass: load.otherMass }
    : { springRate: load.springRate, motionRatio: load.motionRatio, sprungMass: load.sprungMass };

/** Asked only where a rate looks like that of another unit. */
const ratesAre = (prefix: '' | 'other'): OptionGroup => ({
  legend: ROLL.rates.legend,
  items: (['check', 'asTyped'] as const).map((id) => ({ id, ...ROLL.rates[id] })),
  read: ({ turn }) => turn?.load?.rates ?? 'check',
  write: (car, id) =>
    withTurn(car, {
      load: changed(car.turn?.load, { rates: (id === 'asTyped' ? id : undefined) as never }) as TurnSettings['load'],
    }),
  offers: (car) => {
    const { springRate, motionRatio, sprungMass } = springOf(loadInUse(car), prefix);
    if (springRate === undefined || sprungMass === undefined) return false;
    return (
      unlikelyRate('', { springRate, sprungMass, ...(motionRatio !== undefined && { motionRatio }) }) !== undefined
    );
  },
});

export const MARKS = worded(() =>
  sheet(
    'marks',
    'marks',
    [
      ['marks.outer', 'gap'],
      ['marks.inner', 'gap', 'optional'],
      ['marks.motionRatio', 'ratio', 'optional'],
      ['track', 'track', 'optional'],
      ['marks.plusMinus', 'plusMinusLength', 'optional'],
    ],
    { caution: 'onCourse' },
  ),
);

export const PHOTO = worded(() =>
  sheet(
    'photo',
    'photo',
    [
      ['photo', 'roll'],
      ['photoPlusMinus', 'plusMinusAngle', 'optional'],
    ],
    { caution: 'onCourse' },
  ),
);

const load = (
  name: keyof typeof ROLL.sheets,
  fields: readonly TurnField[],
  more: Partial<SheetSpec> & { caution?: CautionId } = {},
) => sheet('load', name, fields, more);

const BEFORE: readonly SheetSpec[] = worded(() => [
  load('lateral', [['load.lateral', 'lateral']], { caution: 'hardTurn' }),
  load(
    'springs',
    [
      ['load.springRate', 'springRate'],
      ['load.motionRatio', 'ratio', 'optional'],
    ],
    { options: [ratesAre('')] },
  ),
  load('masses', [
    ['load.sprungMass', 'mass'],
    ['load.unsprungMass', 'mass', 'optional'],
    ['track', 'track', 'optional'],
  ]),
  load('centre', [
    ['load.centreHeight', 'centreHeight'],
    ['load.centrePlusMinus', 'plusMinusLength', 'optional'],
  ]),
]);

const AFTER: readonly SheetSpec[] = worded(() => [
  load('bar', [
    ['load.barRate', 'springRate'],
    ['load.barRatio', 'ratio', 'optional'],
  ]),
  load(
    'stop',
    [
      ['load.stopGap', 'gap'],
      ['load.stopRate', 'springRate'],
    ],
    { caution: 'stop' },
  ),
  load(
    'other',
    [
      ['load.otherMass', 'mass'],
      ['load.otherTrack', 'track'],
      ['load.otherRollCentre', 'rollCentreHeight'],
      ['load.otherSpringRate', 'springRate'],
    ],
    { options: [ratesAre('other')] },
  ),
  load('otherSprings', [
    ['load.otherMotionRatio', 'ratio', 'optional'],
    ['load.otherBarRate', 'springRate', 'optional'],
    ['load.otherBarRatio', 'ratio', 'optional'],
  ]),
]);

/** Of a car that is known by readings alone. */
const ROLL_CENTRE = worded(() => load('rollCentre', [['load.rollCentre', 'rollCentreHeight']]));

/** What lateral acceleration asks for, in the order in which one sheet leads to the next. @param hasLinks whether they tell the roll centre */
export const loadRun = (hasLinks: boolean): readonly SheetSpec[] => [
  ...BEFORE,
  ...(hasLinks ? [] : [ROLL_CENTRE]),
  ...AFTER,
];

/** Every sheet of the roll. */
export const ROLL_SHEETS: readonly SheetSpec[] = [MARKS, PHOTO, ...loadRun(false)];

export const isOfLoad = (sheet: SheetSpec): boolean => loadRun(false).includes(sheet);

/** The sheets of which a car has anything, or from which its roll comes. */
export function rollSheetsInUse(car: CarDocument, hasLinks: boolean): readonly SheetSpec[] {
  const { rollFrom, marks, photo, load: given } = car.turn ?? {};
  return [
    ...(marks || rollFrom === 'marks' ? [MARKS] : []),
    ...(photo !== undefined || rollFrom === 'photo' ? [PHOTO] : []),
    ...(given || rollFrom === 'load' ? loadRun(hasLinks) : []),
  ];
}

/** The sheet on which a value stands. */
export const rollSheetOf = (path: string): SheetSpec | undefined =>
  ROLL_SHEETS.find(({ key, fields }) => key === path || fields.some((field) => field.path === path));

/** What stands in for each field: the links’ own, what was given on another page, or the same as the field before. */
export function rollStandIns(
  { fields }: SheetSpec,
  car: CarDocument,
  links: { track: number; motionRatio: number } | undefined,
): readonly (number | undefined)[] {
  const other = loadStandIn(car);
  const known = (value: number | undefined) => (value !== undefined && Number.isFinite(value) ? value : undefined);
  const byPlace: Values = {
    'turn.marks.inner': car.turn?.marks?.outer,
    'turn.marks.motionRatio': known(links?.motionRatio),
    'turn.track': known(links?.track),
    'turn.load.motionRatio': known(links?.motionRatio),
    'turn.load.springRate': other.springRate,
    'turn.load.sprungMass': other.sprungMass,
    'turn.load.unsprungMass': other.unsprungMass,
    'turn.load.stopGap': other.stopGap,
    'turn.load.stopRate': other.stopRate,
    'turn.load.barRatio': 1,
    'turn.load.otherMotionRatio': 1,
    'turn.load.otherBarRatio': 1,
  };
  return fields.map(({ path }) => byPlace[path]);
}
