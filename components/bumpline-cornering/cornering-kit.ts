import { nothing } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import type { TURN_RANGES } from '../../core/document/field-ranges.js';
import { withTurn } from '../../core/document/turn-settings.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { worded } from '../../core/quantity/words.js';
import { carKit } from '../inputs/car-kit.js';
import type { SheetKit } from '../inputs/input-sheet.js';
import { OwnSheets } from '../inputs/own-sheets.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { NAMES } from './bumpline-cornering.labels.js';
import type { CorneringView } from './cornering-view.js';
import { renderPhotoDrawn, renderTiesDrawn } from './roll-drawn.js';
import { isOfLoad, loadRun, MARKS, PHOTO, ROLL_SHEETS, rollSheetsInUse, rollStandIns } from './roll-sheets.js';
import { RollStanding } from './roll-standing.js';

const { sheets: WORDS } = NAMES;

type Key = keyof typeof WORDS & keyof typeof TURN_RANGES;

const oneNumber = (key: Key, quantity: Quantity, more: Partial<SheetSpec> = {}): SheetSpec => {
  const { title, label, howTo } = WORDS[key];
  return {
    key: `turn.${key}`,
    title,
    howTo,
    fields: [{ path: `turn.${key}`, label, quantity, signed: quantity === 'camber' }],
    optional: true,
    read: ({ turn }) => (turn?.[key] === undefined ? undefined : [turn[key]]),
    write: (car, values) => withTurn(car, { [key]: values?.[0] }),
    ...more,
  };
};

const TYRE_ROLL = worded(() => oneNumber('tyreRoll', 'tyreRoll'));
const STEER = worded(() => [oneNumber('radius', 'radius'), oneNumber('wheelbase', 'wheelbase')]);
const CAMBER = worded(() => oneNumber('camber', 'camber', { caution: 'camber' }));
const WANTED = worded(() => oneNumber('wanted', 'camber', { caution: 'camber' }));
const TRACK = worded(() => oneNumber('track', 'track'));

/** What is asked of a turn, as a list shows it. @param hasLinks whether wheels can be steered and their track is known */
export const turnSheets = (car: CarDocument, hasLinks: boolean): readonly SheetSpec[] => [
  ...rollSheetsInUse(car, hasLinks),
  TYRE_ROLL,
  ...(hasLinks ? STEER : [TRACK]),
  CAMBER,
  WANTED,
];

export const TURN_SHEETS = new OwnSheets([...ROLL_SHEETS, TYRE_ROLL, ...STEER, TRACK, CAMBER, WANTED], [STEER]);

/** Whether steering is given in part: one of radius and wheelbase alone tells none. */
export const isSteerHalf = ({ turn }: CarDocument): boolean =>
  (turn?.radius === undefined) !== (turn?.wheelbase === undefined);

/** The sheets of a car and of what is asked of a turn. */
export function corneringKit(view: CorneringView): SheetKit {
  const kit = TURN_SHEETS.kit(
    view,
    carKit(view, () => undefined),
  );
  const standing = new RollStanding(view);
  const drawn = { [MARKS.key]: renderTiesDrawn, [PHOTO.key]: renderPhotoDrawn };
  return {
    ...kit,
    runOf: (car, sheet) => (isOfLoad(sheet) ? loadRun(view.hasLinks) : kit.runOf(car, sheet)),
    drawn: (sheet) => drawn[sheet.key]?.() ?? kit.drawn?.(sheet) ?? nothing,
    standIn: (sheet) =>
      ROLL_SHEETS.includes(sheet)
        ? (rollStandIns(sheet, view.model.car, standing.axle) as readonly number[])
        : kit.standIn?.(sheet),
  };
}
