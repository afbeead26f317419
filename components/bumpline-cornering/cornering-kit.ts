import type { CarDocument } from '../../core/document/car.js';
import { type TurnSettings, withTurn } from '../../core/document/turn-settings.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { carKit } from '../inputs/car-kit.js';
import type { SheetKit } from '../inputs/input-sheet.js';
import { OwnSheets } from '../inputs/own-sheets.js';
import type { InputView } from '../inputs/sheet-edits.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { NAMES } from './bumpline-cornering.labels.js';

const { sheets: WORDS } = NAMES;

type Key = keyof typeof WORDS & keyof TurnSettings;

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

const TYRE_ROLL = oneNumber('tyreRoll', 'tyreRoll');
const STEER = [oneNumber('radius', 'radius'), oneNumber('wheelbase', 'wheelbase')];
const CAMBER = oneNumber('camber', 'camber', { caution: 'camber' });
const WANTED = oneNumber('wanted', 'camber', { caution: 'camber' });
const TRACK = oneNumber('track', 'track');

/** What is asked of a turn, as a list shows it. @param hasLinks whether wheels can be steered and their track is known */
export const turnSheets = (hasLinks: boolean): readonly SheetSpec[] => [
  TYRE_ROLL,
  ...(hasLinks ? STEER : [TRACK]),
  CAMBER,
  WANTED,
];

export const TURN_SHEETS = new OwnSheets([TYRE_ROLL, ...STEER, TRACK, CAMBER, WANTED], [STEER]);

/** Whether steering is given in part: one of radius and wheelbase alone tells none. */
export const isSteerHalf = ({ turn }: CarDocument): boolean =>
  (turn?.radius === undefined) !== (turn?.wheelbase === undefined);

/** The sheets of a car and of what is asked of a turn. */
export const corneringKit = (app: InputView): SheetKit =>
  TURN_SHEETS.kit(
    app,
    carKit(app, () => undefined),
  );
