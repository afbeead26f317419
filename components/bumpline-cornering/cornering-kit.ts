import type { CarDocument } from '../../core/document/car.js';
import { type TurnSettings, withTurn } from '../../core/document/turn-settings.js';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { Display } from '../element/sentence.js';
import { carKit } from '../inputs/car-kit.js';
import type { SheetKit } from '../inputs/input-sheet.js';
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

const OWN = new Map([TYRE_ROLL, ...STEER, TRACK, CAMBER, WANTED].map((sheet) => [sheet.key, sheet]));

export const turnSheetOf = (key: string): SheetSpec | undefined => OWN.get(key);

/** A problem of one of them, by its title; undefined of any other. */
export function turnProblemText(problem: Problem, { units: unitSystem, language }: Display): string | undefined {
  const sheet = OWN.get(problem.path);
  if (!sheet) return undefined;
  return explainProblem(problem, { label: sheet.title, quantity: sheet.fields[0]!.quantity, unitSystem, language });
}

/** Whether steering is given in part: one of radius and wheelbase alone tells none. */
export const isSteerHalf = ({ turn }: CarDocument): boolean =>
  (turn?.radius === undefined) !== (turn?.wheelbase === undefined);

/** The sheets of a car's links and of what is asked of a turn. */
export function corneringKit(app: InputView): SheetKit {
  const links = carKit(app, () => undefined);
  return {
    ...links,
    sheetOf: (key) => OWN.get(key) ?? links.sheetOf(key),
    describeProblem: (problem) => turnProblemText(problem, app.display) ?? links.describeProblem(problem),
    runOf: (car, sheet) => (STEER.includes(sheet) ? STEER : OWN.has(sheet.key) ? [] : links.runOf(car, sheet)),
  };
}
